/**
 * Applies `migrations/NNNN_name.sql` in order, each in its own transaction, forward only. An applied file is never
 * edited: its hash is kept and compared. The row is inserted first, so that of two starting instances one waits.
 */
import { createHash } from "node:crypto";
import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Database, Queryable } from "./connection.ts";

/** Key of the advisory lock around the table of migrations; unlike the log's. */
const MIGRATION_LOCK = 4_862_202;

export interface MigrationFile {
	readonly number: number;
	readonly name: string;
	readonly sha256: string;
	readonly sql: string;
}

/** The migration files of a folder, in order. */
export async function readMigrations(folder: string): Promise<MigrationFile[]> {
	const names = (await readdir(folder)).filter((name) => /^\d{4}_[a-z0-9_]+\.sql$/.test(name)).sort();
	return Promise.all(
		names.map(async (name) => {
			const sql = await readFile(join(folder, name), "utf8");
			return { number: Number(name.slice(0, 4)), name, sha256: createHash("sha256").update(sql).digest("hex"), sql };
		}),
	);
}

/**
 * Brings the database up to date, as its owner, and gives the names of the files applied now.
 * @param only names of the files to apply, where it is not all of them: a restored backup is brought to its own state
 * @throws Error when an applied file has changed since, or the database is newer than this program.
 */
export async function migrate(database: Database, folder: string, only?: readonly string[]): Promise<string[]> {
	const files = (await readMigrations(folder)).filter(({ name }) => only?.includes(name) ?? true);
	await alone(
		database,
		`CREATE TABLE IF NOT EXISTS migration (
			number int PRIMARY KEY, name text NOT NULL, sha256 text NOT NULL, applied_at timestamptz NOT NULL DEFAULT clock_timestamp()
		)`,
	);
	await refuseForeign(database, files);
	const applied: string[] = [];
	for (const file of files) {
		const now = await database.transaction(async (transaction) => {
			const inserted = await transaction.query(
				"INSERT INTO migration (number, name, sha256) VALUES ($1, $2, $3) ON CONFLICT DO NOTHING RETURNING number",
				[file.number, file.name, file.sha256],
			);
			if (inserted.length === 0) return false;
			await transaction.query(file.sql);
			return true;
		});
		if (now) applied.push(file.name);
	}
	// Once more, for what another instance applied meanwhile.
	await refuseForeign(database, files);
	await alone(database, "GRANT SELECT ON migration TO handover_service");
	return applied;
}

/** Runs a statement that fails when two instances run it at the same moment. */
async function alone(database: Database, sql: string): Promise<void> {
	await database.transaction(async (transaction) => {
		await transaction.query("SELECT pg_advisory_xact_lock($1)", [MIGRATION_LOCK]);
		await transaction.query(sql);
	});
}

/** Whether every migration of the folder is applied; asked as the serving role. */
export async function isMigrated(database: Pick<Database, "query">, folder: string): Promise<boolean> {
	const [files, rows] = await Promise.all([
		readMigrations(folder),
		database.query<{ number: number; sha256: string }>("SELECT number, sha256 FROM migration"),
	]);
	return files.every((file) => rows.some((row) => row.number === file.number && row.sha256 === file.sha256));
}

/** The migrations that a database has had, in order. */
export async function appliedMigrations(database: Queryable): Promise<Pick<MigrationFile, "name" | "sha256">[]> {
	return database.query("SELECT name, sha256 FROM migration ORDER BY number");
}

async function refuseForeign(database: Database, files: readonly MigrationFile[]): Promise<void> {
	const rows = await database.query<{ number: number; name: string; sha256: string }>(
		"SELECT number, name, sha256 FROM migration ORDER BY number",
	);
	for (const row of rows) {
		const file = files.find((candidate) => candidate.number === row.number);
		if (file === undefined) {
			throw new Error(
				`the database has migration ${row.name}, which this program does not know: start the newer program`,
			);
		}
		if (file.sha256 !== row.sha256) {
			throw new Error(`migration ${file.name} was changed after it was applied: restore the file as it was`);
		}
	}
}
