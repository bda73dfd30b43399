/** Measures, letters and columns of a report's pages. */
import type { FontName } from "./fonts.ts";
import type { Block, Tone } from "./report.ts";

/** A4, in points. */
export const PAGE = { width: 595.28, height: 841.89, margin: 56, foot: 62 } as const;
export const WIDTH = PAGE.width - 2 * PAGE.margin;
export const BOTTOM = PAGE.height - PAGE.foot;
export const INK = "#1d2730";
export const QUIET = "#4d5861";
export const RULE = "#c3cbd1";
/** So that a SHA-256 stands on one line. */
export const FACT_WIDTHS = [2.5, 7.5];
export const CELL = { x: 4, y: 3.5 } as const;
/** Between two lines of a text, beside what the font itself leaves there. */
export const LINE_GAP = 1.5;
/** Below a figure. */
export const FIGURE_GAP = 10;
/** Rows of a table, or items of a list, that stand with what leads to them. */
export const KEPT_ROWS = 2;
/** A paragraph longer than this may stand apart from what it leads to: the page would be left too empty. */
export const MOST_KEPT = 90;
/** So much of a longer one stands with what leads to it. */
export const LEAST_OF_LONG = 30;

export interface Style {
	readonly font: FontName;
	readonly size: number;
	readonly color?: string;
	/** Space after it. */
	readonly after?: number;
}

export const TONES: Readonly<Record<Tone, Style>> = {
	plain: { font: "text", size: 9.5, after: 6 },
	note: { font: "bold", size: 9.5, after: 6 },
	quote: { font: "text", size: 9.5, after: 6 },
	small: { font: "text", size: 8, color: QUIET, after: 5 },
	fixed: { font: "fixed", size: 8, after: 5 },
};
export const FOOT_STYLE: Style = { font: "text", size: 7.5, color: QUIET };
export const CELL_STYLE: Style = { font: "text", size: 8.5 };
export const SECTION_STYLE: Style = { font: "bold", size: 13, after: 6 };
export const SUBHEADING_STYLE: Style = { font: "bold", size: 10.5, after: 4 };
export const LIST_INSET = 14;
export const HEAD_STYLE: Style = { font: "bold", size: 8.5 };

export type Place = { readonly x: number; readonly width: number };

/** Columns as wide, relative to each other, as they ask for. */
export function columnsOf(widths: readonly number[]): Place[] {
	const whole = widths.reduce((sum, width) => sum + width, 0);
	const columns: Place[] = [];
	let x: number = PAGE.margin;
	for (const width of widths) {
		const points = (WIDTH * width) / whole;
		columns.push({ x, width: points });
		x += points;
	}
	return columns;
}

/** Whether a paragraph says nothing without the block after it. */
export function leadsTo(tone: Tone, next: Block | undefined): boolean {
	if (next === undefined || next.kind === "subheading") return false;
	return next.kind !== "paragraph" || tone === "note" || next.tone === "quote";
}
