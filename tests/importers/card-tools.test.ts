/**
 * Outputs of tools for graphics cards other than XML. Cases and wording from open issue trackers and help texts as bench
 * practice 3.3 and 3.4 list them (published); the files are written by hand, the makers invented.
 */
import { describe, expect, it } from "vitest";
import { readOutput, valuesOf, warningsOf } from "./read.ts";

const HEADER =
	"timestamp, name, pci.bus_id, pcie.link.gen.current, pcie.link.gen.max, pcie.link.width.current, pcie.link.width.max, temperature.gpu, temperature.memory, utilization.gpu [%], power.draw [W], fan.speed [%]";
const row = (cells = "4, 4, 16, 16, 62, N/A, 98 %, 201.44 W, 55 %") =>
	`2026/10/10 13:06:03.419, Lumen 7, 00000000:01:00.0, ${cells}`;
const csv = (...rows: string[]) => `${[HEADER, ...rows].join("\n")}\n`;
const at = "00000000:01:00.0";

describe("nvidia-smi CSV", () => {
	it("reads values with their units, blank lines between, CRLF, and null words", () => {
		const result = readOutput(csv(row(), "", "").replaceAll("\n", "\r\n"), "load");
		expect(valuesOf(result)).toEqual({
			[`temperature-core @ ${at}`]: 62,
			[`temperature-memory @ ${at}`]: "not-given",
			[`power-draw @ ${at}`]: 201.44,
			[`fan-speed @ ${at}`]: 55,
			[`link-speed @ ${at}`]: 16,
			[`link-width @ ${at}`]: 16,
			[`link-speed-capability @ ${at}`]: 16,
			[`link-width-capability @ ${at}`]: 16,
		});
		expect(result.takenAt).toEqual({ raw: "2026/10/10 13:06:03.419", epochS: null });
		expect(result.identity).toEqual({ model: "Lumen 7" });
	});
	it("reads cells without units where the header keeps them", () => {
		const bare = row("4, 4, 16, 16, 62, [Not Supported], 98, 201.44, 55");
		expect(valuesOf(readOutput(csv(bare), "load"))).toMatchObject({ [`power-draw @ ${at}`]: 201.44 });
	});
	it("takes rows under load where load is meant, and says how many", () => {
		const idle = row("1, 4, 16, 16, 31, N/A, 0 %, 12.00 W, 0 %");
		const result = readOutput(csv(idle, row(), row("4, 4, 16, 16, 64, N/A, 97 %, 199.00 W, 57 %")), "load");
		expect(valuesOf(result)).toMatchObject({
			[`temperature-core @ ${at}`]: 64,
			[`power-draw @ ${at}`]: 201.44,
			[`link-speed @ ${at}`]: 16,
		});
		expect(warningsOf(result)).toEqual(
			expect.arrayContaining(["rows-left-out", "highest-of-rows", "maximum-of-card-and-system"]),
		);
		expect(warningsOf(readOutput(csv(idle), "load"))).toContain("load-contradicted");
	});
	it("gives no link where it changed between the samples", () => {
		const result = readOutput(csv(row(), row("4, 4, 8, 16, 64, N/A, 97 %, 199.00 W, 57 %")), "load");
		expect(valuesOf(result)).toMatchObject({ [`link-width @ ${at}`]: "changes" });
		expect(result.links).toEqual([]);
	});
	it("leaves out a last row that is cut, and refuses a short row, a table without header and a foreign unit", () => {
		const cut = `${csv(row())}${row("4, 4, 16, 16, 62, N/A, 98 %, 2")}`;
		expect(warningsOf(readOutput(cut, "load"))).toContain("last-row-cut");
		expect(() => readOutput(csv(row(), "2026, x, y"))).toThrowError(
			expect.objectContaining({ code: "csv-row", line: 3 }),
		);
		expect(() => readOutput(`${row()}\n`)).toThrowError(expect.objectContaining({ code: "format-not-read" }));
		expect(() => readOutput(csv(row()).replace("power.draw [W]", "power.draw [mW]"))).toThrowError(
			expect.objectContaining({ code: "unit-not-read", line: 1 }),
		);
	});
});

