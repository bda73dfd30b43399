/** A backup goes into an empty database only: what is there is never mixed with what comes. */
import { countRows, listTables } from "../../database/backup/tables.ts";
import type { Database } from "../../database/connection.ts";
import { appliedMigrations } from "../../database/migrate.ts";
import type { Manifest } from "./manifest.ts";

/** @throws Error where the database holds a row, a table of something else, or migrations that the backup lacks */
export async function refuseUsedDatabase(owner: Database, manifest: Manifest): Promise<void> {
	const [migrated] = await owner.query<{ place: string | null }>(
		"SELECT to_regclass('public.migration')::text AS place",
	);
	const applied = migrated?.place === null ? [] : await appliedMigrations(owner);
	const newer = applied.find(({ name }) => !manifest.migrations.some((migration) => migration.name === name));
	if (newer !== undefined) {
		throw new Error(
			`the database has migration ${newer.name}, which the backup was taken before: give an empty database, the next start brings it up to date`,
		);
	}
	for (const { name } of await listTables(owner)) {
		if (!manifest.tables.some((table) => table.name === name)) {
			throw new Error(`the database holds a table ${name} that is none of the backup's: give an empty database`);
		}
		if ((await countRows(owner, name)) > 0) {
			throw new Error(`the database is in use: table ${name} holds rows; a backup goes into an empty database only`);
		}
	}
}
