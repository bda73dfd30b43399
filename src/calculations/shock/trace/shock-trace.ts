/**
 * What a recorded shock says: peak, duration, velocity change, the drops that would make it, and the response spectrum; for
 * each axis, and for the resultant of simultaneous samples.
 */
import { assessed, type Judged, notAssessed, type Sentence, sentence } from "../../judged.ts";
import { STANDARD_GRAVITY_M_PER_S2 } from "../../quantities.ts";
import { cite, type Source } from "../../sources.ts";
import { type EquivalentDropHeightM, equivalentDropHeights, MECHANICS } from "../pulse.ts";
import { freeFallTimeS } from "./free-fall.ts";
import { canFilter, type FilterClass, lowPassed } from "./low-pass.ts";
import type { Axes } from "./oscillator-responses.ts";
import { parabolicPeak } from "./parabolic-peak.ts";
import { type PeakMethod, responseSpectra, type SpectrumPoint } from "./response-spectrum.ts";
import { type ShockWindow, shockWindow } from "./shock-window.ts";

export interface ShockTraceInput {
	readonly sampleRateHz: number;
	/** Acceleration in gₙ: one axis, or three of one length. */
	readonly axes: Axes;
	/** Samples before the shock whose mean is the baseline; without them no baseline is taken off. */
	readonly pretriggerSamples?: number | undefined;
	/** Largest value that the recorder can show. */
	readonly fullScaleGn?: number | undefined;
	readonly filterClass?: FilterClass | undefined;
	/** `parabolic` where nothing is said. */
	readonly peak?: PeakMethod | undefined;
	/** Amplification of the oscillators at resonance, 1/(2ζ); or undamped ones. */
	readonly q?: number | undefined;
	readonly undamped?: true | undefined;
	readonly frequenciesHz: readonly number[];
}

export interface ShockSignal {
	readonly peakGn: number;
	/** Enough samples in the pulse for its peak and its change of velocity. */
	readonly enoughSamples: boolean;
	/** Enough samples, and not clipped: otherwise the peak is a lower bound. */
	readonly peakValid: boolean;
	/** Null where the full scale is not given. */
	readonly clipped: boolean | null;
	/** From a tenth of the peak to a tenth of the peak. */
	readonly durationMs: number;
	/** Of the pulse around the peak. */
	readonly velocityChangeMPerS: number;
	/** Over the whole trace: far from the other where there are more shocks, or where the trace drifts. */
	readonly wholeVelocityChangeMPerS: number;
	readonly equivalentDropHeightM: EquivalentDropHeightM;
	/** Before the impact; null where it is not seen, and for a single axis, which may have turned. */
	readonly freeFallTimeS: number | null;
	/** The drop by the time in free fall: needs no rebound. */
	readonly freeFallDropHeightM: number | null;
	readonly spectrum: readonly SpectrumPoint[];
}

export interface ShockTrace extends ShockSignal {
	/** Null for a single axis, whose values stand above; otherwise those above are the resultant's. */
	readonly axes: readonly ShockSignal[] | null;
}

const SPECTRUM = cite(
	"iso-18431-4",
	"ramp-invariant recursion, derived anew and held against closed forms and an integration",
	"published",
);
const CHANNEL_FILTER = cite("sae-j211", "appendix C, channel classes", "published");
const SAMPLING = cite("vibration-code", "10 samples per highest frequency of interest", "published");
const TRACE_PRACTICE = cite(
	"common-practice",
	"a tenth of the peak as threshold, baseline from before the shock",
	"common-practice",
);
const OUR_LIMITS = cite("our-choice", "free fall below 0.3 gₙ after rest at 0.8 to 1.2 gₙ", "our-choice");

