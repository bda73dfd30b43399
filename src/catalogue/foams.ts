/**
 * Foams by material and density. Sources: one published stress-energy family for a polyethylene plank, its gas form
 * derived from it, sets derived from published static strengths, and sets from memory. A set from memory or derived
 * with a remembered factor gives `provisional` at best; so does `pe-plank-23c`, whose unit is inferred and whose density
 * and drop number are not known. `mean-2-to-5` sets are for journeys with several drops.
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

/** Pounds per square inch in kPa, exact to the digits given. Source: published, NIST Special Publication 811, appendix B. */
const PSI_IN_KPA = 6.894757;

const psi = ([c0, c1, c2]: readonly [number, number, number], factor: number): [number, number, number] => [
	c0 * factor,
	c1 * factor,
	c2 * factor,
];

interface Remembered {
	readonly material: string;
	readonly densityKgPerM3: number;
	readonly peakUncertainty: number;
	readonly optimumFactor: number;
}

/** A stress-energy set from memory: first drop or mean of drops 2 to 5, 50 to 100 mm, room temperature. */
function remembered(
	id: string,
	{ material, densityKgPerM3, peakUncertainty, optimumFactor }: Remembered,
	dropNumber: Foam["dropNumber"],
	[aKPa, bPerKPa]: readonly [number, number],
	energyRangeKJPerM3: readonly [number, number],
): Foam {
	return {
		id,
		material,
		densityKgPerM3,
		model: { kind: "stress-energy", aKPa, bPerKPa },
		energyRangeKJPerM3,
		strainRange: null,
		thicknessRangeM: [0.05, 0.1],
		temperatureRangeDegC: null,
		peakUncertainty,
		optimumFactor,
		dropNumber,
		primary: true,
		bestVerdict: "provisional",
		sources: [FROM_MEMORY],
		noteKey: "cushion.note-memory",
	};
}

/** A gas-compression set derived from static strength, first drop only. */
function derivedGas(
	id: string,
	material: string,
	densityKgPerM3: number,
	[yieldStressKPa, relativeDensity]: readonly [number, number],
	strainRange: readonly [number, number],
	sources: readonly Source[],
): Foam {
	return {
		id,
		material,
		densityKgPerM3,
		model: { kind: "gas-compression", yieldStressKPa, gasPressureKPa: 101.325, relativeDensity },
		energyRangeKJPerM3: null,
		strainRange,
		thicknessRangeM: [0.0254, null],
		temperatureRangeDegC: null,
		peakUncertainty: 0.25,
		optimumFactor: 1.35,
		dropNumber: "first",
		primary: true,
		bestVerdict: "provisional",
		sources,
		noteKey: "cushion.note-derived",
	};
}

