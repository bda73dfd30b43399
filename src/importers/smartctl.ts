/**
 * `smartctl -x -j` (or `-a -j`), json_format_version 1. `passed` is what the drive says of itself and no verdict: a file
 * may say passed and have bits set in its exit status, so both are shown. Raw values of ATA attributes may pack several
 * numbers into 48 bits; a temperature or a number of hours is therefore taken from the member that smartctl unpacked,
 * and a counter that cannot be plain is no value. Bits of the exit status: published, smartctl's manual and smartctl.h.
 */
import { collectReadings, type Printed, type Readings } from "./collect-readings.ts";
import {
	type FormatResult,
	type ImportCondition,
	ImportRefusal,
	type ImportWarning,
	warning,
} from "./import-result.ts";
import { type JsonNode, jsonAt, jsonText, readJson } from "./json-tree.ts";
import { nullReasonOf } from "./null-words.ts";

/** Whether a text is such a file. */
export function looksLikeSmartctl(text: string): boolean {
	const head = text.slice(0, 65_536);
	return /"json_format_version"\s*:/.test(head) && /"smartctl"\s*:/.test(head);
}

/** @throws ImportRefusal where the JSON is broken, of another version, or the drive was not opened */
export function importSmartctl(text: string, condition: ImportCondition): FormatResult {
	const warnings: ImportWarning[] = [];
	const root = readJson(text, warnings);
	const version = jsonAt(root, "json_format_version")?.elements.map((part) => part.raw) ?? [];
	if (version[0] !== "1")
		throw new ImportRefusal("version-not-read", root.line, { version: version.join(".") || "?", read: "1" });
	for (const message of jsonAt(root, "smartctl", "messages")?.elements ?? []) {
		const said = jsonText(jsonAt(message, "string"));
		if (said !== undefined) warnings.push(warning("tool-says", message.line, { said: said.slice(0, 200) }));
	}
	const bits = readExitStatus(root, warnings);
	if (bits.includes(0) || bits.includes(1)) throw new ImportRefusal("drive-not-opened", root.line);
	const readings = collectReadings(condition, warnings);
	const subject = jsonText(jsonAt(root, "device", "name")) ?? "drive";
	readHealth(root, subject, readings, warnings, bits);
	readAttributes(root, subject, readings);
	readNvme(root, subject, readings, warnings);
	const epoch = jsonAt(root, "local_time", "time_t");
	return {
		format: "smartctl",
		formatVersion: version.join("."),
		about: "drive",
		readings: readings.list,
		identity: identityOf(root),
		links: [],
		warnings,
		// The time in words may be cut and its zone is a local name; the seconds are UTC.
		takenAt: epoch?.kind === "number" ? { raw: epoch.raw, epochS: wholeNumber(epoch.raw) } : null,
	};
}

/** Bits of smartctl's exit status that are set. */
export function exitStatusBits(status: number): number[] {
	return [0, 1, 2, 3, 4, 5, 6, 7].filter((bit) => ((status >> bit) & 1) === 1);
}

function wholeNumber(digits: string): number | null {
	const value = /^\d{1,12}$/.test(digits) ? Number(digits) : Number.NaN;
	return Number.isSafeInteger(value) ? value : null;
}

function readExitStatus(root: JsonNode, warnings: ImportWarning[]): number[] {
	const node = jsonAt(root, "smartctl", "exit_status");
	const status = wholeNumber(node?.raw ?? "");
	if (node === undefined || status === null || status > 255) {
		warnings.push(warning("exit-status-missing", node?.line ?? null));
		return [];
	}
	const bits = exitStatusBits(status);
	for (const bit of bits) warnings.push(warning(`exit-bit-${bit}`, node.line));
	return bits;
}

const COUNT = /^(\d+)$/;
const plain = (node: JsonNode | undefined): Printed | undefined =>
	node === undefined ? undefined : { raw: node.raw, line: node.line };

