/**
 * The guards of the log, on PostgreSQL itself. Expected: privileges and triggers as the PostgreSQL manual states them
 * (GRANT; CREATE TRIGGER and ALTER TABLE … ENABLE ALWAYS TRIGGER). SQLSTATE 42501 is insufficient_privilege.
 */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Database } from "../../src/database/connection.ts";
import { openPool } from "../../src/database/pool.ts";
import { type TestDatabase, testDatabase } from "../setup/test-database.ts";
import { openTestLog } from "../setup/test-log.ts";

const CHANGES = [
	["UPDATE", "UPDATE sealed_entry SET sealed_at = sealed_at"],
	["DELETE", "DELETE FROM sealed_entry"],
	// CASCADE, or the foreign key of the projection would refuse it first.
	["TRUNCATE", "TRUNCATE sealed_entry CASCADE"],
] as const;

let test: TestDatabase;
let owner: Database;
let superuser: Database;

beforeAll(async () => {
	test = await testDatabase();
	owner = openPool(test.ownerUrl, { maxConnections: 1 });
	superuser = openPool(test.superuserUrl, { maxConnections: 1 });
	const log = await openTestLog(test.database);
	await test.database.transaction((transaction) => log.append(transaction, "rec_1"));
});

afterAll(async () => {
	await owner.close();
	await superuser.close();
	await test.close();
});

describe("a sealed table", () => {
	for (const [operation, sql] of CHANGES) {
		it(`refuses the serving role ${operation}: no privilege`, async () => {
			await expect(test.database.query(sql)).rejects.toMatchObject({
				code: "42501",
				message: "permission denied for table sealed_entry",
			});
		});

		it(`refuses the owner ${operation}: the trigger`, async () => {
			await expect(owner.query(sql)).rejects.toMatchObject({
				code: "42501",
				message: `table sealed_entry holds sealed records: ${operation} is refused`,
			});
		});

		it(`refuses the superuser ${operation} under session_replication_role = replica: the trigger's own message`, async () => {
			await expect(
				superuser.transaction(async (transaction) => {
					await transaction.query("SET LOCAL session_replication_role = replica");
					await transaction.query(sql);
				}),
			).rejects.toMatchObject({ message: `table sealed_entry holds sealed records: ${operation} is refused` });
		});
	}

	it("still holds its row", async () => {
		expect(await test.database.query("SELECT index FROM sealed_entry")).toEqual([{ index: 0 }]);
	});
});

describe("an entry", () => {
	const insert = (values: readonly unknown[]) =>
		test.database.query(
			`INSERT INTO sealed_entry (index, entry_bytes, statement_bytes, leaf_sha256, statement_sha256, sealed_at)
			 VALUES ($1, $2, $3, $4, $5, clock_timestamp())`,
			values,
		);
	// SHA-256 of the bytes 00 61 and of 61, by coreutils sha256sum.
	const leaf = "022a6979e6dab7aa5ae4c3e5e45f7e977112a7e63593820dbec1ec738a24f93c";
	const statement = "ca978112ca1bbdcafac231b39a23dc4da786eff8147c4e72b9807785afee48bb";

	it("is refused with a leaf that is not that of its bytes", async () => {
		await expect(insert([1, Buffer.from("b"), null, leaf, null])).rejects.toMatchObject({ code: "23514" });
	});
	it("is refused with a hash that is not that of its statement", async () => {
		await expect(insert([1, Buffer.from("a"), Buffer.from("b"), leaf, statement])).rejects.toMatchObject({
			code: "23514",
		});
	});
	it("is refused with a statement and no hash, or a hash and no statement", async () => {
		await expect(insert([1, Buffer.from("a"), Buffer.from("a"), leaf, null])).rejects.toMatchObject({ code: "23514" });
		await expect(insert([1, Buffer.from("a"), null, leaf, statement])).rejects.toMatchObject({ code: "23514" });
	});
	it("is refused out of order", async () => {
		await expect(insert([2, Buffer.from("a"), null, leaf, null])).rejects.toThrow("would leave a gap after 0");
	});
	it("is taken in order with the right hashes", async () => {
		await insert([1, Buffer.from("a"), Buffer.from("a"), leaf, statement]);
	});
});
