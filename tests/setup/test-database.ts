/** A database of its own for a test file, cloned from the migrated template. */
import { randomBytes } from "node:crypto";
import pg from "pg";
import { inject } from "vitest";
import type { Database } from "../../src/database/connection.ts";
import { openPool } from "../../src/database/pool.ts";

export interface TestDatabase {
	/** As the serving role. */
	readonly database: Database;
	readonly ownerUrl: string;
	readonly superuserUrl: string;
	readonly serviceUrl: string;
	close(): Promise<void>;
}

export async function testDatabase(): Promise<TestDatabase> {
	const name = `test_${randomBytes(8).toString("hex")}`;
	const to = (url: string, database: string) => url.replace(/\/handover$/, `/${database}`);
	const administer = async (sql: string) => {
		const client = new pg.Client({ connectionString: to(inject("superuserUrl"), "postgres") });
		await client.connect();
		await client.query(sql);
		await client.end();
	};
	await administer(`CREATE DATABASE ${name} TEMPLATE handover OWNER handover_owner`);
	const serviceUrl = to(inject("serviceUrl"), name);
	const database = openPool(serviceUrl);
	return {
		database,
		serviceUrl,
		ownerUrl: to(inject("ownerUrl"), name),
		superuserUrl: to(inject("superuserUrl"), name),
		async close() {
			await database.close();
			await administer(`DROP DATABASE ${name} WITH (FORCE)`);
		},
	};
}
