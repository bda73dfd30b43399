/** A text as lines. A last line without its end may have been cut inside a value, so nothing is read from it. */
import { ImportRefusal } from "./import-result.ts";

export interface TextLine {
	readonly text: string;
	/** 1 for the first. */
	readonly number: number;
}

/** The lines. @throws ImportRefusal where the last line has no end and says something */
export function wholeLines(text: string): TextLine[] {
	const lines = text.split("\n");
	const last = lines.pop() ?? "";
	if (last.trim() !== "") throw new ImportRefusal("cut-off", lines.length + 1, { line: shown(last) });
	return lines.map((line, index) => ({ text: line, number: index + 1 }));
}

/** A line short enough for a sentence. */
export function shown(line: string): string {
	return line.trim().slice(0, 60);
}
