/**
 * A dossier of large files, from the first request on: bytes per second over HTTP, against `zip -0` of the same files in the
 * same run, and the most memory that the service takes. `DOSSIER_MIB` sets the size, 2048 where it is not given.
 */
import { spawnSync } from "node:child_process";
import { randomBytes } from "node:crypto";
import { appendFile, mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { freePort, startServiceProcess } from "../../src/start/demo/service-process.ts";
import { setUp } from "../trials/sealing-client.ts";
import type { Access } from "./bring-file.ts";
import { fillOrder } from "./fill-order.ts";
import { peakMib, resetPeak } from "./service-memory.ts";

const MIB = 1024 * 1024;
const PIECE_MIB = 8;
const FILE_MIB = 128;

/** Prints the figures. */
export async function benchDossier(): Promise<void> {
	const count = Math.ceil(Number(process.env.DOSSIER_MIB ?? 2048) / FILE_MIB);
	const folder = await mkdtemp(join(tmpdir(), "handover-bench-"));
	const files = await mkdtemp(join(tmpdir(), "handover-bench-files-"));
	const service = await startServiceProcess({
		program: new URL("../dist/start/server.js", import.meta.url).pathname,
		variables: {
			PATH: process.env.PATH,
			DATA_DIR: folder,
			PORT: String(await freePort()),
			LOG_LEVEL: "silent",
		},
	});
	try {
		const access = { url: service.url, token: await setUp(service.url, service.setUpLink ?? "") };
		const orderId = await fillOrder(
			access,
			Array.from({ length: count }, (_, index) => ({
				sizeBytes: FILE_MIB * MIB,
				pieces: () => inventedPieces(join(files, `${index}.pdf`)),
			})),
		);
		const idle = peakMib(service);
		resetPeak(service);
		const first = await fetchDossier(access, orderId);
		const again = await fetchDossier(access, orderId);
		const zip = timed(() => spawnSync("zip", ["-0", "-q", "-r", `${files}.zip`, files]));
		const rate = (seconds: number) => `${(first.bytes / MIB / seconds).toFixed(0)} MiB/s`;
		console.log(`a dossier of ${(first.bytes / MIB).toFixed(0)} MiB, ${count} files of ${FILE_MIB} MiB`);
		console.log(`first request: ${rate(first.seconds)}, first byte after ${first.firstMs} ms`);
		console.log(`again: ${rate(again.seconds)}, first byte after ${again.firstMs} ms`);
		console.log(`zip -0 of the same files: ${rate(zip)}; again ÷ zip: ${(zip / again.seconds).toFixed(2)}`);
		console.log(`peak memory of the service: ${peakMib(service)} MiB (before, with the uploads: ${idle} MiB)`);
	} finally {
		await service.stop();
		for (const made of [folder, files, `${files}.zip`]) await rm(made, { recursive: true, force: true });
	}
}

/** A file that nothing can make smaller, written beside as it is brought. */
async function* inventedPieces(path: string): AsyncGenerator<Buffer> {
	for (let at = 0; at < FILE_MIB; at += PIECE_MIB) {
		const bytes = randomBytes(PIECE_MIB * MIB);
		if (at === 0) bytes.write("%PDF-1.7\n");
		await appendFile(path, bytes);
		yield bytes;
	}
}

async function fetchDossier({ url, token }: Access, orderId: string) {
	const begun = performance.now();
	const answer = await fetch(`${url}/api/v1/orders/${orderId}/dossier.zip`, {
		headers: { authorization: `Bearer ${token}` },
	});
	if (!answer.ok || answer.body === null) throw new Error(`the dossier: ${answer.status}`);
	const firstMs = Math.round(performance.now() - begun);
	let bytes = 0;
	for await (const chunk of answer.body) bytes += (chunk as Uint8Array).length;
	return { bytes, firstMs, seconds: (performance.now() - begun) / 1000 };
}

function timed(act: () => unknown): number {
	const begun = performance.now();
	act();
	return (performance.now() - begun) / 1000;
}
