/**
 * Foams by material and density. Sources: one published stress-energy family for a polyethylene plank, its gas form
 * derived from it, sets derived from published static strengths, and sets from memory. A set from memory or derived
 * with a remembered factor gives `provisional` at best; so does `pe-plank-23c`, whose unit is inferred and whose density
 * and drop number are not known. Trips have several drops: a set for the first drop names the one for drops 2 to 5.
 */
import type { Foam } from "../calculations/cushioning/foam.ts";
import { cite, type Source } from "../calculations/sources.ts";

const PLANK = cite("pe-temperature-paper", "coefficients at 23 °C, printed in psi (unit inferred)", "published");
const PLANK_OVER_TEMPERATURE = cite(
	"pe-temperature-paper",
	"thesis text, table 3.3, quadratics refit on four temperatures",
	"published",
);
const FROM_MEMORY = cite("remembered-curves", "optimum point of a 610 mm drop on 50.8 mm, recalled", "from-memory");
const EPS_STRENGTH = cite(
	"astm-d6817",
	"minimum compressive resistance at 10 % strain, as quoted by a supplier",
	"published",
);
const EPS_RATE = cite("remembered-curves", "rate factor 1.25 from static to impact", "from-memory");
const EPP_STRENGTH = cite("remembered-curves", "static stress at 25 % strain", "from-memory");
/** The softest grade of polyethylene plank that the guide lists: 1.5 psi. */
const PE_CREEP = {
	stressKPa: 10.3,
	source: cite(
		"supplier-design-guide",
		"static stress for at most 10 % creep, softest polyethylene grade",
		"published",
	),
};
/** EPS keeps its load at the resistance at 1 % strain, by type. */
const epsCreep = (stressKPa: number) => ({
	stressKPa,
	source: cite("astm-d6817", "compressive resistance at 1 % strain, as quoted by a supplier", "published"),
});

/** Pounds per square inch in kPa, exact to the digits given. Source: published, NIST Special Publication 811, appendix B. */
const PSI_IN_KPA = 6.894757;

const psi = ([c0, c1, c2]: readonly [number, number, number], factor: number): [number, number, number] => [
	c0 * factor,
	c1 * factor,
	c2 * factor,
];

/** A stress-energy set from memory: 50 to 100 mm, room temperature. */
interface Remembered {
	readonly aKPa: number;
	readonly bPerKPa: number;
	readonly energyRangeKJPerM3: readonly [number, number];
	readonly peakUncertainty: number;
	readonly optimumFactor: number;
}

interface Material {
	/** Material and density, as ids name them. */
	readonly id: string;
	/** Its words stand under `foam.`. */
	readonly material: string;
	readonly densityKgPerM3: number;
	readonly creepLimit?: Foam["creepLimit"];
}

/** The set for the first drop and the one for the mean of drops 2 to 5. */
function remembered(material: Material, first: Remembered, later: Remembered): readonly [first: Foam, later: Foam] {
	const foam = (dropNumber: Foam["dropNumber"], { aKPa, bPerKPa, ...set }: Remembered): Foam => ({
		...material,
		...set,
		id: `${material.id}-${dropNumber}`,
		model: { kind: "stress-energy", aKPa, bPerKPa },
		strainRange: null,
		thicknessRangeM: [0.05, 0.1],
		temperatureRangeDegC: null,
		dropNumber,
		primary: true,
		bestVerdict: "provisional",
		sources: [FROM_MEMORY],
		noteKey: "cushion.note-memory",
	});
	const afterFirst = foam("mean-2-to-5", later);
	return [{ ...foam("first", first), later: afterFirst }, afterFirst];
}

const set = (
	aKPa: number,
	bPerKPa: number,
	low: number,
	high: number,
	peakUncertainty: number,
	optimumFactor: number,
): Remembered => ({ aKPa, bPerKPa, energyRangeKJPerM3: [low, high], peakUncertainty, optimumFactor });

