/**
 * Takes a backup of a service that may be serving: one moment of the database, the files that belong to it, the keys. It
 * is written beside its place and renamed, so that a folder of its name is always a whole backup.
 */
import { createReadStream } from "node:fs";
import { mkdir, readdir, rename, rm, stat } from "node:fs/promises";
import { dirname, join } from "node:path";
import { type CopySession, readOneMoment } from "../../database/backup/copy-session.ts";
import { listTables } from "../../database/backup/tables.ts";
import { storedLeaves } from "../../database/log-rows.ts";
import { appliedMigrations } from "../../database/migrate.ts";
import { allExhibits } from "../../database/records.ts";
import { exhibitPlace } from "../../exhibits/store.ts";
import { growingTree } from "../../records/verify/growing-tree.ts";
import { syncFolder, writeHashed } from "./hashed-file.ts";
import { BACKUP_FORMAT, keyPath, type Manifest, manifestText, tablePath } from "./manifest.ts";
import { progressOf, type Run } from "./progress.ts";

const LEAVES_PER_QUERY = 10_000;

export interface BackupSource {
	/** The owner's connection: it may read every table. */
	readonly ownerUrl: string;
	readonly exhibitFolder: string;
	/** Null to leave the keys out. */
	readonly keyFolder: string | null;
}

/**
 * Writes the backup `folder`.
 * @throws Error where the folder is there already, or something of the backup cannot be read; then nothing is left
 */
export async function writeBackup(source: BackupSource, folder: string, run: Run): Promise<Manifest> {
	if (await stat(folder).catch(() => null)) throw new Error(`${folder} is there already: name a new folder`);
	const incoming = `${folder}.incoming-${process.pid}`;
	await mkdir(incoming, { recursive: true, mode: 0o700 });
	try {
		const manifest = await readOneMoment(source.ownerUrl, async (session) => {
			const moment = await momentOf(session);
			const tables = await writeTables(session, incoming, run);
			const exhibits = await writeExhibits(session, source.exhibitFolder, incoming, run);
			// After the tables: a key is in its folder before the log says so, so every key that they name is there by now.
			const keys = source.keyFolder === null ? null : await writeKeys(source.keyFolder, incoming, run);
			return { $format: BACKUP_FORMAT, ...moment, tables, exhibits, keys } satisfies Manifest;
		});
		const { sha256 } = await writeHashed(join(incoming, "manifest.json"), manifestText(manifest), run.stop);
		await writeHashed(join(incoming, "manifest.json.sha256"), `${sha256}  manifest.json\n`, run.stop);
		for (const entry of await readdir(incoming, { recursive: true, withFileTypes: true })) {
			if (entry.isDirectory()) await syncFolder(join(entry.parentPath, entry.name));
		}
		await syncFolder(incoming);
		run.stop.throwIfAborted();
		await rename(incoming, folder);
		await syncFolder(dirname(folder));
		return manifest;
	} catch (error) {
		await rm(incoming, { recursive: true, force: true });
		throw error;
	}
}

/** What the whole backup shows. The first query decides the moment. */
async function momentOf(session: CopySession) {
	const [row] = await session.query<{ taken_at: Date; version: string }>(
		"SELECT transaction_timestamp() AS taken_at, current_setting('server_version') AS version",
	);
	if (row === undefined) throw new Error("a SELECT without FROM gave no row");
	return {
		takenAt: row.taken_at.toISOString(),
		serverVersion: row.version,
		migrations: await appliedMigrations(session),
		log: await logOf(session),
	};
}

/** Size and root of the log, from its leaves. */
async function logOf(session: CopySession): Promise<Manifest["log"]> {
	const tree = growingTree();
	for (;;) {
		const leaves = await storedLeaves(session, tree.size, LEAVES_PER_QUERY);
		for (const leaf of leaves) tree.add(leaf);
		if (leaves.length < LEAVES_PER_QUERY) return { size: tree.size, rootSha256: tree.root() };
	}
}

async function writeTables(session: CopySession, folder: string, run: Run): Promise<Manifest["tables"]> {
	const shapes = await listTables(session);
	const written: Manifest["tables"] = [];
	for (const table of shapes) {
		const { sha256, lines } = await writeHashed(
			join(folder, tablePath(table.name)),
			() => session.copyOut(table),
			run.stop,
		);
		written.push({ name: table.name, columns: [...table.columns], rows: lines, sha256 });
		if (lines > 0) run.say(`table ${table.name}: ${lines} rows`);
	}
	return written;
}

async function writeExhibits(
	session: CopySession,
	exhibitFolder: string,
	folder: string,
	run: Run,
): Promise<Manifest["exhibits"]> {
	const listed = await allExhibits(session);
	const written: Manifest["exhibits"] = [];
	const progress = progressOf(run, "exhibits", listed.length);
	await mkdir(join(folder, "exhibits"), { mode: 0o700 });
	for (const [place, { sha256 }] of listed.entries()) {
		const path = exhibitPlace(exhibitFolder, sha256);
		const facts = await writeHashed(
			exhibitPlace(join(folder, "exhibits"), sha256),
			() => createReadStream(path),
			run.stop,
		).catch((error: NodeJS.ErrnoException) => {
			throw error.code === "ENOENT" ? new Error(`exhibit ${sha256} is missing: ${path} is not there`) : error;
		});
		if (facts.sha256 !== sha256) throw new Error(`exhibit ${sha256} has changed on disk: it is ${facts.sha256} now`);
		written.push({ sha256, sizeBytes: facts.sizeBytes });
		progress(place + 1);
	}
	if (listed.length > 0) run.say(`exhibits: ${listed.length} files`);
	return written;
}

async function writeKeys(keyFolder: string, folder: string, run: Run): Promise<Manifest["keys"]> {
	await mkdir(join(folder, "keys"), { mode: 0o700 });
	const names = (await readdir(keyFolder)).filter((name) => !name.includes(".incoming")).sort();
	const written: NonNullable<Manifest["keys"]> = [];
	for (const name of names) {
		const { sha256 } = await writeHashed(
			join(folder, keyPath(name)),
			() => createReadStream(join(keyFolder, name)),
			run.stop,
		);
		written.push({ name, sha256 });
	}
	return written;
}
