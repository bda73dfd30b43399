/**
 * Kernel log lines about a link (AER) and about a graphics driver's faults (Xid). One AER event is two to four lines,
 * joined by the device's address: the head with severity and layer, the status word, then names. What happened is
 * decoded from the status word, since names changed. The kernel prints at most ten messages in five seconds for a device
 * and class, so from ten on a count is a lower bound; and the end that counts need not be the end that has the trouble.
 * Source: published, Linux Documentation/PCI/pcieaer-howto.rst and include/trace/events/ras.h.
 */
import { type AerKind, decodeAerStatus } from "./aer-bits.ts";
import { collectReadings, type Readings } from "./collect-readings.ts";
import { type FormatResult, type ImportCondition, type ImportWarning, warning } from "./import-result.ts";
import { type KernelLine, readKernelLines } from "./kernel-lines.ts";

const HEAD =
	/(?:^|\s)((?:[0-9a-f]{4,8}:)?[0-9a-f]{2}:[0-9a-f]{2}\.[0-7]): (?:AER: )?PCIe Bus Error: severity=(Corrected|Correctable|Uncorrected|Uncorrectable)(?: \((?:Fatal|Non-Fatal)\))?, type=(?:Physical Layer|Data Link Layer|Transaction Layer|Inaccessible),(?: id=([0-9a-f]{4}))? ?\(([^)]+)\)/;
const STATUS =
	/(?:^|\s)((?:[0-9a-f]{4,8}:)?[0-9a-f]{2}:[0-9a-f]{2}\.[0-7]): +(?:AER: +)?device \[[0-9a-f]{4}:[0-9a-f]{4}\] error status\/mask=([0-9a-f]{8})\/([0-9a-f]{8})\s*$/;
const XID = /NVRM: Xid \((?:PCI:)?([0-9a-f]{4,8}:[0-9a-f]{2}:[0-9a-f]{2})(?:\.[0-7])?\): (\d{1,3}),/;
const FALLEN = /fallen off the bus/;
const GPU_NAMED = /NVRM: (?:The NVIDIA GPU|GPU(?: at)?) (?:PCI:)?([0-9a-f]{4,8}:[0-9a-f]{2}:[0-9a-f]{2})/;
const SUPPRESSED = /aer_\w+: \d+ callbacks suppressed/;
const MULTIPLE = /AER: Multiple (?:Corrected|Correctable|Uncorrected|Uncorrectable)/;

