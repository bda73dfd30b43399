/** `openings`: each opening opens a commitment that stands in its statement. */
import type { JsonNode } from "../canonical-json.ts";
import { type Finding, why } from "../finding.ts";
import { commitmentOf } from "../hashes.ts";
import type { ReadReceipt } from "../read-receipt.ts";

export function checkOpenings({ entries }: ReadReceipt): Finding[] {
	const failed: Finding[] = [];
	let opened = 0;
	let standing = 0;
	for (const { statement, openings } of entries) {
		const commitments = new Set(statement === null ? [] : commitmentsIn(statement.node));
		standing += commitments.size;
		for (const { where, commitment, salt, valueBytes } of openings) {
			const found = commitmentOf(salt, valueBytes);
			if (found !== commitment) {
				failed.push({
					id: "openings",
					outcome: "failed",
					where,
					expected: commitment,
					found,
					why: why("verify.opening-differs"),
				});
			} else if (!commitments.has(commitment)) {
				failed.push({ id: "openings", outcome: "failed", where, found, why: why("verify.opening-foreign") });
			} else opened += 1;
		}
	}
	if (failed.length > 0) return failed;
	const unopened = standing - opened;
	return [{ id: "openings", outcome: "passed", why: why("verify.openings-passed", { opened, unopened }) }];
}

/** Every `{ "commitment": … }` of a statement. */
function commitmentsIn(node: JsonNode): string[] {
	if (node.type === "array") return node.items.flatMap(commitmentsIn);
	if (node.type !== "object") return [];
	const only = node.members.size === 1 ? node.members.get("commitment") : undefined;
	return only?.type === "text" ? [only.text] : [...node.members.values()].flatMap(commitmentsIn);
}
