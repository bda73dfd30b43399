/**
 * `lspci -vv`, wording of pciutils 3.5 to 3.14. `(ok)`, `(downgraded)`, `(strange)` and `(overdriven)` came, went and
 * changed names between versions and are missing on some ports, so what is reduced is computed from the numbers. All
 * ones (`Width x63`, `Speed unknown`, header type 7f) is what a register reads as when the device is gone. Where the
 * bridges above the device are in the file, the path up to the root port is read too: the slowest point of it decides,
 * and a device's own registers may not tell.
 */

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
import { linkSpeed } from "./link-values.ts";
import { type LspciDevice, readLspciDevices } from "./lspci-devices.ts";
import { wholeLines } from "./text-lines.ts";

/** @throws ImportRefusal where no device with readable link registers is in the file */
export function importLspci(text: string, condition: ImportCondition): FormatResult {
	const warnings: ImportWarning[] = [];
	const devices = readLspciDevices(wholeLines(text), warnings);
	const subjects = subjectsOf(devices);
	if (subjects.length === 0) throw new ImportRefusal("no-device", 1);
	for (const device of devices.filter((candidate) => candidate.denied)) {
		warnings.push(warning("access-denied", device.line, { subject: device.address }));
	}
	const readings = collectReadings(condition, warnings);
	const links = subjects.map((device) => readDevice(device, devices, condition, readings, warnings));
	const [subject] = subjects;
	return {
		format: "lspci",
		formatVersion: wordingOf(text),
		about: subjects.every(isGraphics) ? "graphics" : "any",
		readings: readings.list,
		identity: subjects.length === 1 && subject !== undefined ? { deviceName: subject.name } : {},
		links: links.filter((link) => link !== null),
		warnings,
		takenAt: null,
	};
}

/** The devices a record can be about: graphics and accelerators; else, in a fragment of one device, that one. */
function subjectsOf(devices: readonly LspciDevice[]): LspciDevice[] {
	const graphics = devices.filter(isGraphics);
	if (graphics.length > 0) return graphics;
	const endpoints = devices.filter((device) => device.secondaryBus === null);
	return endpoints.length === 1 ? endpoints : [];
}

function isGraphics(device: LspciDevice): boolean {
	return /^(VGA compatible|3D|Display) controller|^Processing accelerators/.test(device.name);
}

function readDevice(
	device: LspciDevice,
	devices: readonly LspciDevice[],
	condition: ImportCondition,
	readings: Readings,
	warnings: ImportWarning[],
): ImportedLink | null {
	const { address, capability, status } = device;
	const gone = device.gone || (status !== null && isAllOnes(status));
	if (gone) warnings.push(warning("bus-lost", device.line, { subject: address }));
	if (gone || status === null || capability === null) {
		const nullReason = gone ? "bus-lost" : device.denied ? "access-denied" : "not-given";
		readings.give("link-width", address, "lanes", null, device.statusRaw, [device.statusLine], { nullReason });
		readings.give("link-speed", address, "GT/s", null, device.statusRaw, [device.statusLine], { nullReason });
		const lost = { speedGTPerS: 0, width: 63 };
		return gone
			? { subject: address, condition, card: capability ?? lost, function: lost, upstreamPath: null, slot: null }
			: null;
	}
	giveLink(readings, "", address, status, device.statusRaw, warnings, device.statusLine);
	if (!isAllOnes(capability))
		giveLink(readings, "-capability", address, capability, device.capabilityRaw, warnings, device.capabilityLine);
	const path = pathAbove(device, devices);
	if (path === null) warnings.push(warning("path-not-seen", device.line, { subject: address }));
	// The end that counts an error need not be the end that has it, so the ports above are read too.
	for (const one of [device, ...(path ?? [])]) {
		const subject = one === device ? address : `${address} port ${one.address}`;
		for (const { check, raw, line } of one.errors) readings.give(check, subject, "one", 1, raw, [line]);
		if (one.errors.length > 0) warnings.push(warning("sticky-bits", one.line, { subject: one.address }));
	}
	return {
		subject: address,
		condition,
		card: cardCapability(device, path ?? []),
		function: status,
		upstreamPath: path?.flatMap((bridge) => bridge.status ?? []) ?? null,
		slot:
			path?.find((bridge) => /^(Root|Downstream) Port/.test(bridge.portType ?? "") && !isOnCard(bridge, path))
				?.capability ?? null,
	};
}

/** Width and speed; no link, and a speed that is no generation's, are no value. */
function giveLink(
	readings: Readings,
	suffix: "" | "-capability",
	subject: string,
	state: LinkState,
	raw: string,
	warnings: ImportWarning[],
	line: number,
): void {
	const width = state.width === 0 ? null : state.width;
	readings.give(
		`link-width${suffix}`,
		subject,
		"lanes",
		width,
		raw,
		[line],
		width === null ? { nullReason: "no-link" } : {},
	);
	const speed = linkSpeed(state.speedGTPerS);
	const nullReason = state.speedGTPerS === 0 ? "not-given" : "no-generation";
	if (nullReason === "no-generation" && speed === null)
		warnings.push(warning("no-generation", line, { speed: state.speedGTPerS }));
	readings.give(`link-speed${suffix}`, subject, "GT/s", speed, raw, [line], speed === null ? { nullReason } : {});
}

/** The bridges from the device up to the root port; null where one of them is not in the file. */
function pathAbove(device: LspciDevice, devices: readonly LspciDevice[]): LspciDevice[] | null {
	const path: LspciDevice[] = [];
	const domain = (candidate: LspciDevice) => candidate.address.replace(/[0-9a-f]{2}:[0-9a-f]{2}\.[0-7]$/, "");
	let current = device;
	while (path.length < 16) {
		const bus = current.address.slice(-7, -5);
		const bridge = devices.find((candidate) => candidate.secondaryBus === bus && domain(candidate) === domain(current));
		if (bridge === undefined || bridge.status === null || bridge.status.width === 0) return null;
		path.push(bridge);
		if (/^Root Port/.test(bridge.portType ?? "")) return path;
		current = bridge;
	}
	return null;
}

/** Ports of a switch on the card itself: everything below the topmost upstream port directly under a root port. */
function isOnCard(bridge: LspciDevice, path: readonly LspciDevice[]): boolean {
	const place = path.indexOf(bridge);
	return /^Downstream Port/.test(bridge.portType ?? "") && path[place + 1]?.portType === "Upstream Port" && place === 0;
}

/** What the card can do at its edge: its own upstream port where it carries a switch, else the device. */
function cardCapability(device: LspciDevice, path: readonly LspciDevice[]): LinkState {
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
