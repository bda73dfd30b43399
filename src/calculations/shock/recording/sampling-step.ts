/** The time between two samples, from the times of a recording: they may be rounded to a step of the clock, and have gaps. */
export interface SamplingStep {
	readonly stepS: number;
	/** The least step of the clock that was seen; 0 where times are as fine as the samples. */
	readonly quantumS: number;
}

/** A difference of times this many times the usual one is a gap. Our choice. */
const GAP = 10;
/** A clock too coarse for the samples shows in more than this share of the differences; lost samples are rarer. Our choice. */
const LEAST_UNLIKE = 0.05;
/** What differs by less, in shares of the usual difference, is a rounding in the file. Our choice. */
const ROUNDING = 1e-3;

/** Null where all times are the same, or there is one alone. */
export function samplingStep(timesS: Float64Array): SamplingStep | null {
	const differences = timesS.subarray(1).map((time, index) => time - (timesS[index] as number));
	const rising = differences.filter((difference) => difference > 0).sort();
	const usual = rising[Math.floor(rising.length / 2)];
	if (usual === undefined) return null;
	const within = differences.filter((difference) => difference >= 0 && difference <= GAP * usual);
	const sum = within.reduce((so, difference) => so + difference, 0);
	return { stepS: sum / within.length, quantumS: quantumOf(within.sort(), usual) };
}

/** Differences that are all whole multiples of the least by which they differ were rounded to it. */
function quantumOf(sorted: Float64Array, usual: number): number {
	let least = Number.POSITIVE_INFINITY;
	for (let index = 1; index < sorted.length; index += 1) {
		const apart = (sorted[index] as number) - (sorted[index - 1] as number);
		if (apart > ROUNDING * usual) least = Math.min(least, apart);
	}
	if (least === Number.POSITIVE_INFINITY) return 0;
	const whole = sorted.every((one) => Math.abs(one / least - Math.round(one / least)) <= 0.05);
	const unlike = sorted.filter((one) => Math.abs(one - usual) > 0.5 * least).length;
	return whole && unlike > LEAST_UNLIKE * sorted.length ? least : 0;
}
