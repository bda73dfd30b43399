/**
 * Words for a likelihood ratio. Never given without the number. Source: example table of a forensic guideline of 2015,
 * from memory; scales of other bodies use the same words for other numbers, so the scale is named with every word.
 */
import { type Sentence, sentence } from "../judged.ts";

export const SCALE_NAME = "ENFSI guideline for evaluative reporting, 2015, example table (recalled)";

/** Judgement alone bears no more than this; our choice after the reference page. */
export const JUDGEMENT_CAP = 100;

/** An edge belongs to the band below it. */
const BANDS = [
	[2, "none"],
	[10, "weak"],
	[100, "moderate"],
	[1000, "moderately-strong"],
	[10_000, "strong"],
	[1_000_000, "very-strong"],
	[Number.POSITIVE_INFINITY, "extremely-strong"],
] as const;

/** The most that n counted cases bear: a probability from n cases is not taken below 1/(n + 2). */
export function capOf(countedCases: number | undefined): number {
	return countedCases === undefined ? JUDGEMENT_CAP : countedCases + 2;
}

/** The word for a ratio, or, below one, for its inverse in favour of the other side. Cut to the cap. */
export function verbal(ratio: number | null, cap: number): Sentence {
	const least = ratio === null ? cap : ratio < 1 ? Math.min(cap, 1 / ratio) : Math.min(cap, ratio);
	const word = BANDS.find(([edge]) => least <= edge)?.[1] ?? "none";
	if (word === "none") return sentence("origin.scale-none");
	return sentence(`origin.scale-${ratio !== null && ratio < 1 ? "other-" : ""}${word}`);
}
