/** A PostgreSQL of the system's own packages (Debian: /usr/lib/postgresql/15), as a shop may have one, in a folder of the test. */
import { execFileSync, spawn } from "node:child_process";
import { once } from "node:events";
import { chownSync, existsSync, mkdtempSync, readdirSync } from "node:fs";
import { rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import pg from "pg";
import { runAs } from "../../src/database/embedded/binaries.ts";
import { freePort } from "../../src/start/demo/service-process.ts";

const ROOM = "/usr/lib/postgresql";

/** The oldest version installed that is 15 or later; null where there is none. */
export const SYSTEM_VERSION: string | null =
	(existsSync(ROOM) ? readdirSync(ROOM) : [])
		.filter((version) => Number(version) >= 15 && existsSync(join(ROOM, version, "bin", "postgres")))
		.sort((a, b) => Number(a) - Number(b))[0] ?? null;

export interface SystemPostgres {
	/** Makes a database with its two roles, as README tells the shop to. */
	makeDatabase(name: string): Promise<{ readonly ownerUrl: string; readonly serviceUrl: string }>;
	stop(): Promise<void>;
}

export async function startSystemPostgres(): Promise<SystemPostgres> {
	if (SYSTEM_VERSION === null) throw new Error("no PostgreSQL is installed: apt-get install postgresql");
	const bin = join(ROOM, SYSTEM_VERSION, "bin");
	const user = runAs();
	const folder = mkdtempSync(join(tmpdir(), "handover-system-postgres-"));
	if (user !== null) chownSync(folder, user.uid, user.gid);
	const data = join(folder, "data");
	execFileSync(
		join(bin, "initdb"),
		["-D", data, "-U", "postgres", "--auth=trust", "--encoding=UTF8", "--locale=C.UTF-8"],
		{
			...user,
			cwd: folder,
			stdio: "ignore",
		},
	);
	const port = await freePort();
	const server = spawn(
		join(bin, "postgres"),
		["-D", data, "-p", String(port), "-c", "listen_addresses=127.0.0.1", "-c", "unix_socket_directories="],
		{ ...user, cwd: folder, stdio: "ignore" },
	);
	const url = (role: string, database: string) => `postgres://${role}@127.0.0.1:${port}/${database}`;
	const administer = async (sql: readonly string[]) => {
		const client = new pg.Client(url("postgres", "postgres"));
		await client.connect();
		for (const statement of sql) await client.query(statement);
		await client.end();
	};
	for (let left = 100; left > 0; left -= 1) {
		if (
			await administer([]).then(
				() => true,
				() => false,
			)
		)
			break;
		await sleep(100);
	}
	await administer(["CREATE ROLE handover_owner LOGIN", "CREATE ROLE handover_service LOGIN"]);
	return {
		async makeDatabase(name) {
			await administer([`CREATE DATABASE ${name} OWNER handover_owner`]);
			return { ownerUrl: url("handover_owner", name), serviceUrl: url("handover_service", name) };
		},
		async stop() {
			const ended = once(server, "exit");
			server.kill("SIGINT");
			await ended;
			await rm(folder, { recursive: true, force: true });
		},
	};
}
