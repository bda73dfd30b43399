/** What the service asks of its database before it starts. Rights and settings as the PostgreSQL manual has them (GRANT; 19.5, 20.5). */
import { afterAll, beforeAll, expect, it } from "vitest";
import type { Database } from "../../src/database/connection.ts";
import { refuseForgetfulDatabase, refuseMightyRole } from "../../src/database/guards.ts";
import { openPool } from "../../src/database/pool.ts";
import { type TestDatabase, testDatabase } from "../setup/test-database.ts";

let test: TestDatabase;
let owner: Database;

beforeAll(async () => {
	test = await testDatabase();
	owner = openPool(test.ownerUrl, { maxConnections: 1 });
});

afterAll(async () => {
	await owner.close();
	await test.close();
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

it("the service refuses a database that acknowledges before it has written", async () => {
	await refuseForgetfulDatabase(test.database);
	await test.database.transaction(async (transaction) => {
		await transaction.query("SET LOCAL synchronous_commit = off");
		await expect(refuseForgetfulDatabase(transaction)).rejects.toThrow("synchronous_commit = off");
	});
});
