/** One embedded database server for the whole test run, with a migrated template that each test file clones. */
import { randomBytes } from "node:crypto";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import pg from "pg";
import type { TestProject } from "vitest/node";
import { startEmbeddedServer } from "../../src/database/embedded/embedded-server.ts";
import { migrate } from "../../src/database/migrate.ts";
import { openPool } from "../../src/database/pool.ts";
import { MIGRATIONS } from "../../src/start/migrations.ts";

export default async function setup(project: TestProject) {
	const folder = await mkdtemp(join(tmpdir(), "handover-risk-test-"));
	const server = await startEmbeddedServer(folder, randomBytes);
	const owner = openPool(server.ownerUrl, { maxConnections: 1 });
	await migrate(owner, MIGRATIONS);
	await owner.close();
	const superuser = new pg.Client({ connectionString: server.superuserUrl.replace(/\/handover$/, "/postgres") });
	await superuser.connect();
	await superuser.query("ALTER DATABASE handover IS_TEMPLATE true ALLOW_CONNECTIONS false");
	await superuser.end();
	project.provide("runFolder", folder);
	project.provide("superuserUrl", server.superuserUrl);
	project.provide("ownerUrl", server.ownerUrl);
	project.provide("serviceUrl", server.serviceUrl);
	return async () => {
		await server.stop();
		await rm(folder, { recursive: true, force: true });
	};
}

declare module "vitest" {
	export interface ProvidedContext {
		/** Removed after the run. */
		runFolder: string;
		superuserUrl: string;
		ownerUrl: string;
		serviceUrl: string;
	}
}
