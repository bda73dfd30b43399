/**
 * `nvidia-smi -q -x`, document types v10 to v13. The field names moved between versions:
 *
 * | wanted   | v10, v11                       | v12 early              | v12 late, v13                                  |
 * | -------- | ------------------------------ | ---------------------- | ---------------------------------------------- |
 * | slowdown | clocks_throttle_reasons        | either                 | clocks_event_reasons                           |
 * | power    | power_readings/power_draw      | either                 | gpu_power_readings/{instant,average}_power_draw |
 * | link     | max and current generation     | and the device's own   | and the host's                                 |
 *
 * so each is looked for under every name it has had. The time it prints has no zone and is not used. The link is what
 * the device itself reports: the path to the root port is not in this file.
 */
import { LINK_GENERATIONS } from "../catalogue/link-generations.ts";
import {
	type ImportCondition,
	type ImportedLink,
	type ImportedReading,
	ImportRefusal,
	type ImportResult,
	type ImportWarning,
	type LinkState,
	warning,
} from "./import-result.ts";
import { isSentinel, nullReasonOf } from "./null-words.ts";
import { at, readXml, type XmlElement } from "./xml-tree.ts";

const READ_VERSIONS = ["10", "11", "12", "13"];

/** Whether a text is such a file, also one that is cut off. */
export function looksLikeNvidiaSmiXml(text: string): boolean {
	return /<nvidia_smi_log\b|<!DOCTYPE\s+nvidia_smi_log\b/.test(text.slice(0, 4096));
}

/** @throws ImportRefusal where the file is not complete or of a version that is not read */
export function importNvidiaSmiXml(text: string, condition: ImportCondition): ImportResult {
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
	const read = gpus.map((gpu) => readGpu(gpu, condition, warnings));
	return {
		format: "nvidia-smi-xml",
		formatVersion: `v${version}`,
		readings: read.flatMap((one) => one.readings),
		identity: identityOf(root, gpus, warnings),
		links: read.flatMap((one) => one.link ?? []),
		warnings,
	};
}

function readGpu(gpu: XmlElement, condition: ImportCondition, warnings: ImportWarning[]) {
	const subject = gpu.attributes.id ?? "?";
	const readings: ImportedReading[] = [];
	const add = (
		check: string,
		element: XmlElement | undefined,
		unit: string,
		pattern: RegExp,
		suffix = "",
		factor: (value: number) => number | null = (value) => value,
	) => {
		if (element === undefined) return null;
		const reading = {
			check,
			subject: suffix === "" ? subject : `${subject} ${suffix}`,
			condition,
			unit,
			raw: element.text,
		};
		const nothing = nullReasonOf(element.text);
		const number = Number(pattern.exec(element.text)?.[1]);
		const value = nothing !== null || !Number.isFinite(number) ? null : factor(number);
		if (value === null || isSentinel(value)) {
			const nullReason = nothing ?? (Number.isFinite(number) ? "sentinel" : "not-understood");
			if (nullReason === "not-understood")
				warnings.push(warning("not-understood", element.line, { raw: element.text.slice(0, 80) }));
			readings.push({ ...reading, value: null, nullReason });
			return null;
		}
		readings.push({ ...reading, value });
		return value;
	};

	const info = at(gpu, "pci", "pci_gpu_link_info");
	const generation = (name: string) => at(info ?? gpu, "pcie_gen", name);
	const speed = (check: string, element: XmlElement | undefined) =>
		add(check, element, "GT/s", /^(\d+)$/, "", (gen) => LINK_GENERATIONS[gen] ?? null);
	const width = (check: string, element: XmlElement | undefined) => add(check, element, "lanes", /^(\d+)x$/);
	const state = {
		speed: speed("link-speed", generation("device_current_link_gen") ?? generation("current_link_gen")),
		width: width("link-width", at(info ?? gpu, "link_widths", "current_link_width")),
	};
	const ownMaximum = generation("max_device_link_gen");
	const capability = {
		speed: speed("link-speed-capability", ownMaximum ?? generation("max_link_gen")),
		width: width("link-width-capability", at(info ?? gpu, "link_widths", "max_link_width")),
	};
	if (info !== undefined)
		warnings.push(
			warning("maximum-of-card-and-system", info.line, { what: ownMaximum === undefined ? "both" : "width" }),
		);

	add("temperature-core", at(gpu, "temperature", "gpu_temp"), "degC", /^(-?\d+(?:\.\d+)?) C$/);
	add("temperature-memory", at(gpu, "temperature", "memory_temp"), "degC", /^(-?\d+(?:\.\d+)?) C$/);
	const power = ["gpu_power_readings", "power_readings"].flatMap((group) =>
		["instant_power_draw", "average_power_draw", "power_draw"].map((name) => at(gpu, group, name)),
	);
	const givenPower = power.find((element) => element !== undefined && nullReasonOf(element.text) === null);
	add("power-draw", givenPower ?? power.find((element) => element !== undefined), "W", /^(\d+(?:\.\d+)?) W$/);
	add("fan-speed", at(gpu, "fan_speed"), "percent", /^(\d+) %$/);
	for (const kind of ["volatile", "aggregate"] as const) {
		for (const counter of memoryCounters(at(gpu, "ecc_errors", kind))) {
			add("memory-errors", counter.element, "errors", /^(\d+)$/, `${kind} ${counter.name}`);
		}
	}
	for (const name of ["replay_counter", "replay_rollover_counter"]) {
		add(`aer-${name.replaceAll("_", "-")}`, at(gpu, "pci", name), "errors", /^(\d+)$/);
	}
	warnOfCondition(gpu, condition, warnings);
	return { readings, link: linkOf(subject, condition, capability, state) };
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
