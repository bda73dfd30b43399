/** A check's name: the catalogue's, or what the shop called its own. */
import type { ComparedCheck } from "../../calculations/comparison/types.ts";
import type { CheckDefinition } from "../../catalogue/checks/check.ts";
import { isTextKey, say } from "../../texts/say.ts";

export function nameOf(check: ComparedCheck, ownName: string | undefined): string {
	const { nameKey } = check as Partial<CheckDefinition>;
	return nameKey !== undefined && isTextKey(nameKey) ? say(nameKey) : (ownName ?? check.id);
}
