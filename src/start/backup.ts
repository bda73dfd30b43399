/** `npm run backup -- FOLDER`: copies everything into a new folder, while the service serves or stands still. */
import { resolve } from "node:path";
import { parseArgs } from "node:util";
import { withData } from "./backup/reach-data.ts";
import { runUntilSignal } from "./backup/run-until-signal.ts";
import { writeBackup } from "./backup/write-backup.ts";
import { readSettings } from "./settings.ts";

const USAGE = "npm run backup -- FOLDER [--without-keys]";

try {
	const run = runUntilSignal();
	const { values, positionals } = parseArgs({
		allowPositionals: true,
		options: { "without-keys": { type: "boolean", default: false } },
	});
	const [name, ...more] = positionals;
	if (name === undefined || more.length > 0) throw new Error(`name one new folder: ${USAGE}`);
	const folder = resolve(name);
	const withKeys = !values["without-keys"];
	const manifest = await withData(readSettings(process.env), ({ ownerUrl, exhibitFolder, keyFolder }) =>
		writeBackup({ ownerUrl, exhibitFolder, keyFolder: withKeys ? keyFolder : null }, folder, run),
	);
	console.log(
		`Backup of ${manifest.takenAt} in ${folder}: ${manifest.log.size} log entries, root ${manifest.log.rootSha256}`,
	);
	console.log("It holds personal data as it was at this moment, also what is erased later, until it is overwritten.");
	console.log(
		withKeys
			? "WARNING: it holds the keys too. Whoever has this folder can read everything in it and sign in the log's name: keep it locked away, or keep the keys apart with --without-keys."
			: "It holds no keys: keep a copy of the key folder somewhere else, or the log cannot be continued after a restore.",
	);
} catch (error) {
	console.error(`no backup was made: ${(error as Error).message}`);
	process.exitCode = 1;
}
