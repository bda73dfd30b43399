/**
 * Compares two whole state records: who is it, may it be compared, and check by check what both say. Differences of
 * measured values and scores are tested together, so their p-values are adjusted for how many there are.
 */
import { assessed, type Judged, type Sentence, sentence } from "../judged.ts";
import { holmAdjusted } from "../statistics/adjustment.ts";
import { answersCondition, endOf, readingFor, ruleOf } from "./check-rule.ts";
import { NO_DIFFERENCE_KNOWN } from "./difference.ts";
import { goodnessFrom } from "./goodness.ts";
import { compareIdentity, isOtherItem, type MassAgreement } from "./identity.ts";
import { readingComparison } from "./reading-comparison.ts";
import { setUpDifferences } from "./set-up.ts";
import type {
	ComparedCheck,
	ComparedState,
	ComparisonOutcome,
	ComparisonRow,
	ComparisonVerdict,
	Conformity,
	IdentityComparison,
	ReadingComparison,
	StateComparison,
	StateComparisonInput,
	StateOfItem,
} from "./types.ts";
import { visualDifference } from "./visual-difference.ts";

const LEVEL = 0.05;
const NO_IDENTITY: IdentityComparison = {
	agree: [],
	differ: [],
	readAlike: [],
	notSeen: [],
	likelySlips: [],
	mismatches: [],
	withoutPower: { agree: 0, compared: 0, of: 0 },
};

/** States of the item from worst to best, as far as they can be ordered. */
const STATE_ORDER: readonly StateOfItem[] = ["does-not-start", "intermittent", "partly-good", "good"];

/** The comparison of two records; rows are given whatever the outcome, so that nothing recorded is hidden. */
export function compareStates({ departure, arrival, checks, handOver = true }: StateComparisonInput): StateComparison {
	const own = ownChecks(departure, arrival);
	const { rows, adjustedFor } = adjusted([...checks, ...own].map((check) => rowOf(check, departure, arrival)));
	const both = departure !== null && arrival !== null;
	const identity = both ? compareIdentity(departure, arrival, massOf(rows)) : NO_IDENTITY;
	const better = both ? betterOnArrival(departure, arrival, rows) : [];
	return {
		...outcomeOf(departure, arrival, { otherItem: isOtherItem(identity), better: handOver && better.length > 0, rows }),
		identity,
		rows,
		betterOnArrival: better,
		adjustedFor,
	};
}

function outcomeOf(
	departure: ComparedState | null,
	arrival: ComparedState | null,
	{ otherItem, better, rows }: { otherItem: boolean; better: boolean; rows: readonly ComparisonRow[] },
): { outcome: ComparisonOutcome; why: Sentence } {
	const because = (outcome: ComparisonOutcome, key: string) => ({
		outcome,
		why: sentence(`comparison.outcome-${key}`),
	});
	if (departure === null) return because("no-first-state", "no-departure");
	if (arrival === null) return because("no-first-state", "no-arrival");
	if (otherItem) return because("identity-mismatch", "identity-mismatch");
	if (arrival.workDoneBefore === true) return because("no-first-state", "work-before");
	if (arrival.wetnessSeen === true) return because("moisture-hold", "moisture-hold");
	if (arrival.stateOfItem === "not-tested" && !rows.some(testedOnArrival))
		return because("no-first-state", "not-tested");
	if (better) return because("state-conflict", "state-conflict");
	return because("compared", "compared");
}

function testedOnArrival({ arrival }: ComparisonRow): boolean {
	return arrival !== null && arrival.notTested === undefined;
}

/** What weighing both ends says of whether it is the same item. */
function massOf(rows: readonly ComparisonRow[]): MassAgreement {
	const verdict = rows.find(({ check }) => check.id === "mass")?.comparison.result?.verdict;
	if (verdict === "differs") return "differs";
	return verdict === "equivalent" ? "agrees" : null;
}

/** Check ids that were not good when the item left and are good on arrival; `state-of-item` for the state as a whole. */
function betterOnArrival(departure: ComparedState, arrival: ComparedState, rows: readonly ComparisonRow[]): string[] {
	const checks = rows
		.filter(({ comparison: { result } }) => {
			const { departure: left, arrival: came } = result?.conformity ?? { departure: null, arrival: null };
			return goodnessFrom(left) === "not-good" && goodnessFrom(came) === "good";
		})
		.map((row) => row.check.id);
	const [left, came] = [departure, arrival].map(({ stateOfItem }) => STATE_ORDER.indexOf(stateOfItem));
	const better = left !== undefined && came !== undefined && left >= 0 && came > left;
	return better ? ["state-of-item", ...checks] : checks;
}

