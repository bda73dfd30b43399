/** Verdicts of the contract page: their order, and how a value with its band is held against a limit. */
import type { CheckVerdict } from "../cushioning/cushion.ts";
import { type Sentence, sentence } from "../judged.ts";
import type { Source } from "../sources.ts";
import type { CheckId, PackagingCheck } from "./types.ts";

const ORDER: readonly CheckVerdict[] = ["meets", "provisional", "marginal", "not-assessed", "falls-short"];
/** The worse of two verdicts. */
export function worse(a: CheckVerdict, b: CheckVerdict): CheckVerdict {
	return ORDER.indexOf(a) > ORDER.indexOf(b) ? a : b;
}

/** Standings of a figure on which `meets` can rest. Source: the contract page. */
const FIRM: readonly Source["standing"][] = ["published", "user"];

/** Best verdict that figures of these sources carry. */
export function bestOf(sources: readonly Source[]): "meets" | "provisional" {
	return sources.every((source) => FIRM.includes(source.standing)) ? "meets" : "provisional";
}

/** Without a band, holding by less than this share is marginal. Source: the contract page, our choice. */
const NARROW = 0.1;

/** A value that must stay at or below its limit; `band` where one is known. NaN never holds. */
export function atMost(
	value: number,
	limit: number,
	best: CheckVerdict,
	band?: readonly [low: number, high: number],
): CheckVerdict {
	if (!(value <= limit)) return "falls-short";
	const safe = band === undefined ? value <= limit * (1 - NARROW) : band[1] <= limit;
	return safe ? best : "marginal";
}

/** A value that must reach its limit. */
export function atLeast(value: number, limit: number, best: CheckVerdict): CheckVerdict {
	if (!(value >= limit)) return "falls-short";
	return value >= limit * (1 + NARROW) ? best : "marginal";
}

/** A check that could not be made, and what would make it. */
export function unassessed(
	id: CheckId,
	why: Sentence,
	mend: Sentence | null = null,
	sources: readonly Source[] = [],
): PackagingCheck {
	return { id, verdict: "not-assessed", value: null, limit: null, unit: null, margin: null, why, mend, sources };
}

/** A check as sealed bytes can hold it: a number without bound is none, and stands as a sign in a sentence. */
export function written(check: PackagingCheck): PackagingCheck {
	const finite = (value: number | null) => (value !== null && Number.isFinite(value) ? value : null);
	return {
		...check,
		value: finite(check.value),
		limit: finite(check.limit),
		margin: finite(check.margin),
		why: inWords(check.why),
		mend: check.mend === null ? null : inWords(check.mend),
	};
}

function inWords({ sentence: key, values }: Sentence): Sentence {
	if (values === undefined) return sentence(key);
	const signed = Object.entries(values).map(([name, value]) => [
		name,
		typeof value === "number" && !Number.isFinite(value) ? "∞" : value,
	]);
	return sentence(key, Object.fromEntries(signed));
}
