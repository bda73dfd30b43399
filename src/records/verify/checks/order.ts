/** `order`: the entries stand as in the log: indexes rise, times never run back. */
import { type Finding, why } from "../finding.ts";
import type { ReadReceipt } from "../read-receipt.ts";

export function checkOrder({ entries }: ReadReceipt): Finding[] {
	const failed = entries.slice(1).flatMap((entry, place): Finding[] => {
		const before = entries[place];
		if (before === undefined) return [];
		const fail = (sentence: string, found: string, expected: string): Finding[] => [
			{ id: "order", outcome: "failed", where: `${entry.where}/entry`, expected, found, why: why(sentence) },
		];
		if (!(entry.index > before.index)) {
			return fail("verify.order-index", String(entry.index), String(before.index + 1));
		}
		// All times have one form, so that their texts sort as they do.
		return entry.time >= before.time ? [] : fail("verify.order-time", entry.time, before.time);
	});
	if (failed.length > 0) return failed;
	const first = entries[0]?.time ?? "";
	const last = entries.at(-1)?.time ?? "";
	const values = { count: entries.length, first, last };
	return [{ id: "order", outcome: "passed", why: why("verify.order-passed", values) }];
}
