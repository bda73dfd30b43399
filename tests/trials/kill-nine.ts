/**
 * `npm run trials -- 20`: kills the service and the whole database with SIGKILL at a random moment while four clients
 * seal, starts it again, and reads back everything that was acknowledged. Ends with 1 where anything is lost.
 */
import { randomInt } from "node:crypto";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import pg from "pg";
import { freePort, type ServiceProcess, startServiceProcess } from "../../src/start/demo/service-process.ts";
import { secondInstanceOf } from "../setup/second-instance.ts";
import { killAll } from "./kill-all.ts";
import { type Access, type Acknowledged, isStillThere, sealUntilKilled, setUp } from "./sealing-client.ts";

const CLIENTS = 4;
/** The moment of the kill after the clients begin, milliseconds. Our choice: from the first request to full swing. */
const KILL_AFTER_MS = [20, 4000] as const;

const trials = Number(process.argv[2] ?? 20);
const folder = await mkdtemp(join(tmpdir(), "handover-trials-"));
const acknowledged: Acknowledged[] = [];
let lost = 0;
let token = "";
let service: ServiceProcess | null = null;
try {
	for (let trial = 1; trial <= trials; trial += 1) {
		service = await start();
		token ||= await setUp(service.url, service.setUpLink ?? "");
		const access: Access = { url: service.url, token };
		const before = acknowledged.length;
		const clients = Array.from({ length: CLIENTS }, () =>
			sealUntilKilled(access, (done) => {
				acknowledged.push(done);
			}),
		);
		const killAfterMs = randomInt(...KILL_AFTER_MS);
		await sleep(killAfterMs);
		await killAll(service, folder);
		await Promise.all(clients);
		const begun = performance.now();
		service = await start();
		const restartMs = Math.round(performance.now() - begun);
		const inTrial = acknowledged.slice(before);
		const lostHere = await countLost({ url: service.url, token }, inTrial);
		lost += lostHere;
		const seals = inTrial.filter((done) => done.act === "sealed").length;
		console.log(
			`trial ${trial}: killed after ${killAfterMs} ms, ${inTrial.length} acts acknowledged, ${seals} of them seals; up again in ${restartMs} ms; lost ${lostHere}`,
		);
		await service.stop();
	}
	service = await start();
	const lostInTheEnd = await countLost({ url: service.url, token }, acknowledged);
	const seals = acknowledged.filter((done) => done.act === "sealed").length;
	console.log(
		`${trials} trials, ${CLIENTS} clients: ${acknowledged.length} acts acknowledged, ${seals} of them seals; lost after their trial ${lost}, in the end ${lostInTheEnd}`,
	);
	console.log(await logFigures());
	lost += lostInTheEnd;
} finally {
	await service?.stop();
	await rm(folder, { recursive: true, force: true });
}
process.exitCode = lost === 0 ? 0 : 1;

async function start(): Promise<ServiceProcess> {
	return startServiceProcess({
		program: new URL("../dist/start/server.js", import.meta.url).pathname,
		variables: { PATH: process.env.PATH, DATA_DIR: folder, PORT: String(await freePort()), LOG_LEVEL: "silent" },
	});
}

async function countLost(access: Access, acts: readonly Acknowledged[]): Promise<number> {
	let count = 0;
	for (const done of acts) if (!(await isStillThere(access, done))) count += 1;
	return count;
}

/** Whether the log has a gap, as the serving role sees it. */
async function logFigures(): Promise<string> {
	const client = new pg.Client((await secondInstanceOf(folder)).DATABASE_URL);
	await client.connect();
	try {
		const { rows } = await client.query(
			"SELECT count(*)::int AS entries, coalesce(max(index), -1)::int AS newest FROM sealed_entry JOIN entry_projection USING (index)",
		);
		const { entries, newest } = rows[0];
		if (entries !== newest + 1) lost += 1;
		return `the log holds ${entries} entries, the newest is ${newest}: ${entries === newest + 1 ? "no gap" : "A GAP"}`;
	} finally {
		await client.end();
	}
}
