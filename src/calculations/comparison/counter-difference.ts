/**
 * A counter that an item keeps over its life, read at both ends. It is read without error, so a step up is a change. A
 * counter that fell was reset, belongs to another item or was exchanged: that is pointed out, and nothing is subtracted.
 */
import { sentence } from "../judged.ts";
import { type Difference, directionOf, NO_DIFFERENCE_KNOWN } from "./difference.ts";
import type { ReadingComparisonInput } from "./types.ts";

export function counterDifference(input: ReadingComparisonInput): Difference {
	const [left, came] = [input.departure.count ?? Number.NaN, input.arrival.count ?? Number.NaN];
	const values = { departure: left, arrival: came };
	const end = input.saturatesAt;
	if (end !== undefined && (left >= end || came >= end)) {
		return { ...NO_DIFFERENCE_KNOWN, verdict: "inconclusive", why: sentence("comparison.counter-full", values) };
	}
	if (!(came >= left)) {
		return { ...NO_DIFFERENCE_KNOWN, verdict: "not-comparable", why: sentence("comparison.counter-fell", values) };
	}
	const facts = { ...NO_DIFFERENCE_KNOWN, difference: came - left };
	if (came === left) {
		return { ...facts, verdict: "equivalent", direction: "sideways", why: sentence("comparison.counter-same", values) };
	}
	const direction = directionOf(came - left, input.betterIs);
	return { ...facts, verdict: "differs", direction, why: sentence("comparison.counter-rose", values) };
}
