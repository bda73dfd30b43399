/** Checks of any board that has no list of its own; five checks of the shop's own come with the reading. */
import type { CheckDefinition } from "./check.ts";
import { MASS, SEEN_ON_ANY_BOARD, STARTS, visual } from "./shared.ts";

export const MODULE: readonly CheckDefinition[] = [
	MASS,
	...SEEN_ON_ANY_BOARD,
	visual("visual-rattle", ["checks.caution.loose-part"]),
	...STARTS,
];
