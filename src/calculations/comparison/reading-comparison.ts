/**
 * Compares one reading at two ends. Order: was it tested, may it be compared, does each end keep its limits, and only
 * then the difference. "No difference shown" is never called unchanged: equivalence has a test of its own.
 */
import { assessed, type Judged, notAssessed, type Sentence, sentence } from "../judged.ts";
import { cite, type Source } from "../sources.ts";
import { notComparableBecause } from "./comparable.ts";
import { conformityOf } from "./conformity.ts";
import { countDifference } from "./count-difference.ts";
import { type Difference, NO_DIFFERENCE_KNOWN } from "./difference.ts";
import { measuredDifference } from "./measured-difference.ts";
import { outcomeDifference } from "./outcome-difference.ts";
import { scoreDifference } from "./score-difference.ts";
import { isTested } from "./tested.ts";
import type { ComparisonVerdict, ReadingComparison, ReadingComparisonInput, ReadingKind } from "./types.ts";

const GUARD_BANDS = cite("iso-14253-1", "5, as restated in ILAC-G8:09/2019, 4.2.3", "from-memory");
const SAMPLES = cite("r-stats", "t.test, checked in this project's tests", "published");
const SOURCES: Readonly<Record<Exclude<ReadingKind, "ratio">, readonly Source[]>> = {
	measured: [
		cite("jcgm-100", "4.3.7, 5.2.2, G.4", "from-memory"),
		cite("jcgm-106", "7.3, 7.4", "from-memory"),
		GUARD_BANDS,
		cite("our-choice", "correlation 0.9 of one instrument's scale error at both ends", "our-choice"),
	],
	count: [
		cite("r-stats", "poisson.test, binom.test", "published"),
		cite("poisson-limits-1936", "exact limits", "published"),
	],
	outcome: [
		cite("r-stats", "fisher.test", "published"),
		cite("proportion-difference-1998", "method 10", "from-memory"),
	],
	score: [SAMPLES, GUARD_BANDS],
};

/** Judges the two ends of one check. `ratio` and the way through a control item are not assessed yet. */
export function readingComparison(input: ReadingComparisonInput): Judged<ReadingComparison> {
	if (input.kind === "ratio") return notAssessed("kind-not-built", sentence("comparison.ratio-not-built"));
	const { departure, arrival } = input;
	const conformity = { departure: conformityOf(input, departure), arrival: conformityOf(input, arrival) };
	const answer = (difference: Difference) =>
		assessed<ReadingComparison>({ ...difference, conformity }, { sources: sourcesOf(input), notes: notesOf(input) });
	const untested = untestedBecause(input);
	if (untested !== null) return answer(nothingKnown("not-tested", untested));
	const apart = notComparableBecause(input, departure, arrival);
	if (apart !== null) {
		if (input.control !== undefined && input.comparability === "same-bench") {
			return notAssessed("control-not-built", sentence("comparison.control-not-built"));
		}
		return answer(nothingKnown("not-comparable", apart));
	}
	return answer(differenceOf(input.kind, input));
}

function differenceOf(kind: Exclude<ReadingKind, "ratio">, input: ReadingComparisonInput): Difference {
	switch (kind) {
		case "measured":
			return measuredDifference(input);
		case "count":
			return countDifference(input);
		case "outcome":
			return outcomeDifference(input);
		case "score":
			return scoreDifference(input);
	}
}

function nothingKnown(verdict: ComparisonVerdict, why: Sentence): Difference {
	return { ...NO_DIFFERENCE_KNOWN, verdict, why };
}

function untestedBecause({ kind, departure, arrival }: ReadingComparisonInput): Sentence | null {
	const [one, other] = [isTested(kind, departure), isTested(kind, arrival)];
	if (one && other) return null;
	if (!one && !other) return sentence("comparison.tested-at-neither-end");
	return sentence(one ? "comparison.not-tested-on-arrival" : "comparison.not-tested-at-departure");
}

function sourcesOf(input: ReadingComparisonInput): readonly Source[] {
	const limitsGiven = input.limits ?? input.departure.limits ?? input.arrival.limits ?? input.equivalenceMargin;
	const own = limitsGiven === undefined ? [] : [cite("user", "limits and margin as given", "user")];
	return input.kind === "ratio" ? own : [...SOURCES[input.kind], ...own];
}

function notesOf(input: ReadingComparisonInput): Sentence[] {
	if (input.kind === "count") return [sentence("comparison.note-bursts")];
	if (input.kind !== "measured") return [];
	const resolutionOnly = [input.departure, input.arrival].some(
		({ instrument }) =>
			instrument?.resolution !== undefined &&
			instrument.certificate === undefined &&
			instrument.counts === undefined &&
			instrument.percentOfReading === undefined,
	);
	return resolutionOnly ? [sentence("comparison.note-resolution-only")] : [];
}
