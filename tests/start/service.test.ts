/**
 * The built service with its built-in database, as a user meets it: killed, started twice, ended by Ctrl-C, started with
 * wrong settings. Everything is seen from outside: processes, files, HTTP.
 */
import { execFileSync, spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtemp, readdir, readFile, rm, stat, writeFile } from "node:fs/promises";
import { request } from "node:http";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { isAlive } from "../../src/database/embedded/processes.ts";
import type { ServiceProcess } from "../../src/start/demo/service-process.ts";
import { startBuiltService } from "../setup/built-service.ts";
import { fillDataFolder } from "../setup/data-folder.ts";
import { secondInstanceOf } from "../setup/second-instance.ts";

let folder: string;
let services: ServiceProcess[];

beforeEach(async () => {
	folder = await mkdtemp(join(tmpdir(), "handover-service-"));
	services = [];
});

afterEach(async () => {
	for (const service of services) await service.stop();
	await rm(folder, { recursive: true, force: true });
});

/** Starts in the folder, which an earlier start has made already. */
async function start(options: Parameters<typeof startBuiltService>[1] = {}): Promise<ServiceProcess> {
	if ((await readdir(folder)).length === 0) await fillDataFolder(folder);
	const service = await startBuiltService(folder, options);
	services.push(service);
	return service;
}

async function postmasterPid(): Promise<number> {
	return Number((await readFile(join(folder, "database", "postmaster.pid"), "utf8")).split("\n")[0]);
}

async function kill(service: ServiceProcess): Promise<void> {
	process.kill(service.pid, "SIGKILL");
	await service.ended;
}

async function signIn(service: ServiceProcess): Promise<number> {
	const answer = await fetch(`${service.url}/api/v1/session`, {
		method: "POST",
		headers: { "content-type": "application/json" },
		body: JSON.stringify({ name: "bench", passphrase: "no such passphrase" }),
	});
	return answer.status;
}

describe("a start", () => {
	it("serves, is ready, and leaves only doors that are closed to others", async () => {
		const service = await startBuiltService(folder);
		services.push(service);
		expect((await fetch(`${service.url}/healthz`)).status).toBe(200);
		expect((await fetch(`${service.url}/readyz`)).status).toBe(200);
		expect(service.setUpLink).toMatch(/\/set-up\/[A-Za-z0-9_-]{43}$/);
		for (const [file, mode] of [
			["database-passwords.json", 0o600],
			["database", 0o700],
			["exhibits", 0o700],
			["postgresql.log", 0o600],
			["service.lock", 0o600],
		] as const) {
			expect((await stat(join(folder, file))).mode & 0o777, file).toBe(mode);
		}
		await service.stop();
		expect(await service.ended).toBe(0);
		await expect(stat(join(folder, "service.lock"))).rejects.toThrow("ENOENT");
		await expect(stat(join(folder, "database", "postmaster.pid"))).rejects.toThrow("ENOENT");
	});

	it("is refused on a folder that another service has, which goes on", async () => {
		const first = await start();
		await expect(startBuiltService(folder)).rejects.toThrow(
			`handover-risk did not start: process ${first.pid} already serves the data folder`,
		);
		expect((await fetch(`${first.url}/readyz`)).status).toBe(200);
	});

	it("takes over the lock and the running database after a kill -9 of the service", async () => {
		const first = await start();
		const database = await postmasterPid();
		await kill(first);
		expect(await isAlive(database)).toBe(true);
		const second = await start();
		expect(await postmasterPid()).toBe(database);
		expect(await signIn(second)).toBe(401);
	});

	it("comes up after a kill -9 of the service and of the whole database", async () => {
		const first = await start();
		process.kill(-(await postmasterPid()), "SIGKILL");
		await kill(first);
		expect(await signIn(await start())).toBe(401);
	});

	it("comes up after a kill -9 of the service and of the database's first process only", async () => {
		const first = await start();
		process.kill(await postmasterPid(), "SIGKILL");
		await kill(first);
		expect(await signIn(await start())).toBe(401);
	});

	it("comes up although the number in postmaster.pid went to another process", async () => {
		const first = await start();
		const pidFile = join(folder, "database", "postmaster.pid");
		process.kill(-(await postmasterPid()), "SIGKILL");
		await kill(first);
		// As the user that the database runs as, or PostgreSQL itself would see that it is not one of its own.
		const root = process.getuid?.() === 0;
		const other = spawn("sleep", ["60"], { cwd: "/", stdio: "ignore", ...(root ? { uid: 65534, gid: 65534 } : {}) });
		try {
			const lines = (await readFile(pidFile, "utf8")).split("\n");
			await writeFile(pidFile, [other.pid, ...lines.slice(1)].join("\n"));
			expect(await signIn(await start())).toBe(401);
		} finally {
			other.kill();
		}
	});

	it("is refused in one line by a folder of another major version", async () => {
		await (await start()).stop();
		await writeFile(join(folder, "database", "PG_VERSION"), "17\n");
		await expect(startBuiltService(folder)).rejects.toThrow(
			/^handover-risk did not start: the data folder was made by PostgreSQL 17, this release brings 18: .*$/,
		);
	});

	it("is refused in one line where the database's passwords are gone", async () => {
		await (await start()).stop();
		await rm(join(folder, "database-passwords.json"));
		await expect(startBuiltService(folder)).rejects.toThrow(/passwords are gone: restore .* from your backup$/);
	});
});