/** A half sine of this many samples loses 4.9 % of its peak at worst: 10 samples per period of its frequency, 1/(2T). */
const LEAST_SAMPLES = 5;
/** A half sine's share of its length above a tenth of its peak. */
const SHARE_ABOVE = 1 - (2 * Math.asin(0.1)) / Math.PI;
const SAMPLES_PER_PERIOD = 10;
/** Pulse and whole trace may differ by this much. */
const VELOCITY_SHARE = 0.05;
/** Neighbours below this share of the peak: an edge, or too few samples, where a parabola would overshoot. Sine at 10 samples per period. */
const RESOLVED_SHARE = 0.6;

export function shockTrace(input: ShockTraceInput): Judged<ShockTrace> {
	const { sampleRateHz, filterClass, peak = "parabolic" } = input;
	const sources: Source[] = [SPECTRUM, SAMPLING, TRACE_PRACTICE, MECHANICS];
	if (filterClass !== undefined) {
		sources.push(CHANNEL_FILTER);
		if (!canFilter(filterClass, sampleRateHz))
			return notAssessed("filter-beyond-sampling", sentence("shock.filter-beyond", { filterClass, sampleRateHz }), {
				sources,
			});
	}
	const axes = input.axes.map((samples) => {
		const centred = withoutBaseline(samples, input.pretriggerSamples ?? 0);
		return filterClass === undefined ? centred : lowPassed(centred, filterClass, sampleRateHz);
	}) as unknown as Axes;
	const whole = sizesOf(axes);
	const peakAt = greatestAt(whole);
	if (!((whole[peakAt] ?? 0) > 0)) return notAssessed("no-shock", sentence("shock.none"), { sources });

	const window = shockWindow(whole, peakAt);
	const spectra = responseSpectra({
		axes,
		sampleRateHz,
		frequenciesHz: input.frequenciesHz,
		dampingRatio: input.undamped === true ? 0 : 1 / (2 * (input.q ?? Number.NaN)),
		shockEndIndex: window.shockEndIndex,
		peak,
	});
	const clippedAxes = input.axes.map((samples) => isClipped(samples, input.fullScaleGn));
	const fallS = input.axes.length === 1 ? null : freeFallTimeS(sizesOf(input.axes), window.fromIndex, sampleRateHz);
	const anyClipped = input.fullScaleGn === undefined ? null : clippedAxes.includes(true);
	const total = signal(axes, whole, window, input, {
		clipped: anyClipped,
		freeFallTimeS: fallS,
		spectrum: spectra.resultant ?? spectra.axes[0] ?? [],
	});
	const single = axes.length === 1;
	const result: ShockTrace = {
		...total,
		axes: single
			? null
			: axes.map((samples, axis) => {
					const sizes = sizesOf([samples]);
					return signal([samples], sizes, shockWindow(sizes, greatestAt(sizes)), input, {
						clipped: clippedAxes[axis] ?? null,
						freeFallTimeS: null,
						spectrum: spectra.axes[axis] ?? [],
					});
				}),
	};
	if (fallS !== null) sources.push(OUR_LIMITS);
	const coarse = input.frequenciesHz.filter((frequencyHz) => !(SAMPLES_PER_PERIOD * frequencyHz <= sampleRateHz));
	const notes: Sentence[] = [
		...(coarse.length > 0 ? [sentence("shock.coarse", { frequencyHz: sampleRateHz / SAMPLES_PER_PERIOD })] : []),
		...(result.peakValid ? [] : [sentence(anyClipped === true ? "shock.clipped" : "shock.few-samples")]),
		...(window.cutOff ? [sentence("shock.cut-off")] : []),
	];
	return assessed(result, {
		within: notes.length === 0,
		notes,
		cautions: [...cautionsOn(input, result), sentence("shock.height-range")],
		sources,
	});
}

function cautionsOn(input: ShockTraceInput, result: ShockTrace): Sentence[] {
	const { velocityChangeMPerS, wholeVelocityChangeMPerS } = result;
	const apart = Math.abs(wholeVelocityChangeMPerS - velocityChangeMPerS);
	return [
		...(input.pretriggerSamples === undefined ? [sentence("shock.no-baseline")] : []),
		...(input.fullScaleGn === undefined ? [sentence("shock.no-full-scale")] : []),
		...(apart <= VELOCITY_SHARE * velocityChangeMPerS
			? []
			: [sentence("shock.velocity-apart", { velocityChangeMPerS, wholeVelocityChangeMPerS })]),
		...(input.filterClass === undefined ? [] : [sentence("shock.same-class", { filterClass: input.filterClass })]),
		...(result.axes === null ? [sentence("shock.single-axis")] : []),
	];
}

