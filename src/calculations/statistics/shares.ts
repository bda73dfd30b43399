/** Shares of attempts: intervals of one share and of the difference of two, and Fisher's exact test. */
import type { Interval } from "../judged.ts";
import { betaQuantile, binomialProbability, normalQuantile } from "./distributions.ts";

/** Two probabilities count as equal within this, as R's exact tests do (published: R, package stats, `fisher.test`). */
export const TIE_TOLERANCE = 1 + 1e-7;

/** Exact two-sided interval of a share (Clopper and Pearson). */
export function clopperPearson(successes: number, trials: number, confidence: number): [low: number, high: number] {
	const tail = (1 - confidence) / 2;
	return [
		successes === 0 ? 0 : betaQuantile(tail, successes, trials - successes + 1),
		successes === trials ? 1 : betaQuantile(1 - tail, successes + 1, trials - successes),
	];
}

/** Exact one-sided upper bound of a share. None of n: 1 − (1 − confidence)^(1/n). */
export function upperShare(successes: number, trials: number, confidence: number): number {
	return successes === trials ? 1 : betaQuantile(confidence, successes + 1, trials - successes);
}

/** Score interval of a share (Wilson). */
export function wilson(successes: number, trials: number, confidence: number): [low: number, high: number] {
	const z = normalQuantile((1 + confidence) / 2);
	const share = successes / trials;
	const centre = share + z ** 2 / (2 * trials);
	const half = z * Math.sqrt((share * (1 - share)) / trials + z ** 2 / (4 * trials ** 2));
	const scale = 1 + z ** 2 / trials;
	return [Math.max(0, (centre - half) / scale), Math.min(1, (centre + half) / scale)];
}

/** Hybrid score interval of the difference share1 − share2 (Newcombe, method 10). */
export function newcombeDifference(
	[successes1, trials1]: readonly [number, number],
	[successes2, trials2]: readonly [number, number],
	confidence: number,
): Interval {
	const [low1, high1] = wilson(successes1, trials1, confidence);
	const [low2, high2] = wilson(successes2, trials2, confidence);
	const share1 = successes1 / trials1;
	const share2 = successes2 / trials2;
	const difference = share1 - share2;
	return [
		difference - Math.hypot(share1 - low1, high2 - share2),
		difference + Math.hypot(high1 - share1, share2 - low2),
	];
}

/** Two-sided p-value of Fisher's exact test, summing the tables that are no more probable than the one seen. */
export function fisherExact(
	[successes1, trials1]: readonly [number, number],
	[successes2, trials2]: readonly [number, number],
): number {
	const successes = successes1 + successes2;
	const trials = trials1 + trials2;
	if (successes === 0 || successes === trials) return 1;
	// The hypergeometric probability as a quotient of binomial ones: true for any share, stable for the overall one.
	const share = successes / trials;
	const whole = binomialProbability(successes, trials, share);
	const probability = (k: number) =>
		(binomialProbability(k, trials1, share) * binomialProbability(successes - k, trials2, share)) / whole;
	const seen = probability(successes1) * TIE_TOLERANCE;
	let total = 0;
	for (let k = Math.max(0, successes - trials2); k <= Math.min(trials1, successes); k++) {
		const next = probability(k);
		if (next <= seen) total += next;
	}
	return Math.min(1, total);
}
