/** The checks of each item class. */
import type { ItemClass } from "../codes.ts";
import type { CheckDefinition } from "./check.ts";
import { GRAPHICS_CARD } from "./graphics-card.ts";
import { MODULE } from "./module.ts";

/** Kept by every record. Raised whenever a definition changes; old definitions stay readable in version control. */
export const CATALOGUE_VERSION = "1";

/** Ids of a shop's own checks; each definition is sealed with its reading. Open to every class. */
export const OWN_CHECK_IDS = ["own-1", "own-2", "own-3", "own-4", "own-5"] as const;

/** The checks of a class in the order in which they are done; a class without a list of its own has the module's. */
export function checksOf(itemClass: ItemClass): readonly CheckDefinition[] {
	return itemClass === "graphics-card" ? GRAPHICS_CARD : MODULE;
}
