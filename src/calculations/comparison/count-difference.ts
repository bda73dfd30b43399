/** Difference of two rates: events are compared over their exposure, never as raw counts. */
import { sentence } from "../judged.ts";
import { equalRatesP, rateRatioInterval } from "../statistics/rates.ts";
import { burstsOf } from "./bursts.ts";
import { type Difference, directionOf } from "./difference.ts";
import type { ReadingComparisonInput } from "./types.ts";

/** Exact conditional test; the interval is of the ratio arrival / departure. Both ends have a count and an exposure in one unit. */
export function countDifference(input: ReadingComparisonInput): Difference {
	const coverage = input.coverageProbability ?? 0.95;
	const [count1, count2] = countedEvents(input);
	const [exposure1, exposure2] = [input.departure, input.arrival].map(
		({ exposure }) => exposure?.amount ?? Number.NaN,
	) as [number, number];
	const difference = count2 / exposure2 - count1 / exposure1;
	const pValue = equalRatesP(count2, exposure2, count1, exposure1);
	const differs = pValue < 1 - coverage;
	const values = {
		departure: count1,
		departureExposure: exposure1,
		arrival: count2,
		arrivalExposure: exposure2,
		unit: input.arrival.exposure?.unit ?? "",
	};
	return {
		verdict: differs ? "differs" : "inconclusive",
		direction: differs ? directionOf(difference, input.betterIs) : null,
		difference,
		expandedUncertainty: null,
		enNumber: null,
		pValue,
		ratio: null,
		interval: rateRatioInterval(count2, exposure2, count1, exposure1, coverage),
		intervalOf: "rate-ratio",
		why: sentence(differs ? "comparison.rates-differ" : "comparison.rates-open", values),
	};
}

/** Bursts where both ends tell them, else single events. */
export function countedEvents({ departure, arrival }: ReadingComparisonInput): [departure: number, arrival: number] {
	const [left, came] = [burstsOf(departure), burstsOf(arrival)];
	return left === null || came === null ? [departure.count ?? Number.NaN, arrival.count ?? Number.NaN] : [left, came];
}
