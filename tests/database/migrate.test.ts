/** Migrations on a database of their own. Expected behaviour: forward only, applied once, an applied file never changes. */
import { cp, mkdtemp, readdir, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import type { Database } from "../../src/database/connection.ts";
import { appliedMigrations, isMigrated, migrate } from "../../src/database/migrate.ts";
import { openPool } from "../../src/database/pool.ts";
import { MIGRATIONS } from "../../src/start/migrations.ts";
import { type TestDatabase, testDatabase } from "../setup/test-database.ts";

let test: TestDatabase;
let owner: Database;
let folder: string;

beforeEach(async () => {
	test = await testDatabase();
	owner = openPool(test.ownerUrl, { maxConnections: 2 });
	folder = await mkdtemp(join(tmpdir(), "handover-migrations-"));
	await cp(MIGRATIONS, folder, { recursive: true });
});

afterEach(async () => {
	await owner.close();
	await test.close();
	await rm(folder, { recursive: true });
});

it("does nothing the second time", async () => {
	expect(await migrate(owner, folder)).toEqual([]);
	expect(await isMigrated(test.database, folder)).toBe(true);
});

it("applies a new file, once, although two instances start at the same moment", async () => {
	await writeFile(join(folder, "9000_more.sql"), "CREATE TABLE more (id int); SELECT pg_sleep(0.2);");
	expect(await isMigrated(test.database, folder)).toBe(false);
	const second = openPool(test.ownerUrl, { maxConnections: 2 });
	try {
		const applied = await Promise.all([migrate(owner, folder), migrate(second, folder)]);
		expect(applied.flat()).toEqual(["9000_more.sql"]);
	} finally {
		await second.close();
	}
	expect(await isMigrated(test.database, folder)).toBe(true);
});

it("migrates an empty database from two instances at the same moment", async () => {
	await owner.query("DROP SCHEMA public CASCADE");
	await owner.query("CREATE SCHEMA public");
	const second = openPool(test.ownerUrl, { maxConnections: 2 });
	try {
		const applied = await Promise.all([migrate(owner, folder), migrate(second, folder)]);
		expect(applied.flat().sort()).toEqual((await readdir(folder)).sort());
	} finally {
		await second.close();
	}
});

it("applies a file that comes late, with a lower number than one that was applied", async () => {
	await owner.query("DROP SCHEMA public CASCADE");
	await owner.query("CREATE SCHEMA public");
	const late = "0011_settling.sql";
	const others = (await readdir(folder)).filter((name) => name !== late);
	await migrate(owner, folder, others);
	expect(await migrate(owner, folder)).toEqual([late]);
	expect(await isMigrated(test.database, folder)).toBe(true);
});

it("leaves nothing of a file that fails", async () => {
	await writeFile(join(folder, "9000_more.sql"), "CREATE TABLE more (id int); SELECT no_such_function();");
	await expect(migrate(owner, folder)).rejects.toThrow("no_such_function");
	expect(await owner.query("SELECT to_regclass('more') AS place")).toEqual([{ place: null }]);
	expect(await isMigrated(test.database, folder)).toBe(false);
});

it("stops when an applied file was changed", async () => {
	await writeFile(join(folder, "0001_log.sql"), "-- changed");
	await expect(migrate(owner, folder)).rejects.toThrow("migration 0001_log.sql was changed after it was applied");
});

it("stops when the database is newer than the program", async () => {
	await rm(join(folder, "0002_orders.sql"));
	await expect(migrate(owner, folder)).rejects.toThrow("start the newer program");
});

it("applies only the files asked for, as a restored backup needs it, and the rest at the next start", async () => {
	await owner.query("DROP SCHEMA public CASCADE");
	await owner.query("CREATE SCHEMA public");
	expect(await migrate(owner, folder, ["0001_log.sql", "0002_orders.sql"])).toEqual([
		"0001_log.sql",
		"0002_orders.sql",
	]);
	expect((await appliedMigrations(owner)).map(({ name }) => name)).toEqual(["0001_log.sql", "0002_orders.sql"]);
	expect(await migrate(owner, folder)).toContain("0003_access.sql");
});
