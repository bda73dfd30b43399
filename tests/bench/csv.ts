/**
 * A recorder's table: rows per second to impacts and pyramids, against csv-parse that only parts the same bytes into fields, in the
 * same run; and the peak memory of processes that read 10^5, 10^6 and 10^7 rows as a stream.
 */
import { spawn } from "node:child_process";
import { once } from "node:events";
import { createReadStream, createWriteStream } from "node:fs";
import { mkdtemp, rm, stat } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parse } from "csv-parse";

const COMPARED_ROWS = 1_000_000;
const MEMORY_ROWS = [100_000, 1_000_000, 10_000_000];
const ROUNDS = 3;

/** Prints the figures. */
export async function benchCsv(): Promise<void> {
	const folder = await mkdtemp(join(tmpdir(), "handover-bench-csv-"));
	try {
		const compared = join(folder, "compared.csv");
		await writeTable(compared, COMPARED_ROWS);
		const [ours, theirs] = [[] as number[], [] as number[]];
		for (let round = 0; round <= ROUNDS; round += 1) {
			const ourSeconds = (await readApart(compared)).seconds;
			const theirSeconds = await csvParseSeconds(compared);
			if (round === 0) continue;
			ours.push(ourSeconds);
			theirs.push(theirSeconds);
		}
		const perSecond = (seconds: readonly number[]) => COMPARED_ROWS / median(seconds);
		const bytes = (await stat(compared)).size;
		console.log(
			`${COMPARED_ROWS} rows of time, three axes and temperature, ${(bytes / 1e6).toFixed(1)} MB, median of ${ROUNDS}`,
		);
		console.log(`to impacts and pyramids: ${Math.round(perSecond(ours))} rows/s`);
		console.log(
			`csv-parse, fields alone: ${Math.round(perSecond(theirs))} rows/s; ours ${(perSecond(ours) / perSecond(theirs)).toFixed(1)} times`,
		);
		for (const rows of MEMORY_ROWS) {
			const file = join(folder, `${rows}.csv`);
			await writeTable(file, rows);
			const { peakMb, seconds, events } = await readApart(file);
			console.log(`${rows} rows: peak memory ${peakMb.toFixed(0)} MB, ${seconds.toFixed(1)} s, ${events} impacts`);
			await rm(file);
		}
	} finally {
		await rm(folder, { recursive: true, force: true });
	}
}

/** Noise around rest with an impact every 20,000 rows, at 1600 samples a second; the same at every run. */
async function writeTable(path: string, rows: number): Promise<void> {
	const file = createWriteStream(path);
	file.write("time [s],x [g],y [g],z [g],temp [degC]\n");
	let state = 1;
	const noise = () => {
		state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
		return (state / 2 ** 32 - 0.5) / 5;
	};
	let lines: string[] = [];
	for (let row = 0; row < rows; row += 1) {
		const into = row % 20_000;
		const pulse = into < 16 ? 40 * Math.sin((Math.PI * into) / 16) : 0;
		lines.push(
			`${(row / 1600).toFixed(6)},${noise().toFixed(4)},${noise().toFixed(4)},${(1 + noise() + pulse).toFixed(4)},21.5`,
		);
		if (lines.length < 5000 && row < rows - 1) continue;
		if (!file.write(`${lines.join("\n")}\n`)) await once(file, "drain");
		lines = [];
	}
	file.end();
	await once(file, "finish");
}

interface Read {
	readonly seconds: number;
	readonly peakMb: number;
	readonly events: number;
}

/** In a process of its own, so that its peak memory is that of the reading alone. */
async function readApart(path: string): Promise<Read> {
	const child = spawn(process.execPath, [fileURLToPath(new URL("csv-reader.js", import.meta.url)), path], {
		stdio: ["ignore", "pipe", "inherit"],
	});
	let out = "";
	child.stdout.on("data", (text) => {
		out += text;
	});
	await once(child, "close");
	return JSON.parse(out) as Read;
}

async function csvParseSeconds(path: string): Promise<number> {
	const begun = performance.now();
	let rows = 0;
	const parser = createReadStream(path).pipe(parse());
	for await (const _ of parser) rows += 1;
	if (rows !== COMPARED_ROWS + 1) throw new Error(`csv-parse read ${rows} rows`);
	return (performance.now() - begun) / 1000;
}

function median(values: readonly number[]): number {
	return [...values].sort((one, other) => one - other)[Math.floor(values.length / 2)] ?? Number.NaN;
}
