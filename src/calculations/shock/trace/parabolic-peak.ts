/**
 * Height of the parabola through a sample and its two neighbours; the sample itself where it is no peak. At 10 samples per
 * period it leaves 0.35 % of the 4.9 % that a sampled sine's peak can lose, at 20 samples 0.023 %.
 */
export function parabolicPeak(before: number, peak: number, after: number): number {
	const bend = 2 * peak - before - after;
	if (!(peak >= before && peak >= after && bend > 0)) return peak;
	return peak + (before - after) ** 2 / (8 * bend);
}
