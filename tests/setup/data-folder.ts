/** Data folders as the built service's first start leaves them, for tests that are about something later. */
import { execFileSync } from "node:child_process";
import { mkdtemp } from "node:fs/promises";
import { join } from "node:path";
import { inject } from "vitest";
import { startBuiltService } from "./built-service.ts";

let made: Promise<string> | undefined;

/** Fills an empty folder. It gets a copy: PostgreSQL's making of a database takes longer than most of these tests. */
export async function fillDataFolder(folder: string): Promise<void> {
	made ??= makeOne();
	// Under root the database's user owns its own part, which only `cp` keeps.
	execFileSync("cp", ["-a", `${await made}/.`, folder]);
}

async function makeOne(): Promise<string> {
	// In the run's own folder, which is removed with it: several files copy from here.
	const folder = await mkdtemp(join(inject("runFolder"), "made-"));
	await (await startBuiltService(folder)).stop();
	return folder;
}
