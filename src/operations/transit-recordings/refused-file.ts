/** The fault of a recorder's file that is not read: its line and the reason. */
import type { Sentence } from "../../calculations/judged.ts";
import { type Fault, invalid } from "../../faults.ts";
import { say, type TextKey } from "../../texts/say.ts";

export function refusedFile(line: number | null, reason: Sentence): Fault {
	const why = say(reason.sentence as TextKey, reason.values);
	const code = line === null ? "import-refused" : "import-refused-at";
	return invalid([{ path: "/file", code, facts: { line: line ?? 0, why } }]);
}
