/**
 * The table of a shock recorder: which columns it has and in which units, as far as that can be told. Values are not read
 * here; a whole trip is read as a stream elsewhere. Without a unit in the header, an acceleration's unit is told from
 * its resultant at rest: about 1 is gₙ, 9.5 to 10.1 m/s², 9,500 to 10,100 mm/s². About 0 means that gravity was taken out,
 * and the unit must be asked.
 */
import { type CsvTable, readCsv } from "./csv-rows.ts";
import {
	type FormatResult,
	type ImportCondition,
	type ImportedColumn,
	ImportRefusal,
	type ImportWarning,
	warning,
} from "./import-result.ts";
import { type Separator, separatorOf } from "./table-separator.ts";

/** Rows that are looked at to tell a unit. Source: our choice. */
const LOOKED_AT = 500;
const NAMED = /^([^[(]*?)\s*(?:[[(]([^\])]{1,12})[\])])?$/;
const TIME = /^(t|ts|time|utime|timestamp|time ?stamp|seconds|elapsed)$/i;
const COUNT = /^(count|sample|samples|index|n)$/i;
const ACCELERATION = /^((a|acc|accel|acceleration)?[ _.-]?([xyz]|mag|res|resultant)|(a|acc|accel|acceleration))$/i;
const TEMPERATURE = /^(temp|temperature|t_amb)$/i;
const HUMIDITY = /^(rh|humidity|relative humidity)$/i;

/** The first line that is neither empty nor a comment. */
export function headerOf(text: string): string {
	return text.split("\n", 60).find((line) => line.trim() !== "" && !line.startsWith("#")) ?? "";
}

function quantityOf(cell: string): ImportedColumn["quantity"] {
	const name = NAMED.exec(cell.trim().replace(/^"(.*)"$/, "$1"))?.[1]?.trim() ?? "";
	if (TIME.test(name)) return "time";
	if (COUNT.test(name)) return "count";
	if (ACCELERATION.test(name)) return "acceleration";
	if (TEMPERATURE.test(name)) return "temperature";
	return HUMIDITY.test(name) ? "humidity" : null;
}

/** Whether a text is such a table: a column of time or counts, and one of acceleration. */
export function looksLikeShockCsv(text: string): boolean {
	const header = headerOf(text);
	const separator = separatorOf(header);
	if (separator === null) return false;
	const quantities = header.split(separator).map(quantityOf);
	return quantities.includes("acceleration") && (quantities.includes("time") || quantities.includes("count"));
}

/** @throws ImportRefusal where there is no header or the first rows are broken */
export function importShockCsv(text: string, _condition: ImportCondition): FormatResult {
	const warnings: ImportWarning[] = [];
	const separator = separatorOf(headerOf(text));
	if (separator === null) throw new ImportRefusal("no-header", 1, { cell: headerOf(text).slice(0, 60) });
	const table = readCsv(beginningOf(text), separator);
	if (!table.header.some((cell) => quantityOf(cell) === "acceleration"))
		throw new ImportRefusal("no-header", table.headerLine, { cell: (table.header[0] ?? "").slice(0, 60) });
	const columns = columnsOf(table, separator);
	const unknown = columns.filter((column) => column.quantity === "acceleration" && column.unit === null).length;
	if (unknown > 0) warnings.push(warning("unit-to-be-asked", table.headerLine, { count: unknown }));
	return {
		format: "shock-csv",
		formatVersion: "not told by the file",
		about: "any",
		readings: [],
		identity: {},
		links: [],
		warnings,
		takenAt: null,
		columns,
	};
}

/** What each column is, as far as its name and the first rows tell. */
export function columnsOf(table: CsvTable, separator: Separator): ImportedColumn[] {
	const decimal = separator === "," ? /^-?\d+(\.\d+)?([eE][+-]?\d+)?$/ : /^-?\d+([.,]\d+)?([eE][+-]?\d+)?$/;
	const value = (field: string | undefined) =>
		field !== undefined && decimal.test(field) ? Number(field.replace(",", ".")) : Number.NaN;
	const axes = table.header.flatMap((cell, place) =>
		/[xyz]\b/i.test(NAMED.exec(cell)?.[1] ?? "") && quantityOf(cell) === "acceleration" ? [place] : [],
	);
	const resultants = table.rows
		.map(({ fields }) => Math.hypot(...axes.map((place) => value(fields[place]))))
		.filter((resultant) => Number.isFinite(resultant))
		.sort((a, b) => a - b);
	const atRest = axes.length === 3 ? unitAtRest(resultants[Math.floor(resultants.length / 2)]) : null;
	return table.header.map((cell): ImportedColumn => {
		const quantity = quantityOf(cell);
		const printed = NAMED.exec(cell)?.[2]?.trim() ?? null;
		if (printed !== null) return { name: cell, quantity, unit: printed, unitFrom: "header" };
		const unit = quantity === "acceleration" ? atRest : null;
		return { name: cell, quantity, unit, unitFrom: unit === null ? null : "rest" };
	});
}

/** The comment lines, the header and the first rows, whole lines only. */
export function beginningOf(text: string): string {
	const lines = text.split("\n", LOOKED_AT + 60);
	if (lines.length < LOOKED_AT + 60) return text;
	return `${lines.join("\n")}\n`;
}

/** Bounds: bench practice, from what gravity reads as in each unit. */
function unitAtRest(resultant: number | undefined): string | null {
	if (resultant === undefined) return null;
	if (resultant >= 0.9 && resultant <= 1.1) return "Gn";
	if (resultant >= 9.5 && resultant <= 10.1) return "m/s2";
	return resultant >= 9500 && resultant <= 10_100 ? "mm/s2" : null;
}
