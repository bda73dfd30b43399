/** Migrations on a database of their own. Expected behaviour: forward only, applied once, an applied file never changes. */
import { cp, mkdtemp, readdir, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import type { Database } from "../../src/database/connection.ts";
import { refuseMightyRole } from "../../src/database/guards.ts";
import { isMigrated, migrate } from "../../src/database/migrate.ts";
import { openPool } from "../../src/database/pool.ts";
import { MIGRATIONS } from "../../src/start/service.ts";
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

it("the service takes its own role and refuses the owner, a superuser, and a role with a right too many", async () => {
	await refuseMightyRole(test.database);
	await expect(refuseMightyRole(owner)).rejects.toThrow("may change sealed_entry");
	const superuser = openPool(test.superuserUrl, { maxConnections: 1 });
	try {
		await expect(refuseMightyRole(superuser)).rejects.toThrow("may change sealed_entry");
	} finally {
		await superuser.close();
	}
	for (const right of ["UPDATE", "UPDATE (sealed_at)", "DELETE", "TRUNCATE"]) {
		await owner.query(`GRANT ${right} ON sealed_entry TO handover_service`);
		await expect(refuseMightyRole(test.database), right).rejects.toThrow("may change sealed_entry");
		await owner.query(`REVOKE ${right} ON sealed_entry FROM handover_service`);
	}
	await refuseMightyRole(test.database);
});

it("the service refuses to start while a guard is off or does not fire always", async () => {
	for (const state of ["DISABLE TRIGGER sealed_table", "ENABLE TRIGGER sealed_rows"]) {
		await owner.query(`ALTER TABLE sealed_entry ${state}`);
		await expect(refuseMightyRole(test.database), state).rejects.toThrow("switched off");
		await owner.query(`ALTER TABLE sealed_entry ENABLE ALWAYS TRIGGER ${state.split(" ").at(-1)}`);
	}
	await refuseMightyRole(test.database);
});
