/** The checks of each item class. */
import type { ItemClass } from "../codes.ts";
import type { CheckDefinition } from "./check.ts";

/** Kept by every record. Raised whenever a definition changes; old definitions stay readable in version control. */
export const CATALOGUE_VERSION = "1";

/** The checks of a class in the order in which they are done; classes without a catalogue of their own take `module`'s. */
export function checksOf(_itemClass: ItemClass): readonly CheckDefinition[] {
	return [];
}
