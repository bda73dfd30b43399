/** `exhibits`: each file given along hashes to an exhibit that a statement names. */
import { shown } from "../canonical-json.ts";
import { type Finding, why } from "../finding.ts";
import type { HashedFile } from "../given.ts";
import type { ReadReceipt } from "../read-receipt.ts";
import { plainText } from "../shape.ts";

export function checkExhibits({ entries }: ReadReceipt, files: readonly HashedFile[]): Finding[] {
	const named = namedExhibits(entries);
	if (files.length === 0) {
		const reason = why("verify.exhibits-none", { count: named.size });
		return [{ id: "exhibits", outcome: "not-possible", why: reason }];
	}
	const failed = files
		.filter(({ sha256 }) => !named.has(sha256))
		.map(({ name, sha256 }): Finding => {
			const reason = why("verify.exhibits-unnamed", { name: shown(name) });
			return { id: "exhibits", outcome: "failed", found: sha256, why: reason };
		});
	if (failed.length > 0) return failed;
	const values = { names: files.map(({ name }) => shown(name)).join(", "), count: named.size };
	return [{ id: "exhibits", outcome: "passed", why: why("verify.exhibits-passed", values) }];
}

/** SHA-256 of every file that a statement names. */
export function namedExhibits(entries: ReadReceipt["entries"]): ReadonlySet<string> {
	const all = entries.flatMap(({ statement }) => {
		if (statement?.node.type !== "object") return [];
		const exhibits = statement.node.members.get("exhibits");
		if (exhibits?.type !== "array") return [];
		return exhibits.items.map((item) => (item.type === "object" ? plainText(item.members.get("sha256")) : null));
	});
	return new Set(all.filter((sha256) => sha256 !== null));
}