function readHealth(
	root: JsonNode,
	subject: string,
	readings: Readings,
	warnings: ImportWarning[],
	bits: readonly number[],
): void {
	const passed = jsonAt(root, "smart_status", "passed");
	if (passed?.kind === "boolean") {
		readings.give("smart-self-assessment", subject, "one", passed.raw === "true" ? 1 : 0, passed.raw, [passed.line]);
		if (passed.raw === "true" && bits.length > 0) warnings.push(warning("passed-with-bits", passed.line));
	}
	const print = (check: string, unit: string, ...path: string[]) =>
		readings.print(check, subject, unit, plain(jsonAt(root, ...path)), /^(-?\d+)$/);
	print("smart-temperature", "degC", "temperature", "current");
	print("smart-power-on-hours", "h", "power_on_time", "hours");
	print("smart-power-cycles", "one", "power_cycle_count");
	print("smart-grown-defects", "one", "scsi_grown_defect_list");
	const test =
		jsonAt(root, "ata_smart_self_test_log", "extended", "table") ??
		jsonAt(root, "ata_smart_self_test_log", "standard", "table");
	const result = jsonAt(test?.elements[0], "status", "passed");
	if (result?.kind === "boolean")
		readings.give("smart-self-test", subject, "one", result.raw === "true" ? 1 : 0, result.raw, [result.line]);
}

/** ATA attributes by number. Names differ between makers; the number decides. */
const ATTRIBUTES: Readonly<Record<string, string>> = {
	"5": "smart-reallocated-sectors",
	"187": "smart-reported-uncorrectable",
	"188": "smart-command-timeouts",
	"191": "smart-shock-sense",
	"193": "smart-load-cycles",
	"197": "smart-pending-sectors",
	"198": "smart-offline-uncorrectable",
	"199": "smart-transfer-errors",
};
/** Above this the 48 bits hold more than one number. */
const LARGEST_PLAIN = 0xffff_ffff;
/** Some drives keep three counts of 16 bits in the one of command timeouts. */
const LARGEST_TIMEOUTS = 0xffff;

function readAttributes(root: JsonNode, subject: string, readings: Readings): void {
	for (const row of jsonAt(root, "ata_smart_attributes", "table")?.elements ?? []) {
		const check = ATTRIBUTES[jsonAt(row, "id")?.raw ?? ""];
		const value = jsonAt(row, "raw", "value");
		if (check === undefined || value === undefined) continue;
		const most = check === "smart-command-timeouts" ? LARGEST_TIMEOUTS : LARGEST_PLAIN;
		if (value.kind === "number" && COUNT.test(value.raw) && Number(value.raw) > most)
			readings.give(check, subject, "one", null, value.raw, [value.line], { nullReason: "packed" });
		else readings.print(check, subject, "one", plain(value), COUNT);
	}
}

/** Bits of the critical warning: order published (libnvme), values from memory. */
const CRITICAL = 6;

function readNvme(root: JsonNode, subject: string, readings: Readings, warnings: ImportWarning[]): void {
	const log = jsonAt(root, "nvme_smart_health_information_log");
	if (log === undefined) return;
	const print = (check: string, unit: string, member: string) =>
		readings.print(check, subject, unit, plain(jsonAt(log, member)), COUNT);
	const critical = print("smart-critical-warning", "one", "critical_warning");
	for (let bit = 0; bit < CRITICAL; bit += 1)
		if (critical !== null && ((critical >> bit) & 1) === 1)
			warnings.push(warning(`critical-bit-${bit}`, jsonAt(log, "critical_warning")?.line ?? null));
	print("smart-media-errors", "one", "media_errors");
	print("smart-error-log-entries", "one", "num_err_log_entries");
	print("smart-unsafe-shutdowns", "one", "unsafe_shutdowns");
	print("smart-percentage-used", "percent", "percentage_used");
	print("smart-available-spare", "percent", "available_spare");
}

function identityOf(root: JsonNode): Record<string, string> {
	const names = {
		serialNumber: jsonAt(root, "serial_number"),
		model: jsonAt(root, "model_name"),
		firmware: jsonAt(root, "firmware_version"),
	};
	const wwn = ["naa", "oui", "id"].map((part) => jsonAt(root, "wwn", part)?.raw);
	return {
		...Object.fromEntries(
			Object.entries(names).flatMap(([member, node]) => {
				const text = jsonText(node);
				return text === undefined || nullReasonOf(text) !== null ? [] : [[member, text]];
			}),
		),
		...(wwn.every((part) => part !== undefined) ? { worldWideName: wwn.join(" ") } : {}),
	};
}
