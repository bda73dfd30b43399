/** The fonts inside every report, and what stands for a character that they do not have. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { create, type Font } from "fontkit";

/** Names by which a document knows its fonts. */
export const FONTS = { text: "text", bold: "bold", fixed: "fixed" } as const;
export type FontName = keyof typeof FONTS;

const FILES: Readonly<Record<FontName, string>> = {
	text: "DejaVuSans.ttf",
	bold: "DejaVuSans-Bold.ttf",
	fixed: "DejaVuSansMono.ttf",
};

export interface ReportFont {
	readonly name: FontName;
	readonly bytes: Buffer;
	readonly hasGlyph: (codePoint: number) => boolean;
}

/** The fonts, read from their package. */
export function readFonts(): readonly ReportFont[] {
	const require = createRequire(import.meta.url);
	return (Object.keys(FONTS) as FontName[]).map((name) => {
		const bytes = readFileSync(require.resolve(`dejavu-fonts-ttf/ttf/${FILES[name]}`));
		const font = create(bytes) as Font;
		return { name, bytes, hasGlyph: (codePoint) => font.hasGlyphForCodePoint(codePoint) };
	});
}

/**
 * A text of which every character can be shown: one without a glyph stands as `[U+5B57]`, so that nothing is left out
 * unseen. Characters that steer the direction of writing, and control characters, are shown so too.
 */
export function showable(text: string, { hasGlyph }: Pick<ReportFont, "hasGlyph">): string {
	return [...text.replaceAll("\r\n", "\n").replaceAll("\t", " ")]
		.map((character) => {
			const codePoint = character.codePointAt(0) ?? 0;
			if (character === "\n" || (hasGlyph(codePoint) && !isUnseen(codePoint))) return character;
			return `[U+${codePoint.toString(16).toUpperCase().padStart(4, "0")}]`;
		})
		.join("");
}

/** Control characters, and marks of direction: a reader would not see that they are there. */
function isUnseen(codePoint: number): boolean {
	if (codePoint < 0x20 || (codePoint >= 0x7f && codePoint < 0xa0)) return true;
	return (
		(codePoint >= 0x200b && codePoint <= 0x200f) ||
		(codePoint >= 0x202a && codePoint <= 0x202e) ||
		(codePoint >= 0x2066 && codePoint <= 0x2069)
	);
}
