/** A database of its own for a test file, cloned from the migrated template. */
import { randomBytes } from "node:crypto";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import pg from "pg";
import { inject } from "vitest";
import type { Database } from "../../src/database/connection.ts";
import { openPool } from "../../src/database/pool.ts";
import { vaultOf } from "../../src/start/deps.ts";

export interface TestDatabase {
	/** As the serving role. */
	readonly database: Database;
	/** Where the keys of its log and its parties lie. */
	readonly keyFolder: string;
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
	const keyFolder = await mkdtemp(join(tmpdir(), "handover-keys-"));
	const database = openPool(serviceUrl, { vault: vaultOf(keyFolder) });
	return {
		database,
		keyFolder,
		serviceUrl,
		ownerUrl: to(inject("ownerUrl"), name),
		superuserUrl: to(inject("superuserUrl"), name),
		async close() {
			await database.close();
			await rm(keyFolder, { recursive: true, force: true });
			await administer(`DROP DATABASE ${name} WITH (FORCE)`);
		},
	};
}
