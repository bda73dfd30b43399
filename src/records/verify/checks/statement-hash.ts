/** `statement-hash`: each statement hashes to what its entry says. */
import { type Finding, why } from "../finding.ts";
import { sha256Of } from "../hashes.ts";
import type { ReadReceipt } from "../read-receipt.ts";

export function checkStatementHashes({ entries }: ReadReceipt): Finding[] {
	const failed = entries.flatMap(({ where, statement, statementSha256 }): Finding[] => {
		const fail = (details: Omit<Finding, "id" | "outcome" | "where">): Finding[] => [
			{ id: "statement-hash", outcome: "failed", where: `${where}/statement`, ...details },
		];
		if (statement === null) {
			return statementSha256 === null ? [] : fail({ expected: statementSha256, why: why("verify.statement-missing") });
		}
		const found = sha256Of(statement.bytes);
		if (statementSha256 === null) return fail({ found, why: why("verify.statement-unexpected") });
		return found === statementSha256
			? []
			: fail({ expected: statementSha256, found, why: why("verify.statement-differs") });
	});
	if (failed.length > 0) return failed;
	const count = entries.filter(({ statement }) => statement !== null).length;
	return [{ id: "statement-hash", outcome: "passed", why: why("verify.statement-passed", { count }) }];
}
