/** The beginning of a recorder's file: its columns as far as they can be told, and its first rows as they stand. */
import { readCsv } from "../csv-rows.ts";
import { decodeText } from "../decode-text.ts";
import { type ImportedColumn, ImportRefusal } from "../import-result.ts";
import { beginningOf, columnsOf, headerOf } from "../shock-csv.ts";
import { type Separator, separatorOf } from "../table-separator.ts";

export interface RecorderPreview {
	readonly separator: Separator;
	/** As it stands in the file: files of one recorder and setting share it. */
	readonly headerLine: string;
	readonly columns: readonly ImportedColumn[];
	/** The first rows, as many fields as columns. */
	readonly rows: readonly (readonly string[])[];
}

const SHOWN_ROWS = 8;
/** More than 560 lines of any recorder's table; an even number, so that UTF-16 is not cut inside a character. */
const LOOKED_AT_BYTES = 256 * 1024;
/** Of a long file these first bytes say all that is said here. */
export const BEGINNING_BYTES = LOOKED_AT_BYTES + 2;

/** @throws ImportRefusal where it is no text, has no header, or its first rows are broken */
export function previewRecorderFile(bytes: Uint8Array): RecorderPreview {
	const text = beginningOf(decodeText(wholeLinesOf(bytes)));
	const headerLine = headerOf(text);
	const separator = separatorOf(headerLine);
	if (separator === null) throw new ImportRefusal("no-header", 1, { cell: headerLine.slice(0, 60) });
	const table = readCsv(text, separator);
	if (table.rows.length === 0) throw new ImportRefusal("no-rows", table.headerLine);
	return {
		separator,
		headerLine: headerLine.trim(),
		columns: columnsOf(table, separator),
		rows: table.rows.slice(0, SHOWN_ROWS).map(({ fields }) => fields),
	};
}

/** The beginning of a long file up to the end of a line, so that no character and no row is cut. */
function wholeLinesOf(bytes: Uint8Array): Uint8Array {
	if (bytes.length <= LOOKED_AT_BYTES) return bytes;
	const beginning = bytes.subarray(0, LOOKED_AT_BYTES);
	const end = beginning.lastIndexOf(LINE_FEED) + 1;
	// In UTF-16 a line feed is two bytes, the second 0.
	const wide = beginning[0] === 0xff && beginning[1] === 0xfe;
	return beginning.subarray(0, wide ? end + (end % 2) : end);
}

const LINE_FEED = 0x0a;
