/**
 * The rows of a recorder's table, whose bytes come in pieces of any length and never stand in memory as a whole: what is kept is
 * the line that is open, and one block of rows. Every row must have as many fields as the header; nothing is guessed. A last
 * line without its end may be cut inside a number and is left out.
 */
import { ImportRefusal } from "../import-result.ts";
import type { Separator } from "../table-separator.ts";
import { numberAt } from "./number-at.ts";
import { epochOf } from "./time-at.ts";

export interface RowOptions {
	readonly separator: Separator;
	/** Places of the columns that are read, counted from 0; one may be read once. */
	readonly places: readonly number[];
	/** Of those, the one that holds dates and times, if any; it gives seconds since 1970. */
	readonly dateTimePlace?: number | undefined;
	/** Of dates and times without a zone. */
	readonly offsetMinutes?: number | undefined;
}

export interface RowBlock {
	/** One array per place, in order, equally long. A missing number is NaN. They are used again for the next block. */
	readonly columns: readonly Float64Array[];
	readonly length: number;
	/** Line of each row, for what is wrong with it. */
	readonly lines: Float64Array;
}

export interface RecorderRows {
	take(bytes: Uint8Array): void;
	/** The file is over. Gives the number of the last line where it had no end. @throws ImportRefusal where no row was read */
	end(): { readonly cutLine: number | null };
}

export const BLOCK_ROWS = 4096;
/** A line that is longer is none of a table. */
const LONGEST_LINE = 64 * 1024;
const [LINE_FEED, RETURN, HASH, QUOTE] = [0x0a, 0x0d, 0x23, 0x22];

/** @param rows told of each block of rows, in order; @throws ImportRefusal with the line, from `take` and `end` */
export function recorderRows(options: RowOptions, rows: (block: RowBlock) => void): RecorderRows {
	const { places, dateTimePlace, offsetMinutes } = options;
	const separator = options.separator.charCodeAt(0);
	const decimalComma = options.separator !== ",";
	const columns = places.map(() => new Float64Array(BLOCK_ROWS));
	const lines = new Float64Array(BLOCK_ROWS);
	/** By place, the column that it goes into; -1 where it is not read. */
	const slots = new Int8Array(Math.max(...places) + 1).fill(-1);
	places.forEach((place, slot) => {
		slots[place] = slot;
	});
	let [length, line, fieldsOfHeader, anyRow] = [0, 0, 0, false];
	let open = new Uint8Array(0);
	let decoder: TextDecoder | null | undefined;

	function flush(): void {
		if (length > 0) rows({ columns, length, lines });
		length = 0;
	}

	function cellOf(bytes: Uint8Array, from: number, to: number): string {
		return new TextDecoder().decode(bytes.subarray(from, to)).slice(0, 60);
	}

	/** One line without its end. */
	function takeLine(bytes: Uint8Array, from: number, lineEnd: number): void {
		line += 1;
		const to = lineEnd > from && bytes[lineEnd - 1] === RETURN ? lineEnd - 1 : lineEnd;
		if (to === from || bytes[from] === HASH) return;
		let field = 0;
		let start = from;
		let quoted = false;
		for (let at = from; at <= to; at += 1) {
			const byte = at === to ? separator : (bytes[at] as number);
			if (byte === QUOTE) quoted = !quoted;
			if (quoted && at === to) throw new ImportRefusal("csv-row", line, { why: "CSV_QUOTE_NOT_CLOSED" });
			if (byte !== separator || quoted) continue;
			if (fieldsOfHeader > 0) {
				const slot = field < slots.length ? (slots[field] as number) : -1;
				if (slot >= 0) (columns[slot] as Float64Array)[length] = numberOf(bytes, start, at, field);
			}
			field += 1;
			start = at + 1;
		}
		if (fieldsOfHeader === 0) {
			if (field < slots.length)
				throw new ImportRefusal("recorder-columns", line, { found: field, asked: slots.length });
			fieldsOfHeader = field;
			return;
		}
		if (field !== fieldsOfHeader)
			throw new ImportRefusal("recorder-fields", line, { found: field, header: fieldsOfHeader });
		lines[length] = line;
		length += 1;
		anyRow = true;
		if (length === BLOCK_ROWS) flush();
	}

	function numberOf(bytes: Uint8Array, from: number, to: number, place: number): number {
		const value =
			place === dateTimePlace
				? epochOf(cellOf(bytes, from, to), offsetMinutes)
				: numberAt(bytes, from, to, decimalComma);
		if (value === "no-zone") throw new ImportRefusal("recorder-no-zone", line, { cell: cellOf(bytes, from, to) });
		if (value === null)
			throw new ImportRefusal("recorder-not-a-number", line, { column: place + 1, cell: cellOf(bytes, from, to) });
		return value;
	}

	function takePlain(bytes: Uint8Array): void {
		let from = 0;
		for (let end = bytes.indexOf(LINE_FEED); end >= 0; end = bytes.indexOf(LINE_FEED, from)) {
			if (open.length > 0) {
				const whole = joined(open, bytes.subarray(0, end));
				open = new Uint8Array(0);
				takeLine(whole, 0, whole.length);
			} else takeLine(bytes, from, end);
			from = end + 1;
		}
		open = joined(open, bytes.subarray(from));
		if (open.length > LONGEST_LINE) throw new ImportRefusal("recorder-long-line", line + 1);
	}

	return {
		take(bytes) {
			if (bytes.length === 0) return;
			if (decoder === undefined) {
				// Byte order marks: UTF-16 is turned into UTF-8; that of UTF-8 is no part of the header.
				decoder = bytes[0] === 0xff && bytes[1] === 0xfe ? new TextDecoder("utf-16le") : null;
				if (bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf) return takePlain(bytes.subarray(3));
			}
			takePlain(decoder === null ? bytes : new TextEncoder().encode(decoder.decode(bytes, { stream: true })));
		},
		end() {
			flush();
			if (!anyRow) throw new ImportRefusal("no-rows", Math.max(line, 1));
			const cut = open.some((byte) => byte > 0x20);
			return { cutLine: cut ? line + 1 : null };
		},
	};
}

function joined(one: Uint8Array, other: Uint8Array): Uint8Array<ArrayBuffer> {
	const both = new Uint8Array(one.length + other.length);
	both.set(one);
	both.set(other, one.length);
	return both;
}
