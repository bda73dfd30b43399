/** Design drops: tables as quoted in the transit page, band edges, and percentiles (own regression values ENV-6). */
import { describe, expect, it } from "vitest";
import { dropHeight } from "../../../src/calculations/handling/drop-height.ts";
import { DROP_TABLES, dropTableById, MEASURED_DROPS } from "../../../src/catalogue/drop-tables.ts";

const ask = (id: string, massKg: number, tripCoverage?: number) => {
	const table = dropTableById(id);
	if (table === null) throw new Error(id);
	return dropHeight({ massKg, table, tables: DROP_TABLES, measured: MEASURED_DROPS, tripCoverage });
};

describe("published tables, metres", () => {
	it.each([
		["din-55439", 3, 0.8],
		["din-55439", 9.999, 0.8],
		["din-55439", 10, 0.6],
		["ista-1a", 3, 0.76],
		["ista-1a", 10, 0.61],
		["ista-2a", 3, 0.97],
		["desktop-board-packaged", 3, 0.9144],
		["jis-z-0200", 3, 0.8],
		["handling-thrown", 3, 1.05],
		["astm-d4169-a-2", 3, 0.381],
		["mil-std-810-transit", 3, 1.22],
	])("%s at %f kg: %f m", (id, mass, height) => {
		expect(ask(id, mass).result?.dropHeightM).toBeCloseTo(height, 6);
	});
	// Bands printed in whole pounds (to 20, 21 to 40 …) leave gaps; the contract gives them the higher drop.
	it.each([
		["express-carrier", 75.5, 30],
		["express-carrier", 76.5, 30],
		["express-carrier", 100.5, 30],
		["desktop-board-packaged", 20.5, 36],
		["desktop-board-packaged", 21, 30],
		["desktop-board-packaged", 80.5, 24],
		["mil-hdbk-304", 20.5, 42],
		["mil-hdbk-304", 50.5, 36],
		["mil-hdbk-304", 51, 30],
		["astm-d4169-a-1", 20, 21],
	])("%s at %f lb: %f in", (id, pounds, inches) => {
		expect(ask(id, pounds * 0.45359237).result?.dropHeightM).toBeCloseTo(inches * 0.0254, 6);
	});
	it("covers packs below 0.91 m, as the table is quoted, and no longer", () => {
		const table = dropTableById("mil-std-810-transit");
		if (table === null) throw new Error("missing");
		const within = (largestDimensionM: number) =>
			dropHeight({ massKg: 3, largestDimensionM, table, tables: DROP_TABLES, measured: MEASURED_DROPS }).validity
				.within;
		expect([within(0.909), within(0.91)]).toEqual([true, false]);
	});
	it("gives no drop above the last band", () => {
		expect(ask("din-55439", 70)).toMatchObject({ status: "not-assessed", reason: { code: "mass-above-table" } });
		expect(ask("jis-z-0200", 12).status).toBe("not-assessed");
	});
});

describe("percentiles are per drop", () => {
	it("covers 95 % of trips only with a much higher percentile per drop (99.31, 99.51 %)", () => {
		const measured = ask("din-55439", 3, 0.95).result?.measured ?? [];
		expect(measured.find((row) => row.id === "overnight-air")?.percentilePerDrop).toBeCloseTo(0.9931, 4);
		expect(measured.find((row) => row.id === "postal-express")?.percentilePerDrop).toBeCloseTo(0.9951, 4);
		expect(measured.find((row) => row.id === "ground-parcel")?.percentilePerDrop).toBeNull();
	});
	it("ENV-6: with 7.44 drops a trip exceeds the per-drop 95th percentile with probability 0.3172", () => {
		expect(1 - 0.95 ** 7.44).toBeCloseTo(0.3172, 4);
	});
});
