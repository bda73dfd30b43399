/**
 * `rocm-smi … --json`: one object for each card, every value a string, and keys that changed their wording between
 * releases: `(c)` became `(C)`, `Average Graphics Package Power` became `Current Socket Graphics Package Power`,
 * `GPU ID` became `Device ID`. Each is looked for under every name it has had. The active level of the PCI Express
 * clock has a star; its speed and width are what the driver asked for, not what the slot shows.
 */
import { collectReadings, type Readings } from "./collect-readings.ts";
import {
	type FormatResult,
	type ImportCondition,
	ImportRefusal,
	type ImportWarning,
	warning,
} from "./import-result.ts";
import { type JsonNode, readJson } from "./json-tree.ts";
import { linkSpeed, linkWidth } from "./link-values.ts";
import { nullReasonOf } from "./null-words.ts";

/** Whether a text is such a file. */
export function looksLikeRocmSmi(text: string): boolean {
	return /"card\d+"\s*:\s*\{/.test(text.slice(0, 65_536));
}

/** @throws ImportRefusal where the JSON is broken or holds no card */
export function importRocmSmi(text: string, condition: ImportCondition): FormatResult {
	const warnings: ImportWarning[] = [];
	const root = readJson(text, warnings);
	const cards = [...root.members].filter(([name, node]) => /^card\d+$/.test(name) && node.kind === "object");
	if (cards.length === 0) throw new ImportRefusal("no-device", root.line);
	if (cards.length > 1) warnings.push(warning("several-devices", root.line, { found: cards.length }));
	const readings = collectReadings(condition, warnings);
	for (const [name, card] of cards) readCard(name, card, condition, readings, warnings);
	const [only] = cards;
	return {
		format: "rocm-smi",
		formatVersion: "not told by the file",
		about: "graphics",
		readings: readings.list,
		identity: cards.length === 1 && only !== undefined ? identityOf(only[1], root) : {},
		links: [],
		warnings,
		takenAt: null,
	};
}

/** The member under the first key that fits; keys differ in case and in their last words. */
function named(card: JsonNode, pattern: RegExp): { raw: string; line: number } | undefined {
	for (const [key, node] of card.members)
		if (pattern.test(key) && (node.kind === "string" || node.kind === "number"))
			return { raw: node.raw, line: node.line };
	return undefined;
}

const NUMBER = /^(-?\d+(?:\.\d+)?)$/;

function readCard(
	name: string,
	card: JsonNode,
	condition: ImportCondition,
	readings: Readings,
	warnings: ImportWarning[],
): void {
	const bus = named(card, /^PCI Bus$/i)?.raw;
	const subject = bus !== undefined && /^[0-9a-f]{4}:[0-9a-f]{2}:[0-9a-f]{2}\.[0-7]$/i.test(bus) ? bus : name;
	const print = (
		check: string,
		unit: string,
		key: RegExp,
		pattern = NUMBER,
		convert?: (value: number) => number | null,
	) => readings.print(check, subject, unit, named(card, key), pattern, convert);
	print("temperature-core", "degC", /^Temperature \(Sensor edge\) \(C\)$/i);
	print("temperature-hot-spot", "degC", /^Temperature \(Sensor junction\) \(C\)$/i);
	print("temperature-memory", "degC", /^Temperature \(Sensor memory\) \(C\)$/i);
	print("power-draw", "W", /^(Average|Current Socket) Graphics Package Power \(W\)$/i);
	print("fan-speed", "percent", /^Fan speed \(%\)$/i);
	if (named(card, /^Fan speed \(%\)$/i) === undefined) print("fan-speed", "rpm", /^Fan RPM$/i);
	print("aer-replay-counter", "errors", /^PCIe Replay Count$/i, /^(\d+)$/);
	const volts = print("voltage-core", "V", /^Voltage \(mV\)$/i, NUMBER, (millivolts) => millivolts / 1000);
	// One card printed 6 mV, and 862 mV with a later release. Source: published, samples in open issue trackers.
	if (volts !== null && !(volts >= LEAST_CORE_V))
		warnings.push(warning("hardly-possible", card.line, { what: `${volts} V` }));
	readPcieLevel(subject, card, readings, warnings);
	const use = Number(NUMBER.exec(named(card, /^GPU use \(%\)$/i)?.raw ?? "")?.[1]);
	if (condition === "load" && use < 10) warnings.push(warning("load-contradicted", card.line));
	if (condition === "idle" && use > 50) warnings.push(warning("idle-contradicted", card.line));
}

/** Source: our choice, far below any core voltage of the practice. */
const LEAST_CORE_V = 0.1;
const LEVEL = /^(?:\d+ \()?(\d+(?:\.\d+)?)GT\/s,? x(\d+)(?: \d+M[Hh]z)?\)?( \*)?$/;

/** `{"0": "2.5GT/s x16", "1": "16.0GT/s x16 *"}`, or the active level alone as a string. */
function readPcieLevel(subject: string, card: JsonNode, readings: Readings, warnings: ImportWarning[]): void {
	for (const [key, node] of card.members) {
		if (!/pcie/i.test(key)) continue;
		const levels = node.kind === "object" ? [...node.members.values()] : /level$/i.test(key) ? [node] : [];
		if (levels.length === 0 || !levels.every((level) => level.kind === "string" && LEVEL.test(level.raw))) continue;
		const active = levels.length === 1 ? levels : levels.filter((level) => level.raw.endsWith(" *"));
		const [only] = active;
		const of = `${subject} power table`;
		if (only === undefined || active.length > 1) {
			warnings.push(warning("active-level-unknown", node.line));
			readings.give("link-width", of, "lanes", null, "", [node.line], { nullReason: "active-level-unknown" });
			readings.give("link-speed", of, "GT/s", null, "", [node.line], { nullReason: "active-level-unknown" });
			continue;
		}
		readings.print("link-width", of, "lanes", only, / x(\d+)/, linkWidth);
		readings.print("link-speed", of, "GT/s", only, /(\d+(?:\.\d+)?)GT\/s/, linkSpeed);
	}
}

function identityOf(card: JsonNode, root: JsonNode): Record<string, string> {
	const system = root.members.get("system");
	const names = {
		serialNumber: named(card, /^Serial Number$/i),
		uuid: named(card, /^Unique ID$/i),
		firmware: named(card, /^VBIOS version$/i),
		model: named(card, /^Card series$/i),
		deviceId: named(card, /^(GPU|Device) ID$/i),
		driver: system === undefined ? undefined : named(system, /^Driver version$/i),
	};
	return Object.fromEntries(
		Object.entries(names).flatMap(([member, found]) =>
			found === undefined || nullReasonOf(found.raw) !== null ? [] : [[member, found.raw]],
		),
	);
}
