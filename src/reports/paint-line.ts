/** Paints a line that was set, its parts beside each other on one base line. */
import type { Faces } from "./fonts.ts";
import { INK, type Style } from "./page-styles.ts";
import type { Line } from "./set-lines.ts";

/** @param place its upper left corner, and the width that a line from right to left ends at */
export function paintLine(
	doc: PDFKit.PDFDocument,
	line: Line,
	place: { readonly x: number; readonly y: number; readonly width: number },
	{ font, size, color = INK }: Style,
	faces: Faces,
): void {
	const baseLine = place.y + faces(font).ascent * size;
	let x = line.isRightToLeft ? place.x + place.width - line.width : place.x;
	for (const { text, face, width, isRightToLeft } of line.pieces) {
		doc.font(face).fontSize(size).fillColor(color);
		// With a list of features, an empty one too, a font lays out the whole part at once, spaces and all.
		const whole = isRightToLeft ? { features: [] } : {};
		doc.text(text, x, baseLine, { lineBreak: false, baseline: "alphabetic", ...whole });
		x += width;
	}
}
