/** An opened log in a test's database, with small entries made the way operations make theirs. */
import { mkdtemp } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Database, Queryable } from "../../src/database/connection.ts";
import { appendToLog } from "../../src/operations/log/append-to-log.ts";
import { openLog } from "../../src/operations/log/open-log.ts";
import { makeDeps, SILENT } from "../../src/start/deps.ts";

export async function openTestLog(database: Database) {
	const keyFolder = await mkdtemp(join(tmpdir(), "handover-keys-"));
	const deps = makeDeps({ database, log: SILENT, publicUrl: "", exhibitFolder: "", keyFolder });
	await openLog(deps);
	return {
		deps,
		keyFolder,
		append: (transaction: Queryable, subject: string) =>
			appendToLog(deps, transaction, {
				kind: "record-sealed",
				subject,
				byId: "acc_1",
				statementBytes: Buffer.from(`{"of":"${subject}"}`),
			}),
	};
}
