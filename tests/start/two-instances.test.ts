/**
 * Two instances of the built service that seal into one log at once. The log's order is checked by `verifyLog`, which
 * shares no code with the making, and its root against the checkpoint that was signed last.
 */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { openPool } from "../../src/database/pool.ts";
import { verifyLog } from "../../src/operations/log/verify-log.ts";
import type { ServiceProcess } from "../../src/start/demo/service-process.ts";
import { startBuiltService } from "../setup/built-service.ts";
import { secondInstanceOf } from "../setup/second-instance.ts";
import { type Access, openOneOrder, seal, setUp } from "../trials/sealing-client.ts";

/** Without the lock, or with it in the statement that reads, the first dozens fail. `SEALS=5000` looks for what is rarer. */
const SEALS = Number(process.env.SEALS ?? 600);
const CLIENTS = 4;

let folder: string;
let otherFolder: string;
let services: ServiceProcess[] = [];
beforeAll(async () => {
	folder = await mkdtemp(join(tmpdir(), "handover-first-"));
	otherFolder = await mkdtemp(join(tmpdir(), "handover-second-"));
	const first = await startBuiltService(folder);
	services = [await startBuiltService(otherFolder, { variables: await secondInstanceOf(folder) }), first];
});
afterAll(async () => {
	for (const service of services) await service.stop();
	await rm(folder, { recursive: true, force: true });
	await rm(otherFolder, { recursive: true, force: true });
});

it(`make ${SEALS} seals of one log: no gap, none twice, one tree`, { timeout: 180_000 }, async () => {
	// The link that was printed last is the one that holds.
	const [second, first] = services as [ServiceProcess, ServiceProcess];
	const token = await setUp(second.url, second.setUpLink ?? "");
	const indexes: number[] = [];
	await Promise.all(
		Array.from({ length: CLIENTS }, async (_, client) => {
			const access: Access = { url: (client % 2 === 0 ? first : second).url, token };
			for (let done = 0; done < SEALS / CLIENTS; ) {
				for await (const draft of openOneOrder(access)) {
					indexes.push((await seal(access, draft)).index);
					done += 1;
				}
			}
		}),
	);
	expect(new Set(indexes).size).toBe(SEALS);
	const database = openPool((await secondInstanceOf(folder)).DATABASE_URL);
	try {
		// The tests' own app takes less for a passphrase: the service takes what it should.
		const [account] = await database.query<{ hash: string }>("SELECT passphrase_hash AS hash FROM account");
		expect(account?.hash).toMatch(/^scrypt\$32768\$8\$1\$/);
		const { size, rootSha256 } = await verifyLog(database);
		expect(size).toBe(2 * SEALS);
		const notes = await database.query<{ size: number; note: string }>(
			"SELECT size, note FROM checkpoint ORDER BY size",
		);
		expect(notes.map((row) => row.size)).toEqual(Array.from({ length: size }, (_, index) => index + 1));
		expect(Buffer.from(notes.at(-1)?.note.split("\n")[2] ?? "", "base64").toString("hex")).toBe(rootSha256);
	} finally {
		await database.close();
	}
});
