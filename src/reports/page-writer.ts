/**
 * Writes blocks onto pages, each inside its structure element, so that a reader that speaks, or copies, meets them in
 * order. Rows and figures never break across pages.
 */
import { breakWords } from "./break-words.ts";
import { FONTS, type FontName, type ReportFont, showable } from "./fonts.ts";
import { paintDrawing } from "./paint-drawing.ts";
import { type Block, plainWords, type Section, type Tone, type Words } from "./report.ts";

/** A4, in points. */
export const PAGE = { width: 595.28, height: 841.89, margin: 56, foot: 62 } as const;
const WIDTH = PAGE.width - 2 * PAGE.margin;
const BOTTOM = PAGE.height - PAGE.foot;
const INK = "#1d2730";
const QUIET = "#4d5861";
const RULE = "#c3cbd1";
/** So that a SHA-256 stands on one line. */
const FACT_WIDTHS = [2.5, 7.5];
const CELL = { x: 4, y: 3.5 } as const;

interface Style {
	readonly font: FontName;
	readonly size: number;
	readonly color?: string;
	/** Space after it. */
	readonly after?: number;
}

const TONES: Readonly<Record<Tone, Style>> = {
	plain: { font: "text", size: 9.5, after: 6 },
	note: { font: "bold", size: 9.5, after: 6 },
	quote: { font: "text", size: 9.5, after: 6 },
	small: { font: "text", size: 8, color: QUIET, after: 5 },
	fixed: { font: "fixed", size: 8, after: 5 },
};
const CELL_STYLE: Style = { font: "text", size: 8.5 };
const HEAD_STYLE: Style = { font: "bold", size: 8.5 };

type Place = { readonly x: number; readonly width: number };
type Structure = PDFKit.PDFStructureElement;

export class PageWriter {
	readonly #doc: PDFKit.PDFDocument;
	readonly #root: Structure;
	readonly #fonts: ReadonlyMap<FontName, ReportFont>;
	readonly #joints: RegExp | undefined;
	#y: number = PAGE.margin;

	/** @param joints where words that are wider than their column may break */
	constructor(doc: PDFKit.PDFDocument, fonts: readonly ReportFont[], joints: RegExp | undefined) {
		this.#doc = doc;
		this.#joints = joints;
		this.#fonts = new Map(fonts.map((font) => [font.name, font]));
		this.#root = doc.struct("Document");
		doc.addStructure(this.#root);
	}

	title(title: string, lead: string): void {
		this.#element(this.#root, "H1", (at) => this.#text(title, { font: "bold", size: 19, after: 4 }, at));
		this.#element(this.#root, "P", (at) => this.#text(lead, { font: "text", size: 10.5, color: QUIET, after: 12 }, at));
	}

	/** @param numbered its number in the report; null for the summary */
	section({ title, blocks }: Section, numbered: number | null): void {
		this.#room(70);
		const part = this.#doc.struct("Sect");
		this.#root.add(part);
		this.#y += numbered === null ? 0 : 8;
		const words = numbered === null ? title : `${numbered}  ${title}`;
		this.#element(part, "H2", (at) => this.#text(words, { font: "bold", size: 13, after: 6 }, at));
		for (const block of blocks) this.#block(part, block);
		part.end();
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
			// A text below the margin would turn the page.
			this.#doc.page.margins.bottom = 0;
			this.#doc.markContent("Artifact", { type: "Pagination", attached: ["Bottom"] });
			this.#use({ font: "text", size: 7.5, color: QUIET });
			const words = this.#showable(footOf(page + 1, count), "text");
			this.#doc.text(words, PAGE.margin, PAGE.height - 44, { width: WIDTH, lineBreak: false });
			this.#doc.endMarkedContent();
		}
	}

