/**
 * Backup and restore as a user meets them: the built programs, a service that serves and seals meanwhile, a damaged backup.
 * Everything is seen from outside: exit codes, lines, files, HTTP; the list of tables is PostgreSQL's own.
 */
import { execFile } from "node:child_process";
import { createHash } from "node:crypto";
import { appendFile, chmod, cp, mkdtemp, readdir, readFile, rm, stat, truncate, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { promisify } from "node:util";
import pg from "pg";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { findRunningServer } from "../../src/database/embedded/embedded-server.ts";
import { type Manifest, manifestText, parseManifest } from "../../src/start/backup/manifest.ts";
import { playScenarios } from "../../src/start/demo/play-scenarios.ts";
import { startBuiltService } from "../setup/built-service.ts";
import { SYSTEM_VERSION, type SystemPostgres, startSystemPostgres } from "../setup/system-postgres.ts";
import { type Access, type Acknowledged, isStillThere, sealUntilKilled } from "../trials/sealing-client.ts";

const CLIENTS = 4;
const dist = (name: string) => new URL(`../../dist/start/${name}.js`, import.meta.url).pathname;

let folder: string;
const inFolder = (...parts: string[]) => join(folder, ...parts);
let token: string;
/** What the clients were told before the backup began. */
let before: readonly Acknowledged[];
let manifest: Manifest;
/** Tables of the service's database, as information_schema has them. */
let tables: string[];
let sequences: string[];

interface Outcome {
	readonly code: number;
	readonly out: string;
	readonly err: string;
}

async function run(program: string, args: readonly string[], variables: Record<string, string>): Promise<Outcome> {
	const env = { PATH: process.env.PATH, ...variables };
	return promisify(execFile)(process.execPath, [dist(program), ...args], { env }).then(
		({ stdout, stderr }) => ({ code: 0, out: stdout, err: stderr }),
		(error: { code: number; stdout: string; stderr: string }) => ({
			code: error.code,
			out: error.stdout,
			err: error.stderr,
		}),
	);
}

const restore = (backup: string, dataFolder: string, variables: Record<string, string> = {}) =>
	run("restore", [inFolder(backup)], { DATA_DIR: inFolder(dataFolder), ...variables });

async function lost(access: Access, acts: readonly Acknowledged[]): Promise<number> {
	let count = 0;
	for (const done of acts) if (!(await isStillThere(access, done))) count += 1;
	return count;
}

beforeAll(async () => {
	folder = await mkdtemp(join(tmpdir(), "handover-backup-"));
	// Under root the database's user passes through it.
	await chmod(folder, 0o755);
	const service = await startBuiltService(inFolder("data"));
	const acknowledged: Acknowledged[] = [];
	let sealing: Promise<unknown> = Promise.resolve();
	try {
		await playScenarios({ url: service.url, setUpLink: service.setUpLink ?? "", outFolder: null, withYear: false });
		token = await makeToken(service.url);
		const seal = () => sealUntilKilled({ url: service.url, token }, (done) => acknowledged.push(done));
		sealing = Promise.all(Array.from({ length: CLIENTS }, seal));
		await until(() => acknowledged.length >= 60, sealing);
		before = [...acknowledged];
		const made = await run("backup", [inFolder("backup")], { DATA_DIR: inFolder("data") });
		expect(made, made.err).toMatchObject({ code: 0, err: "" });
		expect(made.out).toContain("WARNING: it holds the keys too");
		// The service went on while the backup was made.
		expect(acknowledged.length).toBeGreaterThan(before.length);
		manifest = parseManifest(await readFile(inFolder("backup", "manifest.json"), "utf8"));
		const urls = await findRunningServer(inFolder("data"));
		const client = new pg.Client(urls?.superuserUrl);
		await client.connect();
		const named = async (sql: string) => (await client.query<{ name: string }>(sql)).rows.map(({ name }) => name);
		const own = "table_schema NOT IN ('pg_catalog', 'information_schema')";
		tables = await named(`SELECT table_name AS name FROM information_schema.tables WHERE ${own} ORDER BY 1`);
		sequences = await named("SELECT sequence_name AS name FROM information_schema.sequences");
		await client.end();
	} finally {
		await service.stop();
		await sealing;
	}
});

afterAll(() => rm(folder, { recursive: true, force: true }));

describe("a backup", () => {
	it("holds every table but the list of migrations, which it holds as a list; there is no state in sequences", () => {
		const held = manifest.tables.map(({ name }) => name);
		expect([...held, "migration"].sort()).toEqual(tables);
		expect(sequences).toEqual([]);
		for (const name of ["sealed_entry", "checkpoint", "opening", "exhibit", "exhibit_use", "link", "account"]) {
			expect(manifest.tables.find((table) => table.name === name)?.rows, name).toBeGreaterThan(0);
		}
	});

	it("is closed to others, keys and all, and leaves nothing beside it", async () => {
		expect((await stat(inFolder("backup"))).mode & 0o777).toBe(0o700);
		const files = await readdir(inFolder("backup"), { recursive: true, withFileTypes: true });
		for (const file of files) {
			const { mode } = await stat(join(file.parentPath, file.name));
			expect(mode & 0o777, file.name).toBe(file.isDirectory() ? 0o700 : 0o600);
		}
		expect(files.filter(({ parentPath }) => parentPath.endsWith("/keys")).map(({ name }) => name)).toEqual(
			manifest.keys?.map(({ name }) => name),
		);
		expect(await readdir(folder)).toEqual(["backup", "data"]);
	});

	it("is what sha256sum says it is", async () => {
		const list = [
			...manifest.tables.map(({ name, sha256 }) => `${sha256}  tables/${name}.copy`),
			...manifest.exhibits.map(({ sha256 }) => `${sha256}  exhibits/${sha256.slice(0, 2)}/${sha256}`),
			...(manifest.keys ?? []).map(({ name, sha256 }) => `${sha256}  keys/${name}`),
			(await readFile(inFolder("backup", "manifest.json.sha256"), "utf8")).trim(),
		].join("\n");
		await writeFile(inFolder("list"), `${list}\n`);
		const { stdout } = await promisify(execFile)("sha256sum", ["-c", inFolder("list")], { cwd: inFolder("backup") });
		expect(
			stdout
				.trim()
				.split("\n")
				.every((line) => line.endsWith(": OK")),
		).toBe(true);
		expect(manifest.exhibits.length).toBeGreaterThan(0);
	});

	it("is never written over, and is not made of nothing", async () => {
		expect(await run("backup", [inFolder("backup")], { DATA_DIR: inFolder("data") })).toMatchObject({
			code: 1,
			err: `no backup was made: ${inFolder("backup")} is there already: name a new folder\n`,
		});
		expect((await run("backup", [inFolder("other")], { DATA_DIR: inFolder("none") })).err).toContain("holds no data");
		expect((await run("backup", [], { DATA_DIR: inFolder("data") })).err).toContain("name one new folder");
		await expect(stat(inFolder("none"))).rejects.toThrow("ENOENT");
	});

	it("is also made while no service runs, and then without keys where they are to stay apart", async () => {
		const made = await run("backup", [inFolder("still"), "--without-keys"], { DATA_DIR: inFolder("data") });
		expect(made, made.err).toMatchObject({ code: 0, err: "" });
		expect(made.out).toContain("It holds no keys");
		expect(await readdir(inFolder("still"))).not.toContain("keys");
		await expect(stat(inFolder("data", "database", "postmaster.pid"))).rejects.toThrow("ENOENT");
	});
});

describe("a restore", () => {
	it("brings back every act acknowledged before the backup began, and a service that goes on", async () => {
		const restored = await restore("backup", "restored");
		expect(restored, restored.err).toMatchObject({ code: 0, err: "" });
		expect(restored.out).toContain(`The log holds together: ${manifest.log.size} entries`);
		const service = await startBuiltService(inFolder("restored"));
		try {
			expect(before.filter(({ act }) => act === "sealed").length).toBeGreaterThan(10);
			expect(await lost({ url: service.url, token }, before)).toBe(0);
			const acts: Acknowledged[] = [];
			const sealing = sealUntilKilled({ url: service.url, token }, (done) => acts.push(done));
			await until(() => acts.some(({ act }) => act === "sealed"), sealing);
			const first = acts.find((done) => done.act === "sealed");
			expect(first?.act === "sealed" && first.index).toBeGreaterThanOrEqual(manifest.log.size);
			await service.stop();
			await sealing;
		} finally {
			await service.stop();
		}
	});

	it("is refused on a folder that is in use", async () => {
		const again = await restore("backup", "restored");
		expect(again.code).toBe(1);
		expect(again.err).toMatch(/^nothing was restored: setting DATA_DIR: \S+ is not empty .*\n$/);
		expect(await readdir(inFolder("restored", "database"))).toContain("PG_VERSION");
	});

	const someExhibit = () => {
		const { sha256 = "" } = manifest.exhibits[0] ?? {};
		return `exhibits/${sha256.slice(0, 2)}/${sha256}`;
	};
	for (const [damage, fileOf, how, saying] of [
		[
			"a truncated table",
			() => "tables/sealed_entry.copy",
			(path: string) => truncate(path, 4000),
			"rows, the manifest says",
		],
		["a table cut in its last line", () => "tables/party.copy", cutEnd, "is not the file that was written"],
		["an altered byte in a table", () => "tables/opening.copy", flip, "is not the file that was written"],
		[
			"a row too many",
			() => "tables/bench.copy",
			(path: string) => appendFile(path, "x\ty\tz\n"),
			"rows, the manifest says",
		],
		["a missing table", () => "tables/link.copy", (path: string) => rm(path), "is missing from the backup"],
		["a missing exhibit", someExhibit, (path: string) => rm(path), "is missing from the backup"],
		["an altered exhibit", someExhibit, flip, "is not the file that was written"],
		["an altered key", () => `keys/${manifest.keys?.[0]?.name}`, flip, "is not the file that was written"],
		["an altered manifest", () => "manifest.json", flip, "is not the file that was written"],
		["no manifest", () => "manifest.json", (path: string) => rm(path), "is missing from the backup"],
	] as const) {
		it(`of a backup with ${damage} is refused and names the file; nothing is left`, async () => {
			await rm(inFolder("damaged"), { recursive: true, force: true });
			await cp(inFolder("backup"), inFolder("damaged"), { recursive: true });
			await how(inFolder("damaged", fileOf()));
			const outcome = await restore("damaged", "empty");
			expect(outcome.code).toBe(1);
			expect(outcome.err).toContain(`nothing was restored: ${fileOf()} `);
			expect(outcome.err).toContain(saying);
			expect(outcome.err.trim().split("\n")).toHaveLength(1);
			await expect(stat(inFolder("empty"))).rejects.toThrow("ENOENT");
		});
	}
});

describe("a backup that was changed and given fitting hashes", () => {
	it("is refused where its log does not hold together; nothing is left", async () => {
		await cp(inFolder("backup"), inFolder("forged"), { recursive: true });
		await forge("checkpoint", (text) =>
			text.replace(/(\\n— \S+ \S{30})(.)/, (_, start, next) => start + (next === "A" ? "B" : "A")),
		);
		const outcome = await restore("forged", "empty");
		expect(outcome.code).toBe(1);
		expect(outcome.err).toMatch(/^nothing was restored: log entry \d+: its checkpoint is not signed by its key\n$/);
		expect(await readdir(inFolder("empty"))).toEqual([]);
	});

	it("is refused where a row does not fit its table, which is named", async () => {
		await rm(inFolder("forged"), { recursive: true });
		await cp(inFolder("backup"), inFolder("forged"), { recursive: true });
		await forge("sealed_entry", (text) => text.split("\n").reverse().join("\n").trimStart().concat("\n"));
		const outcome = await restore("forged", "empty");
		expect(outcome.err).toContain("tables/sealed_entry.copy does not go into its table: log entry");
		expect(await readdir(inFolder("empty"))).toEqual([]);
	});

	it("of a newer release is refused with what to do", async () => {
		await rm(inFolder("forged"), { recursive: true });
		await cp(inFolder("backup"), inFolder("forged"), { recursive: true });
		const text = await readFile(inFolder("forged", "manifest.json"), "utf8");
		const newer = { name: "9999_later.sql", sha256: "0".repeat(64) };
		await putManifest({ ...parseManifest(text), migrations: [...parseManifest(text).migrations, newer] });
		const outcome = await restore("forged", "empty");
		expect(outcome.err).toContain("migration 9999_later.sql, which this release does not know: restore it with");
		expect(await readdir(inFolder("empty"))).toEqual([]);
	});
});

describe.skipIf(SYSTEM_VERSION === null)(`with a PostgreSQL ${SYSTEM_VERSION} of one's own`, () => {
	let postgres: SystemPostgres;
	beforeAll(async () => {
		postgres = await startSystemPostgres();
	});
	afterAll(() => postgres.stop());

	it("the data moves there and back, every act with it", async () => {
		const { ownerUrl, serviceUrl } = await postgres.makeDatabase("shop");
		const variables = { DATABASE_URL: serviceUrl, DATABASE_MIGRATION_URL: ownerUrl };
		await rm(inFolder("forged"), { recursive: true, force: true });
		await cp(inFolder("backup"), inFolder("forged"), { recursive: true });
		await forge("entry_projection", (text) => text.replace("record-sealed", "record-opened"));
		expect((await restore("forged", "there", variables)).err).toContain("its bytes say another kind than its row");
		const there = await restore("backup", "there", variables);
		expect(there, there.err).toMatchObject({ code: 0 });
		expect((await restore("backup", "again", variables)).err).toContain("the database is in use: table");
		const service = await startBuiltService(inFolder("there"), { variables });
		try {
			expect(await lost({ url: service.url, token }, before)).toBe(0);
			const made = await run("backup", [inFolder("from-there")], { DATA_DIR: inFolder("there"), ...variables });
			expect(made, made.err).toMatchObject({ code: 0 });
		} finally {
			await service.stop();
		}
		const second = parseManifest(await readFile(inFolder("from-there", "manifest.json"), "utf8"));
		expect(second.serverVersion.startsWith(`${SYSTEM_VERSION}.`)).toBe(true);
		expect(second.log).toEqual(manifest.log);
		// Byte for byte: every row of every table, written by the other version.
		expect(second.tables).toEqual(manifest.tables);
		expect(second.exhibits).toEqual(manifest.exhibits);
		const back = await restore("from-there", "back");
		expect(back, back.err).toMatchObject({ code: 0 });
		const home = await startBuiltService(inFolder("back"));
		try {
			expect(await lost({ url: home.url, token }, before)).toBe(0);
		} finally {
			await home.stop();
		}
	});
});

/** A token of the account that the demo made. */
async function makeToken(url: string): Promise<string> {
	const send = (path: string, body: object, cookie = "") =>
		fetch(`${url}/api/v1${path}`, {
			method: "POST",
			headers: { "content-type": "application/json", cookie },
			body: JSON.stringify(body),
		});
	const signedIn = await send("/session", { name: "bench", passphrase: "an invented passphrase" });
	const cookie = (signedIn.headers.get("set-cookie") ?? "").split(";")[0];
	return ((await (await send("/tokens", { label: "backup" }, cookie)).json()) as { token: string }).token;
}

/** Waits while clients are at work; their failure, or their end, ends the wait. */
async function until(isSo: () => boolean, clients: Promise<unknown>): Promise<void> {
	let ended = false;
	const end = clients.then(() => {
		ended = true;
	});
	while (!isSo()) {
		await Promise.race([end, sleep(20)]);
		if (ended) throw new Error("the clients ended before");
	}
}

/** Changes a table of the backup `forged`, and its hashes with it. */
async function forge(table: string, change: (text: string) => string): Promise<void> {
	const path = inFolder("forged", "tables", `${table}.copy`);
	const before = await readFile(path, "utf8");
	const after = change(before);
	if (after === before) throw new Error("nothing was changed");
	await writeFile(path, after);
	const list = parseManifest(await readFile(inFolder("forged", "manifest.json"), "utf8"));
	const sha256 = createHash("sha256").update(after).digest("hex");
	await putManifest({ ...list, tables: list.tables.map((held) => (held.name === table ? { ...held, sha256 } : held)) });
}

async function putManifest(list: Manifest): Promise<void> {
	const text = manifestText(list);
	await writeFile(inFolder("forged", "manifest.json"), text);
	const sha256 = createHash("sha256").update(text).digest("hex");
	await writeFile(inFolder("forged", "manifest.json.sha256"), `${sha256}  manifest.json\n`);
}

async function flip(path: string): Promise<void> {
	const bytes = await readFile(path);
	const place = Math.floor(bytes.length / 2);
	bytes[place] = (bytes[place] ?? 0) ^ 1;
	await writeFile(path, bytes);
}

async function cutEnd(path: string): Promise<void> {
	const { size } = await stat(path);
	const bytes = await readFile(path);
	await writeFile(path, Buffer.concat([bytes.subarray(0, size - 3), Buffer.from("\n")]));
}
