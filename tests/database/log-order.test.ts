/** The log's order with writers at the same moment: no gap, none twice, time never back, hashes as RFC 9162 (2.1.1) has them. */
import { createHash } from "node:crypto";
import { afterAll, beforeAll, expect, it } from "vitest";
import { type TestDatabase, testDatabase } from "../setup/test-database.ts";
import { openTestLog } from "../setup/test-log.ts";

const WRITERS = 8;
const EACH = 25;

let test: TestDatabase;
beforeAll(async () => {
	test = await testDatabase();
});
afterAll(() => test.close());

it("is free of gaps although eight writers append, some of which fail before they commit", async () => {
	const log = await openTestLog(test.database);
	let failed = 0;
	await Promise.all(
		Array.from({ length: WRITERS }, async (_, writer) => {
			for (let count = 0; count < EACH; count += 1) {
				await test.database
					.transaction(async (transaction) => {
						await log.append(transaction, `rec_${writer}_${count}`);
						if (count % 5 === 4) throw new Error("changed my mind");
					})
					.catch((error: Error) => {
						if (error.message !== "changed my mind") throw error;
						failed += 1;
					});
			}
		}),
	);
	const rows = await test.database.query<{
		index: number;
		entry_bytes: Buffer;
		leaf_sha256: string;
		sealed_at: Date;
		subject: string;
	}>(
		"SELECT s.index, entry_bytes, leaf_sha256, sealed_at, subject FROM sealed_entry s JOIN entry_projection USING (index) ORDER BY s.index",
	);
	expect(failed).toBe((WRITERS * EACH) / 5);
	expect(rows.map((row) => row.index)).toEqual(Array.from({ length: (WRITERS * EACH * 4) / 5 }, (_, index) => index));
	expect(new Set(rows.map((row) => row.subject)).size).toBe(rows.length);
	for (const [place, row] of rows.entries()) {
		const entry = JSON.parse(row.entry_bytes.toString("utf8"));
		expect(entry).toMatchObject({ index: row.index, subject: row.subject, time: row.sealed_at.toISOString() });
		expect(row.sealed_at.getTime()).toBeGreaterThanOrEqual(rows[place - 1]?.sealed_at.getTime() ?? 0);
		expect(row.leaf_sha256).toBe(createHash("sha256").update(Uint8Array.of(0)).update(row.entry_bytes).digest("hex"));
	}
});
