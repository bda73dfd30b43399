/** Desiccant. Cases DS1, DS3, DS4, DS6, DS7, D1 by id of the reference pages; tolerances are theirs. */
import { describe, expect, it } from "vitest";
import { type DesiccantInput, desiccant } from "../../../src/calculations/moisture/desiccant.ts";

const SQUARE_INCH = 0.0254 ** 2;
const units = (input: DesiccantInput) => desiccant(input).result?.units ?? Number.NaN;
/** 300 × 400 mm bag, both faces, four litres of air, a fortnight. */
const BAG = { barrierAreaM2: 0.24, barrierVolumeM3: 0.004, days: 14 };

describe("desiccant", () => {
	it("DS1 (independent): 400 in² by the area rule: 4.4 units", () => {
		expect(units({ method: "mil-area", barrierAreaM2: 400 * SQUARE_INCH })).toBeCloseTo(4.4, 3);
	});
	it("DS3 (independent): 5 gallons by the volume rule: 0.81 units, a pouch of 1", () => {
		const answer = desiccant({ method: "mil-volume", barrierVolumeM3: 5 * 231 * 0.0254 ** 3 });
		expect(Math.abs((answer.result?.units ?? 0) - 0.81)).toBeLessThan(0.006);
		expect(answer.result?.unitsRounded).toBe(1);
	});
	it("DS4: 400 in², 0.02 g/(100 in²·day), 12 months at 4.8 g: 4.62", () => {
		const rate = 0.02 / (100 * SQUARE_INCH);
		// WV1 (independent): 0.02 g/(100 in²·day) are 0.31 g/(m²·day).
		expect(rate).toBeCloseTo(0.31, 3);
		expect(
			units({
				method: "eia-583",
				barrierAreaM2: 400 * SQUARE_INCH,
				waterVapourGramPerM2Day: rate,
				months: 12,
				finalHumidityPercent: 20,
			}),
		).toBeCloseTo(4.62, 2);
	});
	it("DS6: the SI form of J-STD-033: 9.728", () => {
		expect(
			Math.abs(
				units({
					method: "j-std-033",
					barrierAreaM2: 0.258064,
					waterVapourGramPerM2Day: 0.310001,
					months: 12,
					capacityGramPerUnit: 3,
				}) - 9.728,
			),
		).toBeLessThan(0.01);
	});
	it("DS7: DIN 55474: 2.53", () => {
		expect(
			units({
				method: "din-55474",
				barrierAreaM2: 0.24,
				barrierVolumeM3: 0.004,
				waterVapourGramPerM2Day: 3,
				days: 30,
				finalHumidityPercent: 40,
			}),
		).toBeCloseTo(2.53, 2);
	});
	it("D1: JIS Z 0301, short: 6 m², 0.3, 3 months: 0.45 kg", () => {
		expect(
			units({ method: "jis-z-0301", barrierAreaM2: 6, waterVapourGramPerM2Day: 0.3, months: 3 }) * 0.028,
		).toBeCloseTo(0.45, 9);
	});
	it("card inside dominates: 200 g of it add 4.67 units to a bag that needs next to none", () => {
		const empty = units({ method: "din-55474", ...BAG, waterVapourGramPerM2Day: 0.031 });
		const answer = desiccant({
			method: "din-55474",
			...BAG,
			waterVapourGramPerM2Day: 0.031,
			dunnage: [{ kind: "cellulose", massKg: 0.2 }],
		});
		expect(empty).toBeLessThan(0.1);
		expect((answer.result?.units ?? 0) - empty).toBeCloseTo(28 / 6, 6);
		expect(answer.validity.notes.map((note) => note.sentence)).toContain("desiccant.paper");
		// The area rule knows neither barrier nor time: 0.24 m² ask 4.09 units.
		expect(units({ method: "mil-area", barrierAreaM2: 0.24 })).toBeCloseTo(4.09, 2);
	});
	it("says which members a rule needs, and which humidities it knows", () => {
		expect(desiccant({ method: "j-std-033" })).toMatchObject({
			status: "not-assessed",
			reason: {
				code: "missing-input",
				message: { values: { members: "barrierAreaM2, waterVapourGramPerM2Day, days" } },
			},
		});
		const odd = desiccant({ method: "din-55474", ...BAG, waterVapourGramPerM2Day: 1, finalHumidityPercent: 35 });
		expect(odd).toMatchObject({ status: "not-assessed", reason: { code: "outside-range" } });
	});
	it("asks for more with more time, area or vapour, and gives no pouch beyond the largest", () => {
		const base = { method: "din-55474" as const, ...BAG, waterVapourGramPerM2Day: 1 };
		expect(units({ ...base, days: 28 })).toBeGreaterThan(units(base));
		expect(units({ ...base, barrierAreaM2: 1 })).toBeGreaterThan(units(base));
		expect(desiccant({ ...base, barrierAreaM2: 500 }).result?.unitsRounded).toBeNull();
	});
});
