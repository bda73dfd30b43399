/** Whether two tested ends may be compared at all. Comparability belongs to what is measured, not to the values. */
import { type Sentence, sentence } from "../judged.ts";
import { measuredError } from "./measured-error.ts";
import type { ReadingEnd, ReadingRule } from "./types.ts";

/** Why they may not; null where they may. */
export function notComparableBecause(rule: ReadingRule, departure: ReadingEnd, arrival: ReadingEnd): Sentence | null {
	if (rule.comparability === "same-instrument") {
		const [one, other] = [departure.instrument?.id, arrival.instrument?.id];
		if (one === undefined || other === undefined) return sentence("comparison.instrument-unknown");
		if (one !== other) return sentence("comparison.other-instrument");
	}
	if (rule.comparability === "same-bench") {
		if (departure.benchId === undefined || arrival.benchId === undefined) return sentence("comparison.bench-unknown");
		if (departure.benchId !== arrival.benchId) return sentence("comparison.other-bench");
	}
	if (rule.comparability === "stated-uncertainty" && (rule.kind === "measured" || rule.kind === "ratio")) {
		if (!(measuredError(departure).accuracyStated && measuredError(arrival).accuracyStated)) {
			return sentence("comparison.no-uncertainty-stated");
		}
	}
	if (rule.kind === "count" && rule.counter !== "lifetime") {
		const [one, other] = [departure.exposure, arrival.exposure];
		if (one === undefined || other === undefined) return sentence("comparison.no-exposure");
		if (one.unit !== other.unit) return sentence("comparison.other-exposure");
	}
	return null;
}
