/** A report of invented blocks, read back with poppler's programs and qpdf: form, fonts, order of the text, determinism. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { facedText } from "../../src/reports/faced-text.ts";
import { readFaces } from "../../src/reports/fonts.ts";
import { facts, list, paragraph, type Report, subheading, table } from "../../src/reports/report.ts";
import { writeReport } from "../../src/reports/write-report.ts";
import { lacks, runTool } from "../setup/tools.ts";

const SENTENCE = "The pack was opened in front of two people, and both wrote down what they saw. ";
const report: Report = {
	title: "Report on a hand-over",
	lead: "Brookmere Heron 12",
	asOf: new Date("2026-03-02T10:00:00Z"),
	language: "en",
	footer: "as of entry 27",
	summary: {
		title: "Summary",
		blocks: [paragraph(SENTENCE, "note"), list([SENTENCE, "Größe ≤ 3 µm, Łódź, Ωμέγα, 名前, ꦗ", "דנה, محمد بن علي"])],
	},
	sections: [
		{
			title: "A table over pages",
			blocks: [
				subheading("Rows"),
				table(
					["Check", "Result"],
					[1, 2],
					Array.from({ length: 90 }, (_, row) => [`row ${row}`, SENTENCE.repeat(1 + (row % 3))]),
				),
			],
		},
		{
			title: "Long words and a drawing",
			blocks: [
				facts([["SHA-256", "0123456789abcdef".repeat(4)]]),
				...Array.from({ length: 40 }, (_, n) =>
					paragraph(SENTENCE.repeat(1 + (n % 5)), n % 2 === 0 ? "small" : "plain"),
				),
				list(Array.from({ length: 60 }, (_, n) => SENTENCE.repeat(1 + (n % 3)))),
				paragraph(SENTENCE.repeat(80), "quote"),
				{
					kind: "figure",
					caption: "What was tried",
					drawing: {
						width: 640,
						height: 200,
						title: "A curve",
						description: "It rises.",
						primitives: [
							{ kind: "path", role: "curve", d: "M0,180L300,100L640,10" },
							{ kind: "line", role: "limit", x1: 0, x2: 640, y1: 60, y2: 60 },
							{ kind: "circle", role: "point", cx: 300, cy: 100, r: 6 },
							{ kind: "text", role: "label", x: 320, y: 120, anchor: "middle", text: "this pack" },
						],
					},
				},
			],
		},
	],
	attachment: { name: "comparison.json", description: "The comparison", bytes: Buffer.from('{"a":1}') },
};

let folder: string;
let pdf: string;
beforeAll(async () => {
	folder = mkdtempSync(join(tmpdir(), "handover-risk-report-"));
	pdf = join(folder, "report.pdf");
	writeFileSync(pdf, await writeReport(report));
});
afterAll(() => rmSync(folder, { recursive: true }));

describe("a report", () => {
	it("has the same bytes whenever it is written, and others for another date", async () => {
		const first = await writeReport(report);
		await new Promise((resolve) => setTimeout(resolve, 1100));
		expect((await writeReport(report)).equals(first)).toBe(true);
		const later = await writeReport({ ...report, asOf: new Date("2026-03-03T10:00:00Z") });
		expect(later.equals(first)).toBe(false);
	});
	it("of one paragraph in German asks for its own font first", async () => {
		const summary = { title: "Z", blocks: [paragraph("Feuchteschutzverpackung", "fixed")] };
		expect((await writeReport({ ...report, language: "de", summary, sections: [] })).length).toBeGreaterThan(1000);
	});
	it.skipIf(lacks("pdfinfo"))("is tagged, dated as told, and declares PDF/A-3", async () => {
		const { said } = runTool("pdfinfo", [pdf]);
		expect(said).toMatch(/Tagged: +yes/);
		expect(said).toMatch(/CreationDate: .*2026/);
		expect(said).not.toMatch(/Error|Warning/);
		const xmp = runTool("pdfinfo", ["-meta", pdf]).said;
		expect(xmp).toContain("<pdfaid:part>3</pdfaid:part>");
		expect(xmp).toContain("<pdfaid:conformance>A</pdfaid:conformance>");
	});
	it.skipIf(lacks("pdfinfo"))("has its structure in reading order", () => {
		const { said } = runTool("pdfinfo", ["-struct-text", pdf]);
		const places = [
			"H1",
			"Summary",
			"LBody",
			"A table over pages",
			"row 0",
			"row 89",
			"Long words",
			"BlockQuote",
			"Figure",
		];
		const at = places.map((place) => said.indexOf(place));
		expect(
			at.every((place) => place >= 0),
			said.slice(0, 500),
		).toBe(true);
		expect(at).toEqual([...at].sort((a, b) => a - b));
	});
	it.skipIf(lacks("pdffonts"))("holds every font it uses", () => {
		const rows = runTool("pdffonts", [pdf]).said.trim().split("\n").slice(2);
		expect(rows.length).toBeGreaterThanOrEqual(2);
		for (const row of rows) expect(row).toMatch(/(DejaVu|Noto).* yes +yes +yes/);
	});
	it.skipIf(lacks("pdftotext"))("says every word once, whatever its script; what has no glyph is named", () => {
		const { said } = runTool("pdftotext", ["-layout", pdf, "-"]);
		expect(said).not.toMatch(/Error|Warning/);
		expect(said).toContain("Größe ≤ 3 µm, Łódź, Ωμέγα, 名前, [U+A997]");
		// It sets marks of direction around what runs from right to left.
		expect(said.replace(/[\u200e\u200f\u202a-\u202e]/g, "")).toMatch(/דנה, ?محمد بن علي|محمد بن علي ?,דנה/);
		for (const row of [0, 31, 89]) expect(said.match(new RegExp(`\\brow ${row}\\b`, "g"))?.length).toBe(1);
		const pages = said.split("\f").filter((page) => page.trim() !== "");
		pages.forEach((page, index) => {
			expect(page).toContain(`as of entry 27 · ${index + 1} / ${pages.length}`);
		});
	});
	it.skipIf(lacks("pdfdetach"))("carries its attachment unchanged", () => {
		const out = join(folder, "attached");
		runTool("pdfdetach", ["-save", "1", "-o", out, pdf]);
		expect(runTool("cat", [out]).said).toBe('{"a":1}');
	});
	it.skipIf(lacks("pdftoppm"))(
		"is drawn without a complaint: what is marked is closed on the page where it was opened",
		() => {
			expect(runTool("pdftoppm", ["-r", "20", "-png", pdf, join(folder, "page")])).toEqual({ status: 0, said: "" });
		},
	);
	it.skipIf(lacks("qpdf"))("is whole for qpdf", () => {
		const { status, said } = runTool("qpdf", ["--check", pdf]);
		expect(status, said).toBe(0);
	});
});

describe.skipIf(lacks("pdftotext"))("what leads to something", () => {
	// Sections of growing height, so that each heading once falls near the foot of a page.
	const PLACES = 48;
	const kinds = [
		(n: number) =>
			table(
				["Check", "Result"],
				[1, 2],
				[0, 1, 2].map((row) => [`first ${n} ${row}`, SENTENCE]),
			),
		(n: number) => list([0, 1, 2].map((item) => `first ${n} ${item} ${SENTENCE}`)),
		(n: number) => facts([0, 1, 2].map((row) => [`first ${n} ${row}`, SENTENCE.repeat(2)])),
	];
	it("stands on the page where that begins, with its first two rows, wherever the page ends", async () => {
		const sections = Array.from({ length: PLACES }, (_, n) => ({
			title: `Title ${n}.`,
			blocks: [
				subheading(`Lower title ${n}.`),
				paragraph(`What leads there ${n}.`, n % 2 === 0 ? "plain" : "note"),
				...kinds.slice(n % kinds.length, (n % kinds.length) + 1).map((kind) => kind(n)),
				paragraph(SENTENCE.repeat(1 + (n % 11)), "small"),
			],
		}));
		const path = join(folder, "kept.pdf");
		writeFileSync(path, await writeReport({ ...report, sections, attachment: null }));
		const pages = runTool("pdftotext", ["-layout", path, "-"]).said.split("\f");
		const pageOf = (words: string) => pages.findIndex((page) => page.includes(words));
		expect(pages.length).toBeGreaterThan(8);
		for (let n = 0; n < PLACES; n++) {
			const at = pageOf(`first ${n} 0`);
			expect(at).toBeGreaterThan(0);
			for (const words of [`Title ${n}.`, `Lower title ${n}.`, `What leads there ${n}.`, `first ${n} 1`]) {
				expect(pageOf(words), words).toBe(at);
			}
		}
	});
});

describe("a character without a glyph", () => {
	const faces = readFaces(() => {});
	it.each([
		["\u{20000}", "[U+20000]"],
		["ꦗ", "[U+A997]"],
		["a\u202eb", "a[U+202E]b"],
		["a\u0000b", "a[U+0000]b"],
		["a\u0085b", "a[U+0085]b"],
		["a\u200bb", "a[U+200B]b"],
		["a\u2068b", "a[U+2068]b"],
		["two\tand é", "two and é"],
	])("%j stands as %j", (text, shown) => {
		expect(facedText(text, "typed", "text", faces).text).toBe(shown);
	});
});
