/**
 * The inner loops of the response spectrum: run an oscillator over a stretch of samples and keep its extremes. A million
 * samples pass here hundreds of times: everything stands in typed arrays, and nothing is allocated.
 */
import type { FilterCoefficients } from "./ramp-invariant.ts";

/** Traces of one length, at least two samples before the stretch that is run over. */
export type Axes = readonly [Float64Array] | readonly [Float64Array, Float64Array, Float64Array];

/** The last two responses of each axis, u(n−1), u(n−2), v(n−1) …; zeros at rest. */
export const STATE_LENGTH = 6;

/**
 * Where the extremes stand. For each axis: the highest response, the index of its sample, the response before it; the
 * lowest likewise. Then the square of the greatest resultant, its index, the three responses there and the three before.
 */
export const AXIS_LENGTH = 6;
export const RESULTANT = 3 * AXIS_LENGTH;
const INDICES = [1, 4, 7, 10, 13, 16, RESULTANT + 1];

/** No extreme yet: values 0, indices −1. */
export function noExtremes(): Float64Array {
	const extremes = new Float64Array(RESULTANT + 8);
	for (const index of INDICES) extremes[index] = -1;
	return extremes;
}

/** Over the samples `from` to `to`, both counted. */
export function respond(
	axes: Axes,
	from: number,
	to: number,
	filter: FilterCoefficients,
	state: Float64Array,
	extremes: Float64Array,
): void {
	if (axes.length === 1) respondOnOne(axes[0], from, to, filter, state, extremes);
	else respondOnThree(axes[0], axes[1], axes[2], from, to, filter, state, extremes);
}

function respondOnOne(
	x: Float64Array,
	from: number,
	to: number,
	filter: FilterCoefficients,
	state: Float64Array,
	extremes: Float64Array,
): void {
	const b0 = filter[0] as number;
	const b1 = filter[1] as number;
	const b2 = filter[2] as number;
	const a1 = filter[3] as number;
	const a2 = filter[4] as number;
	let u1 = state[0] as number;
	let u2 = state[1] as number;
	let high = extremes[0] as number;
	let low = extremes[3] as number;
	for (let n = from; n <= to; n += 1) {
		const u = b0 * (x[n] as number) + b1 * (x[n - 1] as number) + b2 * (x[n - 2] as number) - a2 * u2 - a1 * u1;
		if (u > high) {
			high = u;
			extremes[0] = u;
			extremes[1] = n;
			extremes[2] = u1;
		} else if (u < low) {
			low = u;
			extremes[3] = u;
			extremes[4] = n;
			extremes[5] = u1;
		}
		u2 = u1;
		u1 = u;
	}
	state[0] = u1;
	state[1] = u2;
}

/** The same oscillator on three axes at once: the three recursions do not wait for one another. */
function respondOnThree(
	x: Float64Array,
	y: Float64Array,
	z: Float64Array,
	from: number,
	to: number,
	filter: FilterCoefficients,
	state: Float64Array,
	extremes: Float64Array,
): void {
	const b0 = filter[0] as number;
	const b1 = filter[1] as number;
	const b2 = filter[2] as number;
	const a1 = filter[3] as number;
	const a2 = filter[4] as number;
	let u1 = state[0] as number;
	let u2 = state[1] as number;
	let v1 = state[2] as number;
	let v2 = state[3] as number;
	let w1 = state[4] as number;
	let w2 = state[5] as number;
	let uHigh = extremes[0] as number;
	let uLow = extremes[3] as number;
	let vHigh = extremes[6] as number;
	let vLow = extremes[9] as number;
	let wHigh = extremes[12] as number;
	let wLow = extremes[15] as number;
	let most = extremes[RESULTANT] as number;
	for (let n = from; n <= to; n += 1) {
		const u = b0 * (x[n] as number) + b1 * (x[n - 1] as number) + b2 * (x[n - 2] as number) - a2 * u2 - a1 * u1;
		const v = b0 * (y[n] as number) + b1 * (y[n - 1] as number) + b2 * (y[n - 2] as number) - a2 * v2 - a1 * v1;
		const w = b0 * (z[n] as number) + b1 * (z[n - 1] as number) + b2 * (z[n - 2] as number) - a2 * w2 - a1 * w1;
		const squared = u * u + v * v + w * w;
		if (u > uHigh) {
			uHigh = u;
			extremes[0] = u;
			extremes[1] = n;
			extremes[2] = u1;
		} else if (u < uLow) {
			uLow = u;
			extremes[3] = u;
			extremes[4] = n;
			extremes[5] = u1;
		}
		if (v > vHigh) {
			vHigh = v;
			extremes[6] = v;
			extremes[7] = n;
			extremes[8] = v1;
		} else if (v < vLow) {
			vLow = v;
			extremes[9] = v;
			extremes[10] = n;
			extremes[11] = v1;
		}
		if (w > wHigh) {
			wHigh = w;
			extremes[12] = w;
			extremes[13] = n;
			extremes[14] = w1;
		} else if (w < wLow) {
			wLow = w;
			extremes[15] = w;
			extremes[16] = n;
			extremes[17] = w1;
		}
		if (squared > most) {
			most = squared;
			extremes[18] = squared;
			extremes[19] = n;
			extremes[20] = u;
			extremes[21] = v;
			extremes[22] = w;
			extremes[23] = u1;
			extremes[24] = v1;
			extremes[25] = w1;
		}
		u2 = u1;
		u1 = u;
		v2 = v1;
		v1 = v;
		w2 = w1;
		w1 = w;
	}
	state[0] = u1;
	state[1] = u2;
	state[2] = v1;
	state[3] = v2;
	state[4] = w1;
	state[5] = w2;
}
