/** Brings the whole service up and down: database, migrations, app. `server.ts` and the demo start it. */

import { randomBytes } from "node:crypto";
import { mkdir } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { FastifyInstance } from "fastify";
import { pino } from "pino";
import { type EmbeddedServer, startEmbeddedServer } from "../database/embedded/embedded-server.ts";
import { refuseMightyRole } from "../database/guards.ts";
import { migrate } from "../database/migrate.ts";
import { openPool } from "../database/pool.ts";
import type { Deps } from "../operations/deps.ts";
import { buildApp } from "./build-app.ts";
import { makeDeps } from "./deps.ts";
import type { Settings } from "./settings.ts";

/** Where the migrations lie, from `src/start` and from `dist/start` alike. */
export const MIGRATIONS = fileURLToPath(new URL("../../migrations", import.meta.url));

export interface Service {
	readonly app: FastifyInstance;
	readonly deps: Deps;
	/** Stops taking requests, lets those begun end, closes the database. */
	stop(): Promise<void>;
}

/** Starts everything and listens. Whatever was started is stopped again where a later step fails. */
export async function startService(settings: Settings): Promise<Service> {
	const undo: (() => Promise<void>)[] = [];
	const stop = async () => {
		for (let step = undo.pop(); step !== undefined; step = undo.pop()) await step();
	};
	try {
		const log = pino({ level: settings.logLevel });
		const urls = await databaseUrls(settings, undo);
		const owner = openPool(urls.owner, { maxConnections: 1 });
		undo.push(() => owner.close());
		for (const name of await migrate(owner, MIGRATIONS)) log.info({ migration: name }, "migrated");
		await owner.close();
		undo.pop();
		const database = openPool(urls.service);
		undo.push(() => database.close());
		await refuseMightyRole(database);
		const exhibitFolder = join(settings.dataDir, "exhibits");
		await mkdir(exhibitFolder, { recursive: true, mode: 0o700 });
		const deps = makeDeps({ database, log, publicUrl: settings.publicUrl, exhibitFolder });
		const app = await buildApp(deps, { trustProxy: settings.trustProxy, logger: log });
		undo.push(() => app.close());
		await app.listen({ host: settings.host, port: settings.port });
		return { app, deps, stop };
	} catch (error) {
		await stop();
		throw error;
	}
}

async function databaseUrls(settings: Settings, undo: (() => Promise<void>)[]) {
	if (settings.databaseUrl !== null && settings.databaseMigrationUrl !== null) {
		await mkdir(settings.dataDir, { recursive: true });
		return { owner: settings.databaseMigrationUrl, service: settings.databaseUrl };
	}
	const server: EmbeddedServer = await startEmbeddedServer(settings.dataDir, randomBytes);
	undo.push(() => server.stop());
	return { owner: server.ownerUrl, service: server.serviceUrl };
}