const PE_35 = remembered(
	{ id: "pe-35", material: "polyethylene-plank", densityKgPerM3: 35, creepLimit: PE_CREEP },
	set(71.02, 0.01511, 19.9, 132.4, 0.25, 1.35),
	set(74.57, 0.01727, 17.4, 115.8, 0.25, 1.35),
);
const PE_27 = remembered(
	{ id: "pe-27", material: "polyethylene-plank", densityKgPerM3: 27, creepLimit: PE_CREEP },
	set(56.31, 0.02014, 14.9, 99.3, 0.25, 1.35),
	set(61.38, 0.02198, 13.6, 91.0, 0.25, 1.35),
);
const EPE_19 = remembered(
	{ id: "epe-19", material: "expanded-polyethylene", densityKgPerM3: 19 },
	set(44.51, 0.02686, 11.2, 74.5, 0.3, 1.5),
	set(47.69, 0.03022, 9.9, 66.2, 0.3, 1.5),
);
const XLPE_32 = remembered(
	{ id: "xlpe-32", material: "cross-linked-polyethylene", densityKgPerM3: 32 },
	set(57.83, 0.02014, 14.9, 99.3, 0.3, 1.5),
	set(58.59, 0.02198, 13.6, 91.0, 0.3, 1.5),
);
const PU_ETHER_24 = remembered(
	{ id: "pu-ether-24", material: "polyurethane-ether", densityKgPerM3: 24 },
	set(15.17, 0.09297, 3.2, 21.5, 0.3, 1.7),
	set(15.22, 0.10072, 3.0, 19.9, 0.3, 1.7),
);
const PU_ESTER_32 = remembered(
	{ id: "pu-ester-32", material: "polyurethane-ester", densityKgPerM3: 32 },
	set(23.44, 0.05494, 5.5, 36.4, 0.3, 1.6),
	set(23.34, 0.06043, 5.0, 33.1, 0.3, 1.6),
);
const PU_ESTER_64 = remembered(
	{ id: "pu-ester-64", material: "polyurethane-ester", densityKgPerM3: 64 },
	set(55.8, 0.02198, 13.6, 91.0, 0.3, 1.6),
	set(55.8, 0.02417, 12.4, 82.7, 0.3, 1.6),
);
const EPS_20 = remembered(
	{ id: "eps-20", material: "expanded-polystyrene", densityKgPerM3: 20, creepLimit: epsCreep(40) },
	set(113.76, 0.0093, 32.3, 215.1, 0.25, 1.4),
	set(114.14, 0.01343, 22.3, 148.9, 0.35, 1.5),
);
const EPS_24 = remembered(
	{ id: "eps-24", material: "expanded-polystyrene", densityKgPerM3: 24, creepLimit: epsCreep(50.3) },
	set(150.92, 0.00711, 42.2, 281.3, 0.25, 1.4),
	set(164.36, 0.01007, 29.8, 198.6, 0.35, 1.5),
);
const EPP_20 = remembered(
	{ id: "epp-20.8", material: "expanded-polypropylene", densityKgPerM3: 20.8 },
	set(79.9, 0.01343, 22.3, 148.9, 0.25, 1.4),
	set(85.22, 0.01511, 19.9, 132.4, 0.25, 1.4),
);
const EPP_30 = remembered(
	{ id: "epp-30.4", material: "expanded-polypropylene", densityKgPerM3: 30.4 },
	set(127.84, 0.00863, 34.8, 231.7, 0.25, 1.4),
	set(133.92, 0.01007, 29.8, 198.6, 0.25, 1.4),
);

