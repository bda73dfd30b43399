/**
 * The channel filter of impact testing, by class: second-order low pass, run forward and backward so that it shifts nothing.
 * Both passes together lose 3 dB at 5/3 of the class in Hz. Source: published, SAE J211-1, appendix C (ISO 6487 alike), form
 * as quoted in open code; equals a Butterworth filter of second order with its corner at 2.0775 times the class.
 */
import type { FilterCoefficients } from "./ramp-invariant.ts";

/** Classes that the standard names. */
export const FILTER_CLASSES = [60, 180, 600, 1000] as const;
export type FilterClass = (typeof FILTER_CLASSES)[number];

const CORNER_PER_CLASS_HZ = 2.0775;

/** b0, b1, b2, a1, a2. @param sampleRateHz over 4.155 times the class, so that the corner lies below half of it */
export function lowPassFilter(filterClass: FilterClass, sampleRateHz: number): FilterCoefficients {
	const warped = Math.tan((Math.PI * CORNER_PER_CLASS_HZ * filterClass) / sampleRateHz);
	const scale = 1 + Math.SQRT2 * warped + warped ** 2;
	const gain = warped ** 2 / scale;
	return Float64Array.of(
		gain,
		2 * gain,
		gain,
		(2 * (warped ** 2 - 1)) / scale,
		(1 - Math.SQRT2 * warped + warped ** 2) / scale,
	);
}

/** Whether a class can be applied to samples at this rate. */
export function canFilter(filterClass: FilterClass, sampleRateHz: number): boolean {
	return CORNER_PER_CLASS_HZ * filterClass < sampleRateHz / 2;
}

/** The samples after both passes; beyond its ends the trace is taken to go on with its first and last sample. */
export function lowPassed(samples: Float64Array, filterClass: FilterClass, sampleRateHz: number): Float64Array {
	const filter = lowPassFilter(filterClass, sampleRateHz);
	// Some eighty time constants of the filter: what it still remembers then is below what a double holds.
	const margin = Math.ceil((6 * sampleRateHz) / filterClass);
	const longer = new Float64Array(samples.length + 2 * margin);
	longer.fill(samples[0] ?? 0, 0, margin);
	longer.set(samples, margin);
	longer.fill(samples.at(-1) ?? 0, margin + samples.length);
	run(longer, filter);
	longer.reverse();
	run(longer, filter);
	longer.reverse();
	return longer.subarray(margin, margin + samples.length);
}

/** In place, from rest at the first sample's value. */
function run(samples: Float64Array, [b0 = 0, b1 = 0, b2 = 0, a1 = 0, a2 = 0]: FilterCoefficients): void {
	const first = samples[0] ?? 0;
	let [x1, x2, y1, y2] = [first, first, first, first];
	for (let index = 0; index < samples.length; index += 1) {
		const x = samples[index] as number;
		const y = b0 * x + b1 * x1 + b2 * x2 - a1 * y1 - a2 * y2;
		samples[index] = y;
		x2 = x1;
		x1 = x;
		y2 = y1;
		y1 = y;
	}
}
