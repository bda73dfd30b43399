/** Reads a diagnostic output of any format that is read, found by its content or named. */

import { accountedLines } from "./accounted-lines.ts";
import { importAmdSmi, looksLikeAmdSmi } from "./amd-smi.ts";
import { decodeText } from "./decode-text.ts";
import { importDmidecode, looksLikeDmidecode } from "./dmidecode.ts";
import {
	type FormatResult,
	type ImportCondition,
	ImportRefusal,
	type ImportResult,
	type ImportWarning,
	warning,
} from "./import-result.ts";
import { importKernelLog, looksLikeKernelLog } from "./kernel-log.ts";
import { importLspci } from "./lspci.ts";
import { looksLikeLspci } from "./lspci-devices.ts";
import { importNvidiaSmiCsv, looksLikeNvidiaSmiCsv } from "./nvidia-smi-csv.ts";
import { importNvidiaSmiXml, looksLikeNvidiaSmiXml } from "./nvidia-smi-xml.ts";
import { findPersonal } from "./personal.ts";
import { importRocmSmi, looksLikeRocmSmi } from "./rocm-smi.ts";
import { importSensorCsv, looksLikeSensorCsv } from "./sensor-csv.ts";
import { importSensors, looksLikeSensors } from "./sensors.ts";
import { importShockCsv, looksLikeShockCsv } from "./shock-csv.ts";
import { importSmartctl, looksLikeSmartctl } from "./smartctl.ts";
import { importSysfsLink, looksLikeSysfsLink } from "./sysfs-link.ts";

interface Format {
	readonly name: string;
	looksLike(text: string): boolean;
	read(text: string, condition: ImportCondition): FormatResult;
}

/** In the order in which they are looked for. */
const FORMATS = {
	"nvidia-smi-xml": { name: "nvidia-smi -q -x", looksLike: looksLikeNvidiaSmiXml, read: importNvidiaSmiXml },
	smartctl: { name: "smartctl -j", looksLike: looksLikeSmartctl, read: importSmartctl },
	"rocm-smi": { name: "rocm-smi --json", looksLike: looksLikeRocmSmi, read: importRocmSmi },
	"amd-smi": { name: "amd-smi metric --json", looksLike: looksLikeAmdSmi, read: importAmdSmi },
	sensors: { name: "sensors -j", looksLike: looksLikeSensors, read: importSensors },
	dmidecode: { name: "dmidecode", looksLike: looksLikeDmidecode, read: importDmidecode },
	"kernel-log": { name: "kernel log", looksLike: looksLikeKernelLog, read: importKernelLog },
	"sysfs-link": { name: "PCI Express link files", looksLike: looksLikeSysfsLink, read: importSysfsLink },
	lspci: { name: "lspci -vv", looksLike: looksLikeLspci, read: importLspci },
	"nvidia-smi-csv": {
		name: "nvidia-smi --query-gpu --format=csv",
		looksLike: looksLikeNvidiaSmiCsv,
		read: importNvidiaSmiCsv,
	},
	"sensor-csv": { name: "sensor log (CSV)", looksLike: looksLikeSensorCsv, read: importSensorCsv },
	"shock-csv": { name: "shock recorder (CSV)", looksLike: looksLikeShockCsv, read: importShockCsv },
} as const satisfies Record<string, Format>;

export type ImportKind = keyof typeof FORMATS;
export const IMPORT_KINDS = Object.keys(FORMATS) as [ImportKind, ...ImportKind[]];

/**
 * The readings of a file. `kind` overrides what the content looks like.
 * @throws ImportRefusal with line and reason; nothing is guessed
 */
export function importDiagnostic(bytes: Uint8Array, kind: ImportKind | null, condition: ImportCondition): ImportResult {
	const text = decodeText(bytes);
	const found = kind ?? IMPORT_KINDS.find((candidate) => FORMATS[candidate].looksLike(text));
	if (found === undefined) {
		const read = IMPORT_KINDS.map((candidate) => FORMATS[candidate].name).join(", ");
		throw new ImportRefusal("format-not-read", null, { read });
	}
	const result = FORMATS[found].read(text, condition);
	if (result.readings.length > MOST_READINGS)
		throw new ImportRefusal("too-many-readings", null, { most: MOST_READINGS });
	const warnings = withoutRepeats(result.warnings);
	return { ...result, warnings, personal: findPersonal(text), lines: accountedLines(text, { ...result, warnings }) };
}

/** Real outputs stay below 300. Source: our choice. */
const MOST_READINGS = 2000;
/** So many warnings of one kind are listed. Source: our choice. */
const MOST_OF_A_KIND = 10;

/** The first warnings of each kind, and how many more there were. */
function withoutRepeats(warnings: readonly ImportWarning[]): ImportWarning[] {
	const counts = new Map<string, number>();
	const kept = warnings.filter(({ code }) => {
		counts.set(code, (counts.get(code) ?? 0) + 1);
		return (counts.get(code) ?? 0) <= MOST_OF_A_KIND;
	});
	const more = warnings.length - kept.length;
	return more === 0 ? kept : [...kept, warning("more-like-these", null, { count: more })];
}