	#block(part: Structure, block: Block): void {
		switch (block.kind) {
			case "paragraph":
				this.#paragraph(part, block.text, block.tone);
				break;
			case "subheading":
				this.#room(40);
				this.#y += 3;
				this.#element(part, "H3", (at) => this.#text(block.text, { font: "bold", size: 10.5, after: 4 }, at));
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
			const inset = isQuote ? 14 : 0;
			this.#text(words, TONES[tone], { x: at.x + inset, width: at.width - inset });
		};
		// In which language someone spoke, nobody recorded.
		this.#element(part, isQuote ? "BlockQuote" : "P", paint, isQuote ? { lang: "und" } : {});
	}

	#list(part: Structure, items: readonly string[]): void {
		const list = this.#doc.struct("L");
		part.add(list);
		for (const item of items) {
			this.#room(this.#heightOf(item, TONES.plain, WIDTH - 14));
			const entry = this.#doc.struct("LI");
			list.add(entry);
			const y = this.#y;
			this.#element(entry, "Lbl", (at) => this.#text("•", { font: "text", size: 9.5 }, at));
			this.#y = y;
			this.#element(entry, "LBody", (at) =>
				this.#text(item, { ...TONES.plain, after: 3 }, { x: at.x + 14, width: at.width - 14 }),
			);
			entry.end();
		}
		list.end();
		this.#y += 3;
	}

	/** Its caption above it, on the same page. */
	#figure(part: Structure, { drawing, caption }: Block & { readonly kind: "figure" }): void {
		const width = Math.min(WIDTH, drawing.width * 0.62);
		const height = (drawing.height * width) / drawing.width;
		this.#room(this.#heightOf(caption, TONES.plain, WIDTH) + height + 20);
		this.#paragraph(part, caption, "plain");
		const alt = `${drawing.title}. ${drawing.description}`;
		const figure = this.#doc.struct("Figure", { alt }, () => {
			const place = { x: PAGE.margin, y: this.#y, width };
			paintDrawing(this.#doc, drawing, place, (words) => this.#showable(words, "text"));
		});
		part.add(figure);
		figure.end();
		this.#y += height + 10;
	}

	/** Without a head the first column names the row. */
	#table(
		part: Structure,
		head: readonly string[] | null,
		rows: readonly (readonly Words[])[],
		widths: readonly number[],
	): void {
		const whole = widths.reduce((sum, width) => sum + width, 0);
		const columns: Place[] = [];
		let x: number = PAGE.margin;
		for (const width of widths) {
			const points = (WIDTH * width) / whole;
			columns.push({ x, width: points });
			x += points;
		}
		const table = this.#doc.struct("Table");
		part.add(table);
		// A head never stands alone at the foot of a page.
		if (head !== null) {
			this.#room(this.#rowHeight(head, columns) + this.#rowHeight(rows[0] ?? [], columns));
			this.#row(table, head, columns, "head");
		}
		for (const row of rows) {
			const broke = this.#room(this.#rowHeight(row, columns));
			if (broke && head !== null) this.#row(table, head, columns, "again");
			this.#row(table, row, columns, "body");
		}
		table.end();
		this.#y += 8;
	}

	#rowHeight(cells: readonly Words[], columns: readonly Place[]): number {
		const heights = columns.map(({ width }, index) =>
			this.#heightOf(plainWords(cells[index] ?? ""), index === 0 ? HEAD_STYLE : CELL_STYLE, width - 2 * CELL.x),
		);
		return Math.max(...heights) + 2 * CELL.y;
	}

	/** A head that is said again on the next page is for the eye alone. */
	#row(table: Structure, cells: readonly Words[], columns: readonly Place[], as: "head" | "again" | "body"): void {
		const height = this.#rowHeight(cells, columns);
		const y = this.#y;
		const paint = (index: number) => {
			const { x, width } = columns[index] as Place;
			this.#y = y + CELL.y;
			const style = as !== "body" || index === 0 ? HEAD_STYLE : CELL_STYLE;
			this.#text(plainWords(cells[index] ?? ""), style, { x: x + CELL.x, width: width - 2 * CELL.x });
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
	#text(words: string, style: Style, { x, width }: Place): void {
		for (const [index, line] of words.split("\n").entries()) {
			if (index > 0 && line === "") continue;
			this.#lines(line, style, { x, width });
		}
		this.#y += style.after ?? 0;
	}

	#lines(line: string, style: Style, { x, width }: Place): void {
		this.#use(style);
		const shown = this.#broken(this.#showable(line, style.font), width);
		const height = this.#doc.heightOfString(shown, { width, lineGap: 1.5 });
		if (this.#y + Math.min(height, 30) > BOTTOM) this.#newPageWithin();
		this.#use(style);
		this.#doc.text(shown, x, this.#y, { width, lineGap: 1.5 });
		// The document's own pen has turned the page where the text did.
		this.#y = this.#doc.y;
	}

	#heightOf(words: string, style: Style, width: number): number {
		this.#use(style);
		return words.split("\n").reduce((sum, line) => {
			const shown = this.#broken(this.#showable(line, style.font), width);
			return sum + this.#doc.heightOfString(shown, { width, lineGap: 1.5 });
		}, 0);
	}

	/** In the font that is in use. */
	#broken(words: string, width: number): string {
		if (this.#joints === undefined) return words;
		return breakWords(words, width, this.#joints, (text) => this.#doc.widthOfString(text));
	}

	#use({ font, size, color = INK }: Style): void {
		this.#doc.font(FONTS[font]).fontSize(size).fillColor(color);
	}

	#showable(words: string, font: FontName): string {
		return showable(words, this.#fonts.get(font) as ReportFont);
	}

	/** Turns the page where less than this is left; says whether it did. */
	#room(height: number): boolean {
		if (this.#y + height <= BOTTOM || this.#y <= PAGE.margin) return false;
		this.newPage();
		return true;
	}
}

/** Of a cell whose words are not the report's own. */
function languageOf(cell: Words | undefined): { readonly lang?: string } {
	return typeof cell === "object" ? { lang: cell.language } : {};
}
