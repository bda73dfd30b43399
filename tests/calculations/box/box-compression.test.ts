/** Boxes and stacks. Cases BOX, STACK and K by id of the reference pages; tolerances are theirs. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boxCompression, FLUTES, stackLoadN } from "../../../src/calculations/box/box-compression.ts";

const POUND_FORCE_N = 4.4482216152605;
const INCH = 0.0254;
const box = { edgeCrushKNPerM: 5.604, caliperM: 0.004, perimeterM: 1.4 };
const strength = (input: Parameters<typeof boxCompression>[0]) => {
	const { result } = boxCompression(input);
	if (result === null) throw new Error("not assessed");
	return result;
};

describe("McKee, simplified", () => {
	it("one constant for lb/in with inches and for N/mm with millimetres (1e-6)", () => {
		const inches = 5.87 * 32 * Math.sqrt(0.15 * 56) * POUND_FORCE_N;
		const metric = strength({
			edgeCrushKNPerM: (32 * POUND_FORCE_N) / INCH / 1000,
			caliperM: 0.15 * INCH,
			perimeterM: 56 * INCH,
		});
		expect(Math.abs(metric.compressionStrengthN / inches - 1)).toBeLessThan(1e-6);
	});
	it("BOX-4: 32 lb/in are 5.604 kN/m; BOX-5: 40 lb/in 7.0", () => {
		expect((32 * POUND_FORCE_N) / INCH / 1000).toBeCloseTo(5.604, 3);
		expect(Math.abs((40 * POUND_FORCE_N) / INCH / 1000 - 7)).toBeLessThan(0.05);
	});
});

describe("Kellicutt", () => {
	it("K5: only J changes with the units, by 2.54^(2/3); K6: a double wall sums its flutes", () => {
		expect(0.59 * 2.54 ** (2 / 3)).toBeCloseTo(FLUTES.A[1], 2);
		expect(0.54 * 2.54 ** (2 / 3)).toBeCloseTo(FLUTES.AB[1], 2);
		expect(FLUTES.AC[0]).toBeCloseTo(FLUTES.A[0] + FLUTES.C[0], 3);
		expect(FLUTES.AB[0]).toBeCloseTo(FLUTES.A[0] + FLUTES.B[0], 3);
	});
	it("the packaging text's example inverted: 9182.16 N ask 95.05 N/cm (trap 9: it prints 95.17 with 1 lb = 4.4537 N)", () => {
		// K1: 6.5 · 48 kg · 9.81 · 3. The text's box is not printed whole; what is held is that strength is linear in edge crush.
		expect(6.5 * 48 * 9.81 * 3).toBeCloseTo(9182.16, 2);
		const one = strength({ formula: "kellicutt", flute: "AB", edgeCrushKNPerM: 1, caliperM: 0.007, perimeterM: 1.9 });
		const more = strength({
			formula: "kellicutt",
			flute: "AB",
			edgeCrushKNPerM: 9.505,
			caliperM: 0.007,
			perimeterM: 1.9,
		});
		expect(more.compressionStrengthN / one.compressionStrengthN).toBeCloseTo(9.505, 9);
	});
});

describe("losses and stacks", () => {
	it("BOX multipliers at the table's own points, and 10 % a moisture point against them (K17: 0.478 against 0.48)", () => {
		const left = (input: object) => {
			const result = strength({ ...box, ...input });
			return result.deratedStrengthN / result.compressionStrengthN;
		};
		expect(left({ days: 30 })).toBeCloseTo(0.6, 9);
		expect(left({ days: 10, humidityPercent: 80 })).toBeCloseTo(0.63 * 0.68, 9);
		expect(left({ humidityPercent: 90 })).toBeCloseTo(0.48, 9);
		expect(0.9 ** 7).toBeCloseTo(0.48, 2);
		expect(left({ palletFactor: 0.5 })).toBeCloseTo(0.5, 9);
	});
	it("STACK-2 and STACK-3: 16 × 12 × 10 in, 10 and 12 lb/ft³, F 7: 342.2 and 914.7 lbf (0.1)", () => {
		const load = (height: number, poundsPerFoot3: number) =>
			(7 *
				stackLoadN({
					lengthM: 16 * INCH,
					widthM: 12 * INCH,
					heightM: 10 * INCH,
					stackHeightM: height * INCH,
					densityKgPerM3: (poundsPerFoot3 * 0.45359237) / 0.3048 ** 3,
				})) /
			POUND_FORCE_N;
		expect(load(54, 10)).toBeCloseTo(342.2, 1);
		expect(load(108, 12)).toBeCloseTo(914.7, 1);
	});
	it("a card parcel of 400 × 300 × 200 mm at F 7: 3293 N by the old edition, 3955 and 1899 N by that of 2023 (2 N)", () => {
		const load = (stackHeightM: number, densityKgPerM3: number) =>
			7 * stackLoadN({ lengthM: 0.4, widthM: 0.3, heightM: 0.2, stackHeightM, densityKgPerM3 });
		expect(Math.abs(load(2.7, 160) - 3293)).toBeLessThan(4);
		expect(Math.abs(load(2.7, 192.2) - 3955)).toBeLessThan(4);
		expect(Math.abs(load(1.4, 192.2) - 1899)).toBeLessThan(3);
	});
	it("never applies the factor to a strength that was derated", () => {
		const stack = { lengthM: 0.4, widthM: 0.3, heightM: 0.2, stackHeightM: 1.4, densityKgPerM3: 192.2, factor: 7 };
		const result = strength({ ...box, days: 30, humidityPercent: 80, stack });
		const load = result.stackLoadN ?? 0;
		expect(result.marginDerated).toBeCloseTo((result.deratedStrengthN - load) / load, 9);
		expect(result.marginFactored).toBeCloseTo((result.compressionStrengthN - 7 * load) / (7 * load), 9);
	});
	it("more humidity or more days never raise the strength", () => {
		const at = (days: number, humidityPercent: number) => strength({ ...box, days, humidityPercent }).deratedStrengthN;
		fc.assert(
			fc.property(
				fc.double({ min: 0, max: 400, noNaN: true }),
				fc.double({ min: 0, max: 100, noNaN: true }),
				fc.double({ min: 0, max: 1, noNaN: true }),
				(days, humidity, more) => {
					expect(at(days, humidity + more * (100 - humidity))).toBeLessThanOrEqual(at(days, humidity) * (1 + 1e-12));
					expect(at(days * (1 + more), humidity)).toBeLessThanOrEqual(at(days, humidity) * (1 + 1e-12));
				},
			),
		);
	});
});
