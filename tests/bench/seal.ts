/**
 * Seals per second over HTTP with one and two instances, as a ratio to the floor: a bare fastify route that inserts one row
 * of the same size into the same database with the same durability. Then the time that a proof takes as the log grows, as a
 * ratio to reading one row by its primary key.
 */
import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createInterface } from "node:readline";
import pg from "pg";
import { freePort, startServiceProcess } from "../../src/start/demo/service-process.ts";
import { secondInstanceOf } from "../setup/second-instance.ts";
import { type OpenDraft, openOneOrder, seal, setUp } from "../trials/sealing-client.ts";
import { benchProofs } from "./proofs.ts";

const CLIENTS = 8;
const SEALS = 600;
const ROUNDS = 3;

/** Prints the figures. */
export async function benchSeal(): Promise<void> {
	const folder = await mkdtemp(join(tmpdir(), "handover-bench-"));
	const otherFolder = await mkdtemp(join(tmpdir(), "handover-bench-"));
	const first = await startService(folder, {});
	try {
		const token = await setUp(first.url, first.setUpLink ?? "");
		const second = await secondInstanceOf(folder);
		const other = await startService(otherFolder, second);
		const one = (url: string) => ({ url, token });
		await sealAll([one(first.url)]);
		const floor = await startFloor(second);
		try {
			const figures = { floor: [] as number[], one: [] as number[], two: [] as number[] };
			// A first round warms everything up and is not counted.
			for (let round = 0; round <= ROUNDS; round += 1) {
				const measured = {
					floor: await perSecond(SEALS * 2, () => insertAtFloor(floor.url)),
					one: await sealAll([one(first.url)]),
					two: await sealAll([one(first.url), one(other.url)]),
				};
				if (round > 0) for (const key of ["floor", "one", "two"] as const) figures[key].push(measured[key]);
			}
			const [atFloor, atOne, atTwo] = [median(figures.floor), median(figures.one), median(figures.two)];
			console.log(
				`${CLIENTS} clients, ${SEALS} seals a round, median of ${ROUNDS} rounds, rows of ${floor.bytes} bytes`,
			);
			console.log(`floor, bare route inserting one row: ${atFloor.toFixed(0)} per second`);
			console.log(`seals, one instance: ${atOne.toFixed(0)} per second, ${(atOne / atFloor).toFixed(2)} of the floor`);
			console.log(`seals, two instances: ${atTwo.toFixed(0)} per second, ${(atTwo / atFloor).toFixed(2)} of the floor`);
		} finally {
			floor.stop();
			await other.stop();
		}
	} finally {
		await first.stop();
		await rm(folder, { recursive: true, force: true });
		await rm(otherFolder, { recursive: true, force: true });
	}
	await benchProofs();
}

type Access = Parameters<typeof seal>[0];

/** Seals as many drafts as asked, made before the clock starts, spread over the instances. */
async function sealAll(instances: readonly Access[]): Promise<number> {
	const drafts: OpenDraft[] = [];
	while (drafts.length < SEALS) for await (const draft of openOneOrder(instances[0] as Access)) drafts.push(draft);
	let next = 0;
	return perSecond(SEALS, () => {
		const place = next++;
		return seal(instances[place % instances.length] as Access, drafts[place] as OpenDraft);
	});
}

async function perSecond(count: number, act: () => Promise<unknown>): Promise<number> {
	let left = count;
	const begun = performance.now();
	await Promise.all(
		Array.from({ length: CLIENTS }, async () => {
			while (left-- > 0) await act();
		}),
	);
	return (count / (performance.now() - begun)) * 1000;
}

async function insertAtFloor(url: string): Promise<void> {
	const answer = await fetch(url, { method: "POST" });
	if (answer.status !== 200) throw new Error(await answer.text());
	await answer.json();
}

async function startService(folder: string, variables: Readonly<Record<string, string>>) {
	return startServiceProcess({
		program: new URL("../dist/start/server.js", import.meta.url).pathname,
		variables: {
			PATH: process.env.PATH,
			DATA_DIR: folder,
			PORT: String(await freePort()),
			LOG_LEVEL: "silent",
			...variables,
		},
	});
}

/** What a seal adds on average, bytes: entry, statement, checkpoint, openings (encrypted, and their commitments as hex), and one subtree. */
const SEAL_BYTES = `SELECT round(avg(octet_length(entry_bytes) + octet_length(statement_bytes) + octet_length(note) + 64
	+ (SELECT sum(octet_length(personal) + 64) FROM opening WHERE subject = p.subject)))::int AS bytes
	FROM sealed_entry s JOIN entry_projection p USING (index) JOIN checkpoint c ON c.size = s.index + 1
	WHERE p.kind = 'record-sealed'`;

async function startFloor(database: Awaited<ReturnType<typeof secondInstanceOf>>) {
	const owner = new pg.Client(database.DATABASE_MIGRATION_URL);
	await owner.connect();
	const { bytes } = (await owner.query(SEAL_BYTES)).rows[0] as { bytes: number };
	await owner.query(
		"CREATE TABLE floor_row (id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY, bytes bytea NOT NULL)",
	);
	await owner.end();
	const program = new URL("floor-server.js", import.meta.url).pathname;
	const child = spawn(process.execPath, [program, database.DATABASE_MIGRATION_URL, String(bytes)], {
		stdio: ["ignore", "pipe", "inherit"],
	});
	const [url] = (await once(createInterface({ input: child.stdout }), "line")) as [string];
	return { url, bytes, stop: () => child.kill() };
}

function median(values: readonly number[]): number {
	return [...values].sort((one, other) => one - other)[Math.floor(values.length / 2)] ?? Number.NaN;
}
