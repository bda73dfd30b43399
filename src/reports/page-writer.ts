/**
 * Writes blocks onto pages, each inside its structure element, so that a reader that speaks, or copies, meets them in
 * order. Rows and figures never break across pages; a heading, and a paragraph that leads to a table, list or figure, stands
 * with the first of what follows.
 */
import type { Said } from "./faced-text.ts";
import { figureFor, leastFigure } from "./figure-size.ts";
import {
	BOTTOM,
	CELL,
	CELL_STYLE,
	columnsOf,
	FACT_WIDTHS,
	FIGURE_GAP,
	FOOT_STYLE,
	HEAD_STYLE,
	KEPT_ROWS,
	LEAST_OF_LONG,
	LINE_GAP,
	LIST_INSET,
	leadsTo,
	MOST_KEPT,
	PAGE,
	type Place,
	QUIET,
	RULE,
	SECTION_STYLE,
	type Style,
	SUBHEADING_STYLE,
	TONES,
	WIDTH,
} from "./page-styles.ts";
import { paintDrawing } from "./paint-drawing.ts";
import { type Block, plainWords, type Section, type Tone, type Words } from "./report.ts";
import type { Typesetter } from "./typesetter.ts";

type Structure = PDFKit.PDFStructureElement;
type Figure = Block & { readonly kind: "figure" };

export class PageWriter {
	readonly #doc: PDFKit.PDFDocument;
	readonly #root: Structure;
	readonly #type: Typesetter;
	#y: number = PAGE.margin;

