/**
 * The fonts inside every report. Latin, Greek, Cyrillic, Hebrew, Arabic and more stand in one family; Chinese, Japanese and
 * Korean characters come from three others, which are read only where a text needs them.
 */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { create, type Font } from "fontkit";

/** What a style asks for. */
export type FontName = "text" | "bold" | "fixed";

/** Where each font stands, from what its package says is its entry; a package need not name its other files. */
const DEJAVU = ["dejavu-fonts-ttf/package.json", "../ttf"] as const;
const CHINESE = ["@embedpdf/fonts-sc", "../../fonts"] as const;
const JAPANESE = ["@embedpdf/fonts-jp", "../../fonts"] as const;
const KOREAN = ["@embedpdf/fonts-kr", "../../fonts"] as const;

/** Names by which a document knows its fonts. */
const FILES = {
	text: [...DEJAVU, "DejaVuSans.ttf"],
	bold: [...DEJAVU, "DejaVuSans-Bold.ttf"],
	fixed: [...DEJAVU, "DejaVuSansMono.ttf"],
	chinese: [...CHINESE, "NotoSansHans-Regular.otf"],
	"chinese-bold": [...CHINESE, "NotoSansHans-Bold.otf"],
	japanese: [...JAPANESE, "NotoSansJP-Regular.otf"],
	"japanese-bold": [...JAPANESE, "NotoSansJP-Bold.otf"],
	korean: [...KOREAN, "NotoSansKR-Regular.otf"],
	"korean-bold": [...KOREAN, "NotoSansKR-Bold.otf"],
} as const;
export type FaceName = keyof typeof FILES;

export interface Face {
	readonly name: FaceName;
	readonly bytes: Buffer;
	readonly hasGlyph: (codePoint: number) => boolean;
	/** From the top of a line to its base line, as a share of the letters' size. */
	readonly ascent: number;
}
export type Faces = (name: FaceName) => Face;

/** Gives the faces, each read when it is first asked for: `onRead` hears of it before anybody else. */
export function readFaces(onRead: (face: Face) => void): Faces {
	const require = createRequire(import.meta.url);
	const faces = new Map<FaceName, Face>();
	return (name) => {
		const known = faces.get(name);
		if (known !== undefined) return known;
		const [entry, folder, file] = FILES[name];
		const bytes = readFileSync(join(require.resolve(entry), folder, file));
		const font = create(bytes) as Font;
		const face: Face = {
			name,
			bytes,
			hasGlyph: (codePoint) => font.hasGlyphForCodePoint(codePoint),
			ascent: font.ascent / font.unitsPerEm,
		};
		faces.set(name, face);
		onRead(face);
		return face;
	};
}
