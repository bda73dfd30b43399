/** What one end says of a check by itself: its value, and the interval in which the true one lies. */
import type { Interval } from "../judged.ts";
import { garwood } from "../statistics/rates.ts";
import { clopperPearson } from "../statistics/shares.ts";
import { errorDistribution } from "../statistics/uncertainty.ts";
import { measuredError, partsOf } from "./measured-error.ts";
import { isTested } from "./tested.ts";
import type { ReadingEnd, ReadingRule } from "./types.ts";

export interface EndInterval {
	/** Mean of the readings, events per unit of exposure (the counter itself for a lifetime counter), share that went well. */
	readonly value: number;
	/** Null where nothing says how far the value may be off. */
	readonly interval: Interval | null;
	readonly of: "value" | "rate" | "counter" | "share";
}

/** Null where the end was not tested, or a count has no exposure. */
export function endInterval(rule: ReadingRule, end: ReadingEnd): EndInterval | null {
	if (!isTested(rule.kind, end)) return null;
	const coverage = rule.coverageProbability ?? 0.95;
	if (rule.kind === "outcome") {
		const [successes, trials] = [end.successes ?? Number.NaN, end.trials ?? Number.NaN];
		return { value: successes / trials, interval: clopperPearson(successes, trials, coverage), of: "share" };
	}
	if (rule.kind === "count") {
		const count = end.count ?? Number.NaN;
		if (rule.counter === "lifetime") return { value: count, interval: [count, count], of: "counter" };
		const amount = end.exposure?.amount;
		return amount === undefined
			? null
			: { value: count / amount, interval: garwood(count, amount, coverage), of: "rate" };
	}
	const error = measuredError(end);
	const value = error.summary.mean;
	// Without a stated accuracy the scatter of repeats is all that is known, and none at all of a single reading.
	if (!error.accuracyStated && !((error.repeats?.standardUncertainty ?? 0) > 0)) {
		return { value, interval: null, of: "value" };
	}
	const half = errorDistribution(partsOf(error)).halfWidth(coverage);
	return { value, interval: [value - half, value + half], of: "value" };
}
