/**
 * A dossier of large files against `zip -0` of the same files, in turns in the same run. Either reads files that lie in the
 * page cache (the service its encrypted store, zip the plain files), and writes an archive to the same disk, which is synced
 * before each turn. The service composes the report, reads and decrypts, and sends to `curl`, all on this machine; the CRC-32
 * it has kept since the upload. zip reads, and computes the CRC-32. Also the most memory that the service takes.
 * `DOSSIER_MIB` sets the size, 2048 where it is not given, which takes four times as much of disk and page cache.
 */
import { spawnSync } from "node:child_process";
import { randomBytes } from "node:crypto";
import { rmSync } from "node:fs";
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
const LARGEST_FILE_MIB = 128;
const TURNS = 3;

/** Prints the figures. */
export async function benchDossier(): Promise<void> {
	const totalMib = Number(process.env.DOSSIER_MIB ?? 2048);
	const fileMib = Math.min(totalMib, LARGEST_FILE_MIB);
	const count = Math.ceil(totalMib / fileMib);
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
				sizeBytes: fileMib * MIB,
				pieces: () => inventedPieces(join(files, `${index}.pdf`), fileMib),
			})),
		);
		const idle = peakMib(service);
		resetPeak(service);
		const turns = [];
		for (let turn = 0; turn < TURNS; turn++) {
			warm([files, join(folder, "exhibits")]);
			const dossier = fetchDossier(access, orderId, `${files}-dossier.zip`);
			warm([files, join(folder, "exhibits")]);
			const zip = timed(() => spawnSync("zip", ["-0", "-q", "-r", `${files}.zip`, files]));
			await rm(`${files}.zip`);
			turns.push({ ...dossier, zip });
		}
		const rate = (bytes: number, seconds: number) => `${(bytes / MIB / seconds).toFixed(0)} MiB/s`;
		const [{ bytes = 0 } = {}] = turns;
		console.log(`a dossier of ${(bytes / MIB).toFixed(0)} MiB, ${count} files of ${fileMib} MiB; ${TURNS} turns`);
		for (const { seconds, firstS, zip } of turns) {
			console.log(
				[
					`dossier ${rate(bytes, seconds)}, first byte after ${firstS.toFixed(2)} s, then ${rate(bytes, seconds - firstS)}`,
					`zip -0 ${rate(bytes, zip)}`,
					`dossier ÷ zip: ${(zip / seconds).toFixed(2)}, behind the first byte ${(zip / (seconds - firstS)).toFixed(2)}`,
				].join("; "),
			);
		}
		console.log(`peak memory of the service: ${peakMib(service)} MiB (before, with the uploads: ${idle} MiB)`);
	} finally {
		await service.stop();
		for (const made of [folder, files, `${files}.zip`, `${files}-dossier.zip`])
			await rm(made, { recursive: true, force: true });
	}
}

/** A file that nothing can make smaller, written beside as it is brought. */
async function* inventedPieces(path: string, mib: number): AsyncGenerator<Buffer> {
	for (let at = 0; at < mib; at += PIECE_MIB) {
		const bytes = randomBytes(PIECE_MIB * MIB);
		if (at === 0) bytes.write("%PDF-1.7\n");
		await appendFile(path, bytes);
		yield bytes;
	}
}

function fetchDossier({ url, token }: Access, orderId: string, path: string) {
	const { stdout, status } = spawnSync("curl", [
		...["-s", "-f", "-o", path, "-w", "%{size_download} %{time_total} %{time_starttransfer}"],
		...["-H", `authorization: Bearer ${token}`, `${url}/api/v1/orders/${orderId}/dossier.zip`],
	]);
	if (status !== 0) throw new Error(`the dossier: curl ended with ${status}`);
	const [bytes = 0, seconds = 0, firstS = 0] = stdout.toString().split(" ").map(Number);
	rmSync(path);
	return { bytes, seconds, firstS };
}

/** Reads all files below, so that they lie in the page cache, and puts on disk what was written before. */
function warm(folders: readonly string[]): void {
	spawnSync("sh", ["-c", 'find "$@" -type f -exec cat {} + > /dev/null; sync', "warm", ...folders]);
}

function timed(act: () => unknown): number {
	const begun = performance.now();
	act();
	return (performance.now() - begun) / 1000;
}
