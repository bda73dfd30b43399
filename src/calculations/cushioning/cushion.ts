/** One cushion under a falling weight: peak, band, loading, thickness, against a limit. */
import { assessed, type Interval, type Judged, notAssessed, sentence } from "../judged.ts";
import { cite, type Source, weakestStanding } from "../sources.ts";
import type { Filler, Foam, FoamModel } from "./foam.ts";
import { energyWithin, optimumOf, risingZero, shiftedStressKPa, stressKPa } from "./foam-model.ts";
import { energyRangeOf, leastFactorInside, rangeNotes, setNotes } from "./foam-range.ts";
import { bandCorners } from "./pad.ts";

export interface CushionInput {
	/** Null: the foam is not known. */
	readonly foam: Foam | null;
	/** What it is where it is no primary cushion. */
	readonly filler?: Filler | null | undefined;
	readonly thicknessM: number;
	readonly dropHeightM: number;
	/** Weight over bearing area. */
	readonly staticStressKPa: number;
	readonly limitGn?: number | undefined;
	readonly temperatureDegC?: number | undefined;
	/** Sets for primary cushions, of which the best sets what is practical. */
	readonly catalogue: readonly Foam[];
}

export type CheckVerdict = "meets" | "provisional" | "marginal" | "not-assessed" | "falls-short";
export type CushionCode = "within-band" | "outside-range" | "pad-too-large" | "foam-unknown";

export interface CushionResult {
	/** Contact force over weight; null for an unknown foam, and beyond every number where the foam is crushed flat. */
	readonly peakGn: number | null;
	readonly peakBandGn: readonly [low: number, high: number] | null;
	readonly energyDensityKJPerM3: number;
	readonly optimumStaticStressKPa: number | null;
	readonly optimumPeakGn: number | null;
	readonly loading: "over-supported" | "near-optimum" | "under-supported" | null;
	/** h/t: no cushion can do better. */
	readonly floorPeakGn: number;
	/** With the least cushion factor of any catalogue set for primary cushions, at its optimum. */
	readonly bestPracticalPeakGn: number | null;
	readonly bestPracticalFoam: string | null;
	readonly bestPracticalStanding: Source["standing"] | null;
	readonly verdict: CheckVerdict | null;
	readonly verdictCode: CushionCode | null;
	readonly minimumThicknessAtStressM: number | null;
	/** Why there is no thickness: more foam does not help a pad that is too large for the weight. */
	readonly minimumThicknessAtStressReason: "pad-too-large" | null;
	readonly minimumThicknessAtOptimumM: number | null;
	readonly staticStressRangeKPa: Interval | null;
	readonly leastThicknessAnyFoamM: number | null;
	readonly leastThicknessPracticalM: number | null;
}

/** Peak over the optimum's beyond which the loading counts as off. Source: the contract page. */
const NEAR_OPTIMUM = 1.1;

const METHOD = cite(
	"stress-energy-method",
	"G·s = a·exp(b·s·h/t); optimum s* = t/(b·h), least factor e·a·b",
	"from-memory",
);
const FLOOR = cite("our-derivation", "floor h/t from energy alone; a/s at any thickness", "our-choice");

/**
 * The cushion's peak and verdict. Ranges: positive thickness, drop and stress; outside the foam's own range the value
 * is given, `validity.within` is false, and what would hold becomes `not-assessed`.
 */