	constructor(doc: PDFKit.PDFDocument, type: Typesetter) {
		this.#doc = doc;
		this.#type = type;
		this.#root = doc.struct("Document");
		doc.addStructure(this.#root);
	}

	title(title: string, lead: string): void {
		this.#element(this.#root, "H1", (at) => this.#text(title, { font: "bold", size: 19, after: 4 }, at));
		this.#element(this.#root, "P", (at) => this.#text(lead, { font: "text", size: 10.5, color: QUIET, after: 12 }, at));
	}

	/** @param numbered its number in the report; null for the summary */
	section({ title, blocks }: Section, numbered: number | null): void {
		const words = numbered === null ? title : `${numbered}  ${title}`;
		this.#room(8 + this.#type.heightOf(words, SECTION_STYLE, WIDTH) + 6 + this.#leastOf(blocks));
		const part = this.#doc.struct("Sect");
		this.#root.add(part);
		this.#y += numbered === null ? 0 : 8;
		this.#element(part, "H2", (at) => this.#text(words, SECTION_STYLE, at));
		for (const [index, block] of blocks.entries()) {
			this.#room(this.#leastOf(blocks.slice(index)));
			this.#block(part, block);
		}
		part.end();
	}

	/** The height that the first of these blocks needs, with what must not stand apart from it. */
	#leastOf([first, ...rest]: readonly Block[]): number {
		switch (first?.kind) {
			case undefined:
				return 0;
			case "subheading":
				return 3 + this.#type.heightOf(first.text, SUBHEADING_STYLE, WIDTH) + 4 + this.#leastOf(rest);
			case "paragraph": {
				const said = first.tone === "quote" ? "typed" : "own";
				const height = this.#type.heightOf(first.text, TONES[first.tone], WIDTH, said) + (TONES[first.tone].after ?? 0);
				if (height > MOST_KEPT) return LEAST_OF_LONG;
				return height + (leadsTo(first.tone, rest[0]) ? this.#leastOf(rest) : 0);
			}
			case "list":
				return first.items
					.slice(0, KEPT_ROWS)
					.reduce((sum, item) => sum + this.#type.heightOf(item, TONES.plain, WIDTH - LIST_INSET) + 3, 0);
			case "facts":
				return this.#leastOfTable(null, first.rows, FACT_WIDTHS);
			case "table":
				return this.#leastOfTable(first.head, first.rows, first.widths);
			case "figure":
				return this.#captionHeight(first) + leastFigure(first.drawing).height + FIGURE_GAP;
		}
	}

	#leastOfTable(
		head: readonly string[] | null,
		rows: readonly (readonly Words[])[],
		widths: readonly number[],
	): number {
		const columns = columnsOf(widths);
		const heights = rows.slice(0, KEPT_ROWS).map((row) => this.#rowHeight(row, columns, false));
		return heights.reduce((sum, height) => sum + height, head === null ? 0 : this.#rowHeight(head, columns, true));
	}

	newPage(): void {
		this.#doc.addPage();
		this.#y = PAGE.margin;
	}

	/** Turns the page inside an element, which goes on there. */
	#newPageWithin(): void {
		this.#doc.continueOnNewPage();
		this.#y = PAGE.margin;
	}

	/** Ends the structure, and writes a foot onto every page. */
	finish(footOf: (page: number, pages: number) => string): void {
		this.#root.end();
		const { start, count } = this.#doc.bufferedPageRange();
		for (let page = start; page < start + count; page++) {
			this.#doc.switchToPage(page);
			this.#doc.markContent("Artifact", { type: "Pagination", attached: ["Bottom"] });
			const place = { x: PAGE.margin, y: PAGE.height - 44, width: WIDTH };
			const lines = this.#type.linesOf(footOf(page + 1, count), FOOT_STYLE, Number.POSITIVE_INFINITY);
			for (const line of lines) this.#type.paint(line, place, FOOT_STYLE);
			this.#doc.endMarkedContent();
		}
	}

	#block(part: Structure, block: Block): void {
		switch (block.kind) {
			case "paragraph":
				this.#paragraph(part, block.text, block.tone);
				break;
			case "subheading":
				this.#y += 3;
				this.#element(part, "H3", (at) => this.#text(block.text, SUBHEADING_STYLE, at));
				break;
			case "list":
				this.#list(part, block.items);
				break;
			case "facts":
				this.#table(part, null, block.rows, FACT_WIDTHS);
				break;
			case "table":
				this.#table(part, block.head, block.rows, block.widths);
				break;
			case "figure":
				this.#figure(part, block);
				break;
		}
	}

	#paragraph(part: Structure, words: string, tone: Tone): void {
		const isQuote = tone === "quote";
		const paint = (at: Place) => {
			const inset = isQuote ? LIST_INSET : 0;
			this.#text(words, TONES[tone], { x: at.x + inset, width: at.width - inset }, isQuote ? "typed" : "own");
		};
		// In which language someone spoke, nobody recorded.
		this.#element(part, isQuote ? "BlockQuote" : "P", paint, isQuote ? { lang: "und" } : {});
	}

