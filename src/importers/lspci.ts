/**
 * `lspci -vv`, wording of pciutils 3.5 to 3.14. `(ok)`, `(downgraded)`, `(strange)` and `(overdriven)` came, went and
 * changed names between versions and are missing on some ports, so what is reduced is computed from the numbers. A
 * device may have several link capabilities: the first Express one counts. All ones (`Width x63`, `Speed unknown`) is
 * what a register reads as when the device is gone. Where the bridges above the device are in the file, the path up to
 * the root port is read too: the slowest point of it decides, and a device's own registers may not tell.
 */
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

interface Device {
	readonly address: string;
	readonly bus: string;
	readonly name: string;
	readonly line: number;
	portType: string | null;
	secondaryBus: string | null;
	capability: LinkState | null;
	status: LinkState | null;
	statusRaw: string;
	denied: boolean;
	/** Error status bits that are set, as printed. */
	readonly errors: { readonly kind: "correctable" | "uncorrectable"; readonly name: string }[];
}

const HEADER = /^((?:[0-9a-f]{4,8}:)?[0-9a-f]{2}:[0-9a-f]{2}\.[0-7])\s+(\S.*)$/;
const LINK = /^\s*Lnk(Cap|Sta):\s+(?:Port #\d+, )?Speed ([\d.]+GT\/s|unknown)(?: \(\w+\))?, (?:Width x(\d+)|ASPM)/;
const CAP_WIDTH = /Width x(\d+)/;

/** Whether a text is such a file. */
export function looksLikeLspci(text: string): boolean {
	return text.split("\n", 40).some((line) => HEADER.test(line)) && /\n\s+\S/.test(text);
}

/** @throws ImportRefusal where no device with readable link registers is in the file */
export function importLspci(text: string, condition: ImportCondition): ImportResult {
	const devices = readDevices(text);
	const warnings: ImportWarning[] = [];
	const subjects = subjectsOf(devices);
	if (subjects.length === 0) throw new ImportRefusal("no-device", 1);
	for (const device of devices.filter((candidate) => candidate.denied)) {
		warnings.push(warning("access-denied", device.line, { subject: device.address }));
	}
	const read = subjects.map((device) => readDevice(device, devices, condition, warnings));
	return {
		format: "lspci",
		formatVersion: wordingOf(text),
		readings: read.flatMap((one) => one.readings),
		identity: subjects.length === 1 && subjects[0] !== undefined ? { deviceName: subjects[0].name } : {},
		links: read.flatMap((one) => one.link ?? []),
		warnings,
	};
}

function readDevices(text: string): Device[] {
	const devices: Device[] = [];
	text.split("\n").forEach((line, index) => {
		const header = HEADER.exec(line);
		if (header?.[1] !== undefined && header[2] !== undefined) {
			devices.push(newDevice(header[1], header[2], index + 1));
			return;
		}
		const device = devices.at(-1);
		if (device === undefined) {
			if (line.trim() !== "" && !/^(#|\$)/.test(line))
				throw new ImportRefusal("line-not-understood", index + 1, { line: line.slice(0, 60) });
			return;
		}
		if (line !== "" && !/^\s/.test(line))
			throw new ImportRefusal("line-not-understood", index + 1, { line: line.slice(0, 60) });
		readLine(device, line, index + 1);
	});
	return devices;
}

function newDevice(address: string, name: string, line: number): Device {
	return {
		address,
		bus: address.slice(0, -5),
		name,
		line,
		portType: null,
		secondaryBus: null,
		capability: null,
		status: null,
		statusRaw: "",
		denied: false,
		errors: [],
	};
}

function readLine(device: Device, line: string, number: number): void {
	if (/Capabilities: <access denied>/.test(line)) device.denied = true;
	const port =
		/Express \(v\d+\) (Root Port|Upstream Port|Downstream Port|[\w/ -]+?)(?: \(Slot[+-]\))?(?:,|$| IntMsgNum)/.exec(
			line,
		);
	if (port?.[1] !== undefined) device.portType ??= port[1];
	const secondary = /^\s*Bus: primary=[0-9a-f]{2}, secondary=([0-9a-f]{2}),/.exec(line);
	if (secondary?.[1] !== undefined) device.secondaryBus = secondary[1];
	if (/^\s*Lnk(Cap|Sta):/.test(line)) readLink(device, line, number);
	const errors = /^\s*(UESta|CESta):\s+(.*)$/.exec(line);
	if (errors?.[2] !== undefined) {
		for (const bit of errors[2].matchAll(/([A-Za-z]+)\+/g)) {
			if (bit[1] !== undefined)
				device.errors.push({ kind: errors[1] === "CESta" ? "correctable" : "uncorrectable", name: bit[1] });
		}
	}
}

function readLink(device: Device, line: string, number: number): void {
	const link = LINK.exec(line);
	const width = link?.[3] ?? CAP_WIDTH.exec(line)?.[1];
	if (link?.[1] === undefined || link[2] === undefined || width === undefined) {
		throw new ImportRefusal("line-not-understood", number, { line: line.trim().slice(0, 60) });
	}
	const state = { speedGTPerS: link[2] === "unknown" ? 0 : Number.parseFloat(link[2]), width: Number(width) };
	if (!Number.isFinite(state.speedGTPerS))
		throw new ImportRefusal("line-not-understood", number, { line: line.trim().slice(0, 60) });
	if (link[1] === "Cap") device.capability ??= state;
	else if (device.status === null) {
		device.status = state;
		device.statusRaw = line.trim();
	}
}

/** The devices a record can be about: graphics and accelerators; else, in a fragment of one device, that one. */
function subjectsOf(devices: readonly Device[]): Device[] {
	const graphics = devices.filter((device) =>
		/^(VGA compatible|3D|Display) controller|^Processing accelerators/.test(device.name),
	);
	if (graphics.length > 0) return graphics;
	const endpoints = devices.filter((device) => device.secondaryBus === null);
	return endpoints.length === 1 ? endpoints : [];
}

function readDevice(device: Device, devices: readonly Device[], condition: ImportCondition, warnings: ImportWarning[]) {
	const readings: ImportedReading[] = [];
	const add = (check: string, value: number | null, unit: string, raw: string, nullReason?: string) => {
		readings.push({
			check,
			subject: device.address,
			condition,
			value,
			unit,
			raw,
			...(nullReason === undefined ? {} : { nullReason }),
		});
	};
	const { capability, status } = device;
	if (status === null || capability === null) {
		add("link-width", null, "lanes", "", device.denied ? "access-denied" : "not-given");
		add("link-speed", null, "GT/s", "", device.denied ? "access-denied" : "not-given");
		return { readings, link: null };
	}
	const lost = isAllOnes(status);
	if (lost) warnings.push(warning("bus-lost", device.line, { subject: device.address }));
	const statusReason = lost ? "bus-lost" : undefined;
	add("link-width", lost ? null : status.width, "lanes", device.statusRaw, statusReason);
	add(
		"link-speed",
		lost || status.speedGTPerS === 0 ? null : status.speedGTPerS,
		"GT/s",
		device.statusRaw,
		lost ? "bus-lost" : status.speedGTPerS === 0 ? "not-given" : undefined,
	);
	if (!isAllOnes(capability)) {
		add("link-width-capability", capability.width, "lanes", "");
		add("link-speed-capability", capability.speedGTPerS, "GT/s", "");
	}
	if (!lost) {
		for (const error of device.errors) add(`aer-${error.kind}-${error.name.toLowerCase()}`, 1, "one", `${error.name}+`);
		if (device.errors.length > 0) warnings.push(warning("sticky-bits", device.line, { subject: device.address }));
	}
	const path = pathAbove(device, devices);
	if (path === null) warnings.push(warning("path-not-seen", device.line, { subject: device.address }));
	const link: ImportedLink = {
		subject: device.address,
		condition,
		card: cardCapability(device, path ?? []),
		function: status,
		upstreamPath: path?.flatMap((bridge) => bridge.status ?? []) ?? null,
		slot:
			path?.find((bridge) => /^(Root|Downstream) Port/.test(bridge.portType ?? "") && !isOnCard(bridge, path))
				?.capability ?? null,
	};
	return { readings, link };
}

/** The bridges from the device up to the root port; null where one of them is not in the file. */
function pathAbove(device: Device, devices: readonly Device[]): Device[] | null {
	const path: Device[] = [];
	const domain = (candidate: Device) => candidate.address.replace(/[0-9a-f]{2}:[0-9a-f]{2}\.[0-7]$/, "");
	let current = device;
	while (path.length < 16) {
		const bus = current.address.slice(-7, -5);
		const bridge = devices.find((candidate) => candidate.secondaryBus === bus && domain(candidate) === domain(current));
		if (bridge === undefined || bridge.status === null) return null;
		path.push(bridge);
		if (/^Root Port/.test(bridge.portType ?? "")) return path;
		current = bridge;
	}
	return null;
}

/** Ports of a switch on the card itself: everything below the topmost upstream port directly under a root port. */
function isOnCard(bridge: Device, path: readonly Device[]): boolean {
	const place = path.indexOf(bridge);
	return /^Downstream Port/.test(bridge.portType ?? "") && path[place + 1]?.portType === "Upstream Port" && place === 0;
}

/** What the card can do at its edge: its own upstream port where it carries a switch, else the device. */
function cardCapability(device: Device, path: readonly Device[]): LinkState {
	const [below, upstream] = path;
	const own =
		below !== undefined && upstream?.portType === "Upstream Port" && isOnCard(below, path) ? upstream.capability : null;
	return own ?? device.capability ?? { speedGTPerS: 0, width: 0 };
}

function isAllOnes(state: LinkState): boolean {
	return state.width === 63;
}

/** Which wording a file has; told by words that came with a version. */
function wordingOf(text: string): string {
	if (/IntMsgNum/.test(text)) return "3.14";
	if (/LnkDisable[+-]/.test(text)) return "3.9 to 3.13";
	if (/LnkSta:.*\((downgraded|overdriven)\)/.test(text) && !/\(ok\)/.test(text)) return "3.8 or later";
	if (/LnkSta:.*\((ok|strange|downgraded)\)/.test(text)) return "3.6 or 3.7";
	if (/LnkSta:.*TrErr/.test(text)) return "3.5 or earlier";
	return "not told by the file";
}
