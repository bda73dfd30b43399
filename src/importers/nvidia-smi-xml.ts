/**
 * `nvidia-smi -q -x`, document types v10 to v13. The field names moved between versions:
 *
 * | wanted   | v10, v11                       | v12 early              | v12 late, v13                                  |
 * | -------- | ------------------------------ | ---------------------- | ---------------------------------------------- |
 * | slowdown | clocks_throttle_reasons        | either                 | clocks_event_reasons                           |
 * | power    | power_readings/power_draw      | either                 | gpu_power_readings/{instant,average}_power_draw |
 * | link     | max and current generation     | and the device's own   | and the host's                                 |
 *
 * so each is looked for under every name it has had. The time it prints has no zone. The link is what
 * the device itself reports: the path to the root port is not in this file.
 */
import { LINK_GENERATIONS } from "../catalogue/link-generations.ts";
import { collectReadings, type Readings } from "./collect-readings.ts";
import {
	type FormatResult,
	type ImportCondition,
	type ImportedLink,
	ImportRefusal,
	type ImportWarning,
	type LinkState,
	warning,
} from "./import-result.ts";
import { linkWidth } from "./link-values.ts";
import { nullReasonOf } from "./null-words.ts";
import { at, readXml, type XmlElement } from "./xml-tree.ts";

const READ_VERSIONS = ["10", "11", "12", "13"];

/** Whether a text is such a file, also one that is cut off. */
export function looksLikeNvidiaSmiXml(text: string): boolean {
	return /<nvidia_smi_log\b|<!DOCTYPE\s+nvidia_smi_log\b/.test(text.slice(0, 4096));
}

/** @throws ImportRefusal where the file is not complete or of a version that is not read */
export function importNvidiaSmiXml(text: string, condition: ImportCondition): FormatResult {
	const { doctype, root } = readXml(text);
	if (root.name !== "nvidia_smi_log")
		throw new ImportRefusal("not-this-format", root.line, { format: "nvidia-smi -q -x" });
	const version = /nvsmi_device_v(\d+)\.dtd/.exec(doctype)?.[1];
	if (version === undefined || !READ_VERSIONS.includes(version)) {
		throw new ImportRefusal("version-not-read", 1, { version: version ?? "?", read: READ_VERSIONS.join(", ") });
	}
	const gpus = root.children.filter((child) => child.name === "gpu");
	const attached = Number(at(root, "attached_gpus")?.text);
	if (gpus.length === 0) throw new ImportRefusal("no-device", root.line);
	const warnings: ImportWarning[] = [];
	if (Number.isInteger(attached) && attached !== gpus.length) {
		warnings.push(warning("device-count", root.line, { said: attached, found: gpus.length }));
	}
	const readings = collectReadings(condition, warnings);
	const links = gpus.map((gpu) => readGpu(gpu, condition, readings, warnings));
	const printedAt = at(root, "timestamp")?.text ?? "";
	return {
		format: "nvidia-smi-xml",
		formatVersion: `v${version}`,
		about: "graphics",
		readings: readings.list,
		identity: identityOf(root, gpus, warnings),
		links: links.filter((link) => link !== null),
		warnings,
		takenAt: printedAt === "" ? null : { raw: printedAt, epochS: null },
	};
}

function readGpu(gpu: XmlElement, condition: ImportCondition, readings: Readings, warnings: ImportWarning[]) {
	const subject = gpu.attributes.id ?? "?";
	const print = (
		check: string,
		element: XmlElement | undefined,
		unit: string,
		pattern: RegExp,
		suffix = "",
		convert?: (value: number) => number | null,
	) => {
		const of = suffix === "" ? subject : `${subject} ${suffix}`;
		return readings.print(
			check,
			of,
			unit,
			element === undefined ? undefined : { raw: element.text, line: element.line },
			pattern,
			convert,
		);
	};

	const info = at(gpu, "pci", "pci_gpu_link_info");
	const generation = (name: string) => at(info ?? gpu, "pcie_gen", name);
	const speed = (check: string, element: XmlElement | undefined) =>
		print(check, element, "GT/s", /^(\d+)$/, "", (gen) => LINK_GENERATIONS[gen] ?? null);
	const width = (check: string, element: XmlElement | undefined) =>
		print(check, element, "lanes", /^(\d+)x$/, "", linkWidth);
	const state = {
		speed: speed("link-speed", given(generation("device_current_link_gen"), generation("current_link_gen"))),
		width: width("link-width", at(info ?? gpu, "link_widths", "current_link_width")),
	};
	const ownMaximum = generation("max_device_link_gen");
	const capability = {
		speed: speed("link-speed-capability", given(ownMaximum, generation("max_link_gen"))),
		width: width("link-width-capability", at(info ?? gpu, "link_widths", "max_link_width")),
	};
	if (info !== undefined)
		warnings.push(
			warning("maximum-of-card-and-system", info.line, { what: ownMaximum === undefined ? "both" : "width" }),
		);

	const celsius = /^(-?\d+(?:\.\d+)?) C$/;
	print("temperature-core", at(gpu, "temperature", "gpu_temp"), "degC", celsius);
	print("temperature-memory", at(gpu, "temperature", "memory_temp"), "degC", celsius);
	for (const [name, limit] of Object.entries(OWN_LIMITS)) {
		const element = at(gpu, "temperature", name);
		if (element !== undefined && nullReasonOf(element.text) === null)
			print(`temperature-core-${limit}`, element, "degC", celsius);
	}
	const watts = /^(\d+(?:\.\d+)?) W$/;
	const power = POWER_GROUPS.flatMap((group) =>
		["instant_power_draw", "average_power_draw", "power_draw"].map((name) => at(gpu, group, name)),
	);
	const draw = print("power-draw", given(...power), "W", watts);
	const limits = POWER_GROUPS.flatMap((group) =>
		["current_power_limit", "enforced_power_limit", "power_limit"].map((name) => at(gpu, group, name)),
	);
	const limit = Number(watts.exec(given(...limits)?.text ?? "")?.[1]);
	if (draw !== null && draw > limit) warnings.push(warning("power-over-limit", gpu.line, { draw, limit }));
	print("fan-speed", at(gpu, "fan_speed"), "percent", /^(\d+) %$/);
	for (const kind of ["volatile", "aggregate"] as const) {
		for (const counter of memoryCounters(at(gpu, "ecc_errors", kind))) {
			print("memory-errors", counter.element, "errors", /^(\d+)$/, `${kind} ${counter.name}`);
		}
	}
	for (const [check, ...path] of REPAIRS)
		print(check, at(gpu, ...path), "one", /^(\d+)$/, path.join(" ").replaceAll("_", " "));
	for (const name of ["replay_counter", "replay_rollover_counter"]) {
		print(`aer-${name.replaceAll("_", "-")}`, at(gpu, "pci", name), "errors", /^(\d+)$/);
	}
	warnOfCondition(gpu, condition, warnings);
	return linkOf(subject, condition, capability, state);
}

