/** The account of a file line by line: every line stands in it once, and what a line gave is named at its own number. */
import { describe, expect, it } from "vitest";
import { IMPORT_KINDS, importDiagnostic } from "../../src/importers/import-diagnostic.ts";
import { ImportRefusal } from "../../src/importers/import-result.ts";
import { SAMPLES } from "./samples.ts";

const read = (text: string) => importDiagnostic(new TextEncoder().encode(text), null, "unknown");

describe("a file line by line", () => {
	it.each(Object.entries(SAMPLES))("%s: names each line once, in order", (_, text) => {
		const { lines, readings, warnings } = read(text);
		const count = text.replace(/\n$/, "").split("\n").length;
		let next = 1;
		for (const { from, to, text: shown } of lines) {
			expect(from).toBe(next);
			expect(to).toBeGreaterThanOrEqual(from);
			expect((text.split("\n")[from - 1] ?? "").startsWith(shown.replace(/…$/, ""))).toBe(true);
			next = to + 1;
		}
		expect(next).toBe(count + 1);
		for (const reading of readings)
			for (const line of reading.lines)
				expect(lines.find(({ from, to }) => from === line && to === line)?.checks).toContain(reading.check);
		for (const { line } of warnings)
			if (line !== null) expect(lines.some(({ from, to }) => from === line && to === line)).toBe(true);
	});

	it("what was printed on one line is read from the line that holds it", () => {
		for (const text of Object.values(SAMPLES))
			for (const { raw, lines, value } of read(text).readings) {
				const [line] = lines;
				if (line === undefined || value === null || lines.length > 1) continue;
				// A decimal comma apart, the characters stand there.
				expect((text.split("\n")[line - 1] ?? "").replaceAll(",", "."), raw).toContain(
					raw.replaceAll(",", ".").replaceAll('"', "").slice(0, 20),
				);
			}
	});

	it("of an event of a kernel log every line counts, and talk between is passed over", () => {
		const { lines } = read(
			[
				"[   10.000001] pcieport 0000:00:01.0: PCIe Bus Error: severity=Corrected, type=Physical Layer, (Receiver ID)",
				"[   10.000002] pcieport 0000:00:01.0:   device [8086:1901] error status/mask=00000001/00002000",
				"[   11.000000] usb 1-1: new device",
				"[   12.000000] usb 1-2: new device",
				"",
			].join("\n"),
		);
		expect(lines.map(({ from, to, checks }) => [from, to, checks])).toEqual([
			[1, 1, ["aer-correctable-events", "aer-correctable-receiver"]],
			[2, 2, ["aer-correctable-events", "aer-correctable-receiver"]],
			[3, 4, []],
		]);
	});

	it("lists some hundreds of entries at most", () => {
		const many = Array.from(
			{ length: 3000 },
			(_, index) => `[${String(index).padStart(5)}.000001] NVRM: Xid (PCI:0000:01:00): ${index % 99}, pid=1, x`,
		);
		const { lines, readings } = read(`${many.join("\n")}\n`);
		expect(lines.length).toBeLessThanOrEqual(401);
		expect(readings.reduce((sum, { value }) => sum + (value ?? 0), 0)).toBe(3000);
	});

	it("every format has a sample here", () => {
		const seen = new Set(Object.values(SAMPLES).map((text) => read(text).format));
		expect(IMPORT_KINDS.filter((kind) => !seen.has(kind))).toEqual([]);
		expect(() => read("nothing of the kind\n")).toThrow(ImportRefusal);
	});
});
