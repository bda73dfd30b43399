/** What the carrier pays at most, on a leg: cap cases C1, C3, C7, C13 and E3, E6 of the reference page, computed for a leg's facts. */
import { describe, expect, it } from "vitest";
import { packingBreakEven } from "../../../src/calculations/insurance/packing-break-even.ts";
import type { ConsignmentView, ItemView } from "../../../src/contract/orders.ts";
import { legCover } from "../../../src/operations/claims/leg-cover.ts";
import { firstPackForm } from "../../../src/pages/shop/packing/first-pack-form.ts";

const VALUE = { amount: 1200, currency: "EUR" };
const item = { class: "graphics-card", value: VALUE } as unknown as ItemView;
const leg = (facts: object = {}) =>
	({ facts: { mode: "road", bookedBy: "consignor", ...facts } }) as unknown as ConsignmentView;
type RegimeOrNone = Parameters<typeof legCover>[3];
const cover = (regime: RegimeOrNone, rate: number | undefined = 1.2, facts: object = {}, massKg: number | null = 2.4) =>
	legCover(item, leg(facts), massKg, regime, rate, "2025-03-03");

describe("the cover of a leg", () => {
	it("C1, C13: CMR 2.4 kg", () => {
		expect(cover("cmr")).toMatchObject({ capSdr: 19.992, capAmount: { amount: 23.99, currency: "EUR" } });
		expect(cover("cmr").shareOfValue).toBeCloseTo(0.02, 4);
		expect(cover("cmr").massCoveringValueKg).toBeCloseTo(120.05, 2);
	});
	it("C3, C7: Montreal and the Netherlands", () => {
		expect(cover("montreal").capAmount?.amount).toBe(74.88);
		expect(cover("nl-road", undefined)).toMatchObject({ capSdr: null, capAmount: { amount: 8.16, currency: "EUR" } });
	});
	it("says a limit in special drawing rights where no rate was given, and none where nothing is known", () => {
		expect(legCover(item, leg(), 2.4, "cmr", undefined, "2025-03-03").capSdr).toBe(19.992);
		expect(cover(null).capSdr).toBeNull();
		expect(cover("cmr", 1.2, {}, null).notes).toEqual([expect.stringContaining("gross mass")]);
	});
	it("marks the amounts of the post as recalled", () => {
		expect(cover("upu").source?.standing).toBe("from-memory");
	});
	it("E3, E6: what damage costs on average, and when better packing pays", () => {
		expect(cover("cmr").expectedLoss).toEqual({ amount: 5.94, currency: "EUR" });
		expect(packingBreakEven(3, 1200)).toBeCloseTo(0.0025, 12);
	});
	it("feeds the planner's first form: the limit, or what an insurance pays", () => {
		const form = (facts: object = {}) => firstPackForm(item, leg(facts), cover("cmr", 1.2, facts));
		expect(form()).toMatchObject({ "route.capAmount": "23.99", "route.capCurrency": "EUR" });
		expect(form({ insuredValue: VALUE })).toMatchObject({ "route.capAmount": "1200" });
		expect(firstPackForm(item, leg(), cover(null))).not.toHaveProperty("route.capAmount");
	});
});
