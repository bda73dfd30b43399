/** What a check of the whole pack may look at. */
import type { FaceAnswer } from "./face-cushions.ts";
import type { FaceStacks } from "./face-stacks.ts";
import type { FaceLimit } from "./fragility.ts";
import type { ProtectedDrop } from "./protected-drop.ts";
import type { PackagingInput } from "./types.ts";

export interface CheckContext {
	readonly input: PackagingInput;
	/** The drop of the basis asked for. */
	readonly designDropM: number;
	readonly limit: FaceLimit;
	readonly stacks: FaceStacks;
	/** Null where a face has no cushion. */
	readonly found: ProtectedDrop | null;
	readonly faces: readonly FaceAnswer[];
}
