/**
 * A sensor log as a table with a header, of whatever program: columns are known by words of their names and by the unit
 * in brackets, which must be there. A comma is a decimal mark only where semicolons or tabs separate the fields. Where
 * two columns could be meant, neither is read. The highest value of the file is given.
 */
import { collectReadings, type Printed } from "./collect-readings.ts";
import { type CsvTable, readCsv } from "./csv-rows.ts";
import {
	type FormatResult,
	type ImportCondition,
	ImportRefusal,
	type ImportWarning,
	warning,
} from "./import-result.ts";
import { highest, samplesUnder } from "./smi-samples.ts";
import { separatorOf } from "./table-separator.ts";

interface Wanted {
	readonly check: string;
	readonly unit: string;
	readonly name: RegExp;
	readonly symbol: RegExp;
}

const DEGREES = /^°?C$/;
const WANTED: readonly Wanted[] = [
	{ check: "temperature-hot-spot", unit: "degC", name: /hot ?spot|junction/i, symbol: DEGREES },
	{
		check: "temperature-memory",
		unit: "degC",
		name: /(memory|mem|vram|speicher).*temp|temp.*(memory|vram)/i,
		symbol: DEGREES,
	},
	{
		check: "temperature-core",
		unit: "degC",
		name: /^(gpu|gpu core|core|edge)[ -]?temp(erature?|eratur|érature)?$/i,
		symbol: DEGREES,
	},
	{
		check: "power-draw",
		unit: "W",
		name: /^((gpu|board|card|total)[ -]?)*power([ -]?(draw|consumption))?$/i,
		symbol: /^W$/,
	},
	{ check: "fan-speed", unit: "rpm", name: /^((gpu|fan)[ -]?)*fan([ -]?speed)?( \(rpm\))?$/i, symbol: /^RPM$/i },
	{ check: "use", unit: "percent", name: /^gpu[ -]?(core )?(load|usage|use|utili[sz]ation)$/i, symbol: /^%$/ },
];
const HEADED = /^(.*?)\s*\[([^\]]{1,8})\]$/;

/** Whether a text is such a table: a header with units in brackets, among them one that is read. */
export function looksLikeSensorCsv(text: string): boolean {
	const header = text.split("\n", 20).find((line) => line.trim() !== "" && !line.startsWith("#")) ?? "";
	const separator = separatorOf(header);
	return separator !== null && header.split(separator).some((cell) => wantedOf(unquoted(cell)) !== null);
}

function unquoted(cell: string): string {
	return cell.trim().replace(/^"(.*)"$/, "$1");
}

function wantedOf(cell: string): Wanted | null {
	const [, name = "", symbol = ""] = HEADED.exec(cell) ?? [];
	return WANTED.find((wanted) => wanted.name.test(name.trim()) && wanted.symbol.test(symbol)) ?? null;
}

/** @throws ImportRefusal where the table is broken or holds nothing that is read */
export function importSensorCsv(text: string, condition: ImportCondition): FormatResult {
	const warnings: ImportWarning[] = [];
	const header = text.split("\n", 20).find((line) => line.trim() !== "" && !line.startsWith("#")) ?? "";
	const separator = separatorOf(header);
	if (separator === null) throw new ImportRefusal("no-header", 1, { cell: header.slice(0, 60) });
	const table = readCsv(text, separator);
	if (table.rows.length === 0) throw new ImportRefusal("no-rows", table.headerLine);
	if (table.cutLine !== null) warnings.push(warning("last-row-cut", table.cutLine));
	const columns = columnsOf(table, warnings);
	const pattern = separator === "," ? /^(-?\d+(?:\.\d+)?)$/ : /^(-?\d+(?:[.,]\d+)?)$/;
	const cell = (place: number, row: CsvTable["rows"][number]): Printed => ({
		raw: (row.fields[place] ?? "").trim(),
		line: row.line,
	});
	const number = (printed: Printed) => Number(pattern.exec(printed.raw)?.[1]?.replace(",", ".") ?? Number.NaN);
	const use = columns.get("use");
	const samples = table.rows.map((row) => {
		const percent = use === undefined ? Number.NaN : number(cell(use.place, row));
		return { row, line: row.line, usePercent: Number.isNaN(percent) ? null : percent };
	});
	const readings = collectReadings(condition, warnings);
	const used = samplesUnder(samples, condition, warnings);
	for (const [check, { place, unit }] of columns) {
		if (check === "use") continue;
		const cells = used.map(({ row }) => cell(place, row));
		const dotted = cells.map((printed) => ({
			...printed,
			raw: pattern.test(printed.raw) ? printed.raw.replace(",", ".") : printed.raw,
		}));
		const best = highest(dotted, /^(-?\d+(?:\.\d+)?)$/);
		if (best !== undefined) readings.print(check, "device", unit, best, /^(-?\d+(?:\.\d+)?)$/);
	}
	if (readings.list.length === 0) throw new ImportRefusal("no-column", table.headerLine);
	if (used.length > 1) warnings.push(warning("highest-of-rows", null, { rows: used.length }));
	return {
		format: "sensor-csv",
		formatVersion: "not told by the file",
		about: "graphics",
		readings: readings.list,
		identity: {},
		links: [],
		warnings,
		takenAt: null,
	};
}

function columnsOf(table: CsvTable, warnings: ImportWarning[]): Map<string, { place: number; unit: string }> {
	const found = table.header.map((name, place) => ({ place, wanted: wantedOf(name) }));
	const columns = new Map<string, { place: number; unit: string }>();
	for (const { check, unit } of WANTED) {
		const fitting = found.filter(({ wanted }) => wanted?.check === check);
		const [only] = fitting;
		if (only === undefined) continue;
		if (fitting.length > 1)
			warnings.push(warning("column-ambiguous", table.headerLine, { check, count: fitting.length }));
		else columns.set(check, { place: only.place, unit });
	}
	const unread = found.filter(({ wanted }) => wanted === null).length;
	if (unread > 0) warnings.push(warning("columns-not-read", table.headerLine, { count: unread }));
	return columns;
}
