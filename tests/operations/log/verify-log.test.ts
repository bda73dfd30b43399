/**
 * The check of the stored log, against a log made by the program and then changed behind its back: guards and constraints
 * off, as whoever owns the database can. Each change must be found and its place named.
 */
import { randomBytes } from "node:crypto";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Database } from "../../../src/database/connection.ts";
import { openPool } from "../../../src/database/pool.ts";
import { appendToLog } from "../../../src/operations/log/append-to-log.ts";
import { changeLogKey } from "../../../src/operations/log/change-key.ts";
import { verifyLog } from "../../../src/operations/log/verify-log.ts";
import { type TestApp, testApp } from "../../setup/test-app.ts";

const ENTRIES = 23;

let shop: TestApp;
let owner: Database;

beforeEach(async () => {
	shop = await testApp();
	owner = openPool(shop.db.superuserUrl, { maxConnections: 1 });
	for (let count = 0; count < ENTRIES; count += 1) {
		const statementBytes = count % 3 === 0 ? null : Buffer.from(`{"count":${count}}`);
		await shop.db.database.transaction((transaction) =>
			appendToLog(shop.deps, transaction, {
				kind: "record-sealed",
				subject: `rec_${count}`,
				byId: "acc_1",
				statementBytes,
			}),
		);
		if (count === 11) await changeLogKey(shop.deps, "acc_1");
	}
});
afterEach(async () => {
	await owner.close();
	await shop.close();
});

/** Takes every guard off, changes the tables, and gives what the check says. */
async function after(sql: string): Promise<string> {
	for (const table of ["sealed_entry", "entry_projection", "tree_node", "checkpoint", "log_key"]) {
		await owner.query(`ALTER TABLE ${table} DISABLE TRIGGER ALL`);
	}
	const checks = await owner.query<{ name: string }>(
		"SELECT conname AS name FROM pg_constraint WHERE conrelid = 'sealed_entry'::regclass AND contype IN ('c', 'u')",
	);
	for (const { name } of checks) await owner.query(`ALTER TABLE sealed_entry DROP CONSTRAINT ${name}`);
	await owner.query(sql);
	return verifyLog(shop.db.database).then(
		() => "nothing was found",
		(error: Error) => error.message,
	);
}

/** Leaf and row of an entry made to fit its changed bytes, as someone who knows the forms would. */
const REHASH = "leaf_sha256 = encode(sha256('\\x00'::bytea || entry_bytes), 'hex')";

it("a log that nobody touched holds together, over a change of its key too", async () => {
	const checked: number[] = [];
	const log = await verifyLog(shop.db.database, (count) => checked.push(count));
	expect(log).toMatchObject({ size: ENTRIES + 1, checkpoints: ENTRIES + 1 });
	expect(checked.at(-1)).toBe(ENTRIES + 1);
});

describe("a change is found:", () => {
	for (const [what, sql, found] of [
		[
			"bytes of an entry",
			"UPDATE sealed_entry SET entry_bytes = entry_bytes || ' ' WHERE index = 5",
			"log entry 5: its leaf is not its hash",
		],
		[
			"bytes of an entry with its leaf",
			`UPDATE sealed_entry SET entry_bytes = entry_bytes || ' ' WHERE index = 5; UPDATE sealed_entry SET ${REHASH} WHERE index = 5`,
			"log entry 5: its checkpoint holds another size, root or name",
		],
		[
			"bytes of a statement",
			"UPDATE sealed_entry SET statement_bytes = '{}' WHERE index = 4",
			"log entry 4: its statement has another hash",
		],
		[
			"a statement with its hash",
			"UPDATE sealed_entry SET statement_bytes = '{}', statement_sha256 = encode(sha256('{}'), 'hex') WHERE index = 4",
			"log entry 4: its bytes say another statementSha256 than its row",
		],
		[
			"a statement taken away",
			"UPDATE sealed_entry SET statement_bytes = NULL, statement_sha256 = NULL WHERE index = 4",
			"log entry 4: its bytes say another statementSha256 than its row",
		],
		[
			"a time",
			"UPDATE sealed_entry SET sealed_at = sealed_at + interval '1 second' WHERE index = 7",
			"log entry 7: its bytes say another time than its row",
		],
		[
			"an entry taken away",
			"DELETE FROM entry_projection WHERE index = 6; DELETE FROM sealed_entry WHERE index = 6",
			"log entry 6 is missing",
		],
		[
			"the first entry taken away",
			"DELETE FROM entry_projection WHERE index = 0; DELETE FROM sealed_entry WHERE index = 0",
			"log entry 0 is missing",
		],
		[
			"the newest entry taken away",
			`DELETE FROM entry_projection WHERE index = ${ENTRIES}; DELETE FROM sealed_entry WHERE index = ${ENTRIES}`,
			"subtrees or checkpoints of entries that it does not hold",
		],
		[
			"whom a query thinks it is about",
			"UPDATE entry_projection SET subject = 'rec_other' WHERE index = 8",
			"log entry 8: its bytes say another subject than its row",
		],
		[
			"a row that queries need",
			"DELETE FROM entry_projection WHERE index = 8",
			"log entry 8: its bytes say another kind than its row",
		],
		[
			"a subtree",
			"UPDATE tree_node SET sha256 = repeat('0', 64) WHERE level = 2 AND index = 1",
			"subtree 1 of level 2 is not the hash of its leaves",
		],
		[
			"a subtree taken away",
			"DELETE FROM tree_node WHERE level = 1 AND index = 2",
			"subtree 2 of level 1 is not the hash of its leaves",
		],
		[
			"a checkpoint's root",
			"UPDATE checkpoint SET note = regexp_replace(note, E'\\n[A-Za-z0-9+/]', E'\\nA') WHERE size = 9",
			"log entry 8: its checkpoint",
		],
		[
			"a checkpoint's signature",
			"UPDATE checkpoint SET note = (SELECT split_part(c.note, E'\\n\\n', 1) || E'\\n\\n' || split_part(o.note, E'\\n\\n', 2) FROM checkpoint c, checkpoint o WHERE c.size = 9 AND o.size = 8) WHERE size = 9",
			"log entry 8: its checkpoint is not signed by its key",
		],
		[
			"the newest checkpoint taken away",
			`DELETE FROM checkpoint WHERE size = ${ENTRIES + 1}`,
			`the log holds ${ENTRIES + 1} entries and its newest checkpoint ${ENTRIES}`,
		],
		[
			"the key",
			`UPDATE log_key SET public_key = '${randomBytes(32).toString("hex")}' WHERE from_size = 0`,
			"log entry 0: its checkpoint",
		],
	] as const) {
		it(what, async () => expect(await after(sql)).toContain(found));
	}
});
