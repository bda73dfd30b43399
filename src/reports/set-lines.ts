/**
 * Sets a text into lines: broken where the rules of its script allow (Unicode Standard Annex 14), each part in the font
 * that has its characters, in the order in which the eye meets them (Annex 9), whichever way it is written.
 */
import bidiFactory, { type Bidi } from "bidi-js";
import LineBreaker from "linebreak";
import { type FacedText, facedText, type Said } from "./faced-text.ts";
import type { FaceName, Faces, FontName } from "./fonts.ts";

/** A part of a line in one font and one direction. */
export interface Piece {
	/** In the order of reading: the font lays letters from right to left by itself. */
	readonly text: string;
	readonly face: FaceName;
	readonly isRightToLeft: boolean;
	/** In points. */
	readonly width: number;
}

export interface Line {
	/** From left to right. */
	readonly pieces: readonly Piece[];
	/** In points, without the space at its end. */
	readonly width: number;
	/** Whether it begins at the right edge. */
	readonly isRightToLeft: boolean;
}

export interface Setting {
	readonly faces: Faces;
	readonly font: FontName;
	readonly said: Said;
	/** In points; infinite for a text that stays on one line. */
	readonly width: number;
	/** The width of a text in one font, at the size in which it will be painted. */
	readonly widthOf: (text: string, face: FaceName) => number;
}

// Its types speak of another form of module than the one that Node loads.
const bidi = (bidiFactory as unknown as () => Bidi)();
const SOFT_HYPHEN = "\u00ad";
/** Letters that are written from right to left; beyond U+FFFF none, since neither our fonts nor bidi-js know those. */
const RIGHT_TO_LEFT = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc]/;

/** A stretch of a text, from `start` to `end`. */
interface Stretch {
	readonly start: number;
	readonly end: number;
}

/** The lines of a text without line breaks of its own; an empty text is one empty line. */
export function setLines(words: string, setting: Setting): Line[] {
	const faced = facedText(words, setting.said, setting.font, setting.faces);
	const levels = levelsOf(faced.text, setting.said);
	return broken(faced, levels.levels, setting).map((stretch) => lineOf(faced, levels, stretch, setting));
}

type Levels = ReturnType<Bidi["getEmbeddingLevels"]>;

/** Of the report's own sentences the language gives the direction; of what somebody typed, its first letter. */
function levelsOf(text: string, said: Said): Levels {
	return bidi.getEmbeddingLevels(text, said === "own" || !RIGHT_TO_LEFT.test(text) ? "ltr" : "auto");
}

/** Fills lines one after the other. */
function broken(faced: FacedText, levels: Uint8Array, setting: Setting): Stretch[] {
	const lines: Stretch[] = [];
	let start = 0;
	let filled = 0;
	for (const part of partsOf(faced, levels, setting)) {
		if (part.start > start && filled + part.seen > setting.width) {
			lines.push({ start, end: part.start });
			start = part.start;
			filled = 0;
		}
		filled += part.whole;
	}
	return [...lines, { start, end: faced.text.length }];
}

interface Part extends Stretch {
	/** Its width in the midst of a line. */
	readonly whole: number;
	/** Its width at the end of one: without the space there, with the hyphen that shows only there. */
	readonly seen: number;
}

/** What stays together on a line. What is wider than a whole line comes letter by letter. */
function* partsOf(faced: FacedText, levels: Uint8Array, setting: Setting): Generator<Part> {
	for (const stretch of stretchesOf(faced.text)) {
		const part = measured(faced, levels, stretch, setting);
		if (part.seen <= setting.width) yield part;
		else for (const letter of lettersOf(faced.text, stretch)) yield measured(faced, levels, letter, setting);
	}
}

function* stretchesOf(text: string): Generator<Stretch> {
	const breaker = new LineBreaker(text);
	let start = 0;
	for (let next = breaker.nextBreak(); next !== null; next = breaker.nextBreak()) {
		yield { start, end: next.position };
		start = next.position;
	}
	if (start < text.length) yield { start, end: text.length };
}

