/** Devices of a register dump, each with what its own lines say. One header line begins a device; the rest is indented. */
import { aerCheckByName } from "./aer-bits.ts";
import { ImportRefusal, type ImportWarning, type LinkState, warning } from "./import-result.ts";
import { linkSpeed, linkWidth } from "./link-values.ts";
import { shown, type TextLine } from "./text-lines.ts";

export interface LspciDevice {
	readonly address: string;
	readonly name: string;
	readonly line: number;
	portType: string | null;
	secondaryBus: string | null;
	/** Capability and status of the first Express capability; a device may have several. */
	capability: LinkState | null;
	capabilityRaw: string;
	capabilityLine: number;
	status: LinkState | null;
	statusRaw: string;
	/** That of the header where it has none of its own. */
	statusLine: number;
	denied: boolean;
	/** The configuration space reads all ones. */
	gone: boolean;
	/** Check ids of the error bits that are set, with the word printed. */
	readonly errors: { readonly check: string; readonly raw: string; readonly line: number }[];
}

interface Reader extends LspciDevice {
	expressCapabilities: number;
	/** The error word whose bits go on in the next lines. */
	errorWord: "UESta" | "CESta" | null;
}

const HEADER = /^((?:[0-9a-f]{4,8}:)?[0-9a-f]{2}:[0-9a-f]{2}\.[0-7])\s+(\S.*)$/;
const LINK =
	/^\s*Lnk(Cap|Sta):\s+(?:Port #\d+, )?Speed ([\d.]+GT\/s|unknown)(?: \((?:ok|downgraded|overdriven|strange)\))?, Width x(\d+)(?: \((?:ok|downgraded|overdriven|strange)\))?(?=,|\s*$)/;
const PORT = /Express (?:\(v\d+\) )?([A-Z][\w/ -]+?)(?: \(Slot[+-]\))?(?:,|$| IntMsgNum)/;
const BITS = /^\s*(?:[A-Za-z_]+[+-]\s*)+$/;

/** Whether a text is such a file. */
export function looksLikeLspci(text: string): boolean {
	return text.split("\n", 40).some((line) => HEADER.test(line)) && /\n\s+\S/.test(text);
}

/** @throws ImportRefusal at the first line that is not understood */
export function readLspciDevices(lines: readonly TextLine[], warnings: ImportWarning[]): LspciDevice[] {
	const devices: Reader[] = [];
	for (const { text, number } of lines) {
		const header = HEADER.exec(text);
		if (header?.[1] !== undefined && header[2] !== undefined) {
			devices.push(newDevice(header[1], header[2], number));
			continue;
		}
		const device = devices.at(-1);
		if (/^(#|\$|lspci: |pcilib: )/.test(text) || text.trim() === "") continue;
		if (device === undefined || !/^\s/.test(text))
			throw new ImportRefusal("line-not-understood", number, { line: shown(text) });
		readLine(device, text, number, warnings);
	}
	return devices;
}

function newDevice(address: string, name: string, line: number): Reader {
	return {
		address,
		name,
		line,
		portType: null,
		secondaryBus: null,
		capability: null,
		capabilityRaw: "",
		capabilityLine: line,
		status: null,
		statusRaw: "",
		statusLine: line,
		denied: false,
		// The header of a device that is gone: its class and revision read all ones too.
		gone: /\(rev ff\) \(prog-if ff\)$/.test(name),
		errors: [],
		expressCapabilities: 0,
		errorWord: null,
	};
}

function readLine(device: Reader, line: string, number: number, warnings: ImportWarning[]): void {
	if (/Capabilities: <access denied>/.test(line)) device.denied = true;
	if (/!!! Unknown header type 7f/.test(line)) device.gone = true;
	if (/Capabilities: \[[0-9a-f]+[^\]]*\] Express /.test(line)) {
		device.expressCapabilities += 1;
		device.portType ??= PORT.exec(line)?.[1] ?? null;
	}
	const secondary = /^\s*Bus: primary=[0-9a-f]{2}, secondary=([0-9a-f]{2}),/.exec(line);
	if (secondary?.[1] !== undefined) device.secondaryBus = secondary[1];
	if (/^\s*Lnk(Cap|Sta):/.test(line)) readLink(device, line, number);
	const word = /^\s*(UESta|CESta):\s+(.*)$/.exec(line);
	if (word !== null) device.errorWord = word[1] as "UESta" | "CESta";
	else if (!BITS.test(line)) device.errorWord = null;
	if (device.errorWord !== null) readErrors(device, device.errorWord, word?.[2] ?? line, number, warnings);
}

/** @throws ImportRefusal where a line of the link is not as any version prints it */
function readLink(device: Reader, line: string, number: number): void {
	const link = LINK.exec(line);
	const refused = () => new ImportRefusal("line-not-understood", number, { line: shown(line) });
	if (link === null) throw refused();
	const [, which, speed = "", lanes = ""] = link;
	const width = Number(lanes);
	const state = { speedGTPerS: speed === "unknown" ? 0 : Number.parseFloat(speed), width };
	if (!Number.isFinite(state.speedGTPerS)) throw refused();
	// 0: no link; 63: all ones. Any other width, and a speed that no version prints, is a damaged line. 128 GT/s is printed
	// and has no published rate here; 20 and 25 GT/s are other buses' speeds.
	if (linkWidth(width) === null && width !== 0 && width !== 63) throw refused();
	if (speed !== "unknown" && linkSpeed(state.speedGTPerS) === null && !/^(20|25|128)GT/.test(speed)) throw refused();
	if (device.expressCapabilities > 1) return;
	if (which === "Cap" && device.capability === null) {
		device.capability = state;
		device.capabilityRaw = line.trim();
		device.capabilityLine = number;
	} else if (which === "Sta" && device.status === null) {
		device.status = state;
		device.statusRaw = line.trim();
		device.statusLine = number;
	}
}

function readErrors(
	device: Reader,
	word: "UESta" | "CESta",
	bits: string,
	number: number,
	warnings: ImportWarning[],
): void {
	for (const [raw, name = ""] of bits.matchAll(/([A-Za-z_]+)\+/g)) {
		const check = aerCheckByName(word === "CESta" ? "correctable" : "uncorrectable", name);
		if (check === null) warnings.push(warning("not-understood", number, { raw: raw.slice(0, 80) }));
		else device.errors.push({ check, raw, line: number });
	}
}
