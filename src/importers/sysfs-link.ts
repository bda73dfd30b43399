/**
 * Link files of the Linux kernel, each line with the path of its file: as `grep -H . FILE…` prints them (`path:value`) or
 * under a heading `==> path <==`. The path in `/sys/devices` goes through every bridge, so it shows the way to the root
 * port; the short path in `/sys/bus` does not. A value without a path says nothing and is refused.
 */
import { aerCheckByName } from "./aer-bits.ts";
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
import { linkSpeed, linkWidth } from "./link-values.ts";
import { shown, type TextLine, wholeLines } from "./text-lines.ts";

const LINK_FILES = ["current_link_speed", "max_link_speed", "current_link_width", "max_link_width"] as const;
const AER_FILES = {
	aer_dev_correctable: "correctable",
	aer_dev_nonfatal: "uncorrectable",
	aer_dev_fatal: "uncorrectable",
} as const;
const PATH_LINE = /^(\/\S*?\/)?((?:[0-9a-f]{4,8}:[0-9a-f]{2}:[0-9a-f]{2}\.[0-7]\/)+|card\d+\/device\/)(\w+)(?::(.*))?$/;
const NAMES = [...LINK_FILES, ...Object.keys(AER_FILES), "pp_dpm_pcie", "class", "vendor", "device"];
/** Base class of a display controller and of a processing accelerator. */
const GRAPHICS = /^0x(03|12)[0-9a-f]{4}$/;

interface Device {
	readonly address: string;
	readonly files: Map<string, TextLine[]>;
	/** The bridges above, nearest first; null where the path does not go through them. */
	above: readonly string[] | null;
}

/** Whether a text is such a file. */
export function looksLikeSysfsLink(text: string): boolean {
	return text.split("\n", 60).some((line) => {
		const path = PATH_LINE.exec(heading(line) ?? line);
		return path?.[3] !== undefined && NAMES.includes(path[3]);
	});
}

/** @throws ImportRefusal at a line that no such file holds */
export function importSysfsLink(text: string, condition: ImportCondition): FormatResult {
	const warnings: ImportWarning[] = [];
	const devices = readDevices(wholeLines(text));
	const subjects = subjectsOf(devices);
	if (subjects.length === 0) throw new ImportRefusal("no-device", null);
	if (subjects.length > 1) warnings.push(warning("several-devices", null, { found: subjects.length }));
	const readings = collectReadings(condition, warnings);
	const links = subjects.map((device) => readDevice(device, devices, condition, readings, warnings));
	return {
		format: "sysfs-link",
		formatVersion: "not told by the file",
		about: subjects.every((device) => isGraphics(device)) ? "graphics" : "any",
		readings: readings.list,
		identity: {},
		links: links.filter((link) => link !== null),
		warnings,
		takenAt: null,
	};
}

function heading(line: string): string | null {
	return /^==> (\S+) <==$/.exec(line)?.[1] ?? null;
}

