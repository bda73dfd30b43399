/** Something that was looked at once at each end: seen is seen, there is no chance in it to test. */
import { sentence } from "../judged.ts";
import { type Difference, NO_DIFFERENCE_KNOWN } from "./difference.ts";
import type { ReadingEnd } from "./types.ts";

/** 1 of 1 is nothing found, 0 of 1 is something found. What was found at both ends may still be two things. */
export function visualDifference(departure: ReadingEnd, arrival: ReadingEnd): Difference {
	const [left, came] = [departure, arrival].map((end) => end.successes !== end.trials);
	if (left === came) {
		if (left) return { ...NO_DIFFERENCE_KNOWN, verdict: "inconclusive", why: sentence("comparison.found-at-both") };
		const why = sentence("comparison.nothing-found");
		return { ...NO_DIFFERENCE_KNOWN, verdict: "equivalent", direction: "sideways", why };
	}
	const why = sentence(came ? "comparison.found-on-arrival" : "comparison.found-at-departure-only");
	return { ...NO_DIFFERENCE_KNOWN, verdict: "differs", direction: came ? "worse" : "better", why };
}
