/** The shock that an item withstands where nobody gave a figure: by its class, or by its board as it was described. */
import { boardStrength } from "../../calculations/strength/board-strength.ts";
import { FRAGILITY_LEVELS } from "../../catalogue/fragility-levels.ts";
import { boardInput } from "../../contract/strength.ts";

/** In gₙ; null where the basis gives none. A board that is not described whole gives none. */
export function knownFragilityGn(basis: string, itemClass: string, board: unknown): number | null {
	if (basis === "class") return FRAGILITY_LEVELS[itemClass as keyof typeof FRAGILITY_LEVELS]?.gn ?? null;
	if (basis !== "board-strength") return null;
	const described = boardInput.safeParse(board);
	return described.success ? (boardStrength(described.data).result?.allowableShockGn ?? null) : null;
}
