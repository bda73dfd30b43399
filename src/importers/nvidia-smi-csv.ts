/**
 * `nvidia-smi --query-gpu=… --format=csv`, one row for each device and sample. The header names fields and units
 * (`power.draw [W]`); cells repeat the unit unless it was asked not to. Without a header nothing is read. From several
 * samples the highest temperature, power and fan speed are taken and the last counters; a link that changed between
 * them has no one value.
 */
import { LINK_GENERATIONS } from "../catalogue/link-generations.ts";
import { collectReadings, type Printed, type Readings } from "./collect-readings.ts";
import { type CsvTable, readCsv } from "./csv-rows.ts";
import {
	type FormatResult,
	type ImportCondition,
	type ImportedLink,
	ImportRefusal,
	type ImportWarning,
	warning,
} from "./import-result.ts";
import { linkWidth } from "./link-values.ts";
import { nullReasonOf } from "./null-words.ts";
import { highest, type Sample, samplesUnder } from "./smi-samples.ts";

const FIELD =
	/^(timestamp|index|name|count|driver_version|vbios_version|serial|uuid|pstate|gpu_(name|uuid|serial)|[a-z_]+(\.[a-z_]+)+)( \[[^\]]+\])?$/;
const TELLING =
	/(^|, ?)(pci\.bus_id|gpu_uuid|uuid|pstate|temperature\.gpu|power\.draw|pcie\.link\.[a-z.]+|utilization\.gpu)( \[[^\]]+\])?\s*(,|$)/;

/** Whether a text is such a file. */
export function looksLikeNvidiaSmiCsv(text: string): boolean {
	return TELLING.test(firstLine(text));
}

/** @throws ImportRefusal where there is no header, or a row is broken */
export function importNvidiaSmiCsv(text: string, condition: ImportCondition): FormatResult {
	const warnings: ImportWarning[] = [];
	const table = readCsv(text, ",");
	const columns = columnsOf(table);
	if (table.rows.length === 0) throw new ImportRefusal("no-rows", table.headerLine);
	if (table.cutLine !== null) warnings.push(warning("last-row-cut", table.cutLine));
	const samples = samplesOf(table, columns);
	const subjects = [...new Set(samples.map((sample) => sample.subject))];
	if (subjects.length > 1) warnings.push(warning("several-devices", table.headerLine, { found: subjects.length }));
	const readings = collectReadings(condition, warnings);
	const links = subjects.map((subject) => {
		const own = samples.filter((sample) => sample.subject === subject);
		return readDevice(subject, samplesUnder(own, condition, warnings), own, condition, readings, warnings);
	});
	const time = samples[0]?.cell("timestamp")?.raw;
	return {
		format: "nvidia-smi-csv",
		formatVersion: "not told by the file",
		about: "graphics",
		readings: readings.list,
		identity: subjects.length === 1 ? identityOf(samples) : {},
		links: links.filter((link) => link !== null),
		warnings,
		takenAt: time === undefined || time === "" ? null : { raw: time, epochS: null },
	};
}

interface DeviceSample extends Sample {
	readonly subject: string;
}

function firstLine(text: string): string {
	return text.split("\n", 20).find((line) => line.trim() !== "" && !line.startsWith("#")) ?? "";
}

/** Field name → place. The unit in the header is part of its pattern below and must be the one that is read. */
function columnsOf({ header, headerLine }: CsvTable): ReadonlyMap<string, number> {
	const columns = new Map<string, number>();
	header.forEach((cell, place) => {
		if (!FIELD.test(cell)) throw new ImportRefusal("no-header", headerLine, { cell: cell.slice(0, 60) });
		const name = cell.replace(/ \[[^\]]+\]$/, "");
		const unit = / \[([^\]]+)\]$/.exec(cell)?.[1];
		const wanted = UNITS[name];
		if (unit !== undefined && wanted !== undefined && unit !== wanted)
			throw new ImportRefusal("unit-not-read", headerLine, { column: name, unit });
		if (columns.has(name)) throw new ImportRefusal("column-twice", headerLine, { column: name });
		columns.set(name, place);
	});
	return columns;
}

const UNITS: Readonly<Record<string, string>> = {
	"power.draw": "W",
	"power.draw.instant": "W",
	"power.draw.average": "W",
	"fan.speed": "%",
	"utilization.gpu": "%",
};