const PLANK_SET: Foam = {
	id: "pe-plank-23c",
	material: "polyethylene plank, density not known",
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
	derivedGas("eps-18.4-gas", "expanded polystyrene", 18.4, [115.4, 0.0175], [0.2, 0.65], [EPS_STRENGTH, EPS_RATE]),
	derivedGas("eps-20-gas", "expanded polystyrene", 20, [131.2, 0.019], [0.2, 0.65], [EPS_STRENGTH, EPS_RATE]),
	derivedGas("eps-24-gas", "expanded polystyrene", 24, [172.9, 0.0229], [0.2, 0.65], [EPS_STRENGTH, EPS_RATE]),
	derivedGas("eps-28.8-gas", "expanded polystyrene", 28.8, [226.7, 0.0274], [0.2, 0.65], [EPS_STRENGTH, EPS_RATE]),
	derivedGas("epp-20-gas", "expanded polypropylene", 20, [55.2, 0.0221], [0.2, 0.7], [EPP_STRENGTH]),
	derivedGas("epp-30-gas", "expanded polypropylene", 30, [114.7, 0.0331], [0.2, 0.7], [EPP_STRENGTH]),
	derivedGas("epp-60-gas", "expanded polypropylene", 60, [302.9, 0.0663], [0.2, 0.7], [EPP_STRENGTH]),
	remembered(
		"pe-35-first",
		{ material: "polyethylene plank, closed cell", densityKgPerM3: 35, peakUncertainty: 0.25, optimumFactor: 1.35 },
		"first",
		[71.02, 0.01511],
		[19.9, 132.4],
	),
	remembered(
		"pe-35-mean-2-to-5",
		{ material: "polyethylene plank, closed cell", densityKgPerM3: 35, peakUncertainty: 0.25, optimumFactor: 1.35 },
		"mean-2-to-5",
		[74.57, 0.01727],
		[17.4, 115.8],
	),
	remembered(
		"pe-27-first",
		{ material: "polyethylene plank, closed cell", densityKgPerM3: 27, peakUncertainty: 0.25, optimumFactor: 1.35 },
		"first",
		[56.31, 0.02014],
		[14.9, 99.3],
	),
	remembered(
		"pe-27-mean-2-to-5",
		{ material: "polyethylene plank, closed cell", densityKgPerM3: 27, peakUncertainty: 0.25, optimumFactor: 1.35 },
		"mean-2-to-5",
		[61.38, 0.02198],
		[13.6, 91.0],
	),
	remembered(
		"epe-19-first",
		{ material: "expanded polyethylene sheet/plank", densityKgPerM3: 19, peakUncertainty: 0.3, optimumFactor: 1.5 },
		"first",
		[44.51, 0.02686],
		[11.2, 74.5],
	),
	remembered(
		"epe-19-mean-2-to-5",
		{ material: "expanded polyethylene sheet/plank", densityKgPerM3: 19, peakUncertainty: 0.3, optimumFactor: 1.5 },
		"mean-2-to-5",
		[47.69, 0.03022],
		[9.9, 66.2],
	),
	remembered(
		"xlpe-32-first",
		{ material: "cross-linked polyethylene", densityKgPerM3: 32, peakUncertainty: 0.3, optimumFactor: 1.5 },
		"first",
		[57.83, 0.02014],
		[14.9, 99.3],
	),
	remembered(
		"xlpe-32-mean-2-to-5",
		{ material: "cross-linked polyethylene", densityKgPerM3: 32, peakUncertainty: 0.3, optimumFactor: 1.5 },
		"mean-2-to-5",
		[58.59, 0.02198],
		[13.6, 91.0],
	),
	remembered(
		"pu-ether-24-first",
		{ material: "polyurethane ether, open cell", densityKgPerM3: 24, peakUncertainty: 0.3, optimumFactor: 1.7 },
		"first",
		[15.17, 0.09297],
		[3.2, 21.5],
	),
	remembered(
		"pu-ether-24-mean-2-to-5",
		{ material: "polyurethane ether, open cell", densityKgPerM3: 24, peakUncertainty: 0.3, optimumFactor: 1.7 },
		"mean-2-to-5",
		[15.22, 0.10072],
		[3.0, 19.9],
	),
	remembered(
		"pu-ester-32-first",
		{ material: "polyurethane ester, open cell", densityKgPerM3: 32, peakUncertainty: 0.3, optimumFactor: 1.6 },
		"first",
		[23.44, 0.05494],
		[5.5, 36.4],
	),
	remembered(
		"pu-ester-32-mean-2-to-5",
		{ material: "polyurethane ester, open cell", densityKgPerM3: 32, peakUncertainty: 0.3, optimumFactor: 1.6 },
		"mean-2-to-5",
		[23.34, 0.06043],
		[5.0, 33.1],
	),
	remembered(
		"pu-ester-64-first",
		{ material: "polyurethane ester, open cell", densityKgPerM3: 64, peakUncertainty: 0.3, optimumFactor: 1.6 },
		"first",
		[55.8, 0.02198],
		[13.6, 91.0],
	),
	remembered(
		"pu-ester-64-mean-2-to-5",
		{ material: "polyurethane ester, open cell", densityKgPerM3: 64, peakUncertainty: 0.3, optimumFactor: 1.6 },
		"mean-2-to-5",
		[55.8, 0.02417],
		[12.4, 82.7],
	),
	remembered(
		"eps-20-first",
		{ material: "expanded polystyrene", densityKgPerM3: 20, peakUncertainty: 0.25, optimumFactor: 1.4 },
		"first",
		[113.76, 0.0093],
		[32.3, 215.1],
	),
	remembered(
		"eps-20-mean-2-to-5",
		{ material: "expanded polystyrene", densityKgPerM3: 20, peakUncertainty: 0.35, optimumFactor: 1.5 },
		"mean-2-to-5",
		[114.14, 0.01343],
		[22.3, 148.9],
	),
	remembered(
		"eps-24-first",
		{ material: "expanded polystyrene", densityKgPerM3: 24, peakUncertainty: 0.25, optimumFactor: 1.4 },
		"first",
		[150.92, 0.00711],
		[42.2, 281.3],
	),
	remembered(
		"eps-24-mean-2-to-5",
		{ material: "expanded polystyrene", densityKgPerM3: 24, peakUncertainty: 0.35, optimumFactor: 1.5 },
		"mean-2-to-5",
		[164.36, 0.01007],
		[29.8, 198.6],
	),
	remembered(
		"epp-20.8-first",
		{ material: "expanded polypropylene", densityKgPerM3: 20.8, peakUncertainty: 0.25, optimumFactor: 1.4 },
		"first",
		[79.9, 0.01343],
		[22.3, 148.9],
	),
	remembered(
		"epp-20.8-mean-2-to-5",
		{ material: "expanded polypropylene", densityKgPerM3: 20.8, peakUncertainty: 0.25, optimumFactor: 1.4 },
		"mean-2-to-5",
		[85.22, 0.01511],
		[19.9, 132.4],
	),
	remembered(
		"epp-30.4-first",
		{ material: "expanded polypropylene", densityKgPerM3: 30.4, peakUncertainty: 0.25, optimumFactor: 1.4 },
		"first",
		[127.84, 0.00863],
		[34.8, 231.7],
	),
	remembered(
		"epp-30.4-mean-2-to-5",
		{ material: "expanded polypropylene", densityKgPerM3: 30.4, peakUncertainty: 0.25, optimumFactor: 1.4 },
		"mean-2-to-5",
		[133.92, 0.01007],
		[29.8, 198.6],
	),
];

/** A set by id; null for none. */
export function foamById(id: string): Foam | null {
	return FOAMS.find((foam) => foam.id === id) ?? null;
}
