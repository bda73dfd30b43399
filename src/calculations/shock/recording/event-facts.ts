/** What one impact of a trip says, from its trace: the shock's figures, and its spectrum where the sampling carries one. */
import { STANDARD_GRAVITY_M_PER_S2 } from "../../quantities.ts";
import type { EquivalentDropHeightM } from "../pulse.ts";
import type { Axes } from "../trace/oscillator-responses.ts";
import { shockTrace } from "../trace/shock-trace.ts";
import type { TripEvent } from "./trip-reader.ts";

export interface EventOptions {
	/** The fastest rate of the recording. */
	readonly fastestHz: number;
	/** Axes that the recorder has; those beyond are zeros. */
	readonly axesSeen: number;
	readonly fullScaleGn: number | undefined;
	/** A phone's sensor has a low-pass of its own, and a range that nobody states: its peaks are not taken. */
	readonly device: "recorder" | "phone";
}

/** Why a peak is a lower bound; null where it holds. */
export type PeakDoubt = "few-samples" | "slow-sampling" | "clipped" | "phone" | "one-axis" | "cut-trace" | null;

export interface EventFacts {
	/** Seconds on the recording's own time. */
	readonly timeS: number;
	/** Of the stretch that it lies in. */
	readonly sampleRateHz: number;
	readonly peakGn: number;
	readonly peakDoubt: PeakDoubt;
	/** Null where the full scale is not given. */
	readonly clipped: boolean | null;
	readonly durationMs: number;
	readonly samplesInPulse: number;
	readonly velocityChangeMPerS: number;
	readonly equivalentDropHeightM: EquivalentDropHeightM;
	readonly freeFallTimeS: number | null;
	/** From the time in free fall, one sample more or less at each end. */
	readonly freeFallDropBandM: readonly [low: number, high: number] | null;
	readonly spectrum: readonly { readonly frequencyHz: number; readonly maximaxGn: number }[];
}

export interface EventTrace {
	readonly sampleRateHz: number;
	readonly axes: Axes;
	/** Sample of the trace with the greatest resultant. */
	readonly peakIndex: number;
	/** Samples whose mean is the baseline; null where none is taken off, after a free fall. */
	readonly baselineSamples: number | null;
}

/** Amplification of the oscillators: usual for boards. Source: common practice. */
const Q = 10;
/** A shorter fall, from 12 mm, is not told from the swing before a knock. Our choice. */
const LEAST_FALL_S = 0.05;
/** Fewer samples before the impact give no baseline: a fast stretch may begin within the impact. Our choice. */
const LEAST_BASELINE = 10;
/** At this rate neither the peak nor the change of velocity of a hard impact is valid. Source: transit-hazards page, section 6: ten samples per highest frequency of interest. */
const TOO_SLOW_HZ = 100;
/** A rate from rounded times is off by less. */
const ROUNDED = 1.01;
/** A stretch this much slower than the fastest is the slow log of a recorder that samples impacts fast. Our choice. */
const SLOW_SHARE = 0.5;
const SPECTRUM_POINTS = 40;
const SAMPLES_PER_PERIOD = 10;
const LOWEST_HZ = 10;
const HIGHEST_HZ = 2000;

/** Null where the trace shows nothing. */
export function eventFacts(event: TripEvent, options: EventOptions): { facts: EventFacts; trace: EventTrace } | null {
	const { fullScaleGn, axesSeen } = options;
	const { sampleRateHz } = event;
	const { axes, before, whole } = withoutMissing(event);
	const input = { sampleRateHz, axes, fullScaleGn, q: Q };
	const fall = shockTrace({ ...input, frequenciesHz: [] }).result;
	if (fall === null) return null;
	const seenS = (fall.freeFallTimeS ?? 0) >= LEAST_FALL_S ? fall.freeFallTimeS : null;
	// In free fall the recorder feels nothing, so what stands before the impact is no baseline.
	const pretriggerSamples = seenS === null && before >= LEAST_BASELINE ? before : undefined;
	const judged = shockTrace({ ...input, pretriggerSamples, frequenciesHz: frequenciesHz(sampleRateHz) });
	const { result } = judged;
	if (result === null) return null;
	const ends = judged.validity.notes.every((note) => note.sentence !== "shock.cut-off");
	const fallS = axesSeen === 3 ? seenS : null;
	return {
		facts: {
			timeS: event.timeS,
			sampleRateHz,
			peakGn: result.peakGn,
			peakDoubt: doubtOf(options, sampleRateHz, result, whole && ends && !event.cut),
			clipped: result.clipped,
			durationMs: result.durationMs,
			samplesInPulse: (result.durationMs / 1000) * sampleRateHz,
			velocityChangeMPerS: result.velocityChangeMPerS,
			equivalentDropHeightM: result.equivalentDropHeightM,
			freeFallTimeS: fallS,
			freeFallDropBandM:
				fallS === null ? null : [heightOf(Math.max(0, fallS - 2 / sampleRateHz)), heightOf(fallS + 2 / sampleRateHz)],
			spectrum: result.spectrum.map(({ frequencyHz, maximaxGn }) => ({ frequencyHz, maximaxGn })),
		},
		trace: {
			sampleRateHz,
			axes,
			peakIndex: before + event.peakIndex - event.firstIndex,
			baselineSamples: pretriggerSamples ?? null,
		},
	};
}

function doubtOf(
	{ device, axesSeen, fastestHz }: EventOptions,
	sampleRateHz: number,
	result: { readonly enoughSamples: boolean; readonly clipped: boolean | null },
	whole: boolean,
): PeakDoubt {
	if (device === "phone") return "phone";
	// Before `clipped`: of a pulse between the samples neither the peak nor the change of velocity is known to either side.
	if (!result.enoughSamples) return "few-samples";
	if (!(sampleRateHz > ROUNDED * TOO_SLOW_HZ && sampleRateHz > SLOW_SHARE * fastestHz)) return "slow-sampling";
	if (result.clipped === true) return "clipped";
	if (!whole) return "cut-trace";
	return axesSeen < 3 ? "one-axis" : null;
}

function heightOf(fallS: number): number {
	return (STANDARD_GRAVITY_M_PER_S2 * fallS ** 2) / 2;
}

/** As many periods of ten samples as the sampling carries; below, a tenth of the highest. */
function frequenciesHz(sampleRateHz: number): number[] {
	const highest = Math.min(HIGHEST_HZ, sampleRateHz / SAMPLES_PER_PERIOD);
	const lowest = Math.min(LOWEST_HZ, highest / 10);
	return Array.from(
		{ length: SPECTRUM_POINTS },
		(_, index) => lowest * (highest / lowest) ** (index / (SPECTRUM_POINTS - 1)),
	);
}

/** The part around the peak in which no sample is missing. */
function withoutMissing(event: TripEvent): { axes: Axes; before: number; whole: boolean } {
	const length = event.axes[0].length;
	const missing = (index: number) => event.axes.some((samples) => Number.isNaN(samples[index] as number));
	const peak = Math.min(length - 1, event.pretriggerSamples + event.peakIndex - event.firstIndex);
	let from = peak;
	while (from > 0 && !missing(from - 1)) from -= 1;
	let to = peak;
	while (to + 1 < length && !missing(to + 1)) to += 1;
	const axes = event.axes.map((samples) => samples.slice(from, to + 1)) as unknown as Axes;
	return {
		axes,
		before: Math.max(0, event.pretriggerSamples - from),
		whole: from <= event.pretriggerSamples && to === length - 1,
	};
}