function samplesOf(table: CsvTable, columns: ReadonlyMap<string, number>): DeviceSample[] {
	return table.rows.map(({ fields, line }) => {
		const cell = (column: string): Printed | undefined => {
			const place = columns.get(column);
			return place === undefined ? undefined : { raw: fields[place] ?? "", line };
		};
		const use = /^(\d+)(?: %)?$/.exec(cell("utilization.gpu")?.raw ?? "")?.[1];
		const id = ["pci.bus_id", "gpu_bus_id", "uuid", "gpu_uuid", "index"].find(
			(name) => nullReasonOf(cell(name)?.raw ?? "") === null,
		);
		return {
			cell,
			line,
			usePercent: use === undefined ? null : Number(use),
			subject: (id === undefined ? undefined : cell(id)?.raw) ?? "device",
		};
	});
}

function readDevice(
	subject: string,
	samples: readonly DeviceSample[],
	all: readonly DeviceSample[],
	condition: ImportCondition,
	readings: Readings,
	warnings: ImportWarning[],
): ImportedLink | null {
	const cells = (column: string, from = samples) => from.flatMap((sample) => sample.cell(column) ?? []);
	const firstOf = (...names: readonly string[]) => names.find((name) => cells(name, all).length > 0) ?? "";
	if (samples.length > 1) warnings.push(warning("highest-of-rows", null, { rows: samples.length }));
	const peak = (check: string, unit: string, column: string, pattern: RegExp) =>
		readings.print(check, subject, unit, highest(cells(column), pattern), pattern);
	peak("temperature-core", "degC", "temperature.gpu", /^(-?\d+(?:\.\d+)?)$/);
	peak("temperature-memory", "degC", "temperature.memory", /^(-?\d+(?:\.\d+)?)$/);
	peak(
		"power-draw",
		"W",
		firstOf("power.draw.instant", "power.draw", "power.draw.average"),
		/^(\d+(?:\.\d+)?)(?: W)?$/,
	);
	peak("fan-speed", "percent", "fan.speed", /^(\d+)(?: %)?$/);
	for (const column of ["ecc.errors.uncorrected.volatile.total", "ecc.errors.corrected.volatile.total"])
		readings.print("memory-errors", `${subject} ${column}`, "errors", cells(column, all).at(-1), /^(\d+)$/);

	const steady = (
		check: string,
		unit: string,
		column: string,
		pattern: RegExp,
		convert: (n: number) => number | null,
	) => {
		const found = cells(column);
		const [first] = found;
		if (first === undefined) return null;
		const other = found.find((cell) => cell.raw !== first.raw);
		if (other === undefined) return readings.print(check, subject, unit, first, pattern, convert);
		warnings.push(warning("link-changed", other.line, { column }));
		const lines = [first.line, other.line].filter((line) => line !== null);
		readings.give(check, subject, unit, null, `${first.raw}, ${other.raw}`, lines, { nullReason: "changes" });
		return null;
	};
	const generation = (check: string, column: string) =>
		steady(check, "GT/s", column, /^(\d+)$/, (value) => LINK_GENERATIONS[value] ?? null);
	const lanes = (check: string, column: string) => steady(check, "lanes", column, /^(\d+)$/, linkWidth);
	const speed = generation("link-speed", firstOf("pcie.link.gen.gpucurrent", "pcie.link.gen.current"));
	const width = lanes("link-width", "pcie.link.width.current");
	const ownMaximum = firstOf("pcie.link.gen.gpumax", "pcie.link.gen.max");
	const cardSpeed = generation("link-speed-capability", ownMaximum);
	const cardWidth = lanes("link-width-capability", "pcie.link.width.max");
	if (cardWidth !== null)
		warnings.push(
			warning("maximum-of-card-and-system", null, { what: ownMaximum === "pcie.link.gen.gpumax" ? "width" : "both" }),
		);
	if (speed === null || width === null || cardSpeed === null || cardWidth === null) return null;
	return {
		subject,
		condition,
		card: { speedGTPerS: cardSpeed, width: cardWidth },
		function: { speedGTPerS: speed, width },
		upstreamPath: null,
		slot: null,
	};
}

/** What each row says alike; a name that changes between rows is none. */
function identityOf(samples: readonly DeviceSample[]): Record<string, string> {
	const fields: Record<string, readonly string[]> = {
		serialNumber: ["serial", "gpu_serial"],
		uuid: ["uuid", "gpu_uuid"],
		firmware: ["vbios_version"],
		model: ["name", "gpu_name"],
		driver: ["driver_version"],
	};
	return Object.fromEntries(
		Object.entries(fields).flatMap(([member, columns]) => {
			const said = new Set(samples.flatMap((sample) => columns.flatMap((column) => sample.cell(column)?.raw ?? [])));
			const [only] = said;
			return said.size !== 1 || only === undefined || nullReasonOf(only) !== null ? [] : [[member, only]];
		}),
	);
}
