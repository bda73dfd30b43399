/** Kills a service with its database as a power cut would. */
import { randomInt } from "node:crypto";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { ServiceProcess } from "../../src/start/demo/service-process.ts";

/** Both at once, in random order: a power cut has none. */
export async function killAll(running: ServiceProcess, folder: string): Promise<void> {
	const postmaster = Number((await readFile(join(folder, "database", "postmaster.pid"), "utf8")).split("\n")[0]);
	const targets = [running.pid, -postmaster];
	if (randomInt(2) === 1) targets.reverse();
	for (const target of targets) process.kill(target, "SIGKILL");
	await running.ended;
}
