/** Where the parts of a line are painted. Own expectations; a font's ascent is what its file says. */
import { expect, it } from "vitest";
import { readFaces } from "../../src/reports/fonts.ts";
import type { Line, Piece } from "../../src/reports/set-lines.ts";
import { Typesetter } from "../../src/reports/typesetter.ts";

const faces = readFaces(() => {});
const piece = (text: string, width: number, isRightToLeft = false): Piece => ({
	text,
	face: "text",
	width,
	isRightToLeft,
});

/** Text, place and features of each part, as the document is told. */
function painted(line: Line) {
	const told: unknown[][] = [];
	const doc = {
		font: () => doc,
		fontSize: () => doc,
		fillColor: () => doc,
		text: (text: string, x: number, y: number, { features }: { features?: unknown }) =>
			told.push([text, x, y, features]),
	};
	const place = { x: 50, y: 100, width: 200 };
	new Typesetter(doc as unknown as PDFKit.PDFDocument, faces, undefined).paint(line, place, { font: "text", size: 10 });
	return told;
}
const BASE = 100 + 10 * faces("text").ascent;

it("a line from the left begins at the left, its parts beside each other on one base line", () => {
	const pieces = [piece("board ", 30), piece("主板", 20)];
	expect(painted({ pieces, width: 50, isRightToLeft: false })).toEqual([
		["board ", 50, BASE, undefined],
		["主板", 80, BASE, undefined],
	]);
});

it("a line from the right ends at the right edge, and what is written so is laid out as a whole", () => {
	const pieces = [piece("12", 10), piece("שלום", 40, true)];
	expect(painted({ pieces, width: 50, isRightToLeft: true })).toEqual([
		["12", 200, BASE, undefined],
		["שלום", 210, BASE, []],
	]);
});
