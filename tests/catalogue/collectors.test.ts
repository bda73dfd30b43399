/** Lines that print a file: they read, write one file, and send and install nothing. Our own rules; no outside figures. */
import { describe, expect, it, test } from "vitest";
import { checksOf } from "../../src/catalogue/checks/checks.ts";
import { ITEM_CLASSES } from "../../src/catalogue/codes.ts";
import { COLLECTOR_SYSTEMS, COLLECTORS, collectorsFor } from "../../src/catalogue/collectors.ts";
import { IMPORT_KINDS } from "../../src/importers/import-diagnostic.ts";
import { isTextKey } from "../../src/texts/say.ts";

const everyCheck = new Set(ITEM_CLASSES.flatMap((itemClass) => checksOf(itemClass).map(({ id }) => id)));
/** Words of lines that would change something, fetch something or send something. */
const FORBIDDEN =
	/\b(rm|mv|cp|dd|tee|chmod|chown|kill|setpci|modprobe|install|apt|brew|winget|choco|pip|npm|curl|wget|ssh|scp|ftp|nc|Invoke-\w+|Set-\w+|Remove-\w+|Start-\w+|New-\w+|Disable-\w+|Enable-\w+|iex|format [A-Z]:)\b|>>|https?:|[;&`]|\$\(/;
/** Switches of the tools named that would change something: resets, self-tests, settings. */
const CHANGING =
	/smartctl .*(-t|-s|-o|-S)\b|nvidia-smi .*(-r|-pm|-pl|-lgc|-e)\b|rocm-smi .*--(set|reset)|dmesg .*(-c|-C|-n)\b/;

describe.each(COLLECTORS.map((collector) => [`${collector.id}, ${collector.system}`, collector] as const))(
	"%s",
	(_, collector) => {
		it("reads only and writes the one file that it names", () => {
			const [, target] = /> (\S+)$/.exec(collector.command) ?? [];
			expect(target).toBe(collector.file);
			const reads = collector.command.slice(0, -collector.file.length - 2).replace(/ \\;| @\{[^}]*\}/g, "");
			expect(reads).not.toMatch(FORBIDDEN);
			expect(reads).not.toMatch(CHANGING);
			expect(reads).not.toContain(">");
		});
		it("has words, checks of the catalogue, and a format that is read or none", () => {
			expect(isTextKey(`collectors.${collector.id}`)).toBe(true);
			expect(collector.checks.length).toBeGreaterThan(0);
			for (const check of collector.checks) expect(everyCheck, check).toContain(check);
			if (collector.format !== null) expect(IMPORT_KINDS).toContain(collector.format);
			if (/\bsudo\b/.test(collector.command)) expect(collector.administrator).toBe(true);
		});
	},
);

test("the rule itself sees a line that changes, fetches or sends", () => {
	for (const line of [
		"sudo smartctl -t long /dev/sda",
		"curl https://x",
		"setpci -s 1 2",
		"dmesg -C",
		"a; b",
		"Set-Item x",
	])
		expect(FORBIDDEN.test(line) || CHANGING.test(line), line).toBe(true);
});

test("each system has lines for a card's link and for a drive", () => {
	for (const checks of [checksOf("graphics-card"), checksOf("drive")]) {
		const found = collectorsFor(new Set(checks.map(({ id }) => id)));
		expect(new Set(found.map(({ system }) => system))).toEqual(new Set(COLLECTOR_SYSTEMS));
	}
	expect(collectorsFor(new Set(["mass"]))).toEqual([]);
});

test("a reading that an importer takes from a file has a line that writes such a file", () => {
	// A score is one of a workload, a count of read errors of a scan: no line of the system gives either.
	const byHand = ["score", "read-errors", "memory-errors"];
	const software = ITEM_CLASSES.flatMap((itemClass) => checksOf(itemClass)).filter(
		({ whoCan }) => whoCan === "software",
	);
	const missing = software.filter(({ id }) => collectorsFor(new Set([id])).length === 0 && !byHand.includes(id));
	expect(missing.map(({ id }) => id)).toEqual([]);
});
