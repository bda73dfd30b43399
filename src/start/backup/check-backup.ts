/** Reads a backup through before anything of it is used: every file is there, whole, and the one that was written. */
import { readFile } from "node:fs/promises";
import { join, relative } from "node:path";
import { exhibitPlace } from "../../exhibits/store.ts";
import { type FileFacts, readHashed } from "./hashed-file.ts";
import { keyPath, type Manifest, parseManifest, tablePath } from "./manifest.ts";
import { progressOf, type Run } from "./progress.ts";

/** @throws Error naming the first file that is missing, cut short or changed */
export async function checkBackup(folder: string, run: Run): Promise<Manifest> {
	const manifest = await readManifest(folder, run);
	for (const { name, rows, sha256 } of manifest.tables) {
		const facts = await factsOf(folder, run.stop, tablePath(name));
		if (facts.lines !== rows)
			throw new Error(`${tablePath(name)} holds ${facts.lines} rows, the manifest says ${rows}`);
		refuseChanged(tablePath(name), facts.sha256, sha256);
	}
	const progress = progressOf(run, "exhibits checked", manifest.exhibits.length);
	for (const [place, { sha256 }] of manifest.exhibits.entries()) {
		const path = relative(folder, exhibitPlace(join(folder, "exhibits"), sha256));
		refuseChanged(path, (await factsOf(folder, run.stop, path)).sha256, sha256);
		progress(place + 1);
	}
	for (const { name, sha256 } of manifest.keys ?? []) {
		refuseChanged(keyPath(name), (await factsOf(folder, run.stop, keyPath(name))).sha256, sha256);
	}
	run.say(
		`The backup of ${manifest.takenAt} is whole: PostgreSQL ${manifest.serverVersion}, ${manifest.log.size} log entries`,
	);
	return manifest;
}

async function readManifest(folder: string, run: Run): Promise<Manifest> {
	const { sha256 } = await factsOf(folder, run.stop, "manifest.json");
	const noted = await readFile(join(folder, "manifest.json.sha256"), "utf8").catch(() => {
		throw new Error("manifest.json.sha256 is missing from the backup");
	});
	refuseChanged("manifest.json", sha256, noted.slice(0, 64));
	return parseManifest(await readFile(join(folder, "manifest.json"), "utf8"));
}

async function factsOf(folder: string, stop: AbortSignal, path: string): Promise<FileFacts> {
	try {
		return await readHashed(join(folder, path), stop);
	} catch (error) {
		stop.throwIfAborted();
		const { code, message } = error as NodeJS.ErrnoException;
		throw new Error(code === "ENOENT" ? `${path} is missing from the backup` : `${path} cannot be read: ${message}`);
	}
}

function refuseChanged(path: string, found: string, expected: string): void {
	if (found !== expected)
		throw new Error(`${path} is not the file that was written: its SHA-256 is ${found}, expected ${expected}`);
}
