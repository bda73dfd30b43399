/**
 * The digital filter whose output at the samples is the exact absolute acceleration of a damped oscillator on a base that
 * moves with straight lines between the samples (ramp invariant).
 *
 * Derived from the ramp response r(t) = t − e^(−ζωt)·sin(ω_d t)/ω_d of (2ζωs + ω²)/(s² + 2ζωs + ω²), z-transformed and divided
 * by the ramp's own. Agrees with an open implementation that cites ISO 18431-4 and Smallwood 1980.
 */

/** b0, b1, b2, a1, a2 of y(n) = b0·x(n) + b1·x(n−1) + b2·x(n−2) − a1·y(n−1) − a2·y(n−2). */
export type FilterCoefficients = Float64Array;

/**
 * @param frequencyHz natural frequency; at a millionth of the sampling rate b1 has lost 5e-6 of itself, at a hundred-thousandth 5e-8
 * @param dampingRatio 1/(2q), 0 for an undamped oscillator, below 1
 */
export function oscillatorFilter(frequencyHz: number, dampingRatio: number, sampleRateHz: number): FilterCoefficients {
	const angle = (2 * Math.PI * frequencyHz) / sampleRateHz;
	const damped = angle * Math.sqrt(1 - dampingRatio ** 2);
	const decay = Math.exp(-dampingRatio * angle);
	const cosine = decay * Math.cos(damped);
	const sinc = (decay * Math.sin(damped)) / damped;
	return Float64Array.of(1 - sinc, 2 * (sinc - cosine), decay ** 2 - sinc, -2 * cosine, decay ** 2);
}
