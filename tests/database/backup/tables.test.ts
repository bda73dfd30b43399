/** The list of tables by which a backup is taken and filled again, and the form in which rows travel. */
import { Readable } from "node:stream";
import { text } from "node:stream/consumers";
import { afterEach, beforeEach, expect, it } from "vitest";
import { readOneMoment, writeAllOrNothing } from "../../../src/database/backup/copy-session.ts";
import { listTables } from "../../../src/database/backup/tables.ts";
import type { Database } from "../../../src/database/connection.ts";
import { openPool } from "../../../src/database/pool.ts";
import { type TestDatabase, testDatabase } from "../../setup/test-database.ts";

let test: TestDatabase;
let owner: Database;
beforeEach(async () => {
	test = await testDatabase();
	owner = openPool(test.ownerUrl, { maxConnections: 1 });
});
afterEach(async () => {
	await owner.close();
	await test.close();
});

it("each table comes after those that its foreign keys refer to", async () => {
	const names = (await listTables(owner)).map(({ name }) => name);
	const references = await owner.query<{ from: string; to: string }>(
		`SELECT conrelid::regclass::text AS "from", confrelid::regclass::text AS "to" FROM pg_constraint
		 WHERE contype = 'f' AND conrelid <> confrelid`,
	);
	expect(references.length).toBeGreaterThan(10);
	for (const { from, to } of references)
		expect(names.indexOf(from), `${from} → ${to}`).toBeGreaterThan(names.indexOf(to));
});

it("a table without a primary key, and tables in a circle, are refused by name", async () => {
	await owner.query("CREATE TABLE keyless (a int)");
	await expect(listTables(owner)).rejects.toThrow("table keyless has no primary key");
	await owner.query("DROP TABLE keyless");
	await owner.query("CREATE TABLE a (id int PRIMARY KEY, b int); CREATE TABLE b (id int PRIMARY KEY REFERENCES a)");
	await owner.query("ALTER TABLE a ADD FOREIGN KEY (b) REFERENCES b");
	await expect(listTables(owner)).rejects.toThrow("in a circle: a, b");
});

it("values of every kind come back as they were, whatever the server's own settings are", async () => {
	await owner.query(`CREATE TABLE sample (id int PRIMARY KEY, "select" text, t timestamptz, d date, f float8, n numeric, j jsonb,
		b bytea, a text[], i interval, twice int GENERATED ALWAYS AS (id * 2) STORED)`);
	await owner.query(
		`INSERT INTO sample VALUES
		 (2, $1, '2026-03-29 01:59:59.123456+00', '0044-03-15 BC', 0.1::float8 + 0.2, 1e-30, '{"a": "\\u00df\\n\\t\\\\"}', '\\x00ff0a5c', $2, '1 mon 2 days 3:04:05.6'),
		 (1, '\\N', 'infinity', NULL, '-0', NULL, 'null', '', '{}', '-1 day')`,
		["tab\tline\nback\\slash ß 漢 🙂 \\N \\.", ["a,b", '"', null]],
	);
	const rows = () => owner.query("SELECT *, sample::text AS whole FROM sample ORDER BY id");
	const before = await rows();
	const name = new URL(test.ownerUrl).pathname.slice(1);
	for (const setting of [
		"bytea_output = 'escape'",
		"DateStyle = 'German'",
		"extra_float_digits = 0",
		"IntervalStyle = 'sql_standard'",
		"TimeZone = 'Asia/Tokyo'",
	]) {
		await owner.query(`ALTER DATABASE ${name} SET ${setting}`);
	}
	const shape = (await listTables(owner)).find(({ name }) => name === "sample");
	if (shape === undefined) throw new Error("the table was not listed");
	expect(shape.columns).not.toContain("twice");
	const copied = await readOneMoment(test.ownerUrl, (session) => text(session.copyOut(shape)));
	expect(copied.split("\n")).toHaveLength(3);
	expect(copied).toMatch(/^1\t/);
	await owner.query("DELETE FROM sample");
	expect(await writeAllOrNothing(test.ownerUrl, (session) => session.copyIn(shape, Readable.from([copied])))).toBe(2);
	expect(await rows()).toEqual(before);
});

it("a reader sees one moment, and cannot write; a writer that fails has written nothing", async () => {
	await owner.query("CREATE TABLE sample (id int PRIMARY KEY)");
	const reading = readOneMoment(test.ownerUrl, async (session) => {
		expect(await session.query("SELECT FROM sample")).toHaveLength(0);
		await owner.query("INSERT INTO sample VALUES (1)");
		expect(await session.query("SELECT FROM sample")).toHaveLength(0);
		await expect(session.query("INSERT INTO sample VALUES (2)")).rejects.toThrow("read-only transaction");
	});
	// A failed statement breaks the transaction, also where the work goes on.
	await expect(reading).rejects.toThrow("the transaction was rolled back");
	const shape = { name: "sample", columns: ["id"] };
	await expect(
		writeAllOrNothing(test.ownerUrl, async (session) => {
			await session.copyIn(shape, Readable.from(["7\n8\n"]));
			throw new Error("changed my mind");
		}),
	).rejects.toThrow("changed my mind");
	expect(await owner.query("SELECT id FROM sample")).toEqual([{ id: 1 }]);
	await expect(
		writeAllOrNothing(test.ownerUrl, (session) => session.copyIn(shape, Readable.from(["9\nnot a number\n"]))),
	).rejects.toThrow("invalid input syntax");
	expect(await owner.query("SELECT id FROM sample")).toEqual([{ id: 1 }]);
});
