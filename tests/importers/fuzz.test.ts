/**
 * Damaged files, for every format: cut at every byte, changed at random, and nonsense. Nothing but the importer's own
 * refusal may leave it. No reading may come from garbage, which is held thus: what a cut file gives, the whole file gives
 * too (a count or a highest value may only be smaller); what a changed file gives stands in the changed file's own
 * characters; what is no such file gives nothing. Regression tests of our own; no outside figures.
 */
import { describe, expect, it } from "vitest";
import { LINK_GENERATIONS } from "../../src/catalogue/link-generations.ts";
import { IMPORT_KINDS, type ImportKind, importDiagnostic } from "../../src/importers/import-diagnostic.ts";
import { type ImportedReading, ImportRefusal, type ImportResult } from "../../src/importers/import-result.ts";
import { isTextKey } from "../../src/texts/say.ts";
import { SAMPLES } from "./samples.ts";

const MUTATIONS = 10_000;
const SEED = 20_261_127;

/** Null where it is refused. @throws whatever else leaves the importer */
function tryImport(bytes: Uint8Array, kind: ImportKind | null): ImportResult | null {
	try {
		return importDiagnostic(bytes, kind, "load");
	} catch (error) {
		if (error instanceof ImportRefusal && isTextKey(error.reason.sentence)) return null;
		throw error;
	}
}

/** Numbers in 0..1, the same in every run (mulberry32, public domain). */
function seeded(seed: number): () => number {
	let state = seed;
	return () => {
		state = (state + 0x6d2b79f5) | 0;
		let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
		mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
		return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
	};
}

function mutated(bytes: Buffer, random: () => number): Buffer {
	let changed = bytes;
	const edits = 1 + Math.floor(random() * 4);
	for (let edit = 0; edit < edits; edit += 1) {
		const place = Math.floor(random() * changed.length);
		const end = Math.min(changed.length, place + 1 + Math.floor(random() * 24));
		const part = changed.subarray(place, end);
		const other = Math.floor(random() * 256);
		const digit = 0x30 + Math.floor(random() * 10);
		switch (Math.floor(random() * 6)) {
			case 0:
				changed = Buffer.concat([changed.subarray(0, place), Buffer.from([other]), changed.subarray(place + 1)]);
				break;
			case 1:
				changed = Buffer.concat([changed.subarray(0, place), Buffer.from([other]), changed.subarray(place)]);
				break;
			case 2:
				changed = Buffer.concat([changed.subarray(0, place), changed.subarray(end)]);
				break;
			case 3:
				changed = Buffer.concat([changed.subarray(0, end), part, changed.subarray(end)]);
				break;
			case 4:
				changed = Buffer.concat([changed.subarray(0, place), Buffer.from([digit]), changed.subarray(place)]);
				break;
			default:
				changed = Buffer.concat([changed.subarray(end), changed.subarray(0, end)]);
		}
		if (changed.length === 0) return Buffer.from(" ");
	}
	return changed;
}

/** Whether a value follows from the characters that it is said to be read from. */
function standsInRaw({ check, value, raw }: ImportedReading): boolean {
	if (value === null || /^(aer|xid)-/.test(check)) return true;
	if (raw === "true" || raw === "false") return value === (raw === "true" ? 1 : 0);
	return [...raw.matchAll(/-?\d+(?:[.,]\d+)?/g)].some(([digits]) => {
		const number = Number(digits.replace(",", "."));
		const meant = [number, number / 1000, number * 1024, number / 1024, LINK_GENERATIONS[number]];
		return meant.includes(value);
	});
}

/** Words of a reading's raw text that the file does not hold. */
function missingWords(raw: string, text: string): string[] {
	return raw.split(/[\s,.]+/).filter((word) => word !== "" && !text.includes(word));
}

const key = (reading: ImportedReading) => `${reading.check} ${reading.subject}`;
const given = (result: ImportResult | null) => result?.readings.filter(({ value }) => value !== null) ?? [];

describe.each(IMPORT_KINDS)("%s", (kind) => {
	const whole = Buffer.from(SAMPLES[kind]);

	it("is found by its content, whole, and gives readings or columns", () => {
		const result = importDiagnostic(whole, null, "load");
		expect(result.format).toBe(kind);
		if (kind === "shock-csv") expect(result.columns).toHaveLength(4);
		else expect(given(result).length).toBeGreaterThan(0);
		for (const warning of result.warnings) expect(isTextKey(warning.message.sentence), warning.code).toBe(true);
	});

	it("reads the same from UTF-16LE and from UTF-8 with byte order marks, with CRLF", () => {
		const text = SAMPLES[kind].replaceAll("\n", "\r\n");
		const utf16 = Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from(text, "utf16le")]);
		const utf8 = Buffer.concat([Buffer.from([0xef, 0xbb, 0xbf]), Buffer.from(text)]);
		const plain = importDiagnostic(whole, null, "load");
		for (const bytes of [utf16, utf8]) expect(importDiagnostic(bytes, null, "load")).toEqual(plain);
	});

	it("cut at every byte, gives no reading that the whole file does not give", () => {
		const known = new Map(given(importDiagnostic(whole, null, "load")).map((reading) => [key(reading), reading.value]));
		let refused = 0;
		for (let length = 0; length < whole.length; length += 1) {
			const result = tryImport(whole.subarray(0, length), null);
			if (result === null) refused += 1;
			for (const reading of given(result)) {
				const all = known.get(key(reading));
				const grows = kind === "kernel-log" || kind === "sensor-csv" || kind === "nvidia-smi-csv";
				const holds = grows ? Number(reading.value) <= Number(all) : reading.value === all;
				if (!holds) expect.fail(`cut after ${length}: ${key(reading)} is ${reading.value}, in the whole file ${all}`);
			}
		}
		expect(refused).toBeGreaterThan(0);
	});

	it(`${MUTATIONS} times changed at random, gives readings of its own characters or a refusal`, () => {
		const random = seeded(SEED);
		let read = 0;
		for (let run = 0; run < MUTATIONS; run += 1) {
			const bytes = mutated(whole, random);
			const text = bytes.toString("utf8").replace(/\r\n?/g, "\n");
			for (const reading of given(tryImport(bytes, random() < 0.5 ? null : kind))) {
				read += 1;
				const missing = missingWords(reading.raw, text);
				if (missing.length > 0 || !Number.isFinite(reading.value) || !standsInRaw(reading))
					expect.fail(`run ${run}: ${JSON.stringify(reading)} does not stand in\n${text}`);
			}
		}
		if (kind !== "shock-csv") expect(read).toBeGreaterThan(0);
	});

	it("gives nothing for nonsense and for outputs of other formats", () => {
		const random = seeded(SEED + 1);
		const printable = () => String.fromCharCode(32 + Math.floor(random() * 95));
		for (let run = 0; run < 1000; run += 1) {
			const bytes =
				run % 2 === 0
					? Buffer.from(Array.from({ length: 200 }, () => Math.floor(random() * 256)))
					: Buffer.from(`${Array.from({ length: 200 }, () => (random() < 0.05 ? "\n" : printable())).join("")}\n`);
			expect(given(tryImport(bytes, kind))).toEqual([]);
		}
		for (const other of IMPORT_KINDS.filter((candidate) => candidate !== kind))
			expect(given(tryImport(Buffer.from(SAMPLES[other]), kind)), other).toEqual([]);
	});
});
