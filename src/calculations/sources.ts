/**
 * Where a figure comes from, and how well it is known. One bibliography for the whole program, so that a document has
 * one name; a citation adds the place in it and the standing of what was taken from there.
 */

/** How well a figure is known, strongest first. A derived figure has the weakest standing among its inputs. */
export const STANDINGS = ["published", "user", "common-practice", "from-memory", "our-choice"] as const;
export type Standing = (typeof STANDINGS)[number];

/** A cited source: document, place in it, standing of the figure taken from it. */
export interface Source {
	readonly id: string;
	readonly document: string;
	readonly locator: string;
	readonly standing: Standing;
}

/** Documents by id: title with edition, and the copy that was read where it was not the document itself. */
export const BIBLIOGRAPHY = {
	"our-choice": "This project's own choice",
	"common-practice": "Common practice of the trade, no published source",
	user: "Entered by the user",
	"wmo-8": "WMO-No. 8, Guide to Instruments and Methods of Observation (as quoted in a weather station's manual)",
	"iso-6946": "ISO 6946, thermal resistance of building components (recalled, not read)",
	"remembered-heats": "Specific heats recalled, no source at hand",
	mechanics: "Elementary mechanics of a fall and a pulse",
	"iso-18431-4":
		"ISO 18431-4, shock-response spectrum analysis (not read; recursion as in an open implementation that cites it)",
	"sae-j211": "SAE J211-1, instrumentation for impact test, channel classes (form as quoted in open code)",
	"vibration-code": "Open engineering code on shock and vibration of electronics (read)",
	cmr: "Convention on the contract for the international carriage of goods by road (CMR), Geneva 1956, with its 1978 protocol (English text in a public repository, state of 10 May 2017)",
	"montreal-convention":
		"Montreal Convention on international carriage by air, 1999 (English text in a public repository, state of 10 May 2017)",
	"montreal-limits": "Montreal Convention, limits as revised by the depositary in 2009, 2019 and 2024 (as quoted)",
	cim: "CIM, appendix B to COTIF 1999, carriage by rail (Dutch text in a public repository, state of 10 May 2017)",
	"upu-convention":
		"Universal Postal Convention, Doha 2012 (English text in a public repository, state of 10 May 2017)",
	"upu-parcel-amounts": "Amounts of the Parcel Post Regulations, recalled, not read",
	hgb: "German Commercial Code, HGB (public repository, state of 26 March 2022)",
	bgb: "German Civil Code, BGB (public repository, state of 26 March 2022)",
	"dutch-civil-code-8":
		"Dutch Civil Code, book 8 (public repository, state of 1 July 2025; limitation from a copy of 2017)",
	"dutch-cap-decree": "Dutch decree on article 1105 of book 8 (public repository, state of 10 May 2017)",
	"french-commercial-code": "French Commercial Code (statute text as reproduced by several pages)",
	"french-commercial-code-recalled": "French Commercial Code, recalled, not read",
	"french-consumer-code": "French Consumer Code (public repository, state of April 2026)",
	"french-postal-code": "French Post and Electronic Communications Code, CPCE (public repository, state of April 2026)",
	"french-default-contract": "French default contract of carriage, recalled, not read",
	"swiss-obligations":
		"Swiss Code of Obligations, OR (articles 452 and 454 as reproduced; 77 and 78 read, state of April 2026)",
	"uk-domestic-carriage": "Law of carriage within the United Kingdom, recalled; contract terms decide",
	"uk-consumer-rights-act": "Consumer Rights Act 2015, United Kingdom (public repository, revised text)",
	"us-code-49": "United States Code, title 49 (public repository, state of 20 December 2024)",
	"us-cfr-49": "Code of Federal Regulations, title 49, part 370 (public repository, as amended 2018)",
	"us-freight-classification":
		"National classification of motor freight, item 300135-A, from 18 April 2015 (as quoted by a trade association)",
	"insurance-theory":
		"Expected loss, and full cover at a fair price (Bernoulli; Mossin 1968, as quoted in open course notes)",
	"parcel-damage-study":
		"Measured purchase study of 3,234 parcels, United States, January to September 2013 (as reported in the press)",
	"din-55439": "DIN 55439, drop heights (as quoted by another document)",
	"ista-1a": "ISTA procedure 1A (as quoted by a test house)",
	"ista-2a": "ISTA procedure 2A (as quoted by a test house)",
	"express-carrier-guide": "Packaging test guide of an express carrier, superseded edition",
	"desktop-board-specification": "Desktop board specification, environmental section, packaged drop",
	"mil-std-810": "MIL-STD-810, method 516 (as quoted)",
	"astm-d4169": "ASTM D4169, distribution testing",
	"mil-hdbk-304": "MIL-HDBK-304, package cushioning design",
	"jis-z-0200": "JIS Z 0200 (as quoted by a test house)",
	"handling-table": "Handling heights by mass, table quoted in a packaging text",
	"parcel-studies": "Published studies of parcel networks with recorders (abstracts read)",
	"ansi-esd-s541": "ANSI/ESD S541, packaging materials for static-sensitive items (as quoted by several pages)",
	"design-fragility-paper": "Paper on flexible polyurethane foams as package cushions (opening read)",
	"stress-energy-study": "Study of the stress-energy method on moulded resin foam, thesis abstract",
	"our-derivation": "Derivation of this project from the formulas named",
	"stress-energy-method":
		"Stress-energy method of cushion design (form as commonly taught; consistent with the published sets)",
	"pe-temperature-paper":
		"Predicting the Effect of Temperature on the Shock Absorption Properties of Polyethylene Foam, Packaging Technology and Science, doi 10.1002/pts.2208 (abstract and thesis text read)",
	"remembered-curves": "Cushion curves recalled, no source at hand",
	"astm-d6817": "ASTM D6817, rigid cellular polystyrene geofoam, minimum strengths (as quoted by a supplier)",
	"link-rate-table": "PCI Express link rates, table in open notes on high-performance computing (0.25 to 63.0 GB/s)",
	"smi-help-query": "nvidia-smi, help text of the queries (as pasted in an open issue tracker)",
	"jcgm-100": "JCGM 100:2008, Guide to the expression of uncertainty in measurement",
	"jcgm-106": "JCGM 106:2012, The role of measurement uncertainty in conformity assessment",
	"iso-14253-1": "ISO 14253-1, Decision rules for verifying conformity or nonconformity with specifications",
	"repair-manual-graphics": "Repair shop manual, diagnostics of graphics cards (read; a shop's own, no standard)",
	"supply-guide-2-0": "ATX12V Power Supply Design Guide 2.0 (excerpt read)",
	"supply-guide-0-9": "ATX power supply design guide 0.9 and ATX/ATX12V 1.1 (excerpts read)",
	"supply-guide-3-0": "ATX 3.0 Multi Rail Power Supply Design Guide, 336521, revisions 2.0 and 2.1a (excerpts read)",
	"hot-plug-data-sheet": "Data sheet of a PCI Express hot-plug controller, table 1 (restates the card specification)",
	"ipc-a-610f": "IPC-A-610F, acceptability of electronic assemblies, 2014 (as quoted)",
	"fan-specification": "4-wire PWM controlled fans specification, 2.1 (read)",
	"firmware-checkpoints": "Server board manual, appendix A, table of firmware checkpoints (read)",
	"vibration-analysis-book":
		"Textbook on vibration analysis for electronic equipment (figures read as scans; formulas as quoted in two notebooks)",
	"board-rule-criticism": "Conference paper on the limits of the board deflection rule, IAC-07-C2.3.10 (abstract read)",
	"jis-z-0232": "JIS Z 0232, vibration test (overall level as quoted by a test house)",
	"board-random-guide": "Thermal and mechanical design guides of desktop processors and chipsets (tables read)",
	"common-carrier-notes": "Open notes on random vibration of common carriers (points as printed)",
	"mil-std-810-vibration": "MIL-STD-810, method 514, US highway truck",
	"ista-3a": "ISTA procedure 3A (overall level as quoted)",
	"mckee-formula": "Simplified McKee formula of box compression (as quoted on a web page)",
	"kellicutt-formula": "Kellicutt formula with flute constants (as quoted in a packaging text)",
	"box-multipliers": "Losses of box strength by time, humidity and stacking (a box maker's page)",
	"mil-p-116": "MIL-P-116 and MIL-STD-2073, method 50, desiccant units (as quoted)",
	"eia-583": "EIA-583, desiccant for barrier bags (as quoted)",
	"j-std-033": "J-STD-033, handling of moisture-sensitive devices (as quoted)",
	"din-55474": "DIN 55474, desiccant units (as quoted)",
	"jis-z-0301": "JIS Z 0301, moisture-proof packaging (as quoted in two texts)",
	"mil-d-3464": "MIL-D-3464E, bagged desiccants (as quoted by three suppliers)",
	"remembered-dunnage": "Units of desiccant for dunnage, recalled",
	"mil-b-81705": "MIL-B-81705C, barrier materials (as quoted on a bag's data sheet)",
	"supplier-design-guide": "A foam supplier's design guide (page on creep and stress limits read)",
	"pad-buckling-course": "Course text on cushion design, worked example of pads (read)",
	"foam-regimes-note": "Note on the regimes of compressed foam (read)",
	"packing-advice": "Packing advice of several parcel shops and carriers (pages read)",
	"parcel-orientation": "Published studies of the orientation of impacts in parcel networks (abstracts read)",
	"graphics-cooler-brief": "Student project brief for a graphics card's cooler (shock breakpoints read)",
	"hard-disk-packaging-page": "A packaging page on hard disks, not operating (as quoted)",
	"dangerous-goods-188": "Special provision 188 for lithium cells (text in a public repository)",
	"r-stats": "R, package stats: reference examples of its tests (read in the R sources)",
	"r-stats-recalled": "R, package stats (recalled)",
	"trade-list-answer":
		"Answer of a solder-joint specialist on a trade list, April 2004: cracks found after a transit shock presuppose a weak joint (read)",
	"driver-issue-tracker": "Open issue tracker of a graphics driver, common reasons for a lost bus (read)",
	"repair-manual-edge": "Repair shop article on cards with fewer lanes (read; a shop's own, no standard)",
	"ratio-of-means-1954":
		"Some problems in interval estimation, Journal of the Royal Statistical Society B 16, 1954 (recalled)",
	"nist-e-handbook": "NIST/SEMATECH e-Handbook of Statistical Methods (recalled)",
	"poisson-limits-1936": "Fiducial limits for the Poisson distribution, Biometrika 28, 1936 (read as quoted elsewhere)",
	"proportion-difference-1998":
		"Interval estimation for the difference between independent proportions, Statistics in Medicine 17, 1998",
} as const satisfies Record<string, string>;

export type DocumentId = keyof typeof BIBLIOGRAPHY;

/** Cites a document of the bibliography. */
export function cite(id: DocumentId, locator: string, standing: Standing): Source {
	return { id, document: BIBLIOGRAPHY[id], locator, standing };
}

/** The weakest of several standings; `published` for none. */
export function weakestStanding(standings: readonly Standing[]): Standing {
	return standings.reduce<Standing>(
		(weakest, next) => (STANDINGS.indexOf(next) > STANDINGS.indexOf(weakest) ? next : weakest),
		"published",
	);
}
