/**
 * Which sentences the summary page has room for. Each stands whole or not at all; how many were left for later stands in
 * their place. A sentence that names dozens of checks gives way to shorter ones.
 */
import { type Block, list, paragraph } from "../../reports/report.ts";
import type { ReportKey } from "../../texts/say.ts";
import type { Speaker } from "../../texts/speaker.ts";

export interface Kind {
	readonly title: ReportKey;
	readonly sentences: readonly string[];
}

/** Lines that the first page has beside title and table, and letters on a line. Our choice, seen on the demo's reports. */
const LINES = 34;
const LETTERS = 92;
/** Sentences of one kind, so that no kind takes the room of the others. */
const MOST = 4;

/** @param others what stands on the page in any case */
export function sentencesOnOnePage(kinds: readonly Kind[], others: readonly string[], { say }: Speaker): Block[] {
	const told = kinds.filter(({ sentences }) => sentences.length > 0);
	// A title takes a line, and so does what says how many are left.
	let left = LINES - 2 * told.length - others.reduce((sum, sentence) => sum + linesOf(sentence), 0);
	const share = (kind: number) => Math.floor(left / (told.length - kind));
	return told.flatMap(({ title, sentences }, kind) => {
		const shown = fitting(sentences, share(kind));
		left -= shown.reduce((sum, sentence) => sum + linesOf(sentence), 0);
		const more = sentences.length - shown.length;
		return [
			paragraph(say(title), "note"),
			list(more > 0 ? [...shown, say("report.summary-more", { count: more })] : shown),
		];
	});
}

/** In their own order, as many as there is room for; a longer one gives way to shorter ones after it. */
function fitting(sentences: readonly string[], lines: number): string[] {
	let left = lines;
	const shown: string[] = [];
	for (const sentence of sentences) {
		if (shown.length === MOST || linesOf(sentence) > left) continue;
		left -= linesOf(sentence);
		shown.push(sentence);
	}
	return shown;
}

function linesOf(sentence: string): number {
	return Math.ceil(sentence.length / LETTERS);
}
