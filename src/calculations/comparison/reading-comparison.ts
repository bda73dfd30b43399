/**
 * Compares one reading at two ends. Order: was it tested, may it be compared, does each end keep its limits, and only
 * then the difference. "No difference shown" is never called unchanged: equivalence has a test of its own.
 */
import { assessed, type Judged, type Sentence, sentence } from "../judged.ts";
import { cite, type Source } from "../sources.ts";
import { burstsOf } from "./bursts.ts";
import { notComparableBecause } from "./comparable.ts";
import { conformityOf } from "./conformity.ts";
import { controlFails, throughControl } from "./control-route.ts";
import { countDifference } from "./count-difference.ts";
import { counterDifference } from "./counter-difference.ts";
import { type Difference, NO_DIFFERENCE_KNOWN } from "./difference.ts";
import { measuredDifference } from "./measured-difference.ts";
import { outcomeDifference } from "./outcome-difference.ts";
import { ratioDifference } from "./ratio-difference.ts";
import { scoreDifference } from "./score-difference.ts";
import { isTested } from "./tested.ts";
import type { ComparisonVerdict, ReadingComparison, ReadingComparisonInput, ReadingKind } from "./types.ts";

const GUARD_BANDS = cite("iso-14253-1", "5, as restated in ILAC-G8:09/2019, 4.2.3", "from-memory");
const SAMPLES = cite("r-stats", "t.test, checked in this project's tests", "published");
const SOURCES: Readonly<Record<ReadingKind, readonly Source[]>> = {
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
	ratio: [
		cite("ratio-of-means-1954", "interval of a ratio", "from-memory"),
		cite("jcgm-100", "5.1.2", "from-memory"),
		GUARD_BANDS,
	],
};
const CONTROL = cite("our-choice", "two benches by one control item: differences, and ratios of scores", "our-choice");

/** Judges the two ends of one check. */
export function readingComparison(input: ReadingComparisonInput): Judged<ReadingComparison> {
	const { departure, arrival } = input;
	const conformity = { departure: conformityOf(input, departure), arrival: conformityOf(input, arrival) };
	const difference = differenceOf(input);
	return assessed<ReadingComparison>(
		{ ...difference, conformity },
		{ sources: sourcesOf(input), notes: notesOf(input) },
	);
}

function differenceOf(input: ReadingComparisonInput): Difference {
	const untested = untestedBecause(input);
	if (untested !== null) return nothingKnown("not-tested", untested);
	const apart = notComparableBecause(input, input.departure, input.arrival);
	if (apart === null) return directDifference(input);
	if (input.control === undefined || input.comparability !== "same-bench") return nothingKnown("not-comparable", apart);
	const fails = controlFails(input, input.control);
	return fails === null ? throughControl(input, input.control) : nothingKnown("not-comparable", fails);
}

function directDifference(input: ReadingComparisonInput): Difference {
	switch (input.kind) {
		case "measured":
			return measuredDifference(input);
		case "ratio":
			return ratioDifference(input);
		case "count":
			return input.counter === "lifetime" ? counterDifference(input) : countDifference(input);
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
	return [...SOURCES[input.kind], ...(input.control === undefined ? [] : [CONTROL]), ...own];
}

/** Scatter from fewer runs than this is hardly known; our choice, after the width of three-run tolerance limits. */
const FEW_RUNS = 4;

function notesOf(input: ReadingComparisonInput): Sentence[] {
	const ends = [input.departure, input.arrival];
	const control = input.control === undefined ? [] : [sentence("comparison.note-control")];
	if (input.kind === "count") {
		if (input.counter === "lifetime") return [];
		const known = ends.every((end) => burstsOf(end) !== null);
		return [sentence(known ? "comparison.note-bursts-counted" : "comparison.note-bursts")];
	}
	if (input.kind === "score") {
		const few = ends.some(({ values }) => values !== undefined && values.length < FEW_RUNS);
		return few ? [...control, sentence("comparison.note-few-runs")] : control;
	}
	if (input.kind === "outcome") return [];
	const resolutionOnly = ends.some(
		({ instrument }) =>
			instrument?.resolution !== undefined &&
			instrument.certificate === undefined &&
			instrument.counts === undefined &&
			instrument.percentOfReading === undefined,
	);
	return resolutionOnly ? [...control, sentence("comparison.note-resolution-only")] : control;
}