/** A gas-compression set derived from static strength, first drop only. */
function derivedGas(
	material: Material,
	[yieldStressKPa, relativeDensity]: readonly [number, number],
	strainRange: readonly [number, number],
	sources: readonly Source[],
	later: Foam | undefined,
): Foam {
	return {
		...material,
		model: { kind: "gas-compression", yieldStressKPa, gasPressureKPa: 101.325, relativeDensity },
		energyRangeKJPerM3: null,
		strainRange,
		thicknessRangeM: [0.0254, null],
		temperatureRangeDegC: null,
		peakUncertainty: 0.25,
		optimumFactor: 1.35,
		dropNumber: "first",
		later,
		primary: true,
		bestVerdict: "provisional",
		sources,
		noteKey: "cushion.note-derived",
	};
}

const EPS = { material: "expanded-polystyrene", strains: [0.2, 0.65] as const, sources: [EPS_STRENGTH, EPS_RATE] };
const eps = (densityKgPerM3: number, model: readonly [number, number], creepKPa: number, later: Foam | undefined) =>
	derivedGas(
		{ id: `eps-${densityKgPerM3}-gas`, material: EPS.material, densityKgPerM3, creepLimit: epsCreep(creepKPa) },
		model,
		EPS.strains,
		EPS.sources,
		later,
	);
const epp = (densityKgPerM3: number, model: readonly [number, number], later: Foam | undefined) =>
	derivedGas(
		{ id: `epp-${densityKgPerM3}-gas`, material: "expanded-polypropylene", densityKgPerM3 },
		model,
		[0.2, 0.7],
		[EPP_STRENGTH],
		later,
	);

const PLANK_SET: Foam = {
	id: "pe-plank-23c",
	material: "polyethylene-plank-unknown",
	densityKgPerM3: null,
	model: { kind: "stress-energy", aKPa: 9.869 * PSI_IN_KPA, bPerKPa: 0.108 / PSI_IN_KPA },
	energyRangeKJPerM3: [33, 99],
	strainRange: null,
	thicknessRangeM: [0.0254, null],
	temperatureRangeDegC: [-20, 50],
	overTemperature: {
		aKPa: psi([13.28, -0.1852, 0.0017], PSI_IN_KPA),
		bPerKPa: psi([0.0819, 0.0013, -6e-6], 1 / PSI_IN_KPA),
		rangeDegC: [-20, 50],
		source: PLANK_OVER_TEMPERATURE,
	},
	peakUncertainty: 0.1,
	optimumFactor: 1.15,
	dropNumber: "unknown",
	primary: true,
	bestVerdict: "provisional",
	creepLimit: PE_CREEP,
	sources: [PLANK],
	noteKey: "cushion.note-plank",
};

/** Every set that is built in. */
export const FOAMS: readonly Foam[] = [
	PLANK_SET,
	{
		...PLANK_SET,
		id: "pe-gas-effective",
		model: { kind: "gas-compression", yieldStressKPa: 64, gasPressureKPa: 72, relativeDensity: 0.037 },
		energyRangeKJPerM3: [20, 120],
		temperatureRangeDegC: null,
		overTemperature: undefined,
		sources: [PLANK, cite("our-derivation", "least squares to the plank's set over 33 to 99 kJ/m³", "our-choice")],
		noteKey: "cushion.note-derived",
	},
	// A set for later drops is known for two densities of each; between them nothing is.
	eps(18.4, [115.4, 0.0175], 40, undefined),
	eps(20, [131.2, 0.019], 40, EPS_20[1]),
	eps(24, [172.9, 0.0229], 50.3, EPS_24[1]),
	eps(28.8, [226.7, 0.0274], 75.2, undefined),
	epp(20, [55.2, 0.0221], EPP_20[1]),
	epp(30, [114.7, 0.0331], EPP_30[1]),
	epp(60, [302.9, 0.0663], undefined),
	...PE_35,
	...PE_27,
	...EPE_19,
	...XLPE_32,
	...PU_ETHER_24,
	...PU_ESTER_32,
	...PU_ESTER_64,
	...EPS_20,
	...EPS_24,
	...EPP_20,
	...EPP_30,
];

/** A set by id; null for none. */
export function foamById(id: string): Foam | null {
	return FOAMS.find((foam) => foam.id === id) ?? null;
}
