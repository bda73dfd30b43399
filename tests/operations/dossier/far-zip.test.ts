/**
 * Archives beyond 4 GiB and of many files: ZIP64 where a number does not fit and only there, against Debian's zipinfo and
 * unzip and Python's zipfile, on files with holes; and the verifier's reader, which shares no code with what writes them.
 */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type DossierFile, fileOf } from "../../../src/operations/dossier/dossier-file.ts";
import { storedZip, zipBytes } from "../../../src/operations/dossier/stored-zip.ts";
import { sourceOf } from "../../../src/records/verify/dossier/byte-source.ts";
import { readStoredZip } from "../../../src/records/verify/dossier/stored-zip.ts";
import { Unreadable } from "../../../src/records/verify/finding.ts";
import { sourceOn, writeWithHoles, zeros } from "../../setup/far-zip.ts";
import { lacks, runTool } from "../../setup/tools.ts";

const TIME = new Date("2026-03-02T23:59:58Z");
const GIB4 = 2 ** 32;
const zipOf = (files: readonly DossierFile[]) => storedZip(files, TIME);
/** How many bytes of an archive are no content. */
const overhead = (files: readonly DossierFile[]) =>
	zipOf(files).sizeBytes - files.reduce((sum, { sizeBytes }) => sum + sizeBytes, 0);
/** Without ZIP64: 30 and the name before each file, 46 and the name in the directory, 22 at the end. */
const plainOverhead = (files: readonly DossierFile[]) =>
	files.reduce((sum, { path }) => sum + 76 + 2 * path.length, 22);

describe("the form", () => {
	// The header of the first file is 30 bytes and its name.
	const fill = (offset: number) => zeros("bag/a", offset - 35);
	it.each([
		// APPNOTE 4.5.3: both sizes in the file's own header (20 bytes) and in the directory (20).
		["a file of 4 GiB less 2 bytes", [zeros("bag/a", GIB4 - 2)], 0 + 76],
		["a file of 4 GiB less 1, the mark itself", [zeros("bag/a", GIB4 - 1)], 40 + 76],
		["a file of 8 GiB", [zeros("bag/a", 2 * GIB4)], 40 + 76],
		// The place of the second header: 12 bytes in the directory; that of the directory: 56 and 20 at the end.
		["a second file at 4 GiB less 1", [fill(GIB4 - 1), fileOf("bag/b", "b")], 12 + 76],
		["a second file at 4 GiB less 2, the directory beyond", [fill(GIB4 - 2), fileOf("bag/b", "b")], 76],
		["two files within 4 GiB, the directory at the last place", [fill(GIB4 - 2 - 36), fileOf("bag/b", "b")], 0],
		["the same, the directory one further", [fill(GIB4 - 1 - 36), fileOf("bag/b", "b")], 76],
	] as const)("of %s has ZIP64 where it is needed", async (_, files, bytes) => {
		expect(overhead(files) - plainOverhead(files)).toBe(bytes);
		const read = await readStoredZip(sourceOn(zipOf(files)));
		expect(read.map(({ path, size }) => [path, size])).toEqual(files.map(({ path, sizeBytes }) => [path, sizeBytes]));
	});
	it("of 65,534 files has none, of 65,535 it has, and they are read", async () => {
		const files = Array.from({ length: 65_535 }, (_, index) => zeros(`b/${index}`, 0));
		expect(overhead(files.slice(1)) - plainOverhead(files.slice(1))).toBe(0);
		expect(overhead(files) - plainOverhead(files)).toBe(76);
		const pieces: Uint8Array[] = [];
		for await (const piece of zipBytes(zipOf(files), 0, Number.MAX_SAFE_INTEGER)) pieces.push(piece);
		expect((await readStoredZip(sourceOf(Buffer.concat(pieces)))).length).toBe(65_535);
	});
});

const sizes = fc.oneof(
	fc.integer({ min: 0, max: 300 }),
	fc.integer({ min: -90, max: 3 }).map((more) => GIB4 + more),
	fc.integer({ min: -90, max: 3 }).map((more) => GIB4 / 2 + more),
	fc.integer({ min: GIB4, max: 2 * GIB4 }),
);

