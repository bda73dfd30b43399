/** A report before it is laid out: sections of plain blocks, in reading order. Whoever writes it decides what stands in it. */
import type { Drawing } from "../charts/drawing.ts";
import type { Language } from "../texts/language.ts";

/** `quote` is someone's own words; `small` is said once and for all; `fixed` is to be compared digit by digit. */
export type Tone = "plain" | "note" | "quote" | "small" | "fixed";

/** Words that are not the report's own: whoever typed or wrote them chose the language. */
export interface Quoted {
	readonly words: string;
	/** RFC 5646; `und` where nobody said. */
	readonly language: string;
}
export type Words = string | Quoted;

export type Block =
	| { readonly kind: "paragraph"; readonly text: string; readonly tone: Tone }
	| { readonly kind: "subheading"; readonly text: string }
	| { readonly kind: "list"; readonly items: readonly string[] }
	| { readonly kind: "facts"; readonly rows: readonly (readonly [name: string, value: Words])[] }
	| {
			readonly kind: "table";
			readonly head: readonly string[];
			readonly rows: readonly (readonly Words[])[];
			/** Of the columns, relative to each other. */
			readonly widths: readonly number[];
	  }
	| { readonly kind: "figure"; readonly drawing: Drawing; readonly caption: string };

export interface Section {
	readonly title: string;
	readonly blocks: readonly Block[];
}

export interface Report {
	readonly title: string;
	/** Beneath the title: what it is about, which edition. */
	readonly lead: string;
	/** The state that it tells of; stands as the document's date, so that the same report has the same bytes. */
	readonly asOf: Date;
	/** Of the words; RFC 5646. */
	readonly language: Language;
	/** On every page, before the page's number. */
	readonly footer: string;
	/** Fills the first page. */
	readonly summary: Section;
	readonly sections: readonly Section[];
	/** A file inside the document. */
	readonly attachment: { readonly name: string; readonly description: string; readonly bytes: Uint8Array } | null;
}

export const quoted = (words: string, language = "und"): Quoted => ({ words, language });
export const plainWords = (words: Words): string => (typeof words === "string" ? words : words.words);
export const paragraph = (text: string, tone: Tone = "plain"): Block => ({ kind: "paragraph", text, tone });
export const subheading = (text: string): Block => ({ kind: "subheading", text });
export const list = (items: readonly string[]): Block => ({ kind: "list", items });
export const facts = (rows: readonly (readonly [string, Words])[]): Block => ({ kind: "facts", rows });
export const table = (
	head: readonly string[],
	widths: readonly number[],
	rows: readonly (readonly Words[])[],
): Block => ({ kind: "table", head, rows, widths });
export const figure = (drawing: Drawing, caption: string): Block => ({ kind: "figure", drawing, caption });
