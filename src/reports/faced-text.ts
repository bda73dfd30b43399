/**
 * Finds for every character of a text the font that has it. What no font has stands as `[U+1F600]`, so that nothing is left
 * out unseen; so do control characters and marks that steer the direction of writing.
 */
import type { Face, FaceName, Faces, FontName } from "./fonts.ts";

/** A text as it will be shown, with the face of each UTF-16 unit; null for marks that are obeyed and not painted. */
export interface FacedText {
	readonly text: string;
	readonly faces: readonly (FaceName | null)[];
}

/** Whose words they are: the report's own, or what somebody typed. */
export type Said = "own" | "typed";

/** The isolates that the report's own sentences set around what someone typed (`texts/isolated.ts`): obeyed, not shown. */
const ISOLATES = [0x2068, 0x2069];

export function facedText(words: string, said: Said, font: FontName, faces: Faces): FacedText {
	const order = faceOrder(words, font);
	const own = order[0] as FaceName;
	let text = "";
	const found: (FaceName | null)[] = [];
	const add = (shown: string, face: FaceName | null) => {
		text += shown;
		for (let unit = 0; unit < shown.length; unit++) found.push(face);
	};
	let before: Face | undefined;
	for (const character of words.replaceAll("\t", " ")) {
		const codePoint = character.codePointAt(0) as number;
		if (said === "own" && ISOLATES.includes(codePoint)) {
			add(character, null);
			continue;
		}
		// An accent belongs to the letter that it stands on, if that letter's font has it.
		const stays = /\p{M}/u.test(character) && before?.hasGlyph(codePoint) === true;
		const face = stays ? before : isUnseen(codePoint) ? undefined : firstWith(codePoint, order, faces);
		before = face;
		if (face !== undefined) add(character, face.name);
		else add(`[U+${codePoint.toString(16).toUpperCase().padStart(4, "0")}]`, own);
	}
	return { text, faces: found };
}

function firstWith(codePoint: number, order: readonly FaceName[], faces: Faces): Face | undefined {
	for (const name of order) if (faces(name).hasGlyph(codePoint)) return faces(name);
	return undefined;
}

/**
 * The faces in which a character is looked for. Chinese, Japanese and Korean write many of the same characters with other
 * strokes: kana or hangul beside them tell which of the three it is; without either, Chinese has the most characters.
 */
function faceOrder(words: string, font: FontName): readonly FaceName[] {
	const first: readonly FaceName[] = font === "fixed" ? ["fixed", "text"] : [font];
	const eastern = /[\u3041-\u30ff]/.test(words)
		? (["japanese", "chinese", "korean"] as const)
		: /[\u1100-\u11ff\uac00-\ud7a3]/.test(words)
			? (["korean", "chinese", "japanese"] as const)
			: (["chinese", "japanese", "korean"] as const);
	return [...first, ...eastern.map((name): FaceName => (font === "bold" ? `${name}-bold` : name))];
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
