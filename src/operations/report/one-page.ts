/**
 * Which sentences the summary page has room for. Each stands whole or not at all; how many were left for later stands in
 * their place. The weightiest sentences of every kind go before the rest of any.
 */
import { type Block, list, paragraph } from "../../reports/report.ts";
import type { ReportKey } from "../../texts/say.ts";
import type { Speaker } from "../../texts/speaker.ts";

export interface Kind {
	readonly title: ReportKey;
	readonly sentences: readonly string[];
	/** How many of them, from the first, go before what is less weighty of any kind. */
	readonly first: number;
}

/** Lines that the first page has beside title and table, and letters on a line. Our choice, seen on the demo's reports. */
const LINES = 33;
const LETTERS = 92;
/** On a line of the table. Our choice, seen there too. */
const CELL_LETTERS = 72;
/** Sentences of one kind, so that no kind takes the room of the others. */
const MOST = 4;

/** What stands on the page in any case. */
export interface Others {
	readonly sentences: readonly string[];
	/** Of rows that the table has beyond its six. */
	readonly cells: readonly string[];
}

/** Kinds and their sentences in the order of their weight: the first of every kind, then as many more as there is room for. */
export function sentencesOnOnePage(kinds: readonly Kind[], others: Others, { say }: Speaker): Block[] {
	const told = kinds.filter(({ sentences }) => sentences.length > 0);
	// A title takes a line, and so does what says how many are left.
	let left = LINES - 2 * told.length - sum(others.sentences.map(linesOf)) - sum(others.cells.map(linesOfCell));
	const shown = told.map(() => new Set<number>());
	const show = (kind: number, sentences: readonly string[]) => {
		const own = shown[kind] as Set<number>;
		// A longer one gives way to shorter ones after it.
		sentences.forEach((sentence, place) => {
			if (own.size >= MOST || own.has(place) || linesOf(sentence) > left) return;
			own.add(place);
			left -= linesOf(sentence);
		});
	};
	told.forEach(({ sentences, first }, kind) => {
		show(kind, sentences.slice(0, first));
	});
	told.forEach(({ sentences }, kind) => {
		show(kind, sentences);
	});
	return told.flatMap(({ title, sentences }, kind) => {
		const kept = sentences.filter((_, place) => shown[kind]?.has(place));
		const more = sentences.length - kept.length;
		return [
			paragraph(say(title), "note"),
			list(more > 0 ? [...kept, say("report.summary-more", { count: more })] : kept),
		];
	});
}

function sum(lines: readonly number[]): number {
	return lines.reduce((total, one) => total + one, 0);
}

/** With the row's edge. */
function linesOfCell(words: string): number {
	return Math.ceil(words.length / CELL_LETTERS) + 1;
}

function linesOf(sentence: string): number {
	return Math.ceil(sentence.length / LETTERS);
}