/** Whether a text is such a log. */
export function looksLikeKernelLog(text: string): boolean {
	if (/PCIe Bus Error: severity=|NVRM: Xid \(|AER: .*error (?:message )?received|"__REALTIME_TIMESTAMP"\s*:/.test(text))
		return true;
	return /^(?:<\d+>)?\[ *\d+\.\d{6}\] |^\[\S+ \S+ +\d+ \d\d:\d\d:\d\d \d{4}\] /m.test(text.slice(0, 8192));
}

/** An event as far as it was joined. */
interface AerEvent {
	readonly subject: string;
	readonly kind: AerKind;
	readonly head: KernelLine;
	status: { readonly value: number; readonly mask: number; readonly line: number } | null;
}

/** @throws ImportRefusal where a journal line is broken or the last line is cut */
export function importKernelLog(text: string, condition: ImportCondition): FormatResult {
	const warnings: ImportWarning[] = [];
	const lines = readKernelLines(text);
	const readings = collectReadings(condition, warnings);
	const throttled = lines.find(({ message }) => SUPPRESSED.test(message) || MULTIPLE.test(message));
	if (throttled !== undefined) warnings.push(warning("throttled", throttled.line));
	giveAer(joinEvents(lines, warnings), throttled !== undefined, readings, warnings);
	giveXids(lines, readings, warnings);
	if (readings.list.length === 0) warnings.push(warning("no-events", null));
	return {
		format: "kernel-log",
		formatVersion: "not told by the file",
		about: "any",
		readings: readings.list,
		identity: {},
		links: [],
		warnings,
		takenAt: null,
	};
}

/** The address that old kernels print as `id=00e8`: bus, device and function in one word. */
export function agentAddress(id: string): string {
	const word = Number.parseInt(id, 16);
	const hex = (value: number) => value.toString(16).padStart(2, "0");
	return `${hex(word >> 8)}:${hex((word >> 3) & 31)}.${word & 7}`;
}

function joinEvents(lines: readonly KernelLine[], warnings: ImportWarning[]): AerEvent[] {
	const events: AerEvent[] = [];
	for (const line of lines) {
		const head = HEAD.exec(line.message);
		if (head?.[1] !== undefined) {
			const kind = head[2]?.startsWith("Correct") === true ? "correctable" : "uncorrectable";
			events.push({ subject: head[1], kind, head: line, status: null });
			if (head[3] !== undefined && !head[1].endsWith(agentAddress(head[3])))
				warnings.push(warning("counted-elsewhere", line.line, { named: agentAddress(head[3]), subject: head[1] }));
			continue;
		}
		const status = STATUS.exec(line.message);
		if (status === null) continue;
		const event = events.findLast((candidate) => candidate.subject === status[1] && candidate.status === null);
		if (event === undefined) warnings.push(warning("event-without-head", line.line, { subject: status[1] ?? "?" }));
		else
			event.status = {
				value: Number.parseInt(status[2] ?? "", 16),
				mask: Number.parseInt(status[3] ?? "", 16),
				line: line.line,
			};
	}
	return events;
}

/** So many messages in so many seconds are printed for a device and class. Source: published, pcieaer-howto.rst. */
const THROTTLE = { messages: 10, withinS: 5 };

function isThrottled(events: readonly AerEvent[]): boolean {
	const times = events.map(({ head }) => head.atS);
	return times.some((time, index) => {
		const later = times[index + THROTTLE.messages - 1];
		if (later === undefined) return false;
		return time === null || later === null || Math.abs(later - time) <= THROTTLE.withinS;
	});
}

function giveAer(
	events: readonly AerEvent[],
	suppressed: boolean,
	readings: Readings,
	warnings: ImportWarning[],
): void {
	const groups = new Map<string, AerEvent[]>();
	for (const event of events) {
		const key = `${event.subject} ${event.kind}`;
		const group = groups.get(key);
		if (group === undefined) groups.set(key, [event]);
		else group.push(event);
	}
	for (const group of groups.values()) {
		const [first] = group;
		if (first === undefined) continue;
		const { subject, kind } = first;
		const more = suppressed || isThrottled(group) ? ({ atLeast: true } as const) : {};
		const lines = group.flatMap(({ head, status }) => [head.line, ...(status === null ? [] : [status.line])]);
		if (!suppressed && more.atLeast === true) warnings.push(warning("throttled", first.head.line));
		readings.give(`aer-${kind}-events`, subject, "errors", group.length, first.head.message.trim(), lines, more);
		const counts = new Map<string, number>();
		for (const { head, status } of group) {
			if (status === null) {
				warnings.push(warning("event-incomplete", head.line, { subject }));
				continue;
			}
			const { checks, unknownBits } = decodeAerStatus(kind, status.value & ~status.mask);
			for (const check of checks) counts.set(check, (counts.get(check) ?? 0) + 1);
			if (unknownBits.length > 0) warnings.push(warning("bits-not-known", head.line, { bits: unknownBits.join(", ") }));
		}
		for (const [check, count] of counts)
			readings.give(check, subject, "errors", count, first.head.message.trim(), lines, more);
	}
}

function giveXids(lines: readonly KernelLine[], readings: Readings, warnings: ImportWarning[]): void {
	const counts = new Map<
		string,
		{ readonly subject: string; readonly number: number; readonly raw: string; readonly lines: number[] }
	>();
	const lost = new Map<string, KernelLine>();
	let named: string | null = null;
	for (const line of lines) {
		const xid = XID.exec(line.message);
		named = GPU_NAMED.exec(line.message)?.[1] ?? xid?.[1] ?? named;
		// The loss of the bus may come with its number, or in three lines without one.
		if (FALLEN.test(line.message) && named !== null && !lost.has(named)) lost.set(named, line);
		if (xid?.[1] === undefined || xid[2] === undefined) continue;
		const key = `${xid[1]} ${xid[2]}`;
		const seen = counts.get(key);
		if (seen === undefined)
			counts.set(key, { subject: xid[1], number: Number(xid[2]), raw: line.message.trim(), lines: [line.line] });
		else seen.lines.push(line.line);
	}
	for (const { subject, number, raw, lines: seen } of counts.values())
		readings.give(`xid-${number}`, subject, "errors", seen.length, raw, seen);
	for (const [subject, line] of lost) {
		warnings.push(warning("bus-lost", line.line, { subject }));
		readings.give("link-width", subject, "lanes", null, line.message.trim(), [line.line], { nullReason: "bus-lost" });
	}
	if (counts.size > 0) warnings.push(warning("xid-proves-nothing", null));
}
