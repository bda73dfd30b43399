/** Strength of a corrugated box when stacked, what time and humidity leave of it, against the stack on top of it. */
import { assessed, type Judged, type Sentence, sentence } from "../judged.ts";
import { STANDARD_GRAVITY_M_PER_S2 } from "../quantities.ts";
import { cite } from "../sources.ts";

/** Flute constants aXz and J (metric: N/cm, cm → N). Source: published, as quoted in a packaging text; double wall sums its flutes. */
export const FLUTES = {
	A: [8.36, 1.1],
	B: [5.0, 1.27],
	C: [6.1, 1.27],
	AA: [16.72, 0.94],
	BB: [10.0, 1.08],
	CC: [12.2, 1.09],
	AB: [13.36, 1.01],
	AC: [14.46, 1.02],
} as const;
export type Flute = keyof typeof FLUTES;

export interface StackLoad {
	readonly lengthM: number;
	readonly widthM: number;
	readonly heightM: number;
	readonly stackHeightM: number;
	readonly densityKgPerM3: number;
	/** For time, humidity and handling together; never applied to a strength that has them already. */
	readonly factor: number;
}

export interface BoxCompressionInput {
	readonly formula?: "mckee" | "kellicutt" | undefined;
	readonly flute?: Flute | undefined;
	readonly edgeCrushKNPerM: number;
	/** Thickness of the board. */
	readonly caliperM: number;
	readonly perimeterM: number;
	readonly days?: number | undefined;
	readonly humidityPercent?: number | undefined;
	/** Share that stacking on a pallet leaves, above 0 to 1. */
	readonly palletFactor?: number | undefined;
	readonly stack?: StackLoad | undefined;
}

export interface BoxCompression {
	readonly compressionStrengthN: number;
	readonly deratedStrengthN: number;
	/** Without the factor. */
	readonly stackLoadN: number | null;
	readonly marginDerated: number | null;
	readonly marginFactored: number | null;
}

/** BCT = 5.87·ECT·√(h·Z), N/mm and mm or lb/in and in alike. Source: published, as quoted. */
const MCKEE = 5.87;
/** What is left after days under load, and at a relative humidity. Source: published, a box maker's page. */
const LEFT_AFTER_DAYS = [
	[10, 0.63],
	[30, 0.6],
	[90, 0.55],
	[180, 0.5],
] as const;
const LEFT_AT_PERCENT = [
	[50, 1],
	[60, 0.9],
	[70, 0.8],
	[80, 0.68],
	[90, 0.48],
	[100, 0.15],
] as const;

const SOURCES = {
	mckee: cite("mckee-formula", "BCT = 5.87·ECT·√(h·Z), regular slotted boxes, top to bottom", "published"),
	kellicutt: cite("kellicutt-formula", "BCT = ECT·(4aXz/Z)^(2/3)·Z·J, metric constants", "published"),
	multipliers: cite("box-multipliers", "what days, humidity and pallet leave", "published"),
	stack: cite("astm-d4169", "vehicle stacking, L = Mf·g·l·w·h·(H − h)/h·F, as quoted", "published"),
};

export function boxCompression(input: BoxCompressionInput): Judged<BoxCompression> {
	const { edgeCrushKNPerM, caliperM, perimeterM, days, humidityPercent, stack } = input;
	const formula = input.formula ?? "mckee";
	const strength =
		formula === "mckee"
			? MCKEE * edgeCrushKNPerM * 1000 * Math.sqrt(caliperM * perimeterM)
			: kellicuttN(edgeCrushKNPerM, perimeterM, input.flute ?? "C");
	const notes: Sentence[] = [];
	const left =
		(days === undefined || days === 0 ? 1 : between([[0, 1], ...LEFT_AFTER_DAYS], days)) *
		(humidityPercent === undefined ? 1 : between([[0, 1], ...LEFT_AT_PERCENT], humidityPercent)) *
		(input.palletFactor ?? 1);
	const tooLong = days !== undefined && days > 180;
	if (tooLong) notes.push(sentence("box.beyond-days", { days: 180 }));
	if (formula === "kellicutt" && input.flute === undefined) notes.push(sentence("box.flute-assumed"));
	const derated = strength * left;
	const load = stack === undefined ? null : stackLoadN(stack);
	const margin = (held: number, carried: number) => (carried > 0 ? (held - carried) / carried : null);
	return assessed<BoxCompression>(
		{
			compressionStrengthN: strength,
			deratedStrengthN: derated,
			stackLoadN: load,
			marginDerated: load === null ? null : margin(derated, load),
			marginFactored: load === null || stack === undefined ? null : margin(strength, load * stack.factor),
		},
		{
			within: !tooLong,
			notes: [sentence("box.top-to-bottom"), ...notes],
			sources: [SOURCES[formula], SOURCES.multipliers, ...(stack === undefined ? [] : [SOURCES.stack])],
		},
	);
}

/** Freight of a density up to the stack's height, on top of this box, N. */
export function stackLoadN({
	lengthM,
	widthM,
	heightM,
	stackHeightM,
	densityKgPerM3,
}: Omit<StackLoad, "factor">): number {
	return densityKgPerM3 * STANDARD_GRAVITY_M_PER_S2 * lengthM * widthM * Math.max(0, stackHeightM - heightM);
}

function kellicuttN(edgeCrushKNPerM: number, perimeterM: number, flute: Flute): number {
	const [aXz, j] = FLUTES[flute];
	const [edgeCrushNPerCm, perimeterCm] = [edgeCrushKNPerM * 10, perimeterM * 100];
	return edgeCrushNPerCm * ((4 * aXz) / perimeterCm) ** (2 / 3) * perimeterCm * j;
}

/** Straight between the rows; the last value beyond them. */
function between(rows: readonly (readonly [number, number])[], at: number): number {
	for (let index = 1; index < rows.length; index += 1) {
		const [low, high] = [rows[index - 1], rows[index]];
		if (low === undefined || high === undefined || at > high[0]) continue;
		return low[1] + ((high[1] - low[1]) * (at - low[0])) / (high[0] - low[0]);
	}
	return rows.at(-1)?.[1] ?? Number.NaN;
}
