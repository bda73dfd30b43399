/**
 * Whether one end keeps its limits, with the burden on whoever claims: good is proven inside the limits by the expanded
 * uncertainty, bad is proven outside them by it, and between is inconclusive (guard bands after ISO 14253-1, the
 * non-binary rule of ILAC-G8 with w = U).
 */
import { normalCumulative } from "../statistics/distributions.ts";
import { upperRate } from "../statistics/rates.ts";
import { clopperPearson, upperShare } from "../statistics/shares.ts";
import { type ErrorDistribution, errorDistribution } from "../statistics/uncertainty.ts";
import { measuredError, partsOf } from "./measured-error.ts";
import { isTested } from "./tested.ts";
import type { Conformity, ConformityVerdict, Limits, ReadingEnd, ReadingRule } from "./types.ts";

/** Null where the end was not tested, or nothing says what is good: a limit is never invented. */
export function conformityOf(rule: ReadingRule, end: ReadingEnd): Conformity | null {
	const limits = end.limits ?? rule.limits;
	if (limits === undefined || (limits.low === undefined && limits.high === undefined)) return null;
	if (!isTested(rule.kind, end)) return null;
	const coverage = rule.coverageProbability ?? 0.95;
	if (rule.kind === "count") return conformityOfCount(end, limits, coverage);
	if (rule.kind === "outcome") return conformityOfOutcome(end, limits, coverage);
	const error = measuredError(end);
	// A score has no instrument: what is known of it is its own scatter, and only from repeats.
	const known = rule.kind === "score" ? error.repeats !== null : error.accuracyStated;
	if (!known) return { ...measuredVerdict("inconclusive"), probability: null };
	return conformityOfMeasured(error.summary.mean, errorDistribution(partsOf(error)), limits, coverage);
}

/** Conformity of a value with a known error. */
export function conformityOfMeasured(
	value: number,
	error: ErrorDistribution,
	{ low = Number.NEGATIVE_INFINITY, high = Number.POSITIVE_INFINITY }: Limits,
	coverage: number,
): Conformity {
	const expanded = error.halfWidth(coverage);
	const probability =
		error.standardUncertainty === 0
			? Number(value >= low && value <= high)
			: error.cumulative(high - value) - error.cumulative(low - value);
	return { ...measuredVerdict(guarded(value, expanded, low, high)), probability };
}

/** Probability that the true value keeps the limits for a normal error (JCGM 106:2012, 7.3 and 7.4). */
export function conformanceProbability(
	value: number,
	standardUncertainty: number,
	{ low = Number.NEGATIVE_INFINITY, high = Number.POSITIVE_INFINITY }: Limits,
): number {
	return normalCumulative((high - value) / standardUncertainty) - normalCumulative((low - value) / standardUncertainty);
}

function guarded(value: number, expanded: number, low: number, high: number): ConformityVerdict {
	if (value >= low + expanded && value <= high - expanded) return "proven-good";
	// An exact value is either good or bad: it has no guard band to lie in.
	if (expanded === 0) return "proven-bad";
	if (value <= low - expanded || value >= high + expanded) return "proven-bad";
	return "inconclusive";
}

function measuredVerdict(verdict: ConformityVerdict) {
	return { verdict, upperBound: null, upperBoundOf: null } as const;
}

/** An event too many was seen, whatever the exposure; or none was, and the exposure bounds the rate that may be there. */
function conformityOfCount(end: ReadingEnd, { low, high }: Limits, coverage: number): Conformity {
	const count = end.count ?? Number.NaN;
	const amount = end.exposure?.amount;
	const bounded =
		amount === undefined
			? { upperBound: null, upperBoundOf: null }
			: { upperBound: upperRate(count, amount, coverage), upperBoundOf: "rate" as const };
	const held = count <= (high ?? Number.POSITIVE_INFINITY) && count >= (low ?? 0);
	return { verdict: held ? "held-as-tested" : "proven-bad", probability: null, ...bounded };
}

/** The limit is the share of attempts that must go well; 1 asks it of every attempt, and one miss proves that it is less. */
function conformityOfOutcome(end: ReadingEnd, { low = 0 }: Limits, coverage: number): Conformity {
	const trials = end.trials ?? Number.NaN;
	const successes = end.successes ?? Number.NaN;
	const upperBound = upperShare(trials - successes, trials, coverage);
	return {
		verdict: outcomeVerdict(successes, trials, low, coverage),
		probability: null,
		upperBound,
		upperBoundOf: "failure-share",
	};
}

function outcomeVerdict(successes: number, trials: number, low: number, coverage: number): ConformityVerdict {
	if (successes === trials) return "held-as-tested";
	const [least, most] = clopperPearson(successes, trials, coverage);
	if (most < low) return "proven-bad";
	return least >= low ? "proven-good" : "inconclusive";
}
