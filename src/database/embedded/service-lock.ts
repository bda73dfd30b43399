/** One service per data folder: a lock file that names the process, so that a lock left by a killed one is known as such. */
import { randomUUID } from "node:crypto";
import { link, readFile, rename, rm, writeFile } from "node:fs/promises";
import { isAlive, startOf } from "./processes.ts";

/**
 * Takes the lock and gives the function that releases it. A lock whose process is gone is taken over.
 * @throws Error naming the process that holds it
 */
export async function takeServiceLock(path: string): Promise<() => Promise<void>> {
	const own = `${path}.${randomUUID()}`;
	await writeFile(own, JSON.stringify({ pid: process.pid, startedAt: await startOf(process.pid) }), { mode: 0o600 });
	try {
		for (let attempt = 0; attempt < 3; attempt += 1) {
			// A link appears with its content and only if the name is free.
			if (await linked(own, path)) return () => rm(path, { force: true });
			const text = await readFile(path, "utf8").catch(() => null);
			if (text === null) continue;
			const holder = holderIn(text);
			if (holder !== null && (await holds(holder))) {
				throw new Error(
					`process ${holder.pid} already serves the data folder of ${path}: stop it, or set another DATA_DIR`,
				);
			}
			await removeStale(path, text);
		}
		throw new Error(`the lock ${path} is taken and left again and again: start one service at a time`);
	} finally {
		await rm(own, { force: true });
	}
}

interface Holder {
	readonly pid: number;
	readonly startedAt: string | null;
}

function holderIn(text: string): Holder | null {
	try {
		return JSON.parse(text) as Holder;
	} catch {
		return null;
	}
}

async function holds(holder: Holder): Promise<boolean> {
	// The number may have gone to another process since, after a restart of the machine for instance.
	return (await isAlive(holder.pid)) && holder.startedAt === (await startOf(holder.pid));
}

/** Removes the stale lock that was read, and puts back what another starting service may have set in its place since. */
async function removeStale(path: string, stale: string): Promise<void> {
	const aside = `${path}.${randomUUID()}`;
	try {
		await rename(path, aside);
	} catch (error) {
		if ((error as NodeJS.ErrnoException).code === "ENOENT") return;
		throw error;
	}
	if ((await readFile(aside, "utf8")) !== stale) await linked(aside, path);
	await rm(aside, { force: true });
}

async function linked(from: string, to: string): Promise<boolean> {
	try {
		await link(from, to);
		return true;
	} catch (error) {
		if ((error as NodeJS.ErrnoException).code === "EEXIST") return false;
		throw error;
	}
}