	#list(part: Structure, items: readonly string[]): void {
		const list = this.#doc.struct("L");
		part.add(list);
		for (const item of items) {
			this.#room(this.#type.heightOf(item, TONES.plain, WIDTH - LIST_INSET));
			const entry = this.#doc.struct("LI");
			list.add(entry);
			const y = this.#y;
			this.#element(entry, "Lbl", (at) => this.#text("•", { font: "text", size: 9.5 }, at));
			this.#y = y;
			this.#element(entry, "LBody", (at) =>
				this.#text(item, { ...TONES.plain, after: 3 }, { x: at.x + LIST_INSET, width: at.width - LIST_INSET }),
			);
			entry.end();
		}
		list.end();
		this.#y += 3;
	}

	/** Its caption above it, on the same page. */
	#figure(part: Structure, { drawing, caption }: Figure): void {
		this.#paragraph(part, caption, "plain");
		const { width, height } = figureFor(drawing, BOTTOM - this.#y);
		const alt = `${drawing.title}. ${drawing.description}`;
		const figure = this.#doc.struct("Figure", { alt }, () => {
			const place = { x: PAGE.margin, y: this.#y, width };
			paintDrawing(this.#doc, drawing, place, this.#type);
		});
		part.add(figure);
		figure.end();
		this.#y += height + FIGURE_GAP;
	}

	#captionHeight({ caption }: Figure): number {
		return this.#type.heightOf(caption, TONES.plain, WIDTH) + (TONES.plain.after ?? 0);
	}

	/** Without a head the first column names the row. */
	#table(
		part: Structure,
		head: readonly string[] | null,
		rows: readonly (readonly Words[])[],
		widths: readonly number[],
	): void {
		const columns = columnsOf(widths);
		const table = this.#doc.struct("Table");
		part.add(table);
		if (head !== null) this.#row(table, head, columns, "head");
		for (const row of rows) {
			const broke = this.#room(this.#rowHeight(row, columns, false));
			if (broke && head !== null) this.#row(table, head, columns, "again");
			this.#row(table, row, columns, "body");
		}
		table.end();
		this.#y += 8;
	}

	#rowHeight(cells: readonly Words[], columns: readonly Place[], isHead: boolean): number {
		const heights = columns.map(({ width }, index) => {
			const style = isHead || index === 0 ? HEAD_STYLE : CELL_STYLE;
			const cell = cells[index] ?? "";
			return this.#type.heightOf(plainWords(cell), style, width - 2 * CELL.x, saidIn(cell));
		});
		return Math.max(...heights) + 2 * CELL.y;
	}

	/** A head that is said again on the next page is for the eye alone. */
	#row(table: Structure, cells: readonly Words[], columns: readonly Place[], as: "head" | "again" | "body"): void {
		const height = this.#rowHeight(cells, columns, as !== "body");
		const y = this.#y;
		const paint = (index: number) => {
			const { x, width } = columns[index] as Place;
			this.#y = y + CELL.y;
			const style = as !== "body" || index === 0 ? HEAD_STYLE : CELL_STYLE;
			const cell = cells[index] ?? "";
			this.#text(plainWords(cell), style, { x: x + CELL.x, width: width - 2 * CELL.x }, saidIn(cell));
		};
		if (as === "again") {
			this.#artifact(() => {
				for (const index of columns.keys()) paint(index);
			});
		} else {
			const row = this.#doc.struct("TR");
			table.add(row);
			for (const index of columns.keys()) {
				const isHeader = as === "head" || index === 0;
				const cell = this.#doc.struct(isHeader ? "TH" : "TD", languageOf(cells[index]), () => paint(index));
				row.add(cell);
				cell.end();
			}
			row.end();
		}
		this.#y = y + height;
		this.#artifact(() => {
			const weight = as === "body" ? 0.4 : 0.9;
			this.#doc
				.lineWidth(weight)
				.moveTo(PAGE.margin, this.#y)
				.lineTo(PAGE.margin + WIDTH, this.#y)
				.stroke(RULE);
		});
	}

	#artifact(paint: () => void): void {
		this.#doc.markContent("Artifact", { type: "Layout" });
		paint();
		this.#doc.endMarkedContent();
	}

	#element(part: Structure, tag: string, paint: (at: Place) => void, options: { readonly lang?: string } = {}): void {
		const element = this.#doc.struct(tag, options, () => paint({ x: PAGE.margin, width: WIDTH }));
		part.add(element);
		element.end();
	}

	/** Writes a text; one that does not fit goes on on the next page. */
	#text(words: string, style: Style, { x, width }: Place, said: Said = "own"): void {
		for (const line of this.#type.linesOf(words, style, width, said)) {
			if (this.#y + this.#type.lineHeight(style) - LINE_GAP > BOTTOM) this.#newPageWithin();
			this.#type.paint(line, { x, y: this.#y, width }, style);
			this.#y += this.#type.lineHeight(style);
		}
		this.#y += style.after ?? 0;
	}

	/** Turns the page where less than this is left; says whether it did. */
	#room(height: number): boolean {
		if (this.#y + height <= BOTTOM || this.#y <= PAGE.margin) return false;
		this.newPage();
		return true;
	}
}

function saidIn(cell: Words): Said {
	return typeof cell === "object" ? "typed" : "own";
}

/** Of a cell whose words are not the report's own. */
function languageOf(cell: Words | undefined): { readonly lang?: string } {
	return typeof cell === "object" ? { lang: cell.language } : {};
}
