/**
 * Puts a backup into an empty place. Files come first and the database's rows last, in one transaction that ends only when
 * the whole log has been checked; so what is there in the end is all of it, or nothing.
 */
import { createReadStream } from "node:fs";
import { join } from "node:path";
import { type CopySession, writeAllOrNothing } from "../../database/backup/copy-session.ts";
import { listTables } from "../../database/backup/tables.ts";
import { holdRestoredMails } from "../../database/mail.ts";
import { migrate, readMigrations } from "../../database/migrate.ts";
import { openPool } from "../../database/pool.ts";
import { exhibitPlace } from "../../exhibits/store.ts";
import { verifyLog } from "../../operations/log/verify-log.ts";
import { syncFolder, writeHashed } from "./hashed-file.ts";
import { type Manifest, tablePath } from "./manifest.ts";
import { progressOf, type Run } from "./progress.ts";
import { refuseUsedDatabase } from "./refuse-used-database.ts";
import { restoreKeys } from "./restore-keys.ts";

export interface RestoreTarget {
	/** The owner's connection to a database without a row of ours. */
	readonly ownerUrl: string;
	/** An empty folder. */
	readonly exhibitFolder: string;
	/** May hold keys already, where the disk of the keys outlived that of the data. */
	readonly keyFolder: string;
	/** Where this release's migrations lie. */
	readonly migrationFolder: string;
}

/**
 * Restores a backup that was found whole (`checkBackup`).
 * @throws Error, in one line, where this release cannot take it, the place is not empty, or the log does not hold together
 */
export async function restoreBackup(
	folder: string,
	manifest: Manifest,
	target: RestoreTarget,
	run: Run,
): Promise<void> {
	await refuseUnknownMigrations(manifest, target.migrationFolder);
	const owner = openPool(target.ownerUrl, { maxConnections: 2 });
	try {
		await refuseUsedDatabase(owner, manifest);
		await migrate(
			owner,
			target.migrationFolder,
			manifest.migrations.map(({ name }) => name),
		);
	} finally {
		await owner.close();
	}
	run.say(`Migrated the database to ${manifest.migrations.at(-1)?.name}`);
	await restoreExhibits(folder, target.exhibitFolder, manifest, run);
	await writeAllOrNothing(target.ownerUrl, async (session) => {
		await fillTables(session, folder, manifest, run);
		const log = await verifyLog(session, progressOf(run, "log entries checked", manifest.log.size));
		if (log.size !== manifest.log.size || log.rootSha256 !== manifest.log.rootSha256) {
			throw new Error(`the log has ${log.size} entries and root ${log.rootSha256}, the manifest says otherwise`);
		}
		run.say(
			`The log holds together: ${log.size} entries, ${log.checkpoints} signed checkpoints, root ${log.rootSha256}`,
		);
		const held = await holdRestoredMails(session);
		if (held > 0) run.say(`Mails that may have been sent since the backup: ${held}; they are shown as not clear`);
		await restoreKeys(folder, target.keyFolder, manifest, run);
	});
}

async function refuseUnknownMigrations(manifest: Manifest, folder: string): Promise<void> {
	const known = await readMigrations(folder);
	for (const { name, sha256 } of manifest.migrations) {
		if (known.some((file) => file.name === name && file.sha256 === sha256)) continue;
		throw new Error(
			`the backup was taken after migration ${name}, which this release does not know: restore it with the release that took it, or a newer one`,
		);
	}
}

async function fillTables(session: CopySession, folder: string, manifest: Manifest, run: Run): Promise<void> {
	const shapes = new Map((await listTables(session)).map((table) => [table.name, table]));
	for (const { name, columns, rows } of manifest.tables) {
		run.stop.throwIfAborted();
		const shape = shapes.get(name);
		if (shape === undefined || shape.columns.join() !== columns.join()) {
			throw new Error(`table ${name} is not the one of these migrations: the backup is not of this program`);
		}
		shapes.delete(name);
		const path = tablePath(name);
		const copied = await session
			.copyIn({ name, columns }, createReadStream(join(folder, path)))
			.catch((error: Error) => {
				throw new Error(`${path} does not go into its table: ${error.message}`);
			});
		if (copied !== rows) throw new Error(`${path}: ${copied} rows went in, the manifest says ${rows}`);
		if (rows > 0) run.say(`table ${name}: ${rows} rows`);
	}
	if (shapes.size > 0) throw new Error(`the backup lacks the tables ${[...shapes.keys()].join(", ")}`);
}

async function restoreExhibits(folder: string, exhibitFolder: string, manifest: Manifest, run: Run): Promise<void> {
	const progress = progressOf(run, "exhibits", manifest.exhibits.length);
	const shelves = new Set<string>();
	for (const [place, { sha256 }] of manifest.exhibits.entries()) {
		const path = exhibitPlace(exhibitFolder, sha256);
		const facts = await writeHashed(
			path,
			() => createReadStream(exhibitPlace(join(folder, "exhibits"), sha256)),
			run.stop,
		);
		if (facts.sha256 !== sha256) throw new Error(`exhibit ${sha256} changed while it was copied: is the disk whole?`);
		shelves.add(join(path, ".."));
		progress(place + 1);
	}
	for (const shelf of shelves) await syncFolder(shelf);
	if (shelves.size > 0) await syncFolder(exhibitFolder);
	run.say(`exhibits: ${manifest.exhibits.length} files`);
}
