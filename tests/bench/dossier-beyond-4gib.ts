/**
 * A dossier beyond 4 GiB on the disk, of one file of zeros: read by unzip, zipinfo and Python's zipfile, verified, and read in
 * by another service. Takes minutes and 15 GiB of disk; `FAR_MIB` sets another size. Ends with an error where one of them fails.
 */
import { spawnSync } from "node:child_process";
import { createWriteStream } from "node:fs";
import { chmod, mkdtemp, rm, stat } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Readable } from "node:stream";
import { pipeline } from "node:stream/promises";
import { freePort, startServiceProcess } from "../../src/start/demo/service-process.ts";
import { setUp } from "../trials/sealing-client.ts";
import { fillOrder } from "./fill-order.ts";
import { peakMib, resetPeak } from "./service-memory.ts";

const MIB = 1024 * 1024;
const PIECE_BYTES = 8 * MIB;

/** Prints what each said. */
export async function benchDossierBeyond4Gib(): Promise<void> {
	const sizeBytes = Number(process.env.FAR_MIB ?? 4608) * MIB;
	const folder = await mkdtemp(join(tmpdir(), "handover-far-"));
	// PostgreSQL runs as another user than root.
	await chmod(folder, 0o755);
	const path = join(folder, "far.zip");
	try {
		await makeDossier(join(folder, "service"), path, sizeBytes);
		console.log(`${(await stat(path)).size} bytes`);
		run("unzip", ["-t", path]);
		run("unzip", ["-Z", "-t", path]);
		run("unzip", ["-Z", path, "*/data/exhibits/*", "*/verify-offline.html"]);
		run("python3", ["-m", "zipfile", "-t", path]);
		run("node", ["dist/start/verify.js", path]);
		run("node", ["dist/start/import-dossier.js", path], { DATA_DIR: join(folder, "other") });
	} finally {
		await rm(folder, { recursive: true, force: true });
	}
}

async function makeDossier(dataDir: string, path: string, sizeBytes: number): Promise<void> {
	const service = await startServiceProcess({
		program: new URL("../dist/start/server.js", import.meta.url).pathname,
		variables: { PATH: process.env.PATH, DATA_DIR: dataDir, PORT: String(await freePort()), LOG_LEVEL: "silent" },
	});
	try {
		const access = { url: service.url, token: await setUp(service.url, service.setUpLink ?? "") };
		const orderId = await fillOrder(access, [{ sizeBytes, pieces: () => zeros(sizeBytes) }]);
		resetPeak(service);
		const answer = await fetch(`${access.url}/api/v1/orders/${orderId}/dossier.zip`, {
			headers: { authorization: `Bearer ${access.token}` },
		});
		if (!answer.ok || answer.body === null) throw new Error(`the dossier: ${answer.status} ${await answer.text()}`);
		await pipeline(Readable.fromWeb(answer.body as never), createWriteStream(path));
		console.log(`peak memory of the service while it sent: ${peakMib(service)} MiB`);
	} finally {
		await service.stop();
	}
}

function* zeros(sizeBytes: number): Generator<Uint8Array> {
	for (let at = 0; at < sizeBytes; at += PIECE_BYTES) {
		const piece = Buffer.alloc(Math.min(PIECE_BYTES, sizeBytes - at));
		if (at === 0) piece.write("%PDF-1.7\n");
		yield piece;
	}
}

function run(program: string, args: readonly string[], variables: NodeJS.ProcessEnv = {}): void {
	const begun = performance.now();
	const { status, stdout, stderr, error } = spawnSync(program, args, {
		encoding: "utf8",
		maxBuffer: 64 * MIB,
		env: { ...process.env, ...variables },
	});
	if (error !== undefined) throw error;
	const seconds = ((performance.now() - begun) / 1000).toFixed(0);
	const lines = (stdout + stderr).trimEnd().split("\n");
	const shown = lines.length > 12 ? [...lines.slice(0, 6), `… ${lines.length} lines …`, ...lines.slice(-6)] : lines;
	console.log([`\n${program} ${args.slice(0, -1).join(" ")}: status ${status}, ${seconds} s`, ...shown].join("\n"));
	if (status !== 0) throw new Error(`${program} found a fault`);
}
