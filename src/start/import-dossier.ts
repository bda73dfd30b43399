/**
 * `npm run import-dossier -- FILE [--key HEX-or-FILE]…`: reads a dossier into the service of the data folder, which may be
 * empty and need not run. Where it is refused, nothing is written.
 */
import { mkdir, open, stat } from "node:fs/promises";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { migrate } from "../database/migrate.ts";
import { openPool } from "../database/pool.ts";
import { type ReadIn, readInDossier } from "../operations/read-in/read-in-dossier.ts";
import { say } from "../texts/say.ts";
import { type DataPlace, withData, withEmptyPlace } from "./backup/reach-data.ts";
import { makeDeps, SILENT, vaultOf } from "./deps.ts";
import { keyText, sourceOn } from "./given-files.ts";
import { MIGRATIONS } from "./migrations.ts";
import { readSettings, type Settings } from "./settings.ts";

try {
	const { path, keys } = await argumentsOf(process.argv.slice(2));
	const settings = readSettings(process.env);
	const within = (await hasData(settings)) ? withData : withEmptyPlace;
	const done = await within(settings, (place) => readInto(place, settings, path, keys));
	console.log(wordsOf(done, keys.length > 0));
} catch (error) {
	console.error(say("read-in.failed", { why: (error as Error).message }));
	process.exitCode = 1;
}

async function argumentsOf(args: readonly string[]) {
	const { values, positionals } = parseArgs({
		args: [...args],
		options: { key: { type: "string", multiple: true, default: [] as string[] } },
		allowPositionals: true,
	});
	const [path, ...more] = positionals;
	if (path === undefined || more.length > 0) throw new Error(say("read-in.usage"));
	return { path, keys: await Promise.all(values.key.map(keyText)) };
}

async function hasData({ dataDir, databaseMigrationUrl }: Settings): Promise<boolean> {
	return databaseMigrationUrl !== null || (await stat(join(dataDir, "database")).catch(() => null)) !== null;
}

async function readInto(
	{ ownerUrl, keyFolder, exhibitFolder }: DataPlace,
	{ publicUrl }: Settings,
	path: string,
	keys: readonly string[],
): Promise<ReadIn> {
	const owner = openPool(ownerUrl, { maxConnections: 1 });
	await migrate(owner, MIGRATIONS).finally(() => owner.close());
	const database = openPool(ownerUrl, { maxConnections: 2, vault: vaultOf(keyFolder) });
	try {
		await mkdir(exhibitFolder, { recursive: true, mode: 0o700 });
		const file = await open(path);
		try {
			const deps = makeDeps({ database, log: SILENT, publicUrl, exhibitFolder, keyFolder });
			return await readInDossier(deps, await sourceOn(file), { keys });
		} finally {
			await file.close();
		}
	} finally {
		await database.close();
	}
}

function wordsOf({ orderId, origin, publicKeys, size, records, exhibits }: ReadIn, hasKey: boolean): string {
	const missing = exhibits.named - exhibits.originals - exhibits.copies;
	return [
		say("read-in.done", { order: orderId, records, brought: exhibits.originals, origin, size }),
		...publicKeys.map((key) => say("read-in.key", { key })),
		...(exhibits.copies === 0 ? [] : [say("read-in.copies", { count: exhibits.copies })]),
		...(missing === 0 ? [] : [say("read-in.missing", { count: missing })]),
		...(hasKey ? [] : [say("read-in.unknown-key")]),
	].join("\n");
}
