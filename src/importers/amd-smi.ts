/**
 * `amd-smi metric --json`, with what `amd-smi static --json` adds where it stands in the same objects. A list of cards,
 * or such a list under `gpu_data` (from memory). Values are `{ "value", "unit" }`, numbers or words. The speed of the
 * link is kept in MT/s underneath and has been printed so under the name of GT/s; counters that a card lacks read all
 * ones. Source: published, ROCm/amdsmi amdsmi_commands.py for the link's names; the static part from memory. No file
 * that a real card printed with the link in it was at hand.
 */
import { collectReadings, type Printed, type Readings } from "./collect-readings.ts";
import {
	type FormatResult,
	type ImportCondition,
	type ImportedLink,
	ImportRefusal,
	type ImportWarning,
	warning,
} from "./import-result.ts";
import { type JsonNode, jsonAt, jsonText, readJson } from "./json-tree.ts";
import { linkSpeed, linkSpeedOfEither, linkWidth } from "./link-values.ts";
import { nullReasonOf } from "./null-words.ts";

/** Whether a text is such a file. */
export function looksLikeAmdSmi(text: string): boolean {
	return /[[{,]\s*"gpu"\s*:\s*\d+\s*,/.test(text.slice(0, 65_536));
}

/** @throws ImportRefusal where the JSON is broken or holds no card */
export function importAmdSmi(text: string, condition: ImportCondition): FormatResult {
	const warnings: ImportWarning[] = [];
	const root = readJson(text, warnings);
	const list = root.kind === "array" ? root : root.members.get("gpu_data");
	const cards = (list?.elements ?? []).filter((card) => card.members.get("gpu")?.kind === "number");
	if (cards.length === 0) throw new ImportRefusal("no-device", root.line);
	if (cards.length > 1) warnings.push(warning("several-devices", root.line, { found: cards.length }));
	const readings = collectReadings(condition, warnings);
	const links = cards.map((card) => readCard(card, condition, readings, warnings));
	const [only] = cards;
	return {
		format: "amd-smi",
		formatVersion: "not told by the file",
		about: "graphics",
		readings: readings.list,
		identity: cards.length === 1 && only !== undefined ? identityOf(only) : {},
		links: links.filter((link) => link !== null),
		warnings,
		takenAt: null,
	};
}

/** A value with its unit beside it, a plain number, or a word for none. A unit that is another than wanted is shown in raw. */
function printed(node: JsonNode | undefined, unit: string): Printed | undefined {
	if (node === undefined) return undefined;
	if (node.kind !== "object") return { raw: node.raw, line: node.line };
	const value = jsonAt(node, "value");
	const said = jsonText(jsonAt(node, "unit"));
	if (value === undefined) return undefined;
	return { raw: said === undefined || said === unit ? value.raw : `${value.raw} ${said}`, line: value.line };
}

const NUMBER = /^(-?\d+(?:\.\d+)?)$/;
const COUNT = /^(\d+)$/;
const COUNTERS = [
	"replay_count",
	"l0_to_recovery_count",
	"replay_roll_over_count",
	"nak_sent_count",
	"nak_received_count",
	"lc_perf_other_end_recovery",
];

function readCard(
	card: JsonNode,
	condition: ImportCondition,
	readings: Readings,
	warnings: ImportWarning[],
): ImportedLink | null {
	const subject = jsonText(jsonAt(card, "bus", "bdf")) ?? `gpu${card.members.get("gpu")?.raw ?? ""}`;
	const print = (
		check: string,
		unit: string,
		node: JsonNode | undefined,
		said: string,
		pattern = NUMBER,
		convert?: (value: number) => number | null,
	) => readings.print(check, subject, unit, printed(node, said), pattern, convert);
	print("temperature-core", "degC", jsonAt(card, "temperature", "edge"), "C");
	print("temperature-hot-spot", "degC", jsonAt(card, "temperature", "hotspot"), "C");
	print("temperature-memory", "degC", jsonAt(card, "temperature", "mem"), "C");
	print("power-draw", "W", jsonAt(card, "power", "socket_power"), "W");
	print("fan-speed", "percent", jsonAt(card, "fan", "usage"), "%");
	for (const kind of ["uncorrectable", "correctable"])
		readings.print(
			"memory-errors",
			`${subject} total ${kind}`,
			"errors",
			printed(jsonAt(card, "ecc", `total_${kind}_count`), ""),
			COUNT,
		);
	const pcie = jsonAt(card, "pcie");
	for (const counter of COUNTERS)
		print(`aer-${counter.replaceAll("_", "-")}`, "errors", jsonAt(pcie, counter), "", COUNT);
	const speed = print("link-speed", "GT/s", jsonAt(pcie, "speed"), "GT/s", /^(\d+(?:\.\d+)?)(?: MT\/s)?$/, (value) => {
		if (linkSpeed(value) === null) warnings.push(warning("speed-in-mt", pcie?.line ?? null, { printed: value }));
		return linkSpeedOfEither(value);
	});
	const width = print("link-width", "lanes", jsonAt(pcie, "width"), "", COUNT, linkWidth);
	const bus = jsonAt(card, "bus");
	const ownSpeed = print(
		"link-speed-capability",
		"GT/s",
		jsonAt(bus, "max_pcie_speed"),
		"GT/s",
		/^(\d+(?:\.\d+)?)(?: MT\/s)?$/,
		linkSpeedOfEither,
	);
	const ownWidth = print("link-width-capability", "lanes", jsonAt(bus, "max_pcie_width"), "", COUNT, linkWidth);
	const use = Number(printed(jsonAt(card, "usage", "gfx_activity"), "%")?.raw ?? Number.NaN);
	if (condition === "load" && use < 10) warnings.push(warning("load-contradicted", card.line));
	if (condition === "idle" && use > 50) warnings.push(warning("idle-contradicted", card.line));
	if (speed === null || width === null || ownSpeed === null || ownWidth === null) return null;
	return {
		subject,
		condition,
		card: { speedGTPerS: ownSpeed, width: ownWidth },
		function: { speedGTPerS: speed, width },
		upstreamPath: null,
		slot: null,
	};
}

function identityOf(card: JsonNode): Record<string, string> {
	const names = {
		serialNumber: jsonAt(card, "board", "product_serial"),
		uuid: jsonAt(card, "asic", "asic_serial"),
		firmware: jsonAt(card, "vbios", "version"),
		model: jsonAt(card, "asic", "market_name"),
		driver: jsonAt(card, "driver", "version"),
	};
	return Object.fromEntries(
		Object.entries(names).flatMap(([member, node]) => {
			const text = jsonText(node);
			return text === undefined || nullReasonOf(text) !== null ? [] : [[member, text]];
		}),
	);
}
