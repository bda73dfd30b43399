/**
 * The result type of every calculation: a judged value, or `not-assessed` with the reason. A number never travels
 * without where it comes from, whether its source's range covers it, and what it rests on.
 */
import type { Source } from "./sources.ts";

/**
 * A sentence by key with the values it names. Calculations never hold wording: `texts/` turns a sentence into words
 * in a person's language, the outer layers call it through `speak`.
 */
export interface Sentence {
	readonly sentence: string;
	readonly values?: Readonly<Record<string, number | string>>;
}

/** Builds a sentence. */
export function sentence(key: string, values?: Readonly<Record<string, number | string>>): Sentence {
	return values === undefined ? { sentence: key } : { sentence: key, values };
}

/** Whether the input lies inside the range for which the sources give values, with notes on what lies outside. */
export interface Validity {
	readonly within: boolean;
	readonly notes: readonly Sentence[];
}

/** Why no value can be given. `code` is permanent and machine-readable. */
export interface Reason {
	readonly code: string;
	readonly message: Sentence;
}

export interface Assessed<Result> {
	readonly status: "assessed";
	readonly result: Result;
	readonly cautions: readonly Sentence[];
	readonly validity: Validity;
	readonly sources: readonly Source[];
}

export interface NotAssessed {
	readonly status: "not-assessed";
	readonly result: null;
	readonly reason: Reason;
	readonly cautions: readonly Sentence[];
	readonly validity: Validity;
	readonly sources: readonly Source[];
}

export type Judged<Result> = Assessed<Result> | NotAssessed;

/** The parts of a judged answer beside its value; all optional, `within` defaults to true. */
export interface Support {
	readonly cautions?: readonly Sentence[];
	readonly within?: boolean;
	readonly notes?: readonly Sentence[];
	readonly sources: readonly Source[];
}

/** An assessed answer. */
export function assessed<Result>(result: Result, support: Support): Assessed<Result> {
	return {
		status: "assessed",
		result,
		cautions: support.cautions ?? [],
		validity: { within: support.within ?? true, notes: support.notes ?? [] },
		sources: support.sources,
	};
}

/** An answer that gives no value, and says why. */
export function notAssessed(code: string, message: Sentence, support: Support = { sources: [] }): NotAssessed {
	return {
		status: "not-assessed",
		result: null,
		reason: { code, message },
		cautions: support.cautions ?? [],
		validity: { within: support.within ?? false, notes: support.notes ?? [] },
		sources: support.sources,
	};
}

/** `[low, high]`; null for an open end. */
export type Interval = readonly [low: number | null, high: number | null];