function rowOf(check: ComparedCheck, departure: ComparedState | null, arrival: ComparedState | null): ComparisonRow {
	const [left, came] = [departure, arrival].map((state) => (state === null ? null : readingFor(check, state.readings)));
	const row = { check, departure: left ?? null, arrival: came ?? null };
	const ends = {
		departure: endOf(check, row.departure, departure?.benchId),
		arrival: endOf(check, row.arrival, arrival?.benchId),
	};
	const control = controlOf(check, departure, arrival);
	const comparison = readingComparison({ ...ruleOf(check, row.departure), ...ends, control });
	const once = check.kind === "visual" ? withoutBounds(comparison) : comparison;
	return { ...row, comparison: withContext(once, row, departure, arrival) };
}

/** A control item measured on both benches, where both records tell of it. */
function controlOf(check: ComparedCheck, departure: ComparedState | null, arrival: ComparedState | null) {
	const [left, came] = [departure?.controls?.[check.id], arrival?.controls?.[check.id]];
	return left === undefined || came === undefined ? undefined : { departure: left, arrival: came };
}

/** What the readings alone do not know: what was looked at once, another condition, another definition, another set-up. */
function withContext(
	comparison: Judged<ReadingComparison>,
	{ check, departure: left, arrival: came }: Omit<ComparisonRow, "comparison">,
	departure: ComparedState | null,
	arrival: ComparedState | null,
): Judged<ReadingComparison> {
	if (comparison.status !== "assessed" || left === null || came === null) return comparison;
	const instead = (verdict: ComparisonVerdict, why: Sentence) =>
		assessed({ ...comparison.result, ...NO_DIFFERENCE_KNOWN, verdict, why }, comparison);
	if ([left, came].some((reading) => reading.notTested === undefined && !answersCondition(check, reading))) {
		return instead("not-comparable", sentence("comparison.other-condition"));
	}
	if (comparison.result.verdict === "not-tested") return comparison;
	if (left.unit !== came.unit) return instead("not-comparable", sentence("comparison.other-unit"));
	if (!sameDefinition(left, came)) return instead("not-comparable", sentence("comparison.other-definition"));
	if (check.kind === "visual") return assessed({ ...comparison.result, ...visualDifference(left, came) }, comparison);
	// On two benches a control item stands for all that differs in the set-up.
	const oneBench = departure?.benchId !== undefined && departure.benchId === arrival?.benchId;
	if (check.comparability === "same-bench" && oneBench && comparison.result.verdict !== "not-comparable") {
		const [apart] = setUpDifferences(departure, arrival);
		if (apart !== undefined) return instead("not-comparable", sentence(`comparison.other-${apart}`));
	}
	return comparison;
}

/** One look is no series of attempts, and bounds nothing. */
function withoutBounds(comparison: Judged<ReadingComparison>): Judged<ReadingComparison> {
	if (comparison.status !== "assessed") return comparison;
	const bare = (conformity: Conformity | null) =>
		conformity === null ? null : { ...conformity, upperBound: null, upperBoundOf: null };
	const { departure, arrival } = comparison.result.conformity;
	const conformity = { departure: bare(departure), arrival: bare(arrival) };
	return { ...comparison, result: { ...comparison.result, conformity } };
}

function sameDefinition(left: NonNullable<ComparisonRow["departure"]>, came: NonNullable<ComparisonRow["arrival"]>) {
	if (left.definitionName !== came.definitionName) return false;
	return JSON.stringify(left.definition) === JSON.stringify(came.definition);
}

/** Own checks in the order in which they were recorded, the departure's definition first. */
function ownChecks(...states: readonly (ComparedState | null)[]): readonly ComparedCheck[] {
	const found = new Map<string, ComparedCheck>();
	for (const reading of states.flatMap((state) => state?.readings ?? [])) {
		if (reading.definition !== undefined && !found.has(reading.check)) found.set(reading.check, reading.definition);
	}
	return [...found.values()];
}

/** A difference that stands out by itself and not among all of them is no longer called one. */
function adjusted(rows: readonly ComparisonRow[]): { rows: readonly ComparisonRow[]; adjustedFor: number } {
	const tested = rows.filter(
		({ check, comparison }) => (check.kind === "measured" || check.kind === "score") && pValueOf(comparison) !== null,
	);
	const pValues = holmAdjusted(tested.map(({ comparison }) => pValueOf(comparison) ?? 1));
	const byChance = new Set(tested.filter((_, index) => !((pValues[index] ?? 1) < LEVEL)));
	return {
		rows: rows.map((row) => (byChance.has(row) ? notAmongMany(row, tested.length) : row)),
		adjustedFor: tested.length,
	};
}

function notAmongMany(row: ComparisonRow, count: number): ComparisonRow {
	const { comparison } = row;
	if (comparison.status !== "assessed" || comparison.result.verdict !== "differs") return row;
	const why = sentence("comparison.adjusted", { count });
	const result: ReadingComparison = { ...comparison.result, verdict: "inconclusive", direction: null, why };
	return { ...row, comparison: { ...comparison, result } };
}

function pValueOf(comparison: Judged<ReadingComparison>): number | null {
	return comparison.result?.pValue ?? null;
}
