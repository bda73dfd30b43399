/**
 * Tables for spreadsheets: RFC 4180, every cell in quotes, and none that a spreadsheet would run. A cell that begins with
 * = + - @, a tab or a carriage return is opened with an apostrophe, as OWASP's page “CSV Injection” advises (recalled, not
 * read); so is one behind leading blanks or a line feed, which some programs drop. Numbers of ours are never negative.
 */
const RUNS = /^[\s]*[=+\-@\t\r]/;

export type CsvCell = string | number | null;

export function csvOf(rows: readonly (readonly CsvCell[])[]): string {
	return rows.map((row) => `${row.map(cellOf).join(",")}\r\n`).join("");
}

function cellOf(cell: CsvCell): string {
	if (cell === null) return "";
	if (typeof cell === "number") return String(cell);
	const inert = RUNS.test(cell) || cell.startsWith("\r") || cell.startsWith("\t") ? `'${cell}` : cell;
	return `"${inert.replaceAll('"', '""')}"`;
}
