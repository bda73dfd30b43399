/** Difference of two measured values against the uncertainty of the difference. */
import { type Sentence, sentence } from "../judged.ts";
import { type ErrorDistribution, errorDistribution } from "../statistics/uncertainty.ts";
import { type Difference, directionOf, NO_DIFFERENCE_KNOWN } from "./difference.ts";
import { type MeasuredError, measuredError, partsOf, partsOfDifference } from "./measured-error.ts";
import type { ReadingComparisonInput, ReadingRule } from "./types.ts";

/**
 * `equivalent` where the whole interval lies inside the margin, `differs` where it leaves zero out, otherwise
 * `inconclusive`. Where the accuracy is not stated but the bench or instrument is the same, the scatter of repeats at
 * both ends stands for it, as a constant error cancels.
 */
export function measuredDifference(input: ReadingComparisonInput): Difference {
	const departure = measuredError(input.departure);
	const arrival = measuredError(input.arrival);
	const sameInstrument = isSameInstrument(input);
	const difference = rounded(arrival.summary.mean - departure.summary.mean, [departure, arrival]);
	if (!spreadKnown(departure, arrival, input)) {
		return spreadUnknown(difference);
	}
	const error = errorDistribution(partsOfDifference(departure, arrival, sameInstrument));
	const coverage = input.coverageProbability ?? 0.95;
	return {
		...judgedDifference(difference, error, input),
		enNumber: sameInstrument ? null : enNumber(difference, departure, arrival, coverage),
	};
}

/** The verdict on a difference with a known error. */
export function judgedDifference(
	difference: number,
	error: ErrorDistribution,
	rule: Pick<ReadingRule, "coverageProbability" | "equivalenceMargin" | "unit" | "betterIs">,
): Difference {
	const expandedUncertainty = error.halfWidth(rule.coverageProbability ?? 0.95);
	const interval = [difference - expandedUncertainty, difference + expandedUncertainty] as const;
	const facts = {
		...NO_DIFFERENCE_KNOWN,
		difference,
		expandedUncertainty,
		pValue: Math.min(1, 2 * error.cumulative(-Math.abs(difference))),
		interval,
		intervalOf: "difference",
	} as const;
	const margin = rule.equivalenceMargin ?? 0;
	const unit = rule.unit === undefined ? "" : ` ${rule.unit}`;
	const values = { margin, difference: Math.abs(difference), uncertainty: expandedUncertainty, unit };
	if (interval[0] >= -margin && interval[1] <= margin) {
		const why = sentence(margin === 0 ? "comparison.equal" : "comparison.within-margin", values);
		return { ...facts, verdict: "equivalent", direction: "sideways", why };
	}
	if (Math.abs(difference) > expandedUncertainty) {
		const direction = directionOf(difference, rule.betterIs);
		return { ...facts, verdict: "differs", direction, why: sentence("comparison.beyond-uncertainty", values) };
	}
	return { ...facts, verdict: "inconclusive", direction: null, why: sentence("comparison.within-uncertainty", values) };
}

/** A difference of which nobody knows what it means. */
export function spreadUnknown(
	difference: number | null,
	why: Sentence = sentence("comparison.spread-unknown"),
): Difference {
	return { ...NO_DIFFERENCE_KNOWN, verdict: "inconclusive", difference, why };
}

export function isSameInstrument({ departure, arrival }: ReadingComparisonInput): boolean {
	return departure.instrument !== undefined && departure.instrument.id === arrival.instrument?.id;
}

/** En = difference / √(U1² + U2²); null where both ends are exact. */
export function enNumber(
	difference: number,
	departure: MeasuredError,
	arrival: MeasuredError,
	coverage: number,
): number | null {
	const expanded = Math.hypot(
		...[departure, arrival].map((end) => errorDistribution(partsOf(end)).halfWidth(coverage)),
	);
	return expanded > 0 ? difference / expanded : null;
}

/** Whether the accuracy is stated at both ends, or repeats show the scatter where a constant error cancels. */
export function spreadKnown(
	departure: MeasuredError,
	arrival: MeasuredError,
	{ comparability }: Pick<ReadingRule, "comparability">,
): boolean {
	if (departure.accuracyStated && arrival.accuracyStated) return true;
	const constantErrorCancels = comparability === "same-bench" || comparability === "same-instrument";
	// Repeats that do not scatter at all show the step of the display, not that there is no error.
	return constantErrorCancels && [departure, arrival].every(({ repeats }) => (repeats?.standardUncertainty ?? 0) > 0);
}

/** Takes out the noise of binary arithmetic: 11.98 − 12.03 is −0.05, so that equal steps stay equal. */
export function rounded(difference: number, ends: readonly MeasuredError[]): number {
	const size = Math.max(...ends.map(({ summary }) => Math.abs(summary.mean)));
	if (size === 0) return 0;
	const decimals = 14 - Math.ceil(Math.log10(size));
	return decimals > 0 && decimals < 100 ? Number(difference.toFixed(decimals)) : difference;
}
