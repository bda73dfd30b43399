/** Difference of two shares of attempts that went well. */
import { sentence } from "../judged.ts";
import { fisherExact, newcombeDifference } from "../statistics/shares.ts";
import { type Difference, directionOf } from "./difference.ts";
import type { ReadingComparisonInput } from "./types.ts";

/** Fisher's exact test; the interval is of the difference of shares. Both ends have attempts. */
export function outcomeDifference(input: ReadingComparisonInput): Difference {
	const coverage = input.coverageProbability ?? 0.95;
	const departure = [input.departure.successes ?? Number.NaN, input.departure.trials ?? Number.NaN] as const;
	const arrival = [input.arrival.successes ?? Number.NaN, input.arrival.trials ?? Number.NaN] as const;
	const difference = arrival[0] / arrival[1] - departure[0] / departure[1];
	const pValue = fisherExact(arrival, departure);
	const differs = pValue < 1 - coverage;
	const values = {
		departure: departure[0],
		departureTrials: departure[1],
		arrival: arrival[0],
		arrivalTrials: arrival[1],
	};
	return {
		verdict: differs ? "differs" : "inconclusive",
		direction: differs ? directionOf(difference, input.betterIs) : null,
		difference,
		expandedUncertainty: null,
		enNumber: null,
		pValue,
		ratio: null,
		interval: newcombeDifference(arrival, departure, coverage),
		intervalOf: "difference",
		why: sentence(differs ? "comparison.shares-differ" : "comparison.shares-open", values),
	};
}
