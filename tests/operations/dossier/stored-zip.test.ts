/** The archive against Debian's unzip, in any time zone; every range of it against the whole. */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { fileOf } from "../../../src/operations/dossier/dossier-file.ts";
import { storedZip, zipBytes } from "../../../src/operations/dossier/stored-zip.ts";
import { sha256Hex } from "../../../src/records/canonical.ts";
import { readStoredZip } from "../../../src/records/verify/dossier/stored-zip.ts";
import { Unreadable } from "../../../src/records/verify/finding.ts";
import { sourceOn } from "../../setup/far-zip.ts";
import { lacks, runTool } from "../../setup/tools.ts";

const files = [
	fileOf("bag/a.txt", "first\n"),
	fileOf("bag/data/empty.bin", ""),
	fileOf("bag/data/b.bin", Buffer.alloc(5000, 7)),
];
const TIME = new Date("2026-03-02T23:59:58Z");
const bytesOf = async (start: number, end: number) => {
	const chunks: Uint8Array[] = [];
	for await (const chunk of zipBytes(storedZip(files, TIME), start, end)) chunks.push(chunk);
	return Buffer.concat(chunks);
};
let folder: string;
let whole: Buffer;
beforeAll(async () => {
	folder = mkdtempSync(join(tmpdir(), "handover-risk-zip-"));
	whole = await bytesOf(0, storedZip(files, TIME).sizeBytes);
	writeFileSync(join(folder, "bag.zip"), whole);
});
afterAll(() => rmSync(folder, { recursive: true }));

it("is the same, byte for byte, as before there was ZIP64 (regression value)", () => {
	expect(sha256Hex(whole)).toBe("d4df14cae7de5dc8368796dcab200234a9840c3ad52809711b6e93ad342cbf12");
});
it("is as long as it says, and every range is that part of the whole", async () => {
	expect(whole.length).toBe(storedZip(files, TIME).sizeBytes);
	for (let start = 0; start < whole.length; start += 97) {
		const end = Math.min(whole.length, start + 211);
		expect((await bytesOf(start, end)).equals(whole.subarray(start, end)), `${start}`).toBe(true);
	}
});
it.skipIf(lacks("unzip"))("unpacks to the files, and its check finds no fault", () => {
	const { status, said } = runTool("unzip", ["-t", "bag.zip"], folder);
	expect(status, said).toBe(0);
	runTool("unzip", ["-q", "bag.zip"], folder);
	expect(readFileSync(join(folder, "bag/a.txt"), "utf8")).toBe("first\n");
	expect(readFileSync(join(folder, "bag/data/b.bin")).length).toBe(5000);
});
it.skipIf(lacks("unzip"))("names the same times in every time zone", () => {
	for (const zone of ["UTC", "Pacific/Auckland", "America/Los_Angeles"]) {
		const { stdout } = spawnSync("unzip", ["-Z", "-T", "bag.zip"], { cwd: folder, env: { ...process.env, TZ: zone } });
		expect(stdout.toString()).toContain("20260302.235958");
	}
});
it.each([
	[["bag/a", "bag/a"], "the same name twice"],
	[["../a"], "a way out of the folder"],
	[["bag/../../a"], "a way out of the folder, further on"],
	[["/a"], "a place of the whole machine"],
	[["bag//a"], "an empty part"],
	[["bag/.a"], "a hidden file"],
	[["bag\\a"], "another system's separator"],
	[["a".repeat(501)], "no end"],
])("is refused by the verifier with names %j: %s", async (paths) => {
	const zip = storedZip(
		paths.map((path) => fileOf(path, "x")),
		TIME,
	);
	const refused = await readStoredZip(sourceOn(zip)).catch((error: unknown) => error);
	expect(refused).toBeInstanceOf(Unreadable);
	expect(refused).toMatchObject({ details: { why: { sentence: "verify.zip-name" } } });
});
