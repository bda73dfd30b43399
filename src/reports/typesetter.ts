/** Sets texts of a document into lines in its fonts, tells how high they stand, and paints them. */
import { breakWords } from "./break-words.ts";
import type { Said } from "./faced-text.ts";
import type { FaceName, Faces } from "./fonts.ts";
import { INK, LINE_GAP, type Style } from "./page-styles.ts";
import { type Line, setLines } from "./set-lines.ts";

export class Typesetter {
	readonly #doc: PDFKit.PDFDocument;
	readonly #faces: Faces;
	readonly #joints: RegExp | undefined;

	/** @param joints where words that are wider than their column may break */
	constructor(doc: PDFKit.PDFDocument, faces: Faces, joints: RegExp | undefined) {
		this.#doc = doc;
		this.#faces = faces;
		this.#joints = joints;
	}

	/** Empty lines are left out, but for a text that has no other. */
	linesOf(words: string, { font, size }: Style, width: number, said: Said = "own"): Line[] {
		const widthOf = (text: string, face: FaceName) => this.#pen(face, size).widthOfString(text);
		const setting = { faces: this.#faces, font, said, width, widthOf };
		return words
			.split(/\r\n?|\n/)
			.filter((line, index) => index === 0 || line !== "")
			.flatMap((line) =>
				setLines(
					this.#broken(line, width, (text) => widthOf(text, font)),
					setting,
				),
			);
	}

	/** From the top of a line to the top of the next. */
	lineHeight({ font, size }: Style): number {
		return this.#pen(font, size).currentLineHeight(true) + LINE_GAP;
	}

	heightOf(words: string, style: Style, width: number, said: Said = "own"): number {
		return this.linesOf(words, style, width, said).length * this.lineHeight(style);
	}

	/** From the top of a line to its base line. */
	ascent({ font, size }: Style): number {
		return this.#faces(font).ascent * size;
	}

	/** @param place the line's upper left corner, and the width that a line from right to left ends at */
	paint(
		line: Line,
		place: { readonly x: number; readonly y: number; readonly width: number },
		{ font, size, color = INK }: Style,
	): void {
		const baseLine = place.y + this.ascent({ font, size });
		let x = line.isRightToLeft ? place.x + place.width - line.width : place.x;
		for (const { text, face, width, isRightToLeft } of line.pieces) {
			// With a list of features, an empty one too, a font lays out the whole part at once, spaces and all.
			const whole = isRightToLeft ? { features: [] } : {};
			this.#pen(face, size)
				.fillColor(color)
				.text(text, x, baseLine, { lineBreak: false, baseline: "alphabetic", ...whole });
			x += width;
		}
	}

	#broken(words: string, width: number, widthOf: (text: string) => number): string {
		return this.#joints === undefined ? words : breakWords(words, width, this.#joints, widthOf);
	}

	/** The document knows a face once it was asked for. */
	#pen(face: FaceName, size: number): PDFKit.PDFDocument {
		return this.#doc.font(this.#faces(face).name).fontSize(size);
	}
}
