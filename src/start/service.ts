/** Brings the whole service up and down: database, migrations, app. `server.ts` and the demo start it. */

import { randomBytes } from "node:crypto";
import { mkdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import type { FastifyInstance, FastifyRequest } from "fastify";
import { pino } from "pino";
import { type EmbeddedServer, startEmbeddedServer } from "../database/embedded/embedded-server.ts";
import { refuseForgetfulDatabase, refuseMightyRole } from "../database/guards.ts";
import { isMigrated, migrate } from "../database/migrate.ts";
import { partiesNotErased } from "../database/orders.ts";
import { openPool } from "../database/pool.ts";
import type { Deps } from "../operations/deps.ts";
import { openLog } from "../operations/log/open-log.ts";
import { replayErasures } from "../operations/parties/erase-party.ts";
import type { Authority } from "../operations/time-stamps/stamp-newest-checkpoint.ts";
import { trustAnchors } from "../operations/time-stamps/trust-anchors.ts";
import { cleanUploads } from "../operations/uploads/clean-uploads.ts";
import { buildApp } from "./build-app.ts";
import { makeDeps, vaultOf } from "./deps.ts";
import { mailingOf, startMailing } from "./mailing.ts";
import { MIGRATIONS } from "./migrations.ts";
import type { Settings } from "./settings.ts";
import { startTimeStamping } from "./time-stamping.ts";

/** For how long requests that have begun are waited for at a stop. Our choice: an upload of 20 MiB over a poor line. */
const DRAIN_S = 30;
/** Our choice: an upload may wait for days, and what it takes up is counted. */
const CLEANED_EVERY_MS = 3_600_000;

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
		const log = pino({ level: settings.logLevel, serializers: { req: loggedRequest } });
		const authority = await authorityOf(settings);
		const mailing = await mailingOf(settings);
		const urls = await databaseUrls(settings, undo);
		const owner = openPool(urls.owner, { maxConnections: 1 });
		undo.push(() => owner.close());
		for (const name of await migrate(owner, MIGRATIONS)) log.info({ migration: name }, "migrated");
		await owner.close();
		undo.pop();
		const database = openPool(urls.service, { vault: vaultOf(settings.keyDir) });
		undo.push(() => database.close());
		await refuseMightyRole(database);
		await refuseForgetfulDatabase(database);
		const exhibitFolder = join(settings.dataDir, "exhibits");
		await mkdir(exhibitFolder, { recursive: true, mode: 0o700 });
		const deps = makeDeps({
			database,
			log,
			publicUrl: settings.publicUrl,
			exhibitFolder,
			exhibitQuotaBytes: settings.exhibitQuotaBytes,
			keyFolder: settings.keyDir,
			canMail: settings.mail !== null,
		});
		await openLog(deps);
		await replayErasures(deps);
		await cleanUploads(deps);
		await deps.partyKeys.requireAll(await partiesNotErased(database));
		const isReady = () => isMigrated(database, MIGRATIONS);
		const app = await buildApp(deps, { trustProxy: settings.trustProxy, logger: log, isReady });
		undo.push(() => drain(app));
		await listen(app, settings);
		if (authority !== null) undo.push(startTimeStamping(deps, authority));
		if (mailing !== null) undo.push(startMailing(deps, mailing));
		undo.push(startCleaning(deps));
		return { app, deps, stop };
	} catch (error) {
		await stop();
		throw error;
	}
}

/** Takes away, from time to time, uploads that nobody finished. */
function startCleaning(deps: Deps): () => Promise<void> {
	const timer = setInterval(() => {
		cleanUploads(deps).catch((error: unknown) => deps.log.error({ err: error }, "uploads were not cleaned"));
	}, CLEANED_EVERY_MS);
	return async () => clearInterval(timer);
}

/** A request as it is logged: by its route, since addresses hold the secrets of links and the names of files. */
function loggedRequest(request: FastifyRequest) {
	return { method: request.method, route: request.routeOptions?.url, from: request.ip };
}

/**
 * Takes no more requests and waits for those that have begun. Connections are ended as they fall idle, since a browser
 * keeps one open long after its last request; and all of them in the end, since a request may never be finished.
 */
async function drain(app: FastifyInstance): Promise<void> {
	const sweep = setInterval(() => app.server.closeIdleConnections(), 100);
	const last = setTimeout(() => app.server.closeAllConnections(), DRAIN_S * 1000);
	try {
		await app.close();
	} finally {
		clearInterval(sweep);
		clearTimeout(last);
	}
}

/** @throws Error that names the setting, where the address cannot be had */
async function listen(app: FastifyInstance, { host, port }: Settings): Promise<void> {
	try {
		await app.listen({ host, port });
	} catch (error) {
		switch ((error as NodeJS.ErrnoException).code) {
			case "EADDRINUSE":
				throw new Error(`setting PORT: ${port} is taken on ${host}: stop the other program, or set another PORT`);
			case "EACCES":
				throw new Error(`setting PORT: ${port} may not be used by this user: set a PORT from 1024 on`);
			case "EADDRNOTAVAIL":
			case "ENOTFOUND":
				throw new Error(`setting HOST: ${host} is no address of this machine: set one that is`);
			default:
				throw error;
		}
	}
}

/** @throws Error that names the setting, where the trust anchor cannot be read */
async function authorityOf({ timeStamps }: Settings): Promise<Authority | null> {
	if (timeStamps === null) return null;
	const { url, caPath, everyMin } = timeStamps;
	try {
		return { url, everyMin, anchors: trustAnchors(await readFile(caPath, "utf8")) };
	} catch (error) {
		throw new Error(`setting TIMESTAMP_CA: ${caPath}: ${(error as Error).message}`);
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