it("whatever the sizes, the reader finds each file where it was laid", async () => {
	await fc.assert(
		fc.asyncProperty(fc.array(sizes, { minLength: 1, maxLength: 6 }), async (given) => {
			const files = given.map((size, index) => zeros(`bag/${index}`, size));
			const zip = zipOf(files);
			const read = await readStoredZip(sourceOn(zip));
			expect(read.map(({ size }) => size)).toEqual(given);
			// The content of each is a part of the archive by itself, as it was laid.
			const starts = zip.parts.filter((_, part) => part % 2 === 1).slice(0, given.length);
			expect(read.map(({ start }) => start)).toEqual(starts.map(({ start }) => start));
		}),
		{ numRuns: 300 },
	);
});

it("no flip of a bit in the structure is taken", async () => {
	const files = [zeros("bag/a", GIB4 + 5), fileOf("bag/b", "b\n"), zeros("bag/c", 2 * GIB4), fileOf("bag/d", "d\n")];
	const zip = zipOf(files);
	const source = sourceOn(zip);
	const good = await readStoredZip(source);
	const contents = new Set(good.filter(({ size }) => size > 0).map(({ start }) => start));
	const taken: string[] = [];
	for (const { start, sizeBytes } of zip.parts) {
		if (contents.has(start)) continue;
		for (let at = start; at < start + sizeBytes; at++) {
			for (let bit = 0; bit < 8; bit++) {
				const flipped = {
					size: source.size,
					read: async (from: number, length: number) => {
						const bytes = await source.read(from, length);
						if (at >= from && at < from + length) bytes[at - from] = (bytes[at - from] ?? 0) ^ (1 << bit);
						return bytes;
					},
				};
				const outcome = await readStoredZip(flipped).catch((error: unknown) => error);
				if (!(outcome instanceof Unreadable)) taken.push(`byte ${at}, bit ${bit}: ${outcome}`);
			}
		}
	}
	expect(taken).toEqual([]);
});

describe("on a disk, read by others", () => {
	const files = [
		zeros("bag/far.bin", GIB4 + 5),
		fileOf("bag/behind.txt", "behind\n"),
		zeros("bag/near.bin", 2 * GIB4),
		fileOf("bag/last.txt", "last\n"),
	];
	const listed = files.map(({ path, sizeBytes }) => `${path} ${sizeBytes}`).join("\n");
	let folder: string;
	beforeAll(async () => {
		folder = mkdtempSync(join(tmpdir(), "handover-risk-far-"));
		await writeWithHoles(zipOf(files), join(folder, "far.zip"));
	});
	afterAll(() => rmSync(folder, { recursive: true }));

	it.skipIf(lacks("unzip"))("zipinfo lists the files, and unzip finds those that lie behind 4 GiB", () => {
		const { status, said } = runTool("unzip", ["-Z", "far.zip"], folder);
		expect(status, said).toBe(0);
		const lines = said.split("\n").filter((line) => line.startsWith("-rw"));
		// Columns of zipinfo: mode, version, system, size, kind, method, date, time, name.
		expect(
			lines
				.map((line) => line.split(/ +/))
				.map((part) => `${part.at(-1)} ${part[3]}`)
				.join("\n"),
		).toBe(listed);
		for (const name of ["behind", "last"]) {
			const { said: content, status: ended } = runTool("unzip", ["-p", "far.zip", `bag/${name}.txt`], folder);
			expect([content, ended]).toEqual([`${name}\n`, 0]);
		}
	});
	it.skipIf(lacks("python3"))("Python's zipfile lists and reads the same", () => {
		const program = `
import zipfile
with zipfile.ZipFile("far.zip") as z:
    print("\\n".join(f"{i.filename} {i.file_size}" for i in z.infolist()))
    print(z.read("bag/behind.txt"), z.read("bag/last.txt"))
    for name in ("bag/far.bin", "bag/near.bin"):
        with z.open(name) as f: print(f.read(5))
`;
		const { said, status } = runTool("python3", ["-c", program], folder);
		expect(said).toBe(`${listed}\nb'behind\\n' b'last\\n'\n${"b'\\x00\\x00\\x00\\x00\\x00'\n".repeat(2)}`);
		expect(status).toBe(0);
	});
});
