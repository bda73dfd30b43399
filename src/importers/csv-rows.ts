/** A CSV text as rows with line numbers. Every row must have as many fields as the header; nothing is filled up or cut. */
import { CsvError, parse } from "csv-parse/sync";
import { ImportRefusal } from "./import-result.ts";

export interface CsvRow {
	readonly fields: readonly string[];
	readonly line: number;
}

export interface CsvTable {
	readonly header: readonly string[];
	readonly headerLine: number;
	readonly rows: readonly CsvRow[];
	/** The last line has no end, so its last field may be cut: it is not among the rows. */
	readonly cutLine: number | null;
}

/** @throws ImportRefusal with the line of what is wrong */
export function readCsv(text: string, separator: "," | ";" | "\t"): CsvTable {
	const end = text.lastIndexOf("\n") + 1;
	const cut = text.slice(end).trim() !== "";
	const whole = text.slice(0, end);
	let read: { record: string[]; info: { lines: number } }[];
	try {
		read = parse(whole, {
			delimiter: separator,
			comment: "#",
			comment_no_infix: true,
			info: true,
			skip_empty_lines: true,
			skip_records_with_empty_values: false,
			trim: true,
		}) as never;
	} catch (fault) {
		if (!(fault instanceof CsvError)) throw fault;
		const line = typeof fault.lines === "number" ? fault.lines : null;
		throw new ImportRefusal("csv-row", line, { why: fault.code });
	}
	const [first, ...others] = read;
	if (first === undefined) throw new ImportRefusal(cut ? "cut-off" : "empty", 1, { line: "" });
	return {
		header: first.record,
		headerLine: first.info.lines,
		rows: others.map(({ record, info }) => ({ fields: record, line: info.lines })),
		cutLine: cut ? whole.split("\n").length : null,
	};
}