describe("Ctrl-C", () => {
	it("reaches the whole group, and yet a request that has begun is answered from the database before that stops", async () => {
		const service = await start({ ownGroup: true });
		const database = await postmasterPid();
		const body = JSON.stringify({ name: "bench", passphrase: "no such passphrase" });
		const asked = request(`${service.url}/api/v1/session`, {
			method: "POST",
			headers: { "content-type": "application/json", "content-length": Buffer.byteLength(body) },
		});
		const answered = once(asked, "response");
		asked.write(body.slice(0, 10));
		await sleep(300);
		process.kill(-service.pid, "SIGINT");
		await sleep(500);
		expect(await isAlive(service.pid)).toBe(true);
		expect(await isAlive(database)).toBe(true);
		asked.end(body.slice(10));
		// 401 takes the database: it looks up the name.
		expect((await answered)[0].statusCode).toBe(401);
		expect(await service.ended).toBe(0);
		expect(await isAlive(database)).toBe(false);
		expect(await readFile(join(folder, "postgresql.log"), "utf8")).toContain("database system is shut down");
	});

	it("during the start stops what was started", async () => {
		const starting = startBuiltService(folder, { ownGroup: true });
		const lock = join(folder, "service.lock");
		let holder: string | null = null;
		while (holder === null) {
			holder = await readFile(lock, "utf8").catch(() => null);
			await sleep(10);
		}
		process.kill(-JSON.parse(holder).pid, "SIGINT");
		await starting.then(
			(service) => service.ended,
			() => {},
		);
		await expect(stat(lock)).rejects.toThrow("ENOENT");
		await expect(stat(join(folder, "database", "postmaster.pid"))).rejects.toThrow("ENOENT");
	});
});

describe("a wrong setting stops the start with one line", () => {
	for (const [variables, line] of [
		[{ PORT: "eighty" }, 'setting PORT must be a port number; it is "eighty"'],
		[{ TRUST_PROXY: "yes" }, 'setting TRUST_PROXY must be true or false; it is "yes"'],
		[{ PUBLIC_URL: "boards.example.net" }, "setting PUBLIC_URL must be an http:// or https:// address"],
		[{ LOG_LEVEL: "loud" }, "setting LOG_LEVEL must be one of fatal, error, warn"],
		[{ DATABASE_URL: "postgres://a@b/c" }, "settings DATABASE_URL and DATABASE_MIGRATION_URL come together"],
	] as const) {
		it(Object.keys(variables).join(), async () => {
			const failure = await startBuiltService(folder, { variables }).catch((error: Error) => error.message);
			expect(failure).toContain(`handover-risk did not start: ${line}`);
			expect(String(failure).split("\n")).toHaveLength(1);
		});
	}

	it("DATABASE_URL, whose password is not printed", async () => {
		const variables = { DATABASE_URL: "http://a:secret@b/c", DATABASE_MIGRATION_URL: "postgres://a@b/c" };
		const failure = await startBuiltService(folder, { variables }).catch((error: Error) => error.message);
		expect(failure).toContain("setting DATABASE_URL must be a postgres:// address");
		expect(failure).not.toContain("secret");
	});

	it("PORT that is taken; the database that was started stops again", async () => {
		const taken = createServer().listen(0, "127.0.0.1");
		await once(taken, "listening");
		const port = String((taken.address() as { port: number }).port);
		try {
			await expect(startBuiltService(folder, { variables: { PORT: port } })).rejects.toThrow(
				`handover-risk did not start: setting PORT: ${port} is taken on 127.0.0.1: stop the other program, or set another PORT`,
			);
			await expect(stat(join(folder, "database", "postmaster.pid"))).rejects.toThrow("ENOENT");
		} finally {
			taken.close();
		}
	});
});

describe("a database of the user's own", () => {
	it("is served with its two roles, and refused with the owner's for both", async () => {
		// The built-in server of another folder stands for it.
		await start();
		const second = await secondInstanceOf(folder);
		const owner = second.DATABASE_MIGRATION_URL;
		const other = await mkdtemp(join(tmpdir(), "handover-service-"));
		try {
			const service = await startBuiltService(other, { variables: second });
			expect((await fetch(`${service.url}/readyz`)).status).toBe(200);
			await service.stop();
			await expect(
				startBuiltService(other, {
					variables: { DATABASE_URL: second.DATABASE_URL, DATABASE_MIGRATION_URL: owner },
				}),
			).rejects.toThrow(
				/^handover-risk did not start: the key that signs the log is missing: put \S+log-key-[0-9a-f]{8}\.pem back .*KEY_DIR/,
			);
			await expect(
				startBuiltService(other, { variables: { DATABASE_URL: owner, DATABASE_MIGRATION_URL: owner } }),
			).rejects.toThrow("the role of DATABASE_URL may change sealed_entry");
		} finally {
			await rm(other, { recursive: true, force: true });
		}
	});
});

describe("root", () => {
	const isRoot = process.getuid?.() === 0;

	it("never runs the database", async () => {
		await start();
		const user = execFileSync("stat", ["-c", "%u", `/proc/${await postmasterPid()}`], { encoding: "utf8" }).trim();
		expect(user).not.toBe("0");
	});

	it("is told in one line where the database's user cannot reach the data folder", async () => {
		const closed = await mkdtemp(join(tmpdir(), "handover-closed-"));
		const starting = startBuiltService(join(closed, "data"));
		try {
			if (isRoot) {
				await expect(starting).rejects.toThrow(
					/^handover-risk did not start: PostgreSQL does not run as root, and user \d+ cannot reach \S+: set DATA_DIR .*$/,
				);
			} else {
				await (await starting).stop();
			}
		} finally {
			await rm(closed, { recursive: true, force: true });
		}
	});
});
