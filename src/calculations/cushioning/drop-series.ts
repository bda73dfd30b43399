/**
 * A foam characterised by the shop's own drops: a dummy of known mass falls on a sample, a recorder on it gives the trace. A drop
 * becomes a point of the foam's curve only where the recorder could see its peak and the trace fits the drop; the rest is
 * refused with the reason. First drops and later ones are different foams to what is packed, and are fitted apart.
 */
import { assessed, type Judged, notAssessed, type Sentence, sentence } from "../judged.ts";
import { STANDARD_GRAVITY_M_PER_S2 } from "../quantities.ts";
import { MECHANICS } from "../shock/pulse.ts";
import type { ShockTrace } from "../shock/trace/shock-trace.ts";
import { cite } from "../sources.ts";
import { type CushionFit, type CushionPoint, cushionFit } from "./cushion-fit.ts";

export interface SeriesDrop {
	readonly massKg: number;
	readonly dropHeightM: number;
	/** Which drop on this sample it is, from 1. */
	readonly drop: number;
	readonly sampleRateHz: number;
	readonly shock: Judged<ShockTrace>;
}

export interface DropSeriesInput {
	readonly thicknessM: number;
	/** Of the sample, under the dummy. */
	readonly bearingAreaM2: number;
	readonly temperatureDegC: number;
	readonly device: "recorder" | "phone";
	readonly fullScaleGn: number;
	readonly drops: readonly SeriesDrop[];
}

export interface JudgedDrop {
	readonly staticStressKPa: number;
	readonly energyDensityKJPerM3: number;
	/** Null where the trace shows no shock. */
	readonly peakGn: number | null;
	readonly samplesInPulse: number | null;
	/** Change of velocity over that of the fall: 1 without rebound, 2 with full. */
	readonly velocityRatio: number | null;
	/** Null: the drop is taken. */
	readonly refusal: Sentence | null;
}

export interface DropGroup {
	readonly points: readonly CushionPoint[];
	readonly fit: Judged<CushionFit>;
}

export interface DropSeries {
	readonly drops: readonly JudgedDrop[];
	readonly first: DropGroup;
	readonly later: DropGroup;
}

/** Range over the peak, and samples in the pulse. Source: common practice of instrumented drops. */
const RANGE_OVER_PEAK = 1.5;
const LEAST_SAMPLES = 10;
/** Of one energy, and how far two lie apart to be two. Our choice; five at each of three energies is what a study found enough. */
const LEAST_DROPS = 3;
const LEAST_ENERGIES = 2;
const ENERGY_APART = 1.1;
/** What the change of velocity may miss of 1 to 2 times that of the fall. Our choice: 15 % for height and baseline. */
const VELOCITY_SLACK = 0.15;

const SOURCES = [
	MECHANICS,
	cite("common-practice", "range over 1.5 times the peak, ten samples in the pulse", "common-practice"),
	cite("stress-energy-study", "15 samples, five at each of three energies, are enough for a line", "published"),
	cite(
		"our-choice",
		"two energies with three drops each; change of velocity within 15 % of 1 to 2 times",
		"our-choice",
	),
	cite("user", "own drops", "user"),
];

export function dropSeries(input: DropSeriesInput): Judged<DropSeries> {
	if (input.device === "phone") return notAssessed("phone", sentence("drops.phone"), { sources: SOURCES });
	const drops = input.drops.map((drop) => judgedDrop(drop, input));
	const group = (belongs: (drop: SeriesDrop) => boolean): DropGroup => {
		const points = input.drops.flatMap((drop, index): CushionPoint[] => {
			const judged = drops[index];
			if (!belongs(drop) || judged === undefined || judged.refusal !== null || judged.peakGn === null) return [];
			const { staticStressKPa, peakGn } = judged;
			return [
				{ staticStressKPa, dropHeightM: drop.dropHeightM, thicknessM: input.thicknessM, peakGn, drop: drop.drop },
			];
		});
		return { points, fit: fitOf(points) };
	};
	const { temperatureDegC } = input;
	return assessed<DropSeries>(
		{ drops, first: group(({ drop }) => drop === 1), later: group(({ drop }) => drop > 1) },
		{ notes: [sentence("drops.temperature", { temperatureDegC })], sources: SOURCES },
	);
}

function judgedDrop(drop: SeriesDrop, { thicknessM, bearingAreaM2, fullScaleGn }: DropSeriesInput): JudgedDrop {
	const { massKg, dropHeightM, sampleRateHz, shock } = drop;
	const staticStressKPa = (massKg * STANDARD_GRAVITY_M_PER_S2) / bearingAreaM2 / 1000;
	const known = { staticStressKPa, energyDensityKJPerM3: (staticStressKPa * dropHeightM) / thicknessM };
	const result = shock.result;
	if (result === null)
		return { ...known, peakGn: null, samplesInPulse: null, velocityRatio: null, refusal: sentence("drops.no-shock") };
	const samplesInPulse = (result.durationMs / 1000) * sampleRateHz;
	const velocityRatio = result.velocityChangeMPerS / Math.sqrt(2 * STANDARD_GRAVITY_M_PER_S2 * dropHeightM);
	const { peakGn } = result;
	return { ...known, peakGn, samplesInPulse, velocityRatio, refusal: refusal() };

	function refusal(): Sentence | null {
		if (result?.clipped !== false) return sentence("drops.clipped");
		if (!(fullScaleGn >= RANGE_OVER_PEAK * peakGn)) return sentence("drops.range", { fullScaleGn, peakGn });
		if (!(samplesInPulse >= LEAST_SAMPLES)) return sentence("drops.few-samples", { samples: samplesInPulse });
		if (!(velocityRatio >= 1 - VELOCITY_SLACK && velocityRatio <= 2 * (1 + VELOCITY_SLACK)))
			return sentence("drops.velocity", { ratio: velocityRatio });
		if (!((peakGn * thicknessM) / dropHeightM >= 1)) return sentence("drops.impossible", { peakGn });
		return null;
	}
}

/** Enough drops at enough energies, and then the line through them. */
function fitOf(points: readonly CushionPoint[]): Judged<CushionFit> {
	const energies = points
		.map((point) => (point.staticStressKPa * point.dropHeightM) / point.thicknessM)
		.sort((one, other) => one - other);
	const counts: { energy: number; drops: number }[] = [];
	for (const energy of energies) {
		const last = counts.at(-1);
		if (last !== undefined && energy < ENERGY_APART * last.energy) last.drops += 1;
		else counts.push({ energy, drops: 1 });
	}
	const enough = counts.filter(({ drops }) => drops >= LEAST_DROPS).length;
	if (enough < LEAST_ENERGIES) return notAssessed("few-drops", sentence("drops.few", { enough }), { sources: SOURCES });
	return cushionFit(points);
}
