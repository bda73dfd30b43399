/** Whether an end was tested at all, in the way its kind asks for. */
import type { ReadingEnd, ReadingKind } from "./types.ts";

export function isTested(kind: ReadingKind, end: ReadingEnd): boolean {
	if (end.notTested !== undefined) return false;
	if (kind === "count") return end.count !== undefined;
	if (kind === "outcome") return end.trials !== undefined && end.trials > 0 && end.successes !== undefined;
	return (end.values ?? []).length > 0;
}
