/**
 * A recorder's table by resumable upload and read in the background: seconds, and the most memory that the service takes, for
 * short and long tables. `RECORDING_ROWS` names others than 10^5 and 10^7 rows.
 */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { freePort, startServiceProcess } from "../../src/start/demo/service-process.ts";
import { openOneOrder, setUp } from "../trials/sealing-client.ts";
import { type Access, bringFile } from "./bring-file.ts";
import { peakMib, resetPeak } from "./service-memory.ts";

const ROWS_PER_PIECE = 100_000;
/** The same width in every row, so that the size is known before. */
const rowOf = (index: number) => `${(index / 1600).toFixed(6).padStart(14, "0")},0.0000,0.0000,${zOf(index)},21.50\n`;
/** At rest, with a pulse of 10 ms every 20,000 rows. */
const zOf = (index: number) =>
	(index % 20_000 < 16 ? 30 * Math.sin((Math.PI * (index % 20_000)) / 16) : 1).toFixed(4).padStart(8, "0");
const HEADER = "time [s],x [g],y [g],z [g],temp [degC]\n";
const READING = {
	place: "on-item",
	device: "recorder",
	unitsConfirmed: true,
	mapping: {
		time: { column: 1, unit: "s" },
		axes: [2, 3, 4].map((column) => ({ column, unit: "Gn" })),
		temperature: { column: 5, unit: "degC" },
	},
};

/** Prints the figures. */
export async function benchRecording(): Promise<void> {
	const folder = await mkdtemp(join(tmpdir(), "handover-bench-"));
	const service = await startServiceProcess({
		program: new URL("../dist/start/server.js", import.meta.url).pathname,
		variables: { PATH: process.env.PATH, DATA_DIR: folder, PORT: String(await freePort()), LOG_LEVEL: "silent" },
	});
	try {
		const access = { url: service.url, token: await setUp(service.url, service.setUpLink ?? "") };
		const consignment = await legOf(access);
		console.log(`peak memory of the service before: ${peakMib(service)} MiB`);
		for (const rows of (process.env.RECORDING_ROWS ?? "100000,10000000").split(",").map(Number)) {
			resetPeak(service);
			const sizeBytes = HEADER.length + rows * rowOf(0).length;
			const uploaded = await timed(() =>
				bringFile(access, { filename: "trip.csv", consignment }, sizeBytes, pieces(rows)),
			);
			const whileUploaded = peakMib(service);
			resetPeak(service);
			const { recordingId } = await ask(access, "GET", uploaded.answer);
			const read = await timed(() => readIt(access, `/api/v1/transit-recordings/${recordingId}`));
			console.log(
				`${rows} rows, ${(sizeBytes / 1e6).toFixed(0)} MB: uploaded in ${uploaded.seconds.toFixed(1)} s, peak ${whileUploaded} MiB; read in ${read.seconds.toFixed(1)} s, peak ${peakMib(service)} MiB; ${read.answer} impacts`,
			);
		}
	} finally {
		await service.stop();
		await rm(folder, { recursive: true, force: true });
	}
}

async function legOf(access: Access): Promise<string> {
	for await (const draft of openOneOrder(access))
		return (await ask(access, "GET", `/api/v1/records/${draft.id}`)).consignmentId;
	throw new Error("an order without a draft");
}

function* pieces(rows: number): Generator<Buffer> {
	for (let from = 0; from < rows; from += ROWS_PER_PIECE) {
		const lines = Array.from({ length: Math.min(ROWS_PER_PIECE, rows - from) }, (_, index) => rowOf(from + index));
		yield Buffer.from((from === 0 ? HEADER : "") + lines.join(""));
	}
}

/** Says how it is to be read, and waits for the end; gives the number of impacts. */
async function readIt(access: Access, path: string): Promise<number> {
	let view = await ask(access, "PUT", `${path}/reading`, READING);
	while (view.pending !== null) {
		if (view.pending.status !== "being-read") throw new Error(JSON.stringify(view.pending));
		await sleep(200);
		view = await ask(access, "GET", path);
	}
	return view.result.eventsFound;
}

async function timed<Answer>(act: () => Promise<Answer>) {
	const begun = performance.now();
	const answer = await act();
	return { answer, seconds: (performance.now() - begun) / 1000 };
}

async function ask({ url, token }: Access, method: string, path: string, body?: object) {
	const answer = await fetch(url + path, {
		method,
		headers: { authorization: `Bearer ${token}`, "content-type": "application/json" },
		...(body === undefined ? {} : { body: JSON.stringify(body) }),
	});
	if (!answer.ok) throw new Error(`${method} ${path}: ${answer.status} ${await answer.text()}`);
	// biome-ignore lint/suspicious/noExplicitAny: answers of many shapes, of which a few members are read.
	return (await answer.json()) as any;
}
