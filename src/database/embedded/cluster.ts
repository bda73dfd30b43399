/** The files of the built-in PostgreSQL in a data folder: passwords, and the cluster that initdb makes. */
import { spawnSync } from "node:child_process";
import { access, chown, mkdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import type { Programs, RunAs } from "./binaries.ts";

/** Major version of the programs that this release ships. */
const MAJOR_VERSION = "18";

export interface Passwords {
	readonly superuser: string;
	readonly owner: string;
	readonly service: string;
}

/**
 * Makes passwords and cluster where there are none yet.
 * @throws Error when the cluster is of another major version, its passwords are lost, or initdb fails
 */
export async function ensureCluster(
	programs: Programs,
	user: RunAs | null,
	dataFolder: string,
	clusterFolder: string,
	randomBytes: (count: number) => Buffer,
): Promise<Passwords> {
	const version = await readFile(join(clusterFolder, "PG_VERSION"), "utf8").catch(() => null);
	if (version !== null && version.trim() !== MAJOR_VERSION) {
		throw new Error(
			`the data folder was made by PostgreSQL ${version.trim()}, this release brings ${MAJOR_VERSION}: start the release that made it, and move the data by backup and restore`,
		);
	}
	const passwords =
		(await readPasswords(dataFolder)) ?? (await makePasswords(dataFolder, version !== null, randomBytes));
	if (version === null) await makeCluster(programs, user, clusterFolder, passwords.superuser);
	return passwords;
}

const passwordsPath = (dataFolder: string) => join(dataFolder, "database-passwords.json");

/** The passwords of a data folder; null where it has none. @throws Error where we may not read them */
export async function readPasswords(dataFolder: string): Promise<Passwords | null> {
	const kept = await readFile(passwordsPath(dataFolder), "utf8").catch((error: NodeJS.ErrnoException) => {
		if (error.code === "ENOENT") return null;
		throw error;
	});
	return kept === null ? null : (JSON.parse(kept) as Passwords);
}

async function makePasswords(
	dataFolder: string,
	clusterExists: boolean,
	randomBytes: (count: number) => Buffer,
): Promise<Passwords> {
	const path = passwordsPath(dataFolder);
	if (clusterExists) throw new Error(`the database's passwords are gone: restore ${path} from your backup`);
	const fresh = () => randomBytes(24).toString("hex");
	const passwords: Passwords = { superuser: fresh(), owner: fresh(), service: fresh() };
	await writeFile(`${path}.incoming`, JSON.stringify(passwords), { mode: 0o600, flush: true });
	await rename(`${path}.incoming`, path);
	return passwords;
}

/** Makes the cluster beside its place and renames it, so that a start that was killed leaves no half of one. */
async function makeCluster(programs: Programs, user: RunAs | null, folder: string, password: string): Promise<void> {
	if (await exists(folder))
		throw new Error(`${folder} holds no database of ours: move it away, or set another DATA_DIR`);
	const incoming = `${folder}.incoming`;
	const passwordFile = `${folder}.password`;
	await rm(incoming, { recursive: true, force: true });
	await mkdir(incoming, { recursive: true, mode: 0o700 });
	await writeFile(passwordFile, password, { mode: 0o600 });
	if (user !== null) {
		await chown(incoming, user.uid, user.gid);
		await chown(passwordFile, user.uid, user.gid);
	}
	const made = spawnSync(
		programs.initdb,
		[
			`--pgdata=${incoming}`,
			"--username=postgres",
			`--pwfile=${passwordFile}`,
			"--auth=scram-sha-256",
			"--encoding=UTF8",
			"--locale-provider=builtin",
			"--builtin-locale=C.UTF-8",
			"--locale=C",
		],
		{ ...user, cwd: incoming, encoding: "utf8", env: { LC_ALL: "C" } },
	);
	await rm(passwordFile, { force: true });
	if (made.status !== 0) throw new Error(`the database could not be made: ${made.stderr || made.error?.message}`);
	await rename(incoming, folder);
}

async function exists(path: string): Promise<boolean> {
	return access(path).then(
		() => true,
		() => false,
	);
}
