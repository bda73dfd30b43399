/**
 * The built service on a PostgreSQL of the shop's own: the oldest that the system's packages bring, from 15 on. Everything
 * from empty database to receipt, and a second start on what the first left.
 */
import { mkdtemp, readdir, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type DemoLink, playScenarios } from "../../src/start/demo/play-scenarios.ts";
import { startBuiltService } from "../setup/built-service.ts";
import { SYSTEM_VERSION, type SystemPostgres, startSystemPostgres } from "../setup/system-postgres.ts";

let postgres: SystemPostgres;
let folder: string;
let variables: Record<string, string>;
let links: readonly DemoLink[];

const inFolder = (name: string) => join(folder, name);

describe.skipIf(SYSTEM_VERSION === null)(`on PostgreSQL ${SYSTEM_VERSION}, a service`, () => {
	beforeAll(async () => {
		folder = await mkdtemp(join(tmpdir(), "handover-own-"));
		postgres = await startSystemPostgres();
		const { ownerUrl, serviceUrl } = await postgres.makeDatabase("shop");
		variables = { DATABASE_URL: serviceUrl, DATABASE_MIGRATION_URL: ownerUrl };
		const service = await startBuiltService(inFolder("data"), { variables });
		try {
			expect((await fetch(`${service.url}/readyz`)).status).toBe(200);
			links = await playScenarios({
				url: service.url,
				setUpLink: service.setUpLink ?? "",
				outFolder: inFolder("out"),
				withYear: false,
			});
		} finally {
			await service.stop();
		}
	});
	afterAll(async () => {
		await postgres?.stop();
		await rm(folder, { recursive: true, force: true });
	});

	it("migrates, seals, and gives receipts", async () => {
		expect(links.length).toBeGreaterThan(3);
		const files = await readdir(inFolder("out"), { recursive: true });
		const receipts = files.filter((name) => /receipt.*\.json$/.test(name));
		expect(receipts.length).toBeGreaterThan(0);
		for (const name of receipts) {
			expect(JSON.parse(await readFile(inFolder(join("out", name)), "utf8")).$format).toMatch(
				/^handover-risk\/receipt\//,
			);
		}
	});

	it("makes no built-in database, which it does not need", async () => {
		expect(await readdir(inFolder("data"))).not.toContain("database");
	});

	it("starts again on what it left", async () => {
		const again = await startBuiltService(inFolder("data"), { variables });
		try {
			expect(again.setUpLink).toBeNull();
			expect((await fetch(`${again.url}/readyz`)).status).toBe(200);
		} finally {
			await again.stop();
		}
	});
});
