/**
 * Lines against the rules of Unicode Standard Annexes 14 (breaks) and 9 (order of sight), each named beside its check and
 * worked out by hand; and against what must hold of any text.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { facedText, type Said } from "../../src/reports/faced-text.ts";
import { readFaces } from "../../src/reports/fonts.ts";
import { type Line, setLines } from "../../src/reports/set-lines.ts";
import { isolated } from "../../src/texts/isolated.ts";

const faces = readFaces(() => {});

/** Every UTF-16 unit is one point wide, so that a width counts letters. */
function linesOf(words: string, width: number, said: Said = "own"): readonly Line[] {
	return setLines(words, { faces, font: "text", said, width, widthOf: (text) => text.length });
}
const textOf = (line: Line) => line.pieces.map(({ text }) => text).join("");
const textsOf = (words: string, width: number) => linesOf(words, width).map((line) => textOf(line).trimEnd());
/** As the eye meets them: parts from right to left turned around. */
function seen(words: string, said: Said = "own"): string {
	const [line] = linesOf(words, Number.POSITIVE_INFINITY, said) as [Line];
	return line.pieces.map(({ text, isRightToLeft }) => (isRightToLeft ? [...text].reverse().join("") : text)).join("");
}

describe("lines break", () => {
	it("after spaces, which do not count at the end of a line (Annex 14, LB18)", () => {
		expect(textsOf("one two three", 7)).toEqual(["one two", "three"]);
		expect(textsOf("one two three", 8)).toEqual(["one two", "three"]);
	});
	it("between any two Chinese or Japanese characters, but not before a full stop or small kana (LB13, LB21, LB31)", () => {
		expect(textsOf("主板昨天到了，但无法开机", 6)).toEqual(["主板昨天到", "了，但无法开", "机"]);
		expect(textsOf("起動しません。", 6)).toEqual(["起動しませ", "ん。"]);
	});
	it("at no space that joins (LB12), and at a soft hyphen, which is seen there alone (LB21)", () => {
		expect(textsOf("about 12\u00a0kPa here", 11)).toEqual(["about", "12\u00a0kPa here"]);
		expect(textsOf("Feuchte\u00adschutz", 9)).toEqual(["Feuchte-", "schutz"]);
		expect(textsOf("Feuchte\u00adschutz", 20)).toEqual(["Feuchteschutz"]);
		// The hyphen needs its own room.
		expect(textsOf("ab Feuchte\u00adschutz", 10)).toEqual(["ab", "Feuchte-", "schutz"]);
	});
	it("inside what is wider than a whole line, between letters and never inside one", () => {
		expect(textsOf("0123456789abcdef", 6)).toEqual(["012345", "6789ab", "cdef"]);
		expect(textsOf("e\u0301e\u0301e\u0301", 2)).toEqual(["e\u0301", "e\u0301", "e\u0301"]);
	});
	it("so that nothing is lost, added or too wide, whatever is typed", () => {
		const letters = fc.string({ unit: fc.constantFrom(..."ab -/()12.,אבגدوم主板かな한é\u00a0"), maxLength: 60 });
		fc.assert(
			fc.property(
				letters,
				fc.integer({ min: 1, max: 30 }),
				fc.constantFrom<Said>("own", "typed"),
				(words, width, said) => {
					const lines = linesOf(words, width, said);
					for (const line of lines) expect(line.width).toBeLessThanOrEqual(width);
					const units = (text: string) => [...text.replaceAll(/\s|[()]/g, "")].sort().join("");
					expect(units(lines.map(textOf).join(""))).toBe(units(words));
				},
			),
			{ numRuns: 300 },
		);
	});
});

describe("what is written from right to left", () => {
	it("stands in its own order inside a sentence from left to right, numbers unturned (Annex 9, rules W and L2)", () => {
		expect(seen("Item of שלום, 12 V")).toBe("Item of 12 ,םולש V");
		expect(seen(`Item of ${isolated("שלום")}, 12 V`)).toBe("Item of םולש, 12 V");
	});
	it("begins at the right where somebody typed it, and never in a sentence of the report's own", () => {
		expect(linesOf("שלום abc", 99, "typed")[0]?.isRightToLeft).toBe(true);
		expect(linesOf("שלום abc", 99, "own")[0]?.isRightToLeft).toBe(false);
		expect(linesOf("abc שלום", 99, "typed")[0]?.isRightToLeft).toBe(false);
		expect(seen("שלום abc", "typed")).toBe("abc םולש");
	});
	it("opens its brackets to the other side (rule L4)", () => {
		expect(seen("(שלום)", "typed")).toBe("(םולש)");
	});
	it("has its signs in its own order too where another font has them (rule L2)", () => {
		expect(seen("שלום、。", "typed")).toBe("。、םולש");
	});
	it("shows marks that somebody typed to turn a text around, and lets none out of its place", () => {
		expect(seen("a\u202eb", "typed")).toBe("a[U+202E]b");
		expect(seen(`serial ${isolated("\u202e\u2069 21")} and 12`)).toBe("serial [U+202E][U+2069] 21 and 12");
	});
});

describe("each character has a font that holds it", () => {
	const facesOf = (words: string) => linesOf(words, 99).flatMap(({ pieces }) => pieces.map(({ face }) => face));
	it.each([
		["board", ["text"]],
		["主板", ["chinese"]],
		["基板です", ["japanese"]],
		["보드 板", ["korean", "text", "korean"]],
		["a主b", ["text", "chinese", "text"]],
		["שלום מוחמד", ["text"]],
	])("%s", (words, found) => {
		expect(facesOf(words)).toEqual(found);
	});
	it("an accent that of the letter below it, which the font for figures need not have", () => {
		const facesIn = (words: string) => facedText(words, "typed", "fixed", faces).faces;
		expect(facesIn("a\u0301")).toEqual(["fixed", "fixed"]);
		expect(facesIn("ȣ\u0301")).toEqual(["text", "text"]);
	});
});
