/** Where the data to back up, or the empty place to restore into, is: the built-in database of a data folder, or one's own. */
import { randomBytes } from "node:crypto";
import { mkdir, readdir, rm, stat } from "node:fs/promises";
import { join } from "node:path";
import { findRunningServer, startEmbeddedServer } from "../../database/embedded/embedded-server.ts";
import type { Settings } from "../settings.ts";

export interface DataPlace {
	readonly ownerUrl: string;
	readonly exhibitFolder: string;
	readonly keyFolder: string;
}

/**
 * Runs `work` on the data that the settings name. The built-in database is used beside a running service; where none runs it
 * is started for this and stopped again.
 * @throws Error where there is no data
 */
export async function withData<Result>(
	settings: Settings,
	work: (place: DataPlace) => Promise<Result>,
): Promise<Result> {
	const folders = foldersOf(settings);
	if (settings.databaseMigrationUrl !== null) return work({ ownerUrl: settings.databaseMigrationUrl, ...folders });
	const running = await findRunningServer(settings.dataDir);
	if (running !== null) return work({ ownerUrl: running.ownerUrl, ...folders });
	if ((await stat(join(settings.dataDir, "database")).catch(() => null)) === null) {
		throw new Error(`setting DATA_DIR: ${settings.dataDir} holds no data: set the folder of the service to back up`);
	}
	const server = await startEmbeddedServer(settings.dataDir, randomBytes);
	try {
		return await work({ ownerUrl: server.ownerUrl, ...folders });
	} finally {
		await server.stop();
	}
}

/**
 * Runs `work` on an empty place, which is made where there is none. Where `work` throws, what was made is taken away again,
 * so that the same command can be given once more.
 * @throws Error where the place holds anything but a key folder
 */
export async function withEmptyPlace<Result>(
	settings: Settings,
	work: (place: DataPlace) => Promise<Result>,
): Promise<Result> {
	const { dataDir, databaseMigrationUrl } = settings;
	const folders = foldersOf(settings);
	await refuseUsedFolder(settings);
	await mkdir(dataDir, { recursive: true, mode: 0o700 });
	try {
		if (databaseMigrationUrl !== null) return await work({ ownerUrl: databaseMigrationUrl, ...folders });
		const server = await startEmbeddedServer(dataDir, randomBytes);
		try {
			return await work({ ownerUrl: server.ownerUrl, ...folders });
		} finally {
			await server.stop();
		}
	} catch (error) {
		for (const name of await foreignNames(settings)) await rm(join(dataDir, name), { recursive: true, force: true });
		throw error;
	}
}

/** @throws Error where the data folder holds anything but a key folder */
export async function refuseUsedFolder(settings: Settings): Promise<void> {
	const names = await foreignNames(settings);
	if (names.length === 0) return;
	throw new Error(
		`setting DATA_DIR: ${settings.dataDir} is not empty (${names.join(", ")}): a backup goes into an empty folder only`,
	);
}

async function foreignNames(settings: Settings): Promise<string[]> {
	const names = await readdir(settings.dataDir).catch((error: NodeJS.ErrnoException) => {
		if (error.code === "ENOENT") return [];
		throw error;
	});
	return names.filter((name) => join(settings.dataDir, name) !== foldersOf(settings).keyFolder);
}

function foldersOf({ dataDir, keyDir }: Settings): Pick<DataPlace, "exhibitFolder" | "keyFolder"> {
	return { exhibitFolder: join(dataDir, "exhibits"), keyFolder: keyDir };
}