function* lettersOf(text: string, { start, end }: Stretch): Generator<Stretch> {
	for (const { index, segment } of new Intl.Segmenter().segment(text.slice(start, end))) {
		yield { start: start + index, end: start + index + segment.length };
	}
}

function measured(faced: FacedText, levels: Uint8Array, stretch: Stretch, setting: Setting): Part {
	const { start, end } = stretch;
	const last = faced.text.slice(start, end).trimEnd();
	const whole = widthIn(faced, levels, { start, end }, setting);
	const seen =
		last.length === end - start ? whole : widthIn(faced, levels, { start, end: start + last.length }, setting);
	return { start, end, whole, seen: last.endsWith(SOFT_HYPHEN) ? seen + setting.widthOf("-", setting.font) : seen };
}

function widthIn(faced: FacedText, levels: Uint8Array, stretch: Stretch, { widthOf }: Setting): number {
	return runsOf(faced, levels, stretch).reduce((sum, { text, face }) => sum + widthOf(text, face), 0);
}

interface Run extends Stretch {
	readonly face: FaceName;
	readonly text: string;
}

/** Stretches of one font and one level, in the order of reading; marks that are not painted are left out. */
function runsOf({ text, faces }: FacedText, levels: Uint8Array, { start, end }: Stretch): Run[] {
	const runs: Run[] = [];
	let from = start;
	for (let at = start; at <= end; at++) {
		if (at < end && at > from && faces[at] === faces[from] && levels[at] === levels[from]) continue;
		if (at === from) continue;
		const face = faces[from] ?? null;
		const painted = text.slice(from, at).replaceAll(SOFT_HYPHEN, "");
		if (face !== null && painted !== "") runs.push({ start: from, end: at, face, text: painted });
		from = at;
	}
	return runs;
}

function lineOf(faced: FacedText, levels: Levels, { start, end }: Stretch, setting: Setting): Line {
	const isRightToLeft = levels.paragraphs[0] !== undefined && levels.paragraphs[0].level % 2 === 1;
	const text = faced.text.slice(start, end);
	const seen = text.trimEnd().length;
	// A space at the end stays, for whoever copies the line; at the left of a line from the right it would move the words.
	const pieces = inSight(faced, levels, { start, end: isRightToLeft ? start + seen : end });
	if (text.endsWith(SOFT_HYPHEN)) pieces.push({ text: "-", face: setting.font, isRightToLeft });
	const measuredPieces = pieces.map((piece) => ({ ...piece, width: setting.widthOf(piece.text, piece.face) }));
	const space = isRightToLeft || seen === text.length ? 0 : setting.widthOf(text.slice(seen), setting.font);
	return {
		pieces: measuredPieces,
		width: measuredPieces.reduce((sum, { width }) => sum + width, -space),
		isRightToLeft,
	};
}

/** The runs of a line from left to right. */
function inSight(faced: FacedText, levels: Levels, stretch: Stretch): Omit<Piece, "width">[] {
	const runs = runsOf(faced, levels.levels, stretch);
	const isOdd = ({ start }: Run) => (levels.levels[start] ?? 0) % 2 === 1;
	if (!runs.some(isOdd)) return runs.map(({ text, face }) => ({ text, face, isRightToLeft: false }));
	const mirrored = bidi.getMirroredCharactersMap(faced.text, levels.levels, stretch.start, stretch.end - 1);
	const places = bidi.getReorderedIndices(faced.text, levels, stretch.start, stretch.end - 1);
	const rank = new Map(places.map((index, place) => [index, place]));
	return runs
		.toSorted((one, other) => (rank.get(one.start) ?? 0) - (rank.get(other.start) ?? 0))
		.map((run) => {
			if (!isOdd(run)) return { text: run.text, face: run.face, isRightToLeft: false };
			// Brackets open to the other side there.
			const units = Array.from({ length: run.end - run.start }, (_, unit) => {
				const at = run.start + unit;
				return mirrored.get(at) ?? (faced.text[at] as string);
			});
			// By its letters a font knows the direction: signs alone it would lay from left to right.
			const isRightToLeft = RIGHT_TO_LEFT.test(run.text);
			return { text: (isRightToLeft ? units : units.toReversed()).join(""), face: run.face, isRightToLeft };
		});
}
