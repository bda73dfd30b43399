/** What a check of the whole pack may look at. */
import type { ProtectedDrop } from "./protected-drop.ts";
import type { PackagingCheck, PackagingInput } from "./types.ts";

export interface CheckContext {
	readonly input: PackagingInput;
	/** The drop of the basis asked for. */
	readonly designDropM: number;
	/** Null where a face has no cushion or several layers. */
	readonly found: ProtectedDrop | null;
	/** The checks of the six faces. */
	readonly faces: readonly PackagingCheck[];
}
