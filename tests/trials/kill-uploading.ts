/**
 * `npm run trials-uploads -- 20`: kills the service and the whole database with SIGKILL at a random moment while three
 * clients bring files piece by piece, starts it again, and looks: nothing acknowledged is lost, nothing half there is shown,
 * every open upload goes on to its end, and the store holds no file that no row knows. Ends with 1 where that fails.
 */
import { randomInt } from "node:crypto";
import { mkdtemp, readdir, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import pg from "pg";
import { freePort, type ServiceProcess, startServiceProcess } from "../../src/start/demo/service-process.ts";
import { secondInstanceOf } from "../setup/second-instance.ts";
import { killAll } from "./kill-all.ts";
import { type Access, setUp } from "./sealing-client.ts";
import { type Bringing, bringUntilKilled, isWhole, openDraft, resumed } from "./uploading-client.ts";

const CLIENTS = 3;
/** The moment of the kill after the clients begin to bring files, milliseconds. Our choice. */
const KILL_AFTER_MS = [20, 3000] as const;

const trials = Number(process.argv[2] ?? 20);
const folder = await mkdtemp(join(tmpdir(), "handover-trials-"));
const all: Bringing[] = [];
let [lost, halves, acknowledged, open, atEnd] = [0, 0, 0, 0, 0];
let token = "";
let service: ServiceProcess | null = null;
try {
	service = await start();
	for (let trial = 1; trial <= trials; trial += 1) {
		token ||= await setUp(service.url, service.setUpLink ?? "");
		const brought: Bringing[] = [];
		const access: Access = { url: service.url, token };
		const drafts = await Promise.all(Array.from({ length: CLIENTS }, () => openDraft(access)));
		const clients = drafts.map((draft) => bringUntilKilled(access, draft, (begun) => brought.push(begun)));
		const killAfterMs = randomInt(...KILL_AFTER_MS);
		await sleep(killAfterMs);
		await killAll(service, folder);
		await Promise.all(clients);
		service = await start();
		const again: Access = { url: service.url, token };
		const cut = brought.filter(({ content }) => content !== null);
		const begun = cut.filter(({ acknowledgedBytes }) => acknowledgedBytes > 0).length;
		// All but acknowledged: killed between the last bytes and the answer.
		atEnd += (await Promise.all(cut.map((one) => isAllThere(again, one)))).filter(Boolean).length;
		let lostHere = 0;
		for (const one of brought) if (!(await resumed(again, one))) lostHere += 1;
		const halvesHere = await countHalves(again, brought);
		lost += lostHere;
		halves += halvesHere;
		open += cut.length;
		acknowledged += brought.length - cut.length;
		all.push(...brought);
		console.log(
			`trial ${trial}: killed after ${killAfterMs} ms, ${brought.length - cut.length} files acknowledged, ${cut.length} open, ${begun} of them begun; lost ${lostHere}, half there ${halvesHere}`,
		);
	}
	const halvesInTheEnd = await countHalves({ url: service.url, token }, all);
	const strays = await countStrays();
	console.log(
		`${trials} trials, ${CLIENTS} clients: ${acknowledged} files acknowledged before a kill, ${open} cut and gone on with, ${atEnd} of them between their last byte and the answer; lost ${lost}, half there ${halves}, in the end ${halvesInTheEnd}; files in the store that no row knows: ${strays}`,
	);
	lost += halves + halvesInTheEnd + strays;
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

async function isAllThere(access: Access, { url }: Bringing): Promise<boolean> {
	const answer = await fetch(access.url + url, { headers: { authorization: `Bearer ${access.token}` } });
	const { offsetBytes, sizeBytes } = (await answer.json()) as { offsetBytes?: number; sizeBytes?: number };
	return offsetBytes !== undefined && offsetBytes === sizeBytes;
}

/** Records that show a file that is not whole, or lack one that was acknowledged. */
async function countHalves(access: Access, brought: readonly Bringing[]): Promise<number> {
	let count = 0;
	for (const recordId of new Set(brought.map((one) => one.recordId))) {
		const ofRecord = brought.filter((one) => one.recordId === recordId);
		if (!(await isWhole(access, recordId, ofRecord))) count += 1;
	}
	return count;
}

/** Files of the store that no row names. */
async function countStrays(): Promise<number> {
	const client = new pg.Client((await secondInstanceOf(folder)).DATABASE_URL);
	await client.connect();
	try {
		const { rows } = await client.query("SELECT stored_sha256 AS name FROM exhibit");
		const known = new Set(rows.map(({ name }) => name));
		const entries = await readdir(join(folder, "exhibits"), { recursive: true, withFileTypes: true });
		return entries.filter((entry) => entry.isFile() && !known.has(entry.name)).length;
	} finally {
		await client.end();
	}
}
