/** What is known of a foam: a model of its stress under impact, the range that the model rests on, and how well it is known. */
import type { Source } from "../sources.ts";

/** Stress = a·exp(b·E), E the energy density s·h/t in kJ/m³ (= kPa), without the crush term. */
export interface StressEnergyModel {
	readonly kind: "stress-energy";
	readonly aKPa: number;
	readonly bPerKPa: number;
}

/** Stress = σ₀ + p·ε/(1−ε−R): a skeleton that yields and trapped gas that is compressed, isothermal. */
export interface GasCompressionModel {
	readonly kind: "gas-compression";
	readonly yieldStressKPa: number;
	readonly gasPressureKPa: number;
	/** Foam density over the density of its solid, 0..1. */
	readonly relativeDensity: number;
}

export type FoamModel = StressEnergyModel | GasCompressionModel;

/** Coefficients a and b over temperature, as polynomials c₀ + c₁·T + c₂·T², T in °C. */
export interface StressEnergyOverTemperature {
	readonly aKPa: readonly [number, number, number];
	readonly bPerKPa: readonly [number, number, number];
	readonly rangeDegC: readonly [low: number, high: number];
	readonly source: Source;
}

export interface Foam {
	readonly id: string;
	readonly material: string;
	readonly densityKgPerM3: number | null;
	readonly model: FoamModel;
	/** Energy density over which the source has data; null where it names a strain range or none. */
	readonly energyRangeKJPerM3: readonly [low: number, high: number] | null;
	readonly strainRange: readonly [low: number, high: number] | null;
	readonly thicknessRangeM: readonly [low: number, high: number | null];
	readonly temperatureRangeDegC: readonly [low: number, high: number] | null;
	readonly overTemperature?: StressEnergyOverTemperature | undefined;
	/** Relative uncertainty of the peak at the optimum, and the factor by which the optimum stress may be off. */
	readonly peakUncertainty: number;
	readonly optimumFactor: number;
	readonly dropNumber: "first" | "mean-2-to-5" | "unknown";
	/** For a set of the first drop: the set of the drops after it; none where it is not known. */
	readonly later?: Foam | undefined;
	/** Static stress up to which its creep stays small; none where it is not known. */
	readonly creepLimit?: { readonly stressKPa: number; readonly source: Source } | undefined;
	/** Whether it is offered as a primary cushion. */
	readonly primary: boolean;
	/** Best verdict that it can carry: `meets` only where its curve is the user's own with a prediction interval. */
	readonly bestVerdict: "meets" | "provisional";
	readonly sources: readonly Source[];
	/** Text key of what is uncertain about the set itself; null for nothing to add. */
	readonly noteKey: string | null;
}

/** What fills a parcel without a curve of its own: its thickness sets a floor, and nothing more is known. */
export interface Filler {
	readonly id: string;
	/** Text key of why it is no primary cushion. */
	readonly whyKey: string;
	readonly sources: readonly Source[];
}
