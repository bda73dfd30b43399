/**
 * The built service on a PostgreSQL of the shop's own: the oldest that the system's packages bring, from 15 on. Everything
 * from empty database to receipt, and a second start on what the first left.
 */
import { mkdtemp, readdir, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { playScenarios } from "../../src/start/demo/play-scenarios.ts";
import { startBuiltService } from "../setup/built-service.ts";
import { SYSTEM_VERSION, type SystemPostgres, startSystemPostgres } from "../setup/system-postgres.ts";

let postgres: SystemPostgres;
let folder: string;
beforeAll(async () => {
	folder = await mkdtemp(join(tmpdir(), "handover-own-"));
	if (SYSTEM_VERSION !== null) postgres = await startSystemPostgres();
});
afterAll(async () => {
	await postgres?.stop();
	await rm(folder, { recursive: true, force: true });
});

it.skipIf(SYSTEM_VERSION === null)(
	`PostgreSQL ${SYSTEM_VERSION}: starts, migrates, seals, gives receipts, starts again`,
	async () => {
		const { ownerUrl, serviceUrl } = await postgres.makeDatabase("shop");
		const variables = { DATABASE_URL: serviceUrl, DATABASE_MIGRATION_URL: ownerUrl };
		const dataFolder = join(folder, "data");
		const outFolder = join(folder, "out");
		const first = await startBuiltService(dataFolder, { variables });
		try {
			expect((await fetch(`${first.url}/readyz`)).status).toBe(200);
			const links = await playScenarios({ url: first.url, setUpLink: first.setUpLink ?? "", outFolder });
			expect(links.length).toBeGreaterThan(3);
			const receipts = (await readdir(outFolder, { recursive: true })).filter((name) => /receipt.*\.json$/.test(name));
			expect(receipts.length).toBeGreaterThan(0);
			for (const name of receipts) {
				expect(JSON.parse(await readFile(join(outFolder, name), "utf8")).$format).toMatch(/^handover-risk\/receipt\//);
			}
			// The built-in database was not needed, so it was not made.
			expect(await readdir(dataFolder)).not.toContain("database");
		} finally {
			await first.stop();
		}
		const second = await startBuiltService(dataFolder, { variables });
		try {
			expect(second.setUpLink).toBeNull();
			expect((await fetch(`${second.url}/readyz`)).status).toBe(200);
		} finally {
			await second.stop();
		}
	},
);
