/**
 * Lines of a kernel log, as dmesg, syslog and the journal print them, each with its message and its time as far as it is
 * told. Only distances of seconds are read from a time: a syslog line has no year, month names may be of any language,
 * and `dmesg -T` drifts over a suspend.
 */
import { ImportRefusal } from "./import-result.ts";
import { shown, wholeLines } from "./text-lines.ts";

export interface KernelLine {
	readonly message: string;
	readonly line: number;
	/** Seconds from some beginning; null where the line has no time. */
	readonly atS: number | null;
}

const LEVEL = /^<\d{1,3}>/;
const UPTIME = /^\[ *(\d+\.\d+)\](?:\[[^\]]*\])? /;
const IN_WORDS = /^\[\S+ \S+ +(\d{1,2}) (\d\d):(\d\d):(\d\d) \d{4}\] /;
const SYSLOG = /^\S{2,6} +(\d{1,2}) (\d\d):(\d\d):(\d\d) \S+ (?:kernel|systemd|[\w.-]+)(?:\[\d+\])?: /;
const ISO =
	/^\d{4}-\d\d-(\d\d)[T ](\d\d):(\d\d):(\d\d)(?:[.,]\d+)?(?: ?(?:Z|[+-]\d\d:?\d\d))? (?:\S+ )?[\w.-]+(?:\[\d+\])?: /;
const PREFIXES = [IN_WORDS, SYSLOG, ISO];

/** The lines. @throws ImportRefusal for a journal line that is no object */
export function readKernelLines(text: string): KernelLine[] {
	return wholeLines(text).flatMap(({ text: line, number }) => {
		if (line.trim() === "") return [];
		return [line.startsWith("{") ? journalLine(line, number) : plainLine(line, number)];
	});
}

function plainLine(line: string, number: number): KernelLine {
	let message = line.replace(LEVEL, "");
	let atS: number | null = null;
	for (const prefix of PREFIXES) {
		const found = prefix.exec(message);
		if (found === null) continue;
		const [day = 0, hours = 0, minutes = 0, seconds = 0] = found.slice(1).map(Number);
		atS = ((day * 24 + hours) * 60 + minutes) * 60 + seconds;
		message = message.slice(found[0].length);
		break;
	}
	const uptime = UPTIME.exec(message);
	if (uptime !== null) {
		atS = Number(uptime[1]);
		message = message.slice(uptime[0].length);
	}
	return { message, line: number, atS };
}

/** `journalctl -o json`: microseconds as a string; a message that is no plain text is a list of bytes. */
function journalLine(line: string, number: number): KernelLine {
	let entry: unknown;
	try {
		entry = JSON.parse(line);
	} catch {
		throw new ImportRefusal("line-not-understood", number, { line: shown(line) });
	}
	const { MESSAGE: said, __REALTIME_TIMESTAMP: time } = entry as Record<string, unknown>;
	const micros = typeof time === "string" && /^\d{1,17}$/.test(time) ? Number(time) : null;
	const message =
		typeof said === "string"
			? said
			: Array.isArray(said) && said.every((byte) => Number.isInteger(byte) && byte >= 0 && byte <= 255)
				? new TextDecoder().decode(Uint8Array.from(said as number[]))
				: "";
	return { message, line: number, atS: micros === null ? null : micros / 1e6 };
}