export function cushion(input: CushionInput): Judged<CushionResult> {
	const { foam, thicknessM, dropHeightM, staticStressKPa, limitGn } = input;
	const energyDensityKJPerM3 = (staticStressKPa * dropHeightM) / thicknessM;
	const general = generalPart(input, energyDensityKJPerM3);
	if (foam === null) return unknownFoam(input, general);
	const model = modelAt(foam, input.temperatureDegC);
	if (model === null) {
		return notAssessed(
			"outside-range",
			sentence("cushion.temperature-range", {
				low: foam.overTemperature?.rangeDegC[0] ?? 0,
				high: foam.overTemperature?.rangeDegC[1] ?? 0,
			}),
			{
				sources: foam.sources,
			},
		);
	}
	const peakGn = stressKPa(model, energyDensityKJPerM3) / staticStressKPa;
	const peakBandGn = bandOf(foam, model, energyDensityKJPerM3, staticStressKPa);
	const optimum = optimumOf(model);
	const optimumStaticStressKPa = (optimum.energyKJPerM3 * thicknessM) / dropHeightM;
	const optimumPeakGn = (optimum.cushionFactor * dropHeightM) / thicknessM;
	const notes = rangeNotes(foam, model, { ...input, energyKJPerM3: energyDensityKJPerM3 });
	const outside = notes.length > 0;
	const crushed = !Number.isFinite(peakBandGn[1]);
	const thickness = limitGn === undefined ? null : thicknessFor(model, input, limitGn);
	const judged =
		limitGn === undefined ? null : verdictOf(foam, peakGn, peakBandGn, limitGn, outside, thickness?.reason ?? null);
	return assessed<CushionResult>(
		{
			...general,
			peakGn: crushed ? null : peakGn,
			peakBandGn: crushed ? null : peakBandGn,
			optimumStaticStressKPa,
			optimumPeakGn,
			loading: loadingOf(peakGn, optimumPeakGn, staticStressKPa, optimumStaticStressKPa),
			verdict: judged?.verdict ?? null,
			verdictCode: judged?.code ?? null,
			minimumThicknessAtStressM: thickness?.atStressM ?? null,
			minimumThicknessAtStressReason: thickness?.reason ?? null,
			minimumThicknessAtOptimumM: limitGn === undefined ? null : (optimum.cushionFactor * dropHeightM) / limitGn,
			staticStressRangeKPa: limitGn === undefined ? null : stressRange(foam, model, input, limitGn),
		},
		{
			within: !outside,
			notes: [...setNotes(foam), ...(crushed ? [sentence("cushion.crushed")] : []), ...notes],
			sources: [
				...foam.sources,
				...(foam.overTemperature !== undefined && input.temperatureDegC !== undefined
					? [foam.overTemperature.source]
					: []),
				METHOD,
				FLOOR,
			],
		},
	);
}

/** What holds for any foam. */
function generalPart(input: CushionInput, energyDensityKJPerM3: number) {
	const { thicknessM, dropHeightM, limitGn } = input;
	const best = bestPractical(input.catalogue);
	return {
		energyDensityKJPerM3,
		floorPeakGn: dropHeightM / thicknessM,
		bestPracticalPeakGn: best === null ? null : (best.cushionFactor * dropHeightM) / thicknessM,
		bestPracticalFoam: best?.foam.id ?? null,
		bestPracticalStanding: best === null ? null : weakestStanding(best.foam.sources.map((source) => source.standing)),
		leastThicknessAnyFoamM: limitGn === undefined ? null : dropHeightM / limitGn,
		leastThicknessPracticalM:
			limitGn === undefined || best === null ? null : (best.cushionFactor * dropHeightM) / limitGn,
	};
}

interface Practical {
	readonly foam: Foam;
	readonly cushionFactor: number;
}
/** A catalogue is judged once: the answer depends on nothing else. */
const KNOWN_BEST = new WeakMap<readonly Foam[], Practical | null>();

/** The primary cushion that reaches the least factor inside its own data. */
export function bestPractical(catalogue: readonly Foam[]): Practical | null {
	const known = KNOWN_BEST.get(catalogue);
	if (known !== undefined) return known;
	const best = bestOfAll(catalogue);
	KNOWN_BEST.set(catalogue, best);
	return best;
}

function bestOfAll(catalogue: readonly Foam[]): Practical | null {
	const primary = catalogue
		.filter((foam) => foam.primary)
		.map((foam) => ({ foam, cushionFactor: leastFactorInside(foam) }));
	return primary.reduce<Practical | null>(
		(best, next) => (best === null || next.cushionFactor < best.cushionFactor ? next : best),
		null,
	);
}

