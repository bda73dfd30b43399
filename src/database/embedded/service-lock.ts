/** One service per data folder: a lock file that names the process, so that a lock left by a killed one is known as such. */
import { open, readFile, rm } from "node:fs/promises";

/**
 * Takes the lock and gives the function that releases it. A lock whose process is gone is taken over.
 * @throws Error naming the process that holds it
 */
export async function takeServiceLock(path: string): Promise<() => Promise<void>> {
	for (let attempt = 0; attempt < 3; attempt += 1) {
		try {
			const file = await open(path, "wx", 0o600);
			await file.writeFile(JSON.stringify({ pid: process.pid, startedAt: await startOf(process.pid) }));
			await file.close();
			return () => rm(path, { force: true });
		} catch (error) {
			if ((error as NodeJS.ErrnoException).code !== "EEXIST") throw error;
		}
		const holder = await readHolder(path);
		if (holder !== null && (await isAlive(holder))) {
			throw new Error(`process ${holder.pid} already serves this data folder: stop it, or set another DATA_DIR`);
		}
		await rm(path, { force: true });
	}
	throw new Error(`the lock ${path} is taken and left again and again`);
}

interface Holder {
	readonly pid: number;
	readonly startedAt: string | null;
}

async function readHolder(path: string): Promise<Holder | null> {
	try {
		return JSON.parse(await readFile(path, "utf8")) as Holder;
	} catch {
		return null;
	}
}

async function isAlive(holder: Holder): Promise<boolean> {
	try {
		process.kill(holder.pid, 0);
	} catch (error) {
		return (error as NodeJS.ErrnoException).code === "EPERM";
	}
	// The number may have gone to another process since, after a restart of the machine for instance.
	return holder.startedAt === (await startOf(holder.pid));
}

/** When a process began, in the kernel's ticks; null where the system does not tell. */
async function startOf(pid: number): Promise<string | null> {
	const stat = await readFile(`/proc/${pid}/stat`, "utf8").catch(() => null);
	return stat?.slice(stat.lastIndexOf(")") + 2).split(" ")[19] ?? null;
}
