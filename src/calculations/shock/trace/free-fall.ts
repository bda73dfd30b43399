/**
 * The time in free fall before an impact, from a recorder that feels gravity: about 1 gₙ at rest, then about none, then the
 * impact. A recorder that does not feel gravity shows none at rest as well, so rest must be seen before the fall.
 */

// Our choice: a parcel in the hand is neither quite at rest, nor does it fall without turning.
const FALLING_BELOW_GN = 0.3;
const REST_GN: readonly [number, number] = [0.8, 1.2];
/** Rest is looked for over this time before the fall, or over what the trace has, at least the second. Our choice. */
const REST_S = 0.05;
const LEAST_REST_S = 0.005;

/**
 * Seconds, to one sample at each end; null where no fall, or no rest before it, is seen.
 * @param sizes resultant of three axes in gₙ, baseline not taken off
 * @param impactFrom sample at which the impact has begun
 */
export function freeFallTimeS(sizes: Float64Array, impactFrom: number, sampleRateHz: number): number | null {
	let end = impactFrom;
	// The impact's own rise, from below its threshold.
	while (end >= 0 && (sizes[end] as number) >= FALLING_BELOW_GN && (sizes[end - 1] ?? 0) <= (sizes[end] as number))
		end -= 1;
	let start = end;
	while (start >= 0 && (sizes[start] as number) < FALLING_BELOW_GN) start -= 1;
	const rest = sizes.subarray(Math.max(0, start + 1 - Math.round(REST_S * sampleRateHz)), start + 1);
	if (start === end || rest.length < Math.max(1, LEAST_REST_S * sampleRateHz)) return null;
	const mean = rest.reduce((sum, size) => sum + size, 0) / rest.length;
	if (!(mean >= REST_GN[0] && mean <= REST_GN[1])) return null;
	return (end - start) / sampleRateHz;
}
