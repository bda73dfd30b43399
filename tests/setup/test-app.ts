/** The app on a database of its own, with an account signed in by token, for tests that speak HTTP. */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { FastifyInstance, InjectOptions, LightMyRequestResponse } from "fastify";
import { type CallerClass, callersOf } from "../../src/access/callers.ts";
import type { ScryptCost } from "../../src/access/secrets.ts";
import { makeApiToken } from "../../src/operations/access/sessions.ts";
import { makeSetUpLink, setUpShop } from "../../src/operations/access/set-up.ts";
import type { Deps } from "../../src/operations/deps.ts";
import { openLog } from "../../src/operations/log/open-log.ts";
import { buildApp } from "../../src/start/build-app.ts";
import { makeDeps, SILENT } from "../../src/start/deps.ts";
import { type TestDatabase, testDatabase } from "./test-database.ts";

export interface TestApp {
	readonly app: FastifyInstance;
	/** Every route that the app registered, with who may call it. */
	readonly routes: readonly {
		readonly method: readonly string[];
		readonly url: string;
		readonly callers: readonly CallerClass[];
	}[];
	readonly deps: Deps;
	readonly db: TestDatabase;
	readonly accountId: string;
	/** Cookie header of the account's session, and its API token. */
	readonly sessionCookie: string;
	readonly token: string;
	/** Asks as the account, by token; a body is sent as JSON. */
	ask(
		method: InjectOptions["method"],
		url: string,
		body?: unknown,
		headers?: Record<string, string>,
	): Promise<LightMyRequestResponse>;
	/** Listens on a free port, for browsers; gives the address. */
	listen(): Promise<string>;
	close(): Promise<void>;
}

/** Codes and passphrases of tests are no secrets: at the service's own cost they would take a tenth of a second each. */
const QUICK: ScryptCost = { N: 2 ** 8, r: 8, p: 1 };

export async function testApp({ canMail = false } = {}): Promise<TestApp> {
	const db = await testDatabase();
	const exhibitFolder = await mkdtemp(join(tmpdir(), "handover-risk-exhibits-"));
	const deps = makeDeps({
		database: db.database,
		log: SILENT,
		publicUrl: "http://localhost",
		exhibitFolder,
		keyFolder: db.keyFolder,
		canMail,
		secretCost: QUICK,
	});
	await openLog(deps);
	const routes: { method: string[]; url: string; callers: readonly CallerClass[] }[] = [];
	const app = await buildApp(deps, {
		requestsPerMinute: 1_000_000,
		onRoute: (route) =>
			routes.push({ method: [route.method].flat(), url: route.url, callers: callersOf(route.config) ?? [] }),
	});
	const setUpToken = (await makeSetUpLink(deps))?.split("/").at(-1) ?? "";
	const session = await setUpShop(deps, { token: setUpToken, name: "bench", passphrase: "a passphrase for tests" });
	const caller = { kind: "account", accountId: session.accountId, via: "session" } as const;
	const { token } = await makeApiToken(deps, caller, "tests");
	return {
		app,
		routes,
		deps,
		db,
		accountId: session.accountId,
		sessionCookie: `session=${session.token}`,
		token,
		ask: (method, url, body, headers = {}) =>
			app.inject({
				...(method === undefined ? {} : { method }),
				url,
				headers: {
					authorization: `Bearer ${token}`,
					...(body === undefined ? {} : { "content-type": "application/json" }),
					...headers,
				},
				...(body === undefined ? {} : { payload: JSON.stringify(body) }),
			}),
		listen: () => app.listen({ host: "127.0.0.1", port: 0 }),
		async close() {
			await app.close();
			await db.close();
			await rm(exhibitFolder, { recursive: true, force: true });
		},
	};
}
