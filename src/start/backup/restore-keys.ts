/** The keys of a backup, beside those that may have outlived the data. */
import { createReadStream } from "node:fs";
import { mkdir, readdir } from "node:fs/promises";
import { dirname, join } from "node:path";
import { ERASURES_FILE, makeErasures } from "../erasures.ts";
import { readHashed, syncFolder, writeHashed } from "./hashed-file.ts";
import { keyPath, type Manifest } from "./manifest.ts";
import type { Run } from "./progress.ts";

/** @throws Error where a key of the same name and another content is there; neither is thrown away */
export async function restoreKeys(folder: string, keyFolder: string, manifest: Manifest, run: Run): Promise<void> {
	await mkdir(keyFolder, { recursive: true, mode: 0o700 });
	const there = await readdir(keyFolder);
	for (const { name, sha256 } of manifest.keys ?? []) {
		if (name === ERASURES_FILE) continue;
		const path = join(keyFolder, name);
		if (!there.includes(name)) await writeHashed(path, () => createReadStream(join(folder, keyPath(name))), run.stop);
		else if ((await readHashed(path, run.stop)).sha256 !== sha256) {
			throw new Error(`${path} is there with another content than in the backup: move one of the two away`);
		}
	}
	if (manifest.keys?.some(({ name }) => name === ERASURES_FILE)) await joinErasures(folder, keyFolder);
	await syncFolder(keyFolder);
	if (manifest.keys === null)
		run.say(`The backup holds no keys: put your copy of the key folder into ${keyFolder} before the start`);
	else run.say(`keys: ${manifest.keys.length} files`);
}

/** Both lists of erasures count: the backup's, and the one that outlived the data, which the next start carries out. */
async function joinErasures(folder: string, keyFolder: string): Promise<void> {
	const target = makeErasures(keyFolder);
	const known = new Set((await target.list()).map(({ partyId }) => partyId));
	const ofBackup = await makeErasures(dirname(join(folder, keyPath(ERASURES_FILE)))).list();
	for (const erasure of ofBackup) if (!known.has(erasure.partyId)) await target.note(erasure);
}
