/** `inclusion`: each entry stands in the tree that the checkpoint is about. */
import { type Finding, why } from "../finding.ts";
import { rootByInclusion } from "../merkle-proofs.ts";
import type { ReadReceipt } from "../read-receipt.ts";

export function checkInclusion({ entries, log }: ReadReceipt): Finding[] {
	if (log === null) return [{ id: "inclusion", outcome: "not-possible", why: why("verify.no-log") }];
	const { size, root } = log.checkpoint;
	const failed = entries.flatMap(({ where, leaf, index, proof }): Finding[] => {
		const found = rootByInclusion(leaf, index, size, proof ?? []);
		if (found === root) return [];
		if (found === null) {
			const reason = why("verify.inclusion-length", { index, size });
			return [{ id: "inclusion", outcome: "failed", where: `${where}/proof`, why: reason }];
		}
		const reason = why("verify.inclusion-differs", { index });
		return [{ id: "inclusion", outcome: "failed", where, expected: root, found, why: reason }];
	});
	if (failed.length > 0) return failed;
	const values = { count: entries.length, size };
	return [{ id: "inclusion", outcome: "passed", why: why("verify.inclusion-passed", values) }];
}
