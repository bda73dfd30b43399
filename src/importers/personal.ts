/**
 * What in a diagnostic output names a person, a computer or a network. It is listed in the preview, so that whoever
 * sends the file knows what is in it before it is kept.
 */
import type { PersonalFind } from "./import-result.ts";

/** So many are listed, each text once. Source: our choice. */
const MOST = 200;

const MAC = /(?<![0-9A-Fa-f:-])(?:[0-9A-Fa-f]{2}:){5}[0-9A-Fa-f]{2}(?![0-9A-Fa-f:-])/g;
const IPV4 = /(?<![\w.])(?:(?:25[0-5]|2[0-4]\d|1?\d?\d)\.){3}(?:25[0-5]|2[0-4]\d|1?\d?\d)(?![\w.])/g;
/** Eight groups, or two colons between groups; at least one group of three digits, as times and bus addresses have none. */
const IPV6 =
	/(?<![\w:.])(?=[0-9A-Fa-f:]*[0-9A-Fa-f]{3})(?:(?:[0-9A-Fa-f]{1,4}:){7}[0-9A-Fa-f]{1,4}|(?:[0-9A-Fa-f]{1,4}:){1,6}(?::[0-9A-Fa-f]{1,4}){1,6})(?![\w:.])/g;
const E_MAIL = /(?<![\w.+-])[\w.+-]+@[\w-]+(?:\.[\w-]+)+(?![\w-])/g;
const PROMPT = /(?<![\w.@-])([a-z_][\w-]*)@([A-Za-z][\w-]*):[~/]/g;
const HOME = /(?:\/home\/|[A-Za-z]:\\{1,2}Users\\{1,2})([^/\\\s:"<>]+)/g;
const SYSLOG_HOST = /^[\p{L}\d]{2,6}\.?\s+\d{1,2} \d\d:\d\d:\d\d ([\w.-]+) [\w.()/-]+(?:\[\d+\])?:/gu;
const ISO_HOST = /^\d{4}-\d\d-\d\dT[\d:.,]+(?:Z|[+-]\d\d:?\d\d)? ([\w.-]+) [\w.()/-]+(?:\[\d+\])?:/g;
const JSON_HOST = /"(?:_?host_?name|nodename)"\s*:\s*"([^"]+)"/gi;

/** The computer's own number in a table of its firmware. */
const COMPUTER = /^\tUUID: ([0-9A-Fa-f]{8}(?:-[0-9A-Fa-f]{4}){3}-[0-9A-Fa-f]{12})$/g;

const PATTERNS: readonly { readonly kind: PersonalFind["kind"]; readonly pattern: RegExp; readonly group: number }[] = [
	{ kind: "e-mail", pattern: E_MAIL, group: 0 },
	{ kind: "user-name", pattern: PROMPT, group: 1 },
	{ kind: "host-name", pattern: PROMPT, group: 2 },
	{ kind: "user-name", pattern: HOME, group: 1 },
	{ kind: "host-name", pattern: SYSLOG_HOST, group: 1 },
	{ kind: "host-name", pattern: ISO_HOST, group: 1 },
	{ kind: "host-name", pattern: JSON_HOST, group: 1 },
	{ kind: "computer-id", pattern: COMPUTER, group: 1 },
	{ kind: "mac-address", pattern: MAC, group: 0 },
	{ kind: "ip-address", pattern: IPV4, group: 0 },
	{ kind: "ip-address", pattern: IPV6, group: 0 },
];

/** What a line must hold for any of the patterns to be looked for: most lines of a long log hold none. */
const WORTH =
	/[@\\]|home\/|[0-9A-Fa-f]{2}:[0-9A-Fa-f]{2}:|\d\.\d{1,3}\.\d|[0-9A-Fa-f]::?[0-9A-Fa-f]{3}|::|name"|UUID|^\d{4}-\d\d-\d\dT/i;

/** Each once, in the order in which they stand. */
export function findPersonal(text: string): PersonalFind[] {
	const found = new Map<string, PersonalFind>();
	text.split("\n").forEach((line, index) => {
		if (found.size >= MOST || !WORTH.test(line)) return;
		for (const { kind, pattern, group } of PATTERNS) {
			for (const match of line.matchAll(pattern)) {
				const said = match[group] ?? "";
				const key = `${kind} ${said}`;
				if (!found.has(key)) found.set(key, { kind, text: said, line: index + 1 });
			}
		}
	});
	return [...found.values()];
}
