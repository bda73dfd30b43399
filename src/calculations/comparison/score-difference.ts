/** Difference of two sets of runs of one fixed workload on one bench. */
import { sentence } from "../judged.ts";
import {
	differenceInterval,
	equivalenceP,
	type MeanDifference,
	noDifferenceP,
	predictionDifference,
	type SpreadSummary,
	welchDifference,
} from "../statistics/means.ts";
import { type Summary, summary } from "../statistics/summary.ts";
import { type Difference, directionOf, NO_DIFFERENCE_KNOWN } from "./difference.ts";
import type { ReadingComparisonInput } from "./types.ts";

/**
 * Repeats at both ends: Welch's test, and two one-sided tests against the margin. Repeats at one end only: the single
 * run against the interval in which one more run is predicted to fall. A single run at each end shows no spread.
 */
export function scoreDifference(input: ReadingComparisonInput): Difference {
	const departure = summary(input.departure.values ?? []);
	const arrival = summary(input.arrival.values ?? []);
	const coverage = input.coverageProbability ?? 0.95;
	const test = testOf(departure, arrival);
	if (test === null || !(test.standardError > 0)) {
		const difference = arrival.mean - departure.mean;
		return { ...NO_DIFFERENCE_KNOWN, verdict: "inconclusive", difference, why: sentence("comparison.no-spread") };
	}
	const pValue = noDifferenceP(test);
	const facts = {
		difference: test.difference,
		expandedUncertainty: null,
		enNumber: null,
		pValue,
		ratio: null,
		interval: differenceInterval(test, coverage),
		intervalOf: "difference",
	} as const;
	const values = { departure: departure.mean, arrival: arrival.mean, margin: input.equivalenceMargin ?? 0 };
	if (isEquivalent(test, input.equivalenceMargin, 1 - coverage)) {
		return {
			...facts,
			verdict: "equivalent",
			direction: "sideways",
			why: sentence("comparison.scores-equivalent", values),
		};
	}
	if (pValue < 1 - coverage) {
		const direction = directionOf(test.difference, input.betterIs);
		return { ...facts, verdict: "differs", direction, why: sentence("comparison.scores-differ", values) };
	}
	return { ...facts, verdict: "inconclusive", direction: null, why: sentence("comparison.scores-open", values) };
}

function testOf(departure: Summary, arrival: Summary): MeanDifference | null {
	if (showsSpread(departure)) {
		return showsSpread(arrival) ? welchDifference(departure, arrival) : predictionDifference(departure, arrival.mean);
	}
	if (!showsSpread(arrival)) return null;
	const backwards = predictionDifference(arrival, departure.mean);
	return { ...backwards, difference: -backwards.difference };
}

function showsSpread(sample: Summary): sample is SpreadSummary {
	return sample.standardDeviation !== null;
}

function isEquivalent(test: MeanDifference, margin: number | undefined, level: number): boolean {
	if (margin === undefined) return false;
	const { lower, upper } = equivalenceP(test, margin);
	return lower < level && upper < level;
}
