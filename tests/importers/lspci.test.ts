/** `lspci -vv`: wordings by pciutils' change log (ls-caps.c, ls-ecaps.c, versions 3.5 to 3.14); fixtures written from the format. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { judgeLink } from "../../src/calculations/link/link-judgement.ts";
import { LANE_GBYTE_PER_S } from "../../src/catalogue/link-generations.ts";
import { importDiagnostic } from "../../src/importers/import-diagnostic.ts";

const fixture = (name: string) => readFileSync(new URL(`fixtures/${name}`, import.meta.url));
const read = (text: string, condition: "idle" | "load" | "unknown" = "load") =>
	importDiagnostic(Buffer.from(text), null, condition);
const one = (
	status: string,
	capability = "\t\tLnkCap:\tPort #0, Speed 16GT/s, Width x16, ASPM L1, Exit Latency L1 <16us",
) =>
	`01:00.0 VGA compatible controller: Borealis Boards Lumen 7 (rev a1)\n\tCapabilities: [78] Express (v2) Legacy Endpoint, MSI 00\n${capability}\n${status}\n`;
const values = (text: string) =>
	Object.fromEntries(read(text).readings.map((reading) => [reading.check, reading.value ?? reading.nullReason]));

describe("lspci -vv", () => {
	it.each([
		[
			"3.5 and older, flags on the line",
			"\t\tLnkSta:\tSpeed 16GT/s, Width x8, TrErr- Train- SlotClk+ DLActive- BWMgmt- ABWMgmt-",
		],
		["3.6, (ok) and (downgraded)", "\t\tLnkSta:\tSpeed 16GT/s (ok), Width x8 (downgraded)"],
		["3.7, strange", "\t\tLnkSta:\tSpeed 16GT/s (strange), Width x8 (downgraded)"],
		["3.8, only what is off", "\t\tLnkSta:\tSpeed 16GT/s, Width x8 (downgraded)"],
		["3.8, overdriven", "\t\tLnkSta:\tSpeed 16GT/s (overdriven), Width x8"],
	])("reads the status in the wording of %s", (_, status) => {
		expect(values(one(status))).toMatchObject({
			"link-width": 8,
			"link-speed": 16,
			"link-width-capability": 16,
			"link-speed-capability": 16,
		});
	});

	it("takes the first Express capability of the device's own header, and no LnkCap2 or LnkCtl", () => {
		const text = `${one("\t\tLnkSta:\tSpeed 8GT/s, Width x16")}\t\tLnkCap2: Supported Link Speeds: 2.5-16GT/s, Width x1\n\t\tLnkCap:\tPort #0, Speed 2.5GT/s, Width x1, ASPM L1\n\t\tLnkSta:\tSpeed 2.5GT/s, Width x1\n`;
		expect(values(text)).toMatchObject({ "link-width": 16, "link-speed": 8, "link-width-capability": 16 });
	});

	it("reads all ones as a device that is gone, not as 63 lanes", () => {
		const result = read(
			one("\t\tLnkSta:\tSpeed unknown, Width x63", "\t\tLnkCap:\tPort #255, Speed unknown, Width x63, ASPM L0s L1"),
		);
		expect(result.readings.map((reading) => [reading.value, reading.nullReason])).toEqual([
			[null, "bus-lost"],
			[null, "bus-lost"],
		]);
		expect(result.warnings.map((warning) => warning.code)).toContain("bus-lost");
	});

	it("says when the command lacked the rights, and gives no value", () => {
		const result = read(
			"01:00.0 VGA compatible controller: Borealis Boards Lumen 7\n\tCapabilities: <access denied>\n",
		);
		expect(result.readings.every((reading) => reading.nullReason === "access-denied")).toBe(true);
		expect(result.warnings.map((warning) => warning.code)).toContain("access-denied");
	});

	it("follows the path to the root port, which makes half the lanes a finding", () => {
		const result = importDiagnostic(fixture("lspci-width-reduced.txt"), null, "load");
		const [link] = result.links;
		expect(link).toMatchObject({
			card: { speedGTPerS: 16, width: 16 },
			function: { speedGTPerS: 16, width: 8 },
			upstreamPath: [{ speedGTPerS: 16, width: 8 }],
			slot: { speedGTPerS: 16, width: 16 },
		});
		expect(result.formatVersion).toBe("3.14");
		expect(result.readings.find((reading) => reading.check === "aer-correctable-receiver")?.value).toBe(1);
		if (link === undefined) throw new Error("no link");
		const judged = judgeLink(
			{
				card: link.card,
				function: link.function,
				upstreamPath: link.upstreamPath ?? undefined,
				slot: link.slot ?? undefined,
			},
			LANE_GBYTE_PER_S,
		);
		expect(judged.result).toMatchObject({ judgement: "width-reduced", effective: { speedGTPerS: 16, width: 8 } });
	});

	it("sees the slot behind a switch on the card: the slowest point decides", () => {
		// Shape of the case in bench practice 0.2: the function reports 32 GT/s x16, the card's own upstream port runs 16 GT/s x8.
		const port = (address: string, kind: string, secondary: string, status: string) =>
			`${address} PCI bridge: Example Silicon Port\n\tBus: primary=00, secondary=${secondary}, subordinate=03, sec-latency=0\n\tCapabilities: [58] Express (v2) ${kind}, MSI 00\n\t\tLnkCap:\tPort #0, Speed 32GT/s, Width x16, ASPM L1\n\t\tLnkSta:\tSpeed ${status}\n`;
		const text = [
			port("00:01.0", "Root Port (Slot+)", "01", "16GT/s, Width x8"),
			port("01:00.0", "Upstream Port", "02", "16GT/s, Width x8"),
			port("02:00.0", "Downstream Port (Slot-)", "03", "32GT/s, Width x16"),
			"03:00.0 VGA compatible controller: Borealis Boards Lumen 9\n\tCapabilities: [64] Express (v2) Legacy Endpoint, MSI 00\n\t\tLnkCap:\tPort #0, Speed 32GT/s, Width x16, ASPM L1\n\t\tLnkSta:\tSpeed 32GT/s, Width x16\n",
		].join("\n");
		const [link] = read(text).links;
		expect(link?.upstreamPath).toEqual([
			{ speedGTPerS: 32, width: 16 },
			{ speedGTPerS: 16, width: 8 },
			{ speedGTPerS: 16, width: 8 },
		]);
		expect(link?.slot).toEqual({ speedGTPerS: 32, width: 16 });
	});

	it("warns that the path was not seen when the bridges are not in the file", () => {
		const result = read(one("\t\tLnkSta:\tSpeed 16GT/s, Width x16"));
		expect(result.links[0]?.upstreamPath).toBeNull();
		expect(result.warnings.map((warning) => warning.code)).toContain("path-not-seen");
	});

	it("refuses a line it does not understand, with its number", () => {
		const broken = one("\t\tLnkSta:\tSpeed 16G");
		expect(() => read(broken)).toThrowError(expect.objectContaining({ code: "line-not-understood", line: 4 }));
	});

	it("reads error bits over the three lines of the newer wording, sticky or not by themselves", () => {
		const text = `${one("\t\tLnkSta:\tSpeed 16GT/s, Width x16")}\tCapabilities: [100 v2] Advanced Error Reporting
\t\tUESta:\tDLP- SDES- TLP- FCP- CmpltTO- CmpltAbrt- UnxCmplt-
\t\t\tRxOF- MalfTLP- ECRC- UnsupReq+ ACSViol-
\t\t\tUncorrIntErr- BlockedTLP-
\t\tUEMsk:\tDLP- SDES- TLP+ FCP- CmpltTO-
\t\tCESta:\tRxErr- BadTLP- BadDLLP- Rollover- Timeout- NonFatalErr+
\t\tCEMsk:\tRxErr- BadTLP+
`;
		expect(
			read(text)
				.readings.filter(({ check }) => check.startsWith("aer-"))
				.map(({ check }) => check),
		).toEqual(["aer-uncorrectable-unsupported-request", "aer-correctable-advisory-nonfatal"]);
		expect(read(text).warnings.map(({ code }) => code)).toContain("sticky-bits");
	});

	it("reads errors that the port above the card counted, under the card", () => {
		const errors = "\tCapabilities: [100 v2] Advanced Error Reporting\n\t\tCESta:\tRxErr+ BadTLP- BadDLLP-\n";
		const port = `00:01.0 PCI bridge: Example Silicon Port\n\tBus: primary=00, secondary=01, subordinate=01, sec-latency=0\n\tCapabilities: [58] Express (v2) Root Port (Slot+), MSI 00\n\t\tLnkCap:\tPort #1, Speed 16GT/s, Width x16, ASPM L1\n\t\tLnkSta:\tSpeed 16GT/s, Width x16\n${errors}`;
		const found = read(port + one("\t\tLnkSta:\tSpeed 16GT/s, Width x16")).readings.at(-1);
		expect(found).toMatchObject({ check: "aer-correctable-receiver", subject: "01:00.0 port 00:01.0" });
	});

	it("reads a configuration space of all ones as a device that is gone", () => {
		const text =
			"01:00.0 VGA compatible controller: Borealis Boards Lumen 7 (rev ff) (prog-if ff)\n\t!!! Unknown header type 7f\n";
		expect(values(text)).toEqual({ "link-width": "bus-lost", "link-speed": "bus-lost" });
	});

	it("rounds 20 GT/s to no generation, and takes no width that a link cannot have", () => {
		for (const speed of ["20GT/s", "25GT/s", "128GT/s"])
			expect(values(one(`\t\tLnkSta:\tSpeed ${speed}, Width x16`))).toMatchObject({ "link-speed": "no-generation" });
		for (const line of ["Speed 16GT/s, Width x15", "Speed 16GT/s, Width x1Z", "Speed 61GT/s, Width x16"])
			expect(() => read(one(`\t\tLnkSta:\t${line}`)), line).toThrowError(
				expect.objectContaining({ code: "line-not-understood", line: 4 }),
			);
	});

	it("takes no status of a later capability for the first, which has none", () => {
		const text =
			"01:00.0 VGA compatible controller: Borealis Boards Lumen 7\n\tCapabilities: [78] Express (v2) Legacy Endpoint, MSI 00\n\t\tLnkCap:\tPort #0, Speed 16GT/s, Width x16, ASPM L1\n\tCapabilities: [a0] Express (v2) Endpoint, MSI 00\n\t\tLnkCap:\tPort #0, Speed 2.5GT/s, Width x1, ASPM L1\n\t\tLnkSta:\tSpeed 2.5GT/s, Width x1\n";
		expect(values(text)).toEqual({ "link-width": "not-given", "link-speed": "not-given" });
	});

	it("refuses a file that ends inside a line: x16 cut short reads as x1", () => {
		const cut = one("\t\tLnkSta:\tSpeed 16GT/s, Width x16").slice(0, -2);
		expect(cut.endsWith("Width x1")).toBe(true);
		expect(() => read(cut)).toThrowError(expect.objectContaining({ code: "cut-off", line: 4 }));
	});
});
