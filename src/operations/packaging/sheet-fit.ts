/** What the points of a sheet's foam give: its set, how well it fits, and how far it reaches. */
import { type CushionFit, cushionFit } from "../../calculations/cushioning/cushion-fit.ts";
import type { FoamInput } from "../../contract/cushion.ts";

/** Null for a foam that is not given by points. */
export function sheetFit(foam: FoamInput): CushionFit | null {
	return "points" in foam ? cushionFit(foam.points).result : null;
}
