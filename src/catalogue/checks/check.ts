/** The shape of a check in the catalogue. Data only; the words stand in `texts/<language>/checks.ts`. */
import type { ComparedCheck, Limits } from "../../calculations/comparison/types.ts";
import type { TypedUnit } from "../../calculations/quantities.ts";
import type { Source } from "../../calculations/sources.ts";
import type { Condition } from "../codes.ts";

/** Who can do a check with what they have. */
export type CheckMeans = "no-instruments" | "software" | "meter" | "repairer-only";

/** A limit for every item of the class, with where it comes from. */
export interface SourcedLimits extends Limits {
	readonly source: Source;
}

/** A margin within which a difference does not matter, with where it comes from. */
export interface SourcedMargin {
	readonly absolute?: number;
	readonly percentOfDeparture?: number;
	readonly source: Source;
}

export interface CheckDefinition extends ComparedCheck {
	/** Permanent; the same ids as the importers give (`contract.md`). */
	readonly id: string;
	/** Text keys: the name in a table, and how it is done in one or two sentences. */
	readonly nameKey: string;
	readonly hintKey: string;
	/** Units that its numbers may be typed in, the usual one first; limits and margins stand in its reading unit. Empty where nothing is measured. */
	readonly typedUnits: readonly TypedUnit[];
	/** Counts only: units of the exposure, the usual one first. */
	readonly exposureUnits: readonly TypedUnit[];
	readonly condition?: Condition;
	readonly limits?: SourcedLimits;
	readonly margin?: SourcedMargin;
	/** Range in which readings of sound boards were published; a value outside is asked about while typing, and never a fault. */
	readonly plausible?: { readonly low?: number; readonly high?: number; readonly source: Source };
	/** A value below this is a stop sign: the board is not powered. Shown where it is typed; no limit of conformity. */
	readonly stopBelow?: { readonly value: number; readonly source: Source };
	readonly whoCan: CheckMeans;
	/** How long it takes at least, and for a board that is to leave the bench as repaired. */
	readonly duration?: { readonly leastMinutes: number; readonly releaseMinutes?: number; readonly source: Source };
	/** Text key: when to stop at once. */
	readonly stopKey?: string;
	/** Text keys of cautions that stand where the act is. */
	readonly cautionKeys: readonly string[];
	/** Belongs to the short record. */
	readonly short: boolean;
	/** Where the comparability class and the way of doing it come from. */
	readonly source: Source;
}
