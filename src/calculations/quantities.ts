/**
 * Units. Every physical number carries its unit at the end of its name, and each quantity has exactly one unit
 * inside the program; what people type in other units is converted once, at the edge, and kept as typed beside it.
 */

/** Standard acceleration of gravity, m/s² (exact by definition). Source: published, 3rd CGPM (1901), SI Brochure 9th edition. */
export const STANDARD_GRAVITY_M_PER_S2 = 9.80665;

/** The closed list of unit endings for member names. A test refuses exported number members without one of them. */
export const UNIT_SUFFIXES = {
	M: "m",
	M2: "m²",
	M3: "m³",
	Kg: "kg",
	KgPerM3: "kg/m³",
	GramPerM2Day: "g/(m²·day)",
	GramPerM3: "g/m³",
	GramPerKg: "g/kg",
	GramPerUnit: "g/unit",
	S: "s",
	Ms: "ms",
	H: "h",
	Days: "days",
	Months: "months",
	Minutes: "min",
	Hz: "Hz",
	Gn: "gₙ",
	GnRms: "gₙ rms",
	Gn2PerHz: "gₙ²/Hz",
	MPerS: "m/s",
	MPerS2: "m/s²",
	N: "N",
	KN: "kN",
	KJ: "kJ",
	KNPerM: "kN/m",
	KPa: "kPa",
	GPa: "GPa",
	PerKPa: "1/kPa",
	KJPerM3: "kJ/m³",
	WPerMK: "W/(m·K)",
	JPerKgK: "J/(kg·K)",
	NJ: "nJ",
	Ohm: "Ω",
	V: "V",
	DegC: "°C",
	Percent: "%",
	GTPerS: "GT/s",
	GBytePerS: "GB/s",
	Bytes: "bytes",
	PerH: "1/h",
} as const;

/**
 * Names of numbers without a unit (shares, factors, counts), and of those whose unit stands beside them or in the name
 * of the object that they belong to (`value` and `limit` of a check, `restitution0` of an equivalent drop height), or is the
 * name itself (`days`).
 */
export const DIMENSIONLESS = [
	"restitution",
	"drop",
	"minimumCushionFactor",
	"r2",
	"relativeDensity",
	"strainRange",
	"peakUncertainty",
	"optimumFactor",
	"dropsPerTrip",
	"tripCoverage",
	"percentilePerDrop",
	"rampShare",
	"width",
	"margin",
	"gn",
	"value",
	"limit",
	"restitution0",
	"restitutionHalf",
	"restitution1",
	"factor",
	"poissonRatio",
	"amplification",
	"q",
	"cushionDampingRatio",
	"transmissibility",
	"palletFactor",
	"marginDerated",
	"marginFactored",
	"units",
	"unitsRounded",
	"days",
	"months",
	"peakFactor",
	"amount",
	"desiccantUnits",
	"cost",
	"price",
	"considered",
	"median",
	"spread",
	"recordedDrops",
	"face",
	"edge",
	"corner",
	"probability",
	"most",
	"pretriggerSamples",
	"dampingRatio",
	"shockEndIndex",
	"fromIndex",
	"toIndex",
	"crossingFromIndex",
	"crossingToIndex",
	"firstIndex",
	"lastIndex",
	"peakIndex",
	"quietSamples",
	"mostSamples",
	"samplesPerStretch",
	"fanOut",
	"levels",
	"damageProbability",
	"recoveryProbability",
	"breakEvenProbability",
	"anyDamageProbability",
	"riskAversion",
	"legs",
	"currencyPerSdr",
	"baseSdr",
	"mostPerParcel",
	"capSdr",
	"shareOfValue",
	"agreedSdr",
	"hours",
	"shows",
	"failures",
	"coldStarts",
	"coldStartFailures",
	"confidence",
	"startFaultProbability",
	"priorProbability",
	"targetProbability",
	"costOfReturn",
	"escapeProbability",
	"coldStartFailureUpperBound",
	"hoursForConfidence",
	"hoursForTarget",
	"hoursEconomic",
	"coldStartsNeeded",
	"posteriorProbability",
	"countedFor",
	"countedAgainst",
	"countedCases",
	"likelihoodRatio",
	"informationBits",
	"bitsPerCost",
] as const;

/** Units in which a reading stands once converted: the code kept in records → the symbol shown to people. */
export const READING_UNITS = {
	lanes: "lanes",
	"GT/s": "GT/s",
	ohm: "Ω",
	V: "V",
	A: "A",
	W: "W",
	kg: "kg",
	m: "m",
	degC: "°C",
	rpm: "rpm",
	percent: "%",
	MHz: "MHz",
	MiB: "MiB",
	errors: "errors",
	points: "points",
	s: "s",
	h: "h",
	runs: "runs",
	starts: "starts",
	one: "",
} as const;
/** Code of a reading's unit. */
export type ReadingUnit = keyof typeof READING_UNITS;

/**
 * Units in which a person may type a reading, each with the reading unit it becomes and its factor. Decimal multiples
 * by the SI (published, SI Brochure 9th edition, table 7); pound and ounce exact by definition (published, NIST
 * Special Publication 811, appendix B.8, 2008).
 */
export const TYPED_UNITS = {
	...(Object.fromEntries(
		Object.entries(READING_UNITS).map(([unit, symbol]) => [unit, { unit, factor: 1, symbol }]),
	) as { readonly [U in ReadingUnit]: { readonly unit: U; readonly factor: 1; readonly symbol: string } }),
	mohm: { unit: "ohm", factor: 1e-3, symbol: "mΩ" },
	kohm: { unit: "ohm", factor: 1e3, symbol: "kΩ" },
	Mohm: { unit: "ohm", factor: 1e6, symbol: "MΩ" },
	mV: { unit: "V", factor: 1e-3, symbol: "mV" },
	mA: { unit: "A", factor: 1e-3, symbol: "mA" },
	g: { unit: "kg", factor: 1e-3, symbol: "g" },
	lb: { unit: "kg", factor: 0.45359237, symbol: "lb" },
	oz: { unit: "kg", factor: 0.028349523125, symbol: "oz" },
	mm: { unit: "m", factor: 1e-3, symbol: "mm" },
	ms: { unit: "s", factor: 1e-3, symbol: "ms" },
	min: { unit: "s", factor: 60, symbol: "min" },
	GiB: { unit: "MiB", factor: 1024, symbol: "GiB" },
} as const satisfies Record<string, { unit: ReadingUnit; factor: number; symbol: string }>;
/** Code of a unit that a reading may be typed in. */
export type TypedUnit = keyof typeof TYPED_UNITS;

/** A typed number in its reading unit. */
export function toReadingUnit(value: number, typedUnit: TypedUnit): { value: number; unit: ReadingUnit } {
	const { unit, factor } = TYPED_UNITS[typedUnit];
	return { value: factor === 1 ? value : Number((value * factor).toPrecision(15)), unit };
}
