/** Events over an exposure: intervals of one rate, comparison of two. Events are taken as independent (Poisson). */
import type { Interval } from "../judged.ts";
import { binomialCumulative, binomialProbability, chiSquareQuantile } from "./distributions.ts";
import { clopperPearson, TIE_TOLERANCE } from "./shares.ts";

/** Exact two-sided interval of a rate per unit of exposure (Garwood). */
export function garwood(count: number, exposure: number, confidence: number): [low: number, high: number] {
	const tail = (1 - confidence) / 2;
	return [
		count === 0 ? 0 : chiSquareQuantile(tail, 2 * count) / 2 / exposure,
		chiSquareQuantile(1 - tail, 2 * count + 2) / 2 / exposure,
	];
}

/** Exact one-sided upper bound of a rate. None seen: −ln(1 − confidence) / exposure. */
export function upperRate(count: number, exposure: number, confidence: number): number {
	return chiSquareQuantile(confidence, 2 * count + 2) / 2 / exposure;
}

/** Two-sided p-value for equal rates: given the total, the first count is binomial. Sums outcomes no more probable than the one seen. */
export function equalRatesP(count1: number, exposure1: number, count2: number, exposure2: number): number {
	const total = count1 + count2;
	if (total === 0) return 1;
	const share = exposure1 / (exposure1 + exposure2);
	const mean = total * share;
	const seen = binomialProbability(count1, total, share) * TIE_TOLERANCE;
	// Beyond the mean the probabilities fall, so the far tail begins where a bisection finds it; counts may be huge.
	if (count1 < mean) {
		const first = firstWhere(Math.ceil(mean), total + 1, (k) => binomialProbability(k, total, share) <= seen);
		return Math.min(1, binomialCumulative(count1, total, share) + atLeast(first, total, share));
	}
	const after = firstWhere(0, Math.floor(mean) + 1, (k) => binomialProbability(k, total, share) > seen);
	return Math.min(1, atLeast(count1, total, share) + (after === 0 ? 0 : binomialCumulative(after - 1, total, share)));
}

/** Exact interval of rate1 / rate2, from the interval of the conditional share; an open end is null. */
export function rateRatioInterval(
	count1: number,
	exposure1: number,
	count2: number,
	exposure2: number,
	confidence: number,
): Interval {
	if (count1 + count2 === 0) return [0, null];
	const [low, high] = clopperPearson(count1, count1 + count2, confidence);
	const scale = exposure2 / exposure1;
	return [low < 1 ? (low / (1 - low)) * scale : null, high < 1 ? (high / (1 - high)) * scale : null];
}

/** P(X ≥ k), from the smaller tail's side so that small values keep their digits. */
function atLeast(k: number, n: number, p: number): number {
	return k > n ? 0 : binomialCumulative(n - k, n, 1 - p);
}

/** The first whole number from `low` on for which the rising condition holds; `high` where it never does. */
function firstWhere(low: number, high: number, holds: (k: number) => boolean): number {
	let [from, to] = [low, high];
	while (from < to) {
		const middle = Math.floor((from + to) / 2);
		if (holds(middle)) to = middle;
		else from = middle + 1;
	}
	return from;
}
