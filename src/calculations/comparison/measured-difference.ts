/** Difference of two measured values against the uncertainty of the difference. */
import { sentence } from "../judged.ts";
import { errorDistribution } from "../statistics/uncertainty.ts";
import { type Difference, directionOf, NO_DIFFERENCE_KNOWN } from "./difference.ts";
import { type MeasuredError, measuredError, partsOf, partsOfDifference } from "./measured-error.ts";
import type { ReadingComparisonInput } from "./types.ts";

/**
 * `equivalent` where the whole interval lies inside the margin, `differs` where it leaves zero out, otherwise
 * `inconclusive`. Where the accuracy is not stated but the bench or instrument is the same, the scatter of repeats at
 * both ends stands for it, as a constant error cancels.
 */
export function measuredDifference(input: ReadingComparisonInput): Difference {
	const departure = measuredError(input.departure);
	const arrival = measuredError(input.arrival);
	const difference = rounded(arrival.summary.mean - departure.summary.mean, departure, arrival);
	const sameInstrument =
		input.departure.instrument !== undefined && input.departure.instrument.id === input.arrival.instrument?.id;
	if (!spreadKnown(departure, arrival, input)) {
		return {
			...NO_DIFFERENCE_KNOWN,
			verdict: "inconclusive",
			difference,
			why: sentence("comparison.spread-unknown"),
		};
	}
	const coverage = input.coverageProbability ?? 0.95;
	const error = errorDistribution(partsOfDifference(departure, arrival, sameInstrument));
	const expandedUncertainty = error.halfWidth(coverage);
	const interval = [difference - expandedUncertainty, difference + expandedUncertainty] as const;
	const facts = {
		difference,
		expandedUncertainty,
		enNumber: sameInstrument ? null : enNumber(difference, departure, arrival, coverage),
		pValue: Math.min(1, 2 * error.cumulative(-Math.abs(difference))),
		interval,
		intervalOf: "difference",
	} as const;
	const margin = input.equivalenceMargin ?? 0;
	const unit = input.unit === undefined ? "" : ` ${input.unit}`;
	const values = { margin, difference: Math.abs(difference), uncertainty: expandedUncertainty, unit };
	if (interval[0] >= -margin && interval[1] <= margin) {
		const why = sentence(margin === 0 ? "comparison.equal" : "comparison.within-margin", values);
		return { ...facts, verdict: "equivalent", direction: "sideways", why };
	}
	if (Math.abs(difference) > expandedUncertainty) {
		const direction = directionOf(difference, input.betterIs);
		return { ...facts, verdict: "differs", direction, why: sentence("comparison.beyond-uncertainty", values) };
	}
	return { ...facts, verdict: "inconclusive", direction: null, why: sentence("comparison.within-uncertainty", values) };
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

function spreadKnown(departure: MeasuredError, arrival: MeasuredError, input: ReadingComparisonInput): boolean {
	if (departure.accuracyStated && arrival.accuracyStated) return true;
	const constantErrorCancels = input.comparability === "same-bench" || input.comparability === "same-instrument";
	// Repeats that do not scatter at all show the step of the display, not that there is no error.
	return constantErrorCancels && [departure, arrival].every(({ repeats }) => (repeats?.standardUncertainty ?? 0) > 0);
}

/** Takes out the noise of binary arithmetic: 11.98 − 12.03 is −0.05, so that equal steps stay equal. */
function rounded(difference: number, departure: MeasuredError, arrival: MeasuredError): number {
	const size = Math.max(Math.abs(departure.summary.mean), Math.abs(arrival.summary.mean));
	if (size === 0) return 0;
	const decimals = 14 - Math.ceil(Math.log10(size));
	return decimals > 0 && decimals < 100 ? Number(difference.toFixed(decimals)) : difference;
}
