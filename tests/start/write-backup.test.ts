/** A backup that cannot be made whole leaves nothing behind, and says why. */
import { mkdir, mkdtemp, readdir, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { exhibitPlace, storeExhibit } from "../../src/exhibits/store.ts";
import type { Run } from "../../src/start/backup/progress.ts";
import { writeBackup } from "../../src/start/backup/write-backup.ts";
import { type TestDatabase, testDatabase } from "../setup/test-database.ts";

let db: TestDatabase;
let folder: string;
beforeEach(async () => {
	db = await testDatabase();
	folder = await mkdtemp(join(tmpdir(), "handover-backup-"));
	await mkdir(join(folder, "exhibits"));
	await mkdir(join(folder, "out"));
});
afterEach(async () => {
	await db.close();
	await rm(folder, { recursive: true, force: true });
});

const source = () => ({ ownerUrl: db.ownerUrl, exhibitFolder: join(folder, "exhibits"), keyFolder: null });
const write = (run: Partial<Run> = {}) =>
	writeBackup(source(), join(folder, "out", "b"), { say() {}, stop: new AbortController().signal, ...run });

async function addExhibit(bytes: Buffer): Promise<string> {
	const sha256 = await storeExhibit(join(folder, "exhibits"), bytes);
	await db.database.query(
		`WITH owner AS (INSERT INTO party (id, kind, country, personal) VALUES ('pty_1', 'consumer', 'FR', '\\x00') RETURNING id)
		 INSERT INTO exhibit (sha256, stored_sha256, size_bytes, media_type, party_id) SELECT $1, $1, $2, 'text/plain', id FROM owner`,
		[sha256, bytes.length],
	);
	return sha256;
}

it("is stopped between two steps", async () => {
	await addExhibit(Buffer.from("one"));
	const stop = new AbortController();
	const say = (line: string) => {
		if (line.startsWith("table exhibit:")) stop.abort(new Error("stopped"));
	};
	await expect(write({ say, stop: stop.signal })).rejects.toThrow("stopped");
	expect(await readdir(join(folder, "out"))).toEqual([]);
});

it("names an exhibit that the store lost, or whose bytes changed", async () => {
	const sha256 = await addExhibit(Buffer.from("one"));
	const place = exhibitPlace(join(folder, "exhibits"), sha256);
	await writeFile(place, "two");
	await expect(write()).rejects.toThrow(`exhibit ${sha256} has changed on disk`);
	await rm(place);
	await expect(write()).rejects.toThrow(`exhibit ${sha256} is missing`);
	expect(await readdir(join(folder, "out"))).toEqual([]);
});

it("of an empty database holds an empty log: SHA-256 of nothing is its root (RFC 9162, 2.1.1)", async () => {
	const { log, tables } = await write();
	expect(log).toEqual({ size: 0, rootSha256: "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855" });
	expect(tables.every(({ rows }) => rows === 0)).toBe(true);
	expect((await readdir(join(folder, "out", "b"))).sort()).toEqual([
		"exhibits",
		"manifest.json",
		"manifest.json.sha256",
		"tables",
	]);
});
