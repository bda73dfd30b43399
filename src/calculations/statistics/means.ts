/** Comparison of two samples of a quantity with normal scatter: Welch's test, equivalence, prediction of one more value. */
import { tCumulative, tQuantile } from "./distributions.ts";
import type { Summary } from "./summary.ts";
import { combined } from "./uncertainty.ts";

/** A sample that shows its spread. */
export interface SpreadSummary extends Summary {
	readonly standardDeviation: number;
}

export interface MeanDifference {
	/** Second minus first. */
	readonly difference: number;
	readonly standardError: number;
	readonly degreesOfFreedom: number;
}

/** Difference of two means with unequal variances (Welch). */
export function welchDifference(first: SpreadSummary, second: SpreadSummary): MeanDifference {
	const { standardUncertainty, degreesOfFreedom } = combined(
		[first, second].map(({ n, standardDeviation }) => ({
			standardUncertainty: standardDeviation / Math.sqrt(n),
			degreesOfFreedom: n - 1,
		})),
	);
	return { difference: second.mean - first.mean, standardError: standardUncertainty, degreesOfFreedom };
}

/** One further value against a sample: the error of predicting it, s·√(1 + 1/n) with n − 1 degrees of freedom. */
export function predictionDifference(sample: SpreadSummary, single: number): MeanDifference {
	return {
		difference: single - sample.mean,
		standardError: sample.standardDeviation * Math.sqrt(1 + 1 / sample.n),
		degreesOfFreedom: sample.n - 1,
	};
}

/** Interval in which the mean of `m` further values falls with this confidence. */
export function predictionInterval(sample: SpreadSummary, m: number, confidence: number): [low: number, high: number] {
	const half =
		tQuantile((1 + confidence) / 2, sample.n - 1) * sample.standardDeviation * Math.sqrt(1 / m + 1 / sample.n);
	return [sample.mean - half, sample.mean + half];
}

/** Two-sided p-value for no difference; NaN where there is no spread at all. */
export function noDifferenceP({ difference, standardError, degreesOfFreedom }: MeanDifference): number {
	return 2 * tCumulative(-Math.abs(difference) / standardError, degreesOfFreedom);
}

/** Interval of the difference. */
export function differenceInterval(
	{ difference, standardError, degreesOfFreedom }: MeanDifference,
	confidence: number,
): [low: number, high: number] {
	const half = tQuantile((1 + confidence) / 2, degreesOfFreedom) * standardError;
	return [difference - half, difference + half];
}

/** Two one-sided tests that the difference lies inside ± margin: p-values against the lower and the upper bound. */
export function equivalenceP(
	{ difference, standardError, degreesOfFreedom }: MeanDifference,
	margin: number,
): { readonly lower: number; readonly upper: number } {
	return {
		lower: tCumulative(-(difference + margin) / standardError, degreesOfFreedom),
		upper: tCumulative((difference - margin) / standardError, degreesOfFreedom),
	};
}
