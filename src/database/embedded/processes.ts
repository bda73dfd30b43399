/** What the operating system tells of another process. */
import { readFile } from "node:fs/promises";

/** Whether a process runs. One that has ended and whose parent has not asked after it (a zombie) does not. */
export async function isAlive(pid: number): Promise<boolean> {
	try {
		process.kill(pid, 0);
	} catch (error) {
		if ((error as NodeJS.ErrnoException).code !== "EPERM") return false;
	}
	return (await statOf(pid))?.[0] !== "Z";
}

/** When a process began, in the kernel's ticks; null where the system does not tell. Told apart by it: a reused number. */
export async function startOf(pid: number): Promise<string | null> {
	return (await statOf(pid))?.[19] ?? null;
}

/** The command line of a process; null where the system does not tell. */
export async function commandOf(pid: number): Promise<string | null> {
	return readFile(`/proc/${pid}/cmdline`, "utf8").catch(() => null);
}

/** The fields of proc(5) `stat` from the third on: state first, start time twentieth. */
async function statOf(pid: number): Promise<string[] | null> {
	const stat = await readFile(`/proc/${pid}/stat`, "utf8").catch(() => null);
	return stat?.slice(stat.lastIndexOf(")") + 2).split(" ") ?? null;
}
