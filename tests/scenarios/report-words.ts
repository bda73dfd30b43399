/** A report's own words, without what people typed into its order. */
import { type Block, plainWords, type Report, type Words } from "../../src/reports/report.ts";

/** Every sentence, caption and cell that the report says itself; quotes and what is marked as quoted are left out. */
export function ownWords({ title, lead, footer, summary, sections }: Report): string[] {
	const all = [summary, ...sections].flatMap((section) => [section.title, ...section.blocks.flatMap(ofBlock)]);
	return [title, lead, footer, ...all];
}

function ofBlock(block: Block): string[] {
	switch (block.kind) {
		case "paragraph":
			return block.tone === "quote" ? [] : [block.text];
		case "subheading":
			return [block.text];
		case "list":
			return [...block.items];
		case "facts":
			return block.rows.flatMap(own);
		case "table":
			return [...block.head, ...block.rows.flatMap(own)];
		case "figure":
			return [block.caption, ...block.drawing.primitives.flatMap((one) => (one.kind === "text" ? [one.text] : []))];
		default:
			return [];
	}
}

function own(cells: readonly Words[]): string[] {
	return cells.flatMap((cell) => (typeof cell === "string" ? [plainWords(cell)] : []));
}

/** Whatever a person typed, anywhere in a scenario. */
export function typedIn(value: unknown): string[] {
	if (typeof value === "string") return value.length > 3 ? [value] : [];
	if (value === null || typeof value !== "object") return [];
	return Object.values(value).flatMap(typedIn);
}
