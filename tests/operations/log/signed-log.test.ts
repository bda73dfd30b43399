/**
 * The signed log on a real database: keys that change, entries older than the tree, several instances at once. Signatures
 * are checked by OpenSSL, trees by the RFC's recursive definition in `independent-maker.ts`, receipts by `records/verify/`,
 * none of which shares code with the making.
 */
import { execFileSync } from "node:child_process";
import { mkdtemp, readdir, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { openPool } from "../../../src/database/pool.ts";
import { changeLogKey } from "../../../src/operations/log/change-key.ts";
import { openLog } from "../../../src/operations/log/open-log.ts";
import {
	readCheckpoint,
	readConsistencyProof,
	readInclusionProof,
	readPublicKeysPem,
} from "../../../src/operations/log/read-log.ts";
import { isConsistent, rootByInclusion } from "../../../src/records/verify/merkle-proofs.ts";
import { makeDeps, SILENT } from "../../../src/start/deps.ts";
import { leafOf, rootOf } from "../../records/verify/independent-maker.ts";
import { type TestDatabase, testDatabase } from "../../setup/test-database.ts";
import { openTestLog } from "../../setup/test-log.ts";

let test: TestDatabase;
let log: Awaited<ReturnType<typeof openTestLog>>;
beforeEach(async () => {
	test = await testDatabase();
	log = await openTestLog(test.database);
});
afterEach(() => test.close());

const add = (subject: string) => test.database.transaction((transaction) => log.append(transaction, subject));

async function storedLeaves(): Promise<Buffer[]> {
	const rows = await test.database.query<{ entry_bytes: Buffer }>(
		"SELECT entry_bytes FROM sealed_entry ORDER BY index",
	);
	return rows.map((row) => leafOf(row.entry_bytes));
}

async function notes(): Promise<{ size: number; note: string; text: string; root: string; signatures: Buffer[] }[]> {
	const rows = await test.database.query<{ size: number; note: string }>(
		"SELECT size, note FROM checkpoint ORDER BY size",
	);
	return rows.map(({ size, note }) => {
		const [text = "", lines = ""] = note.split("\n\n");
		const root = Buffer.from(text.split("\n")[2] ?? "", "base64").toString("hex");
		const signatures = lines.trim().split("\n");
		return {
			size,
			note,
			text: `${text}\n`,
			root,
			signatures: signatures.map((line) => Buffer.from(line.split(" ")[2] ?? "", "base64")),
		};
	});
}

/** What `openssl pkeyutl` says of an Ed25519 signature. */
async function opensslAccepts(pem: string, text: string, signature: Buffer): Promise<boolean> {
	const folder = await mkdtemp(join(tmpdir(), "handover-openssl-"));
	try {
		const path = (name: string) => join(folder, name);
		await writeFile(path("key.pem"), pem);
		await writeFile(path("text"), text);
		await writeFile(path("signature"), signature);
		const asked = [
			"-verify",
			"-rawin",
			"-pubin",
			"-inkey",
			path("key.pem"),
			"-sigfile",
			path("signature"),
			"-in",
			path("text"),
		];
		execFileSync("openssl", ["pkeyutl", ...asked], { stdio: "pipe" });
		return true;
	} catch {
		return false;
	} finally {
		await rm(folder, { recursive: true, force: true });
	}
}

it("signs a checkpoint with every entry: OpenSSL accepts it, and its root is the RFC's", async () => {
	for (let count = 0; count < 13; count += 1) await add(`rec_${count}`);
	const leaves = await storedLeaves();
	const all = await notes();
	const pem = await readPublicKeysPem(log.deps);
	expect(all.map(({ size }) => size)).toEqual(Array.from({ length: 13 }, (_, index) => index + 1));
	for (const { size, text, root, signatures } of all) {
		expect(root).toBe(rootOf(leaves.slice(0, size)).toString("hex"));
		expect(text.split("\n")[1]).toBe(String(size));
		expect(signatures).toHaveLength(1);
		expect(await opensslAccepts(pem, text, signatures[0]?.subarray(4) ?? Buffer.of())).toBe(true);
	}
	const newest = all.at(-1);
	const changed = newest?.text.replace("\n13\n", "\n12\n") ?? "";
	expect(await opensslAccepts(pem, changed, newest?.signatures[0]?.subarray(4) ?? Buffer.of())).toBe(false);
});

it("proves every entry in every tree, and every tree the beginning of every later one", async () => {
	for (let count = 0; count < 20; count += 1) await add(`rec_${count}`);
	const leaves = await storedLeaves();
	const roots = new Map((await notes()).map(({ size, root }) => [size, root]));
	for (let size = 1; size <= 20; size += 1) {
		for (let index = 0; index < size; index += 1) {
			const { proof } = await readInclusionProof(log.deps, index, size);
			expect(rootByInclusion(leaves[index]?.toString("hex") ?? "", index, size, proof)).toBe(roots.get(size));
		}
		for (let from = 1; from <= size; from += 1) {
			const { proof } = await readConsistencyProof(log.deps, from, size);
			const older = { size: from, root: roots.get(from) ?? "" };
			expect(isConsistent(older, { size, root: roots.get(size) ?? "" }, proof)).toBe(true);
		}
	}
});

it("has the old key and the new one sign the change of key, and the new one alone what follows", async () => {
	await add("rec_1");
	const [oldPem = ""] = [await readPublicKeysPem(log.deps)];
	const newKey = await changeLogKey(log.deps, "acc_1");
	await add("rec_2");
	const pems = (await readPublicKeysPem(log.deps)).split(/(?<=-----END PUBLIC KEY-----\n)/);
	const newPem = pems[0] ?? "";
	expect(pems).toEqual([newPem, oldPem]);
	const [before, change, after] = await notes();
	if (before === undefined || change === undefined || after === undefined) throw new Error("three entries were added");
	const accepted = async (pem: string, note: typeof before) =>
		Promise.all(note.signatures.map((signature) => opensslAccepts(pem, note.text, signature.subarray(4))));
	expect(await accepted(oldPem, before)).toEqual([true]);
	expect(await accepted(oldPem, change)).toEqual([true, false]);
	expect(await accepted(newPem, change)).toEqual([false, true]);
	expect(await accepted(newPem, after)).toEqual([true]);
	expect(await accepted(oldPem, after)).toEqual([false]);
	const [row] = await test.database.query<{ statement_bytes: Buffer }>(
		"SELECT statement_bytes FROM sealed_entry WHERE index = 1",
	);
	expect(JSON.parse(row?.statement_bytes.toString("utf8") ?? "")).toEqual({
		$format: "handover-risk/log-key/1",
		keyId: newKey.id,
		origin: newKey.origin,
		publicKey: newKey.publicKey,
	});
});

it("goes on with a key that another instance brought in", async () => {
	const other = makeDeps({ ...log.deps, log: SILENT, keyFolder: log.keyFolder });
	await add("rec_1");
	const { id } = await changeLogKey(other, "acc_1");
	await add("rec_2");
	const newest = (await notes()).at(-1);
	expect(newest?.signatures.map((signature) => signature.subarray(0, 4).toString("hex"))).toEqual([id]);
});

it("does not open, and adds nothing, without the file of the key that signs", async () => {
	await add("rec_1");
	const [file = ""] = await readdir(log.keyFolder);
	await rm(join(log.keyFolder, file));
	const without = makeDeps({ ...log.deps, log: SILENT, keyFolder: log.keyFolder });
	await expect(openLog(without)).rejects.toThrow(
		`the key that signs the log is missing: put ${join(log.keyFolder, file)} back from your copy of the key folder, or set KEY_DIR to where it is`,
	);
	expect((await readCheckpoint(log.deps)).size).toBe(1);
});

it("gives entries that are older than the tree their tree, once", async () => {
	for (let count = 0; count < 11; count += 1) await add(`rec_${count}`);
	const before = await notes();
	const owner = openPool(test.superuserUrl, { maxConnections: 1 });
	try {
		// As a database of the first release is, before its first start with this one: entries, and neither tree nor key.
		for (const table of ["checkpoint", "tree_node", "log_key"]) {
			await owner.query(`ALTER TABLE ${table} DISABLE TRIGGER ALL`);
			await owner.query(`DELETE FROM ${table}`);
			await owner.query(`ALTER TABLE ${table} ENABLE ALWAYS TRIGGER sealed_rows`);
		}
	} finally {
		await owner.close();
	}
	await openLog(log.deps);
	await openLog(log.deps);
	expect((await notes()).map(({ size, root }) => ({ size, root }))).toEqual([{ size: 11, root: before.at(-1)?.root }]);
	await add("rec_11");
	const leaves = await storedLeaves();
	expect((await notes()).at(-1)).toMatchObject({ size: 12, root: rootOf(leaves).toString("hex") });
	const { proof } = await readInclusionProof(log.deps, 4);
	expect(rootByInclusion(leaves[4]?.toString("hex") ?? "", 4, 12, proof)).toBe(rootOf(leaves).toString("hex"));
});

it("is one log for instances that open it at the same moment", async () => {
	const empty = await testDatabase();
	try {
		const keyFolder = await mkdtemp(join(tmpdir(), "handover-keys-"));
		const open = () => openLog(makeDeps({ ...log.deps, database: empty.database, keyFolder }));
		await Promise.all([open(), open(), open()]);
		expect(await empty.database.query("SELECT from_size FROM log_key")).toEqual([{ from_size: 0 }]);
		await rm(keyFolder, { recursive: true });
	} finally {
		await empty.close();
	}
});