type Known = Pick<ShockSignal, "clipped" | "freeFallTimeS" | "spectrum">;

function signal(
	axes: Axes | readonly [Float64Array],
	sizes: Float64Array,
	window: ShockWindow,
	input: ShockTraceInput,
	known: Known,
): ShockSignal {
	const { sampleRateHz, peak = "parabolic" } = input;
	const samples = window.crossingToIndex - window.crossingFromIndex;
	const enoughSamples = samples / SHARE_ABOVE >= LEAST_SAMPLES;
	const velocityChangeMPerS = velocityOf(axes, window.fromIndex, window.toIndex, sampleRateHz);
	const fallS = known.freeFallTimeS;
	return {
		peakGn: peakOf(sizes, peak, known.clipped === true),
		enoughSamples,
		peakValid: enoughSamples && known.clipped !== true,
		clipped: known.clipped,
		durationMs: (1000 * samples) / sampleRateHz,
		velocityChangeMPerS,
		wholeVelocityChangeMPerS: velocityOf(axes, 0, sizes.length - 1, sampleRateHz),
		equivalentDropHeightM: equivalentDropHeights(velocityChangeMPerS),
		freeFallTimeS: fallS,
		freeFallDropHeightM: fallS === null ? null : (STANDARD_GRAVITY_M_PER_S2 * fallS ** 2) / 2,
		spectrum: known.spectrum,
	};
}

/** Size of the change of velocity between two samples, by the trapezium rule on each axis. */
function velocityOf(axes: readonly Float64Array[], from: number, to: number, sampleRateHz: number): number {
	const changes = axes.map((samples) => {
		let sum = 0;
		for (let index = from + 1; index <= to; index += 1)
			sum += ((samples[index - 1] as number) + (samples[index] as number)) / 2;
		return (sum / sampleRateHz) * STANDARD_GRAVITY_M_PER_S2;
	});
	return Math.hypot(...changes);
}

function peakOf(sizes: Float64Array, method: PeakMethod, clipped: boolean): number {
	const at = greatestAt(sizes);
	const [before = 0, peak = 0, after = 0] = [sizes[at - 1], sizes[at], sizes[at + 1]];
	const resolved = Math.min(before, after) >= RESOLVED_SHARE * peak;
	return method === "sample" || clipped || !resolved ? peak : parabolicPeak(before, peak, after);
}

function withoutBaseline(samples: Float64Array, pretriggerSamples: number): Float64Array {
	if (pretriggerSamples === 0) return samples;
	const baseline = samples.subarray(0, pretriggerSamples).reduce((sum, sample) => sum + sample, 0) / pretriggerSamples;
	return samples.map((sample) => sample - baseline);
}

function isClipped(samples: Float64Array, fullScaleGn: number | undefined): boolean | null {
	if (fullScaleGn === undefined) return null;
	// Rounded figures of a full scale differ in the last digit.
	const atFullScale = samples.reduce(
		(count, sample) => count + (Math.abs(sample) >= fullScaleGn * (1 - 1e-9) ? 1 : 0),
		0,
	);
	return atFullScale >= 2;
}

function sizesOf(axes: readonly Float64Array[]): Float64Array {
	const [first = new Float64Array(0), ...others] = axes;
	if (others.length === 0) return first.map(Math.abs);
	return first.map((x, index) => Math.hypot(x, ...others.map((samples) => samples[index] as number)));
}

function greatestAt(sizes: Float64Array): number {
	let at = 0;
	for (let index = 1; index < sizes.length; index += 1)
		if ((sizes[index] as number) > (sizes[at] as number)) at = index;
	return at;
}
