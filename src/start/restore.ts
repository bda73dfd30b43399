/** `npm run restore -- FOLDER`: puts a backup into an empty data folder or database, and checks all of it. */
import { resolve } from "node:path";
import { parseArgs } from "node:util";
import { checkBackup } from "./backup/check-backup.ts";
import { refuseUsedFolder, withEmptyPlace } from "./backup/reach-data.ts";
import { restoreBackup } from "./backup/restore-backup.ts";
import { runUntilSignal } from "./backup/run-until-signal.ts";
import { MIGRATIONS } from "./migrations.ts";
import { readSettings } from "./settings.ts";

const USAGE = "npm run restore -- FOLDER";

try {
	const run = runUntilSignal();
	const { positionals } = parseArgs({ allowPositionals: true, options: {} });
	const [name, ...more] = positionals;
	if (name === undefined || more.length > 0) throw new Error(`name the folder of one backup: ${USAGE}`);
	const settings = readSettings(process.env);
	const folder = resolve(name);
	await refuseUsedFolder(settings);
	const manifest = await checkBackup(folder, run);
	await withEmptyPlace(settings, (place) =>
		restoreBackup(folder, manifest, { ...place, migrationFolder: MIGRATIONS }, run),
	);
	console.log(
		`Restored into ${settings.dataDir}${settings.databaseUrl === null ? "" : " and the database of DATABASE_URL"}`,
	);
} catch (error) {
	console.error(`nothing was restored: ${(error as Error).message}`);
	process.exitCode = 1;
}
