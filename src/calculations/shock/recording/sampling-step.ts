/** The time between two samples, from the first times of a recording: they may be rounded to a step of the clock, and have gaps. */
export interface SamplingStep {
	readonly stepS: number;
	/** The least step of the clock that was seen; 0 where every sample has a time of its own. */
	readonly quantumS: number;
}

/** A difference of times this many times the usual one is a gap. Our choice. */
const GAP = 10;

/** Null where all times are the same, or there is one alone. */
export function samplingStep(timesS: Float64Array): SamplingStep | null {
	const differences = timesS.subarray(1).map((time, index) => time - (timesS[index] as number));
	const rising = differences.filter((difference) => difference > 0).sort();
	const usual = rising[Math.floor(rising.length / 2)];
	if (usual === undefined) return null;
	let [sum, count] = [0, 0];
	for (const difference of differences) {
		if (!(difference >= 0 && difference <= GAP * usual)) continue;
		sum += difference;
		count += 1;
	}
	const same = differences.some((difference) => difference === 0);
	return { stepS: sum / count, quantumS: same ? (rising[0] as number) : 0 };
}
