/**
 * Shock response spectrum: the greatest absolute acceleration that an oscillator of each frequency reaches on this trace.
 * Ramp-invariant recursion in doubles; the trace is zero before it begins and is continued with zeros for three periods of
 * the oscillator, so that what swings on afterwards is not missed.
 */
import { AXIS_LENGTH, type Axes, noExtremes, RESULTANT, respond, STATE_LENGTH } from "./oscillator-responses.ts";
import { parabolicPeak } from "./parabolic-peak.ts";
import { type FilterCoefficients, oscillatorFilter } from "./ramp-invariant.ts";

export type PeakMethod = "parabolic" | "sample";

export interface SpectrumPoint {
	readonly frequencyHz: number;
	/** The greater of primary and residual. */
	readonly maximaxGn: number;
	/** Sizes; null for a resultant, which has no sign. */
	readonly positiveGn: number | null;
	readonly negativeGn: number | null;
	/** While the shock lasts, and after it. */
	readonly primaryGn: number;
	readonly residualGn: number;
}

export interface SpectrumInput {
	readonly axes: Axes;
	readonly sampleRateHz: number;
	readonly frequenciesHz: readonly number[];
	/** 0 for an undamped oscillator. */
	readonly dampingRatio: number;
	/** Index of the sample with which the shock ends. */
	readonly shockEndIndex: number;
	readonly peak: PeakMethod;
}

export interface ResponseSpectra {
	readonly axes: readonly (readonly SpectrumPoint[])[];
	/** Of the resultant of the three responses at the same time, not of the greatest of each; null for one axis. */
	readonly resultant: readonly SpectrumPoint[] | null;
}

/** Two zeros before the trace let the recursion begin at rest, one after it lets a peak have a neighbour. */
const LEAD = 2;
const PERIODS_AFTER = 3;

export function responseSpectra(input: SpectrumInput): ResponseSpectra {
	const { frequenciesHz, sampleRateHz } = input;
	const after = (frequencyHz: number) => Math.round((PERIODS_AFTER * sampleRateHz) / frequencyHz);
	const length = input.axes[0].length;
	const padded = input.axes.map((samples) => {
		const longer = new Float64Array(LEAD + length + after(Math.min(...frequenciesHz)) + 1);
		longer.set(samples, LEAD);
		return longer;
	}) as unknown as Axes;
	const points = frequenciesHz.map((frequencyHz) => {
		const filter = oscillatorFilter(frequencyHz, input.dampingRatio, sampleRateHz);
		const shockEnd = LEAD + input.shockEndIndex;
		return pointsAt(padded, frequencyHz, filter, shockEnd, LEAD + length - 1 + after(frequencyHz), input.peak);
	});
	const ofAxis = (axis: number) => points.map(({ axes }) => axes[axis] as SpectrumPoint);
	return {
		axes: input.axes.map((_, axis) => ofAxis(axis)),
		resultant: input.axes.length === 1 ? null : points.map(({ resultant }) => resultant as SpectrumPoint),
	};
}

/** Greatest sizes over one stretch, the peaks between samples found. */
interface Stretch {
	readonly axes: readonly { readonly positiveGn: number; readonly negativeGn: number }[];
	readonly resultantGn: number;
}

function pointsAt(
	axes: Axes,
	frequencyHz: number,
	filter: FilterCoefficients,
	shockEnd: number,
	end: number,
	peak: PeakMethod,
): { axes: SpectrumPoint[]; resultant: SpectrumPoint } {
	const state = new Float64Array(STATE_LENGTH);
	const during = stretch(axes, LEAD, shockEnd, filter, state, peak);
	const afterwards = stretch(axes, shockEnd + 1, end, filter, state, peak);
	const point = (primaryGn: number, residualGn: number) => ({
		frequencyHz,
		maximaxGn: Math.max(primaryGn, residualGn),
		positiveGn: null,
		negativeGn: null,
		primaryGn,
		residualGn,
	});
	return {
		axes: during.axes.map((one, axis) => {
			const other = afterwards.axes[axis] ?? one;
			return {
				...point(Math.max(one.positiveGn, one.negativeGn), Math.max(other.positiveGn, other.negativeGn)),
				positiveGn: Math.max(one.positiveGn, other.positiveGn),
				negativeGn: Math.max(one.negativeGn, other.negativeGn),
			};
		}),
		resultant: point(during.resultantGn, afterwards.resultantGn),
	};
}

function stretch(
	axes: Axes,
	from: number,
	to: number,
	filter: FilterCoefficients,
	state: Float64Array,
	peak: PeakMethod,
): Stretch {
	const extremes = noExtremes();
	respond(axes, from, to, filter, state, extremes);
	const sizeAt = (samples: Float64Array, place: number, sign: 1 | -1) => {
		const [value, at, before] = extremes.subarray(place) as unknown as [number, number, number];
		if (peak === "sample" || at < 0) return sign * value;
		return parabolicPeak(sign * before, sign * value, sign * next(samples, at, filter, value, before));
	};
	return {
		axes: axes.map((samples, axis) => ({
			positiveGn: sizeAt(samples, axis * AXIS_LENGTH, 1),
			negativeGn: sizeAt(samples, axis * AXIS_LENGTH + 3, -1),
		})),
		resultantGn: resultantSize(axes, filter, extremes.subarray(RESULTANT), peak),
	};
}

function resultantSize(axes: Axes, filter: FilterCoefficients, extreme: Float64Array, peak: PeakMethod): number {
	const [squared = 0, at = -1] = extreme;
	const size = Math.sqrt(squared);
	if (peak === "sample" || at < 0) return size;
	const there = extreme.subarray(2, 5);
	const before = extreme.subarray(5, 8);
	const after = axes.map((samples, axis) => next(samples, at, filter, there[axis] ?? 0, before[axis] ?? 0));
	return parabolicPeak(Math.hypot(...before), size, Math.hypot(...after));
}

/** The response one sample after `at`, from the last two. */
function next(samples: Float64Array, at: number, filter: FilterCoefficients, last: number, beforeLast: number): number {
	const state = Float64Array.of(last, beforeLast);
	respond([samples], at + 1, at + 1, filter, state, noExtremes());
	return state[0] ?? 0;
}
