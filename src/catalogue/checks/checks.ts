/** The checks of each item class. */
import type { ItemClass } from "../codes.ts";
import type { CheckDefinition } from "./check.ts";
import { CONSOLE_MAINBOARD } from "./console-mainboard.ts";
import { DRIVE } from "./drive.ts";
import { GRAPHICS_CARD } from "./graphics-card.ts";
import { LAPTOP_MAINBOARD } from "./laptop-mainboard.ts";
import { MAINBOARD } from "./mainboard.ts";
import { MODULE } from "./module.ts";
import { POWER_SUPPLY } from "./power-supply.ts";

/**
 * Kept by every record. Raised whenever a definition changes; old definitions stay readable in version control.
 * 1: graphics card, and one short list for every other class. 2: a list for each class; every check of 1 kept its id, its
 * limits and its way of comparing, so records of 1 and 2 compare.
 */
export const CATALOGUE_VERSION = "2";

/** Ids of a shop's own checks; each definition is sealed with its reading. Open to every class. */
export const OWN_CHECK_IDS = ["own-1", "own-2", "own-3", "own-4", "own-5"] as const;

const CHECKS: Readonly<Record<ItemClass, readonly CheckDefinition[]>> = {
	"graphics-card": GRAPHICS_CARD,
	mainboard: MAINBOARD,
	"laptop-mainboard": LAPTOP_MAINBOARD,
	"console-mainboard": CONSOLE_MAINBOARD,
	drive: DRIVE,
	"power-supply": POWER_SUPPLY,
	module: MODULE,
};

/** The checks of a class in the order in which they are done. */
export function checksOf(itemClass: ItemClass): readonly CheckDefinition[] {
	return CHECKS[itemClass];
}