describe("rocm-smi JSON", () => {
	const card = (members: object) => JSON.stringify({ card0: { "PCI Bus": "0000:03:00.0", ...members }, system: {} });
	it.each([
		["2019", { "Temperature (Sensor edge) (c)": "51.0", "Average Graphics Package Power (W)": "182.0" }],
		["later", { "Temperature (Sensor edge) (C)": "51.0", "Current Socket Graphics Package Power (W)": "182.0" }],
	])("finds keys in the wording of %s", (_, members) => {
		expect(valuesOf(readOutput(card(members)))).toEqual({
			"temperature-core @ 0000:03:00.0": 51,
			"power-draw @ 0000:03:00.0": 182,
		});
	});
	it("reads the active level of the link, and none where no star stands", () => {
		const levels = { "0": "2.5GT/s x16 ", "1": "16.0GT/s x8 *" };
		const text = card({ "pcie clock": levels }).replace("2.5GT/s x16 ", "2.5GT/s x16");
		expect(valuesOf(readOutput(text))).toEqual({
			"link-width @ 0000:03:00.0 power table": 8,
			"link-speed @ 0000:03:00.0 power table": 16,
		});
		expect(Object.values(valuesOf(readOutput(text.replace(" *", ""))))).toEqual([
			"active-level-unknown",
			"active-level-unknown",
		]);
	});
	it("keeps 6 mV and calls it hardly possible; 65261.85 °C is no value", () => {
		const result = readOutput(card({ "Voltage (mV)": "6", "Temperature (Sensor memory) (C)": "65261.850" }));
		expect(valuesOf(result)).toEqual({
			"voltage-core @ 0000:03:00.0": 0.006,
			"temperature-memory @ 0000:03:00.0": "sentinel",
		});
		expect(warningsOf(result)).toEqual(["hardly-possible"]);
	});
	it("passes over lines of talk before the brace, and says so", () => {
		const result = readOutput(`WARNING: device is in a low-power state\n${card({ "Fan speed (%)": "30" })}`);
		expect(warningsOf(result)).toEqual(["lines-before"]);
	});
});

describe("amd-smi JSON", () => {
	const gpu = (members: object) => JSON.stringify([{ gpu: 0, ...members }]);
	it("reads speeds in GT/s and in MT/s under the name of GT/s, and no speed between generations", () => {
		const speed = (value: number) => valuesOf(readOutput(gpu({ pcie: { width: 16, speed: { value, unit: "GT/s" } } })));
		expect(speed(16)).toMatchObject({ "link-speed @ gpu0": 16, "link-width @ gpu0": 16 });
		expect(speed(16_000)).toMatchObject({ "link-speed @ gpu0": 16 });
		expect(speed(2500)).toMatchObject({ "link-speed @ gpu0": 2.5 });
		expect(speed(20)).toMatchObject({ "link-speed @ gpu0": "not-understood" });
	});
	it("reads all-ones counters as none, 32 and 64 bits wide", () => {
		const text = gpu({ pcie: { replay_count: 4294967295, nak_sent_count: 0 } }).replace(
			'"nak_sent_count":0',
			'"nak_sent_count":18446744073709551615',
		);
		expect(Object.values(valuesOf(readOutput(text)))).toEqual(["sentinel", "sentinel"]);
	});
	it("gives the link where the static part is in the file too", () => {
		const [link] = readOutput(
			gpu({
				bus: { bdf: "0000:03:00.0", max_pcie_width: 16, max_pcie_speed: { value: 32, unit: "GT/s" } },
				pcie: { width: 8, speed: { value: 16, unit: "GT/s" } },
			}),
			"load",
		).links;
		expect(link).toMatchObject({ card: { speedGTPerS: 32, width: 16 }, function: { speedGTPerS: 16, width: 8 } });
		expect(link?.upstreamPath).toBeNull();
	});
});
