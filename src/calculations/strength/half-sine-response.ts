/** Greatest response of an undamped resonance to a half-sine shock, over the shock's peak. */

/**
 * `ratio` is the natural frequency times twice the pulse's duration. During the pulse the response peaks at
 * R/(R − 1)·sin(2πn/(R + 1)); after it the amplitude is 2R/(1 − R²)·cos(πR/2). Source: published, elementary dynamics; held against
 * figure 11.8 of the vibration book in the tests.
 */
export function halfSineAmplification(ratio: number): number {
	if (Math.abs(ratio - 1) < 1e-6) return Math.PI / 2;
	const after = Math.abs(((2 * ratio) / (1 - ratio ** 2)) * Math.cos((Math.PI * ratio) / 2));
	if (ratio < 1) return after;
	let during = 0;
	for (let n = 1; (2 * n) / (ratio + 1) <= 1; n += 1)
		during = Math.max(during, (ratio / (ratio - 1)) * Math.sin((2 * Math.PI * n) / (ratio + 1)));
	return Math.max(after, during);
}