/** The card's own limits by the names of the file; those that are margins to a limit (`tlimit`) are none of these. */
const OWN_LIMITS: Readonly<Record<string, string>> = {
	gpu_temp_max_gpu_threshold: "highest",
	gpu_temp_slow_threshold: "slowdown",
	gpu_temp_max_threshold: "shutdown",
};
const POWER_GROUPS = ["gpu_power_readings", "power_readings"];
/** Memory that the card has put out of use. */
const REPAIRS: readonly (readonly [string, ...string[]])[] = [
	["memory-pages-retired", "retired_pages", "multiple_single_bit_retirement", "retired_count"],
	["memory-pages-retired", "retired_pages", "double_bit_retirement", "retired_count"],
	["memory-rows-remapped", "remapped_rows", "remapped_row_corr"],
	["memory-rows-remapped", "remapped_rows", "remapped_row_unc"],
];

/** The first element that holds a value; where none does, the first that is there. */
function given(...elements: readonly (XmlElement | undefined)[]): XmlElement | undefined {
	const there = elements.filter((element) => element !== undefined);
	return there.find((element) => nullReasonOf(element.text) === null) ?? there[0];
}

/** Memory error counters: named `dram_…` since v11, grouped by single and double bit with totals before. */
function memoryCounters(group: XmlElement | undefined): { readonly name: string; readonly element: XmlElement }[] {
	if (group === undefined) return [];
	return group.children.flatMap((child) => {
		if (/^dram_(un)?correctable$/.test(child.name)) return [{ name: child.name.replaceAll("_", " "), element: child }];
		const total = /^(single|double)_bit$/.test(child.name) ? at(child, "device_memory") : undefined;
		return total === undefined ? [] : [{ name: `${child.name.replaceAll("_", " ")} device memory`, element: total }];
	});
}

function linkOf(
	subject: string,
	condition: ImportCondition,
	capability: { readonly speed: number | null; readonly width: number | null },
	state: { readonly speed: number | null; readonly width: number | null },
): ImportedLink | null {
	const linkState = (part: typeof state): LinkState | null =>
		part.speed === null || part.width === null ? null : { speedGTPerS: part.speed, width: part.width };
	const [card, reported] = [linkState(capability), linkState(state)];
	return card === null || reported === null
		? null
		: { subject, condition, card, function: reported, upstreamPath: null, slot: null };
}

/** The machine's own signs of work against what the caller says it was doing. */
function warnOfCondition(gpu: XmlElement, condition: ImportCondition, warnings: ImportWarning[]): void {
	const reasons = at(gpu, "clocks_event_reasons") ?? at(gpu, "clocks_throttle_reasons");
	const active = (name: string) => reasons?.children.find((child) => child.name.endsWith(name))?.text === "Active";
	const use = Number(/^(\d+) %$/.exec(at(gpu, "utilization", "gpu_util")?.text ?? "")?.[1]);
	if (condition === "load" && (active("_gpu_idle") || use < 10)) warnings.push(warning("load-contradicted", gpu.line));
	if (condition === "idle" && use > 50) warnings.push(warning("idle-contradicted", gpu.line));
	for (const slowdown of ["hw_slowdown", "hw_thermal_slowdown", "sw_thermal_slowdown", "hw_power_brake_slowdown"]) {
		if (active(`_${slowdown}`)) warnings.push(warning("slowed-down", reasons?.line ?? gpu.line, { reason: slowdown }));
	}
}

/** Names of one device; a file with several gives none, since a record is about one item. */
function identityOf(root: XmlElement, gpus: readonly XmlElement[], warnings: ImportWarning[]): Record<string, string> {
	const [gpu] = gpus;
	if (gpu === undefined || gpus.length > 1) {
		warnings.push(warning("several-devices", root.line, { found: gpus.length }));
		return {};
	}
	const names: Record<string, XmlElement | undefined> = {
		serialNumber: at(gpu, "serial"),
		uuid: at(gpu, "uuid"),
		firmware: at(gpu, "vbios_version"),
		model: at(gpu, "product_name"),
		partNumber: at(gpu, "board_part_number"),
		deviceId: at(gpu, "pci", "pci_device_id"),
		driver: at(root, "driver_version"),
	};
	return Object.fromEntries(
		Object.entries(names).flatMap(([name, element]) =>
			element === undefined || nullReasonOf(element.text) !== null ? [] : [[name, element.text]],
		),
	);
}
