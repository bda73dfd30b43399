/** What one leg teaches, as codes: what was sent how, what became of it, and what nearly went wrong. Null is not known. */
import type { CivilDate } from "../civil-date.ts";

/** By what legs are told apart. */
export const FACTORS = ["carrier", "pack", "foam", "soak"] as const;
export type Factor = (typeof FACTORS)[number];

/**
 * `changed`: it still starts, and a check or the state is worse than before. `dead`: it was sent out working and does not
 * start. `untested`: there is a record of the arrival, and nobody tested. `silent`: there is none.
 */
export const LEG_OUTCOMES = ["as-left", "changed", "dead", "untested", "silent"] as const;
export type LegOutcome = (typeof LEG_OUTCOMES)[number];

/** What happens more often than damage and teaches the same. */
export const NEAR_MISSES = [
	"pads-shifted",
	"tag-tripped",
	"corner-crushed",
	"new-correctable-errors",
	"link-unanswered",
] as const;
export type NearMiss = (typeof NEAR_MISSES)[number];

export interface LearnedLeg {
	readonly sentOn: CivilDate;
	readonly factors: Readonly<Record<Factor, string | null>>;
	readonly outcome: LegOutcome;
	readonly nearMisses: Readonly<Record<NearMiss, boolean | null>>;
}
