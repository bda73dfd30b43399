/** A check's name: the catalogue's, or what the shop called its own. */
import type { ComparedCheck } from "../../calculations/comparison/types.ts";
import type { CheckDefinition } from "../../catalogue/checks/check.ts";
import { isReportKey } from "../../texts/say.ts";
import { ENGLISH, type Speaker } from "../../texts/speaker.ts";

export function nameOf(check: ComparedCheck, ownName: string | undefined, { say }: Speaker = ENGLISH): string {
	const { nameKey } = check as Partial<CheckDefinition>;
	return nameKey !== undefined && isReportKey(nameKey) ? say(nameKey) : (ownName ?? check.id);
}