function unknownFoam(input: CushionInput, general: ReturnType<typeof generalPart>): Judged<CushionResult> {
	const { limitGn } = input;
	const short = limitGn !== undefined && !(general.floorPeakGn <= limitGn);
	return assessed<CushionResult>(
		{
			...general,
			peakGn: null,
			peakBandGn: null,
			optimumStaticStressKPa: null,
			optimumPeakGn: null,
			loading: null,
			verdict: limitGn === undefined ? null : short ? "falls-short" : "not-assessed",
			verdictCode: limitGn === undefined || short ? null : "foam-unknown",
			minimumThicknessAtStressM: null,
			minimumThicknessAtStressReason: null,
			minimumThicknessAtOptimumM: null,
			staticStressRangeKPa: null,
		},
		{
			notes: [sentence("cushion.unknown-foam"), ...(input.filler ? [sentence(input.filler.whyKey)] : [])],
			sources: [FLOOR, ...(input.filler?.sources ?? [])],
		},
	);
}

/** The foam's model at a temperature; null outside the temperature data of a set that has them. */
export function modelAt(foam: Foam, temperatureDegC: number | undefined): FoamModel | null {
	const { overTemperature } = foam;
	if (temperatureDegC === undefined || overTemperature === undefined) return foam.model;
	const [low, high] = overTemperature.rangeDegC;
	if (!(temperatureDegC >= low && temperatureDegC <= high)) return null;
	const at = ([c0, c1, c2]: readonly [number, number, number]) => c0 + c1 * temperatureDegC + c2 * temperatureDegC ** 2;
	return { kind: "stress-energy", aKPa: at(overTemperature.aKPa), bPerKPa: at(overTemperature.bPerKPa) };
}

/** Peak over the six corners of peak uncertainty and shifted optimum. */
function bandOf(foam: Foam, model: FoamModel, energy: number, stress: number): readonly [number, number] {
	const peaks = bandCorners(foam).map(([peak, factor]) => shiftedStressKPa(model, energy, peak, factor) / stress);
	return [Math.min(...peaks), Math.max(...peaks)];
}

function loadingOf(peak: number, optimumPeak: number, stress: number, optimumStress: number): CushionResult["loading"] {
	if (peak <= NEAR_OPTIMUM * optimumPeak) return "near-optimum";
	return stress < optimumStress ? "over-supported" : "under-supported";
}

function verdictOf(
	foam: Foam,
	peak: number,
	[low, high]: readonly [number, number],
	limit: number,
	outside: boolean,
	thicknessReason: "pad-too-large" | null,
): { verdict: CheckVerdict; code: CushionCode | null } {
	if (!(peak <= limit)) {
		return { verdict: "falls-short", code: low <= limit ? "within-band" : thicknessReason };
	}
	if (outside) return { verdict: "not-assessed", code: "outside-range" };
	if (!(high <= limit)) return { verdict: "marginal", code: null };
	return { verdict: foam.bestVerdict, code: null };
}

/** The least thickness that keeps the limit at this stress: S(s·h/t) ≤ limit·s. */
function thicknessFor(model: FoamModel, input: CushionInput, limitGn: number) {
	const energy = energyWithin(model, limitGn * input.staticStressKPa);
	return energy === null
		? { atStressM: null, reason: "pad-too-large" as const }
		: { atStressM: (input.staticStressKPa * input.dropHeightM) / energy, reason: null };
}

/** Static stresses at which the limit is kept, clipped to the range of the source; null where there is none. */
function stressRange(foam: Foam, model: FoamModel, input: CushionInput, limitGn: number): Interval | null {
	const ratio = input.dropHeightM / input.thicknessM;
	const optimum = optimumOf(model).energyKJPerM3 / ratio;
	const excess = (stress: number) => stressKPa(model, stress * ratio) / stress - limitGn;
	if (!(excess(optimum) <= 0)) return null;
	let top = optimum;
	while (excess(top) < 0 && top < 1e6 * optimum) top *= 2;
	const low = risingZero((stress) => -excess(stress), optimum * 1e-6, optimum);
	const high = risingZero(excess, optimum, top);
	const range = energyRangeOf(foam, model);
	if (range === null) return [low, high];
	const clipped: Interval = [Math.max(low, range[0] / ratio), Math.min(high, range[1] / ratio)];
	return (clipped[0] ?? 0) <= (clipped[1] ?? 0) ? clipped : null;
}
