/** What a draft takes from a file: what the item's own catalogue asks, once, and names only of the right kind of item. */
import { describe, expect, it } from "vitest";
import { checksOf } from "../../src/catalogue/checks/checks.ts";
import type { ItemClass } from "../../src/catalogue/codes.ts";
import { recordContent } from "../../src/contract/records.ts";
import { importDiagnostic } from "../../src/importers/import-diagnostic.ts";
import { takeImport } from "../../src/operations/records/import-readings.ts";
import { SAMPLES } from "../importers/samples.ts";

const SHA = "a".repeat(64);
function take(kind: keyof typeof SAMPLES, itemClass: ItemClass, text = SAMPLES[kind]) {
	const ids = new Set(checksOf(itemClass).map((check) => check.id));
	const taken = takeImport({}, importDiagnostic(Buffer.from(text), kind, "load"), SHA, ids, itemClass);
	expect(recordContent.safeParse(taken.content).error).toBeUndefined();
	return taken;
}
const value = (taken: ReturnType<typeof take>, check: string) =>
	taken.content.readings?.find((reading) => reading.check === check)?.values?.[0]?.value;

describe("taking a file into a draft", () => {
	it("takes a drive's numbers and names into the record of a drive", () => {
		const taken = take("smartctl", "drive");
		expect(taken.content.identity).toMatchObject({ serialNumber: "TD-0001", model: "Tarn Disks T4" });
		expect(value(taken, "smart-reallocated-sectors")).toBe(12);
		expect(value(taken, "smart-power-on-hours")).toBe(12_345);
		expect(taken.content.readings).toContainEqual(
			expect.objectContaining({ check: "smart-self-assessment", trials: 1, successes: 1 }),
		);
		expect(taken.taken).not.toContain("smart-pending-sectors");
	});
	it("takes no names of a computer's board or drive into the record of a graphics card", () => {
		for (const kind of ["smartctl", "dmidecode"] as const) {
			const taken = take(kind, "graphics-card");
			expect([taken.taken, taken.content.identity]).toEqual([[], undefined]);
			expect(taken.content.exhibits).toEqual([{ sha256: SHA, view: "diagnostic-output" }]);
		}
		expect(take("dmidecode", "mainboard").content.identity).toMatchObject({ serialNumber: "HB-118" });
	});
	it("takes the card's own temperature limit with the temperature", () => {
		const reading = take("nvidia-smi-xml", "graphics-card").content.readings?.find(
			({ check }) => check === "temperature-core",
		);
		expect(reading).toMatchObject({ values: [{ value: 71, unit: "degC" }], limitHigh: 95, condition: "load" });
	});
	it("takes the graphics chip's sensors although other chips are in the file", () => {
		expect(value(take("sensors", "graphics-card"), "temperature-core")).toBe(54.25);
	});
	it("takes nothing where two cards are in the file, nor a value that is there twice", () => {
		const two = SAMPLES["rocm-smi"].replace(/^\{/, '{"card1": {"Temperature (Sensor edge) (C)": "40.0"},');
		expect(take("rocm-smi", "graphics-card", two).taken).toEqual([]);
		const twice = SAMPLES.sensors.replace('"power1_average": 120.5', '"power1_average": 120.5, "power1_input": 99');
		expect(take("sensors", "graphics-card", twice).taken).not.toContain("power-draw");
	});
	it("takes the slowest point of the path as the link", () => {
		const taken = take("lspci", "graphics-card");
		expect(value(taken, "link-width")).toBe(8);
		expect(taken.content.link).toMatchObject({ card: { width: 16 }, slot: { width: 16 } });
	});
});