function readDevices(lines: readonly TextLine[]): Map<string, Device> {
	const devices = new Map<string, Device>();
	let open: TextLine[] | null = null;
	for (const { text, number } of lines) {
		const title = heading(text);
		const path = PATH_LINE.exec(title ?? text);
		if (path === null) {
			if (text.trim() === "" || /^(#|\$|grep: |cat: |tail: )/.test(text)) continue;
			if (open === null || text.startsWith("/"))
				throw new ImportRefusal("line-not-understood", number, { line: shown(text) });
			open.push({ text, number });
			continue;
		}
		const [, , chain = "", name = "", value] = path;
		if (!NAMES.includes(name) || (title === null) !== (value !== undefined))
			throw new ImportRefusal("line-not-understood", number, { line: shown(text) });
		const file = fileOf(devices, path[1] ?? "", chain, name);
		open = title === null ? null : file;
		if (value !== undefined) file.push({ text: value, number });
	}
	return devices;
}

/** The lines of one file of one device; the device with the bridges that its path goes through. */
function fileOf(devices: Map<string, Device>, before: string, chain: string, name: string): TextLine[] {
	const addresses = chain.split("/").filter((part) => part !== "" && part !== "device");
	const address = addresses.at(-1) ?? chain;
	const device = devices.get(address) ?? { address, files: new Map(), above: null };
	devices.set(address, device);
	// `/sys/devices/pci0000:00/…` begins at the root; any other path may begin anywhere.
	if (/\/pci[0-9a-f]{4,8}:[0-9a-f]{2}\/$/.test(before)) device.above = addresses.slice(0, -1).reverse();
	const file = device.files.get(name) ?? [];
	device.files.set(name, file);
	return file;
}

function isGraphics(device: Device): boolean {
	return GRAPHICS.test(single(device, "class")?.text.trim() ?? "");
}

/** Graphics and accelerators; where no class is in the file, what is not a bridge above another. */
function subjectsOf(devices: ReadonlyMap<string, Device>): Device[] {
	const all = [...devices.values()];
	const graphics = all.filter(isGraphics);
	if (graphics.length > 0) return graphics;
	const bridges = new Set(all.flatMap((device) => device.above ?? []));
	return all.filter((device) => !bridges.has(device.address) && !device.files.has("class"));
}

/** A file's only line. @throws ImportRefusal where it stands twice with different values */
function single(device: Device, name: string): TextLine | undefined {
	const [first, ...others] = device.files.get(name) ?? [];
	const other = others.find(({ text }) => text.trim() !== "" && text !== first?.text);
	if (other !== undefined) throw new ImportRefusal("line-not-understood", other.number, { line: shown(other.text) });
	return first;
}

function readDevice(
	device: Device,
	devices: ReadonlyMap<string, Device>,
	condition: ImportCondition,
	readings: Readings,
	warnings: ImportWarning[],
): ImportedLink | null {
	const { address } = device;
	const state = readState(device, "current", readings, warnings);
	const capability = readState(device, "max", readings, warnings);
	readPowerTable(device, readings, warnings);
	const above = device.above?.map((name) => devices.get(name)) ?? null;
	const path = above === null || above.some((bridge) => bridge === undefined) ? null : (above as Device[]);
	for (const one of [device, ...(path ?? [])]) {
		readErrors(one, one === device ? address : `${address} port ${one.address}`, readings, warnings);
	}
	if (state === null || capability === null) return null;
	const upstream = path?.map((bridge) => stateOf(bridge, "current"));
	const seen = upstream?.every((one) => one !== null) === true;
	if (!seen) warnings.push(warning("path-not-seen", null, { subject: address }));
	const [port] = path ?? [];
	return {
		subject: address,
		condition,
		card: capability,
		function: state,
		upstreamPath: seen ? (upstream ?? null) : null,
		// With more bridges than one these files do not tell which of them is the slot.
		slot: path?.length === 1 && port !== undefined ? stateOf(port, "max") : null,
	};
}

type Which = "current" | "max";

/** Speed and width as readings; null where one of them is none. */
function readState(device: Device, which: Which, readings: Readings, warnings: ImportWarning[]): LinkState | null {
	const suffix = which === "current" ? "" : "-capability";
	const speed = single(device, `${which}_link_speed`);
	const width = single(device, `${which}_link_width`);
	const lost = width !== undefined && /^63$/.test(width.text.trim());
	if (lost) {
		if (which === "current") warnings.push(warning("bus-lost", width.number, { subject: device.address }));
		readings.give(`link-width${suffix}`, device.address, "lanes", null, width.text, [width.number], {
			nullReason: "bus-lost",
		});
		readings.give(
			`link-speed${suffix}`,
			device.address,
			"GT/s",
			null,
			speed?.text ?? "",
			speed === undefined ? [] : [speed.number],
			{
				nullReason: "bus-lost",
			},
		);
		return { speedGTPerS: 0, width: 63 };
	}
	const printed = (line: TextLine | undefined) =>
		line === undefined ? undefined : { raw: line.text.trim(), line: line.number };
	// 255 and 0: the register is not there, or the link is down.
	if (width !== undefined && /^(255|0)$/.test(width.text.trim()))
		readings.give(`link-width${suffix}`, device.address, "lanes", null, width.text.trim(), [width.number], {
			nullReason: "no-link",
		});
	else readings.print(`link-width${suffix}`, device.address, "lanes", printed(width), /^(\d+)$/, linkWidth);
	readings.print(`link-speed${suffix}`, device.address, "GT/s", printed(speed), SPEED, linkSpeed);
	return stateOf(device, which);
}

const SPEED = /^(\d+(?:\.\d+)?) GT\/s(?: PCIe)?$/;

function stateOf(device: Device, which: Which): LinkState | null {
	const speed = linkSpeed(Number(SPEED.exec(single(device, `${which}_link_speed`)?.text.trim() ?? "")?.[1]));
	const lanes = /^(\d+)$/.exec(single(device, `${which}_link_width`)?.text.trim() ?? "")?.[1];
	if (lanes === "63") return { speedGTPerS: 0, width: 63 };
	const width = lanes === undefined ? null : linkWidth(Number(lanes));
	return speed === null || width === null ? null : { speedGTPerS: speed, width };
}

/** `1: 16.0GT/s, x8 1143Mhz *`: the star marks the active level. Without one, or with two, it is not known. */
function readPowerTable(device: Device, readings: Readings, warnings: ImportWarning[]): void {
	const levels = device.files.get("pp_dpm_pcie");
	if (levels === undefined) return;
	const subject = `${device.address} power table`;
	const LEVEL = /^\d+: (\d+(?:\.\d+)?)GT\/s, x(\d+)(?: +\d+ ?M[Hh]z)?( \*)?\s*$/;
	const read = levels.map((line) => {
		const level = LEVEL.exec(line.text);
		if (level === null) throw new ImportRefusal("line-not-understood", line.number, { line: shown(line.text) });
		return { line, active: level[3] !== undefined };
	});
	const active = read.filter((level) => level.active);
	const [only] = active;
	if (only === undefined || active.length > 1) {
		const lines = levels.map(({ number }) => number);
		warnings.push(warning("active-level-unknown", lines[0] ?? null));
		readings.give("link-width", subject, "lanes", null, "", lines, { nullReason: "active-level-unknown" });
		readings.give("link-speed", subject, "GT/s", null, "", lines, { nullReason: "active-level-unknown" });
		return;
	}
	const printed = { raw: only.line.text.trim(), line: only.line.number };
	readings.print("link-width", subject, "lanes", printed, /, x(\d+)/, linkWidth);
	readings.print("link-speed", subject, "GT/s", printed, /^\d+: (\d+(?:\.\d+)?)GT/, linkSpeed);
}

/** Counters since the machine started. The total is counted apart and may differ from the sum. */
function readErrors(device: Device, subject: string, readings: Readings, warnings: ImportWarning[]): void {
	for (const [file, kind] of Object.entries(AER_FILES)) {
		let sum = 0;
		for (const { text, number } of device.files.get(file) ?? []) {
			const counter = /^([A-Za-z_][\w -]*?) (\d+)\s*$/.exec(text);
			const [, name = "", digits = ""] = counter ?? [];
			const total = /^TOTAL_ERR_(COR|FATAL|NONFATAL)$/.test(name);
			const check = total
				? `aer-${kind}-total`
				: (aerCheckByName(kind, name.replace(/ Error$/, "")) ?? aerCheckByName(kind, name));
			if (counter === null || check === null)
				throw new ImportRefusal("line-not-understood", number, { line: shown(text) });
			const severity = kind === "correctable" ? "" : ` ${file === "aer_dev_fatal" ? "fatal" : "non-fatal"}`;
			readings.print(check, `${subject}${severity}`, "errors", { raw: text.trim(), line: number }, / (\d+)$/);
			if (!total) sum += Number(digits);
			else if (Number(digits) !== sum) warnings.push(warning("total-differs", number, { total: Number(digits), sum }));
		}
	}
}
