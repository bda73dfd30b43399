/** Two values compared by their ratio, arrival over departure: for quantities whose size itself has no common zero. */
import { sentence } from "../judged.ts";
import { tCumulative, tQuantile } from "../statistics/distributions.ts";
import { ratioInterval } from "../statistics/ratios.ts";
import { errorDistribution } from "../statistics/uncertainty.ts";
import { type Difference, directionOf } from "./difference.ts";
import { isSameInstrument, rounded, spreadKnown, spreadUnknown } from "./measured-difference.ts";
import { commonVariance, measuredError, partsOf, partsOfDifference } from "./measured-error.ts";
import type { ReadingComparisonInput } from "./types.ts";

/**
 * The margin of a ratio is a share: 0.05 lets it lie between 0.95 and 1.05. Rectangular errors enter by their standard
 * uncertainty here. A departure value that can not be told from zero leaves the ratio open.
 */
export function ratioDifference(input: ReadingComparisonInput): Difference {
	const departure = measuredError(input.departure);
	const arrival = measuredError(input.arrival);
	const difference = rounded(arrival.summary.mean - departure.summary.mean, [departure, arrival]);
	if (!spreadKnown(departure, arrival, input)) return spreadUnknown(difference);
	const coverage = input.coverageProbability ?? 0.95;
	const sameInstrument = isSameInstrument(input);
	const { standardUncertainty, degreesOfFreedom } = errorDistribution(
		partsOfDifference(departure, arrival, sameInstrument),
	);
	const [numerator, denominator] = [arrival.summary.mean, departure.summary.mean];
	const variances = {
		numeratorVariance: errorDistribution(partsOf(arrival)).standardUncertainty ** 2,
		denominatorVariance: errorDistribution(partsOf(departure)).standardUncertainty ** 2,
		covariance: sameInstrument ? commonVariance(departure, arrival) : 0,
	};
	const quantile = tQuantile((1 + coverage) / 2, degreesOfFreedom);
	const interval = denominator === 0 ? null : ratioInterval({ numerator, denominator, ...variances }, quantile);
	if (interval === null || !interval.every((bound) => Number.isFinite(bound))) {
		return spreadUnknown(difference, sentence("comparison.ratio-open"));
	}
	const ratio = numerator / denominator;
	const facts = {
		difference,
		expandedUncertainty: null,
		enNumber: null,
		pValue:
			standardUncertainty > 0
				? 2 * tCumulative(-Math.abs(difference) / standardUncertainty, degreesOfFreedom)
				: Number(ratio === 1),
		ratio,
		interval,
		intervalOf: "ratio",
	} as const;
	const margin = input.equivalenceMargin ?? 0;
	const [low, high] = [interval[0] ?? Number.NaN, interval[1] ?? Number.NaN];
	const values = { ratio, low, high, percent: margin * 100 };
	if (low >= 1 - margin && high <= 1 + margin) {
		return { ...facts, verdict: "equivalent", direction: "sideways", why: sentence("comparison.ratio-within", values) };
	}
	if (low > 1 || high < 1) {
		const direction = directionOf(difference, input.betterIs);
		return { ...facts, verdict: "differs", direction, why: sentence("comparison.ratio-differs", values) };
	}
	return { ...facts, verdict: "inconclusive", direction: null, why: sentence("comparison.ratio-undecided", values) };
}
