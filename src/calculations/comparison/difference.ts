/** What a test of difference gives, before conformity is put beside it; and the direction of a difference. */
import type { BetterIs, Direction, ReadingComparison } from "./types.ts";

export type Difference = Omit<ReadingComparison, "conformity">;

/** Where nothing is known of the difference. */
export const NO_DIFFERENCE_KNOWN = {
	direction: null,
	difference: null,
	expandedUncertainty: null,
	enNumber: null,
	pValue: null,
	ratio: null,
	interval: null,
	intervalOf: null,
} as const;

/** Direction of a proven difference, arrival minus departure. */
export function directionOf(difference: number, betterIs: BetterIs): Direction {
	if (betterIs === "neither" || difference === 0) return "sideways";
	return difference > 0 === (betterIs === "higher") ? "better" : "worse";
}
