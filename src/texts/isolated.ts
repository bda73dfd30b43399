/**
 * Sets what someone typed apart from the sentence around it, where it is written from right to left or holds marks that
 * steer the direction of writing: else it would draw the words and numbers beside it to the wrong side, and a typed
 * mark could turn the rest of the sentence around. By a first strong isolate and its end (Unicode Standard Annex 9,
 * from memory).
 */
const STEERS =
	/[\u0590-\u08ff\u200e\u200f\u202a-\u202e\u2066-\u2069\ufb1d-\ufdff\ufe70-\ufefc\u{10800}-\u{10fff}\u{1e800}-\u{1eeff}]/u;
const OPENS = "\u2068";
const CLOSES = "\u2069";

/** A value inside a sentence: what was typed, or a sentence that holds something set apart already. */
export function isolated(value: string): string {
	if (!STEERS.test(value)) return value;
	return `${OPENS}${value.replace(isBalanced(value) ? /[\u2066\u2067]/g : /[\u2066-\u2069]/g, nameOf)}${CLOSES}`;
}

/** Without the marks: for what reads letters alone, a carrier's form say. */
export function unisolated(text: string): string {
	return text.replace(/[\u2068\u2069]/g, "");
}

/** A mark that would end our isolate, or open one that nothing ends, is named instead. */
function nameOf(mark: string): string {
	return `[U+${mark.charCodeAt(0).toString(16)}]`;
}

function isBalanced(value: string): boolean {
	let depth = 0;
	for (const mark of value) {
		if (mark === OPENS) depth += 1;
		else if (mark === CLOSES && --depth < 0) return false;
	}
	return depth === 0;
}
