/**
 * Limits by id from the claims page, section 8: per kilogram gross, half-up to the cent; 1.2000 EUR for a special drawing right is
 * illustrative. Amounts are exact, masses printed to two digits.
 */
import { describe, expect, it } from "vitest";
import { type ClaimCapInput, claimCap } from "../../../src/calculations/claims/claim-cap.ts";
import type { Regime } from "../../../src/calculations/claims/claim-rule.ts";
import { CLAIM_CAPS } from "../../../src/catalogue/claim-caps.ts";

const eur = (amount: number) => ({ amount, currency: "EUR" });

function ask(regime: Regime, more: Partial<ClaimCapInput> = {}) {
	const rule = CLAIM_CAPS.find((cap) => cap.regime === regime);
	if (rule === undefined) throw new Error(`no cap for ${regime}`);
	return claimCap({
		rule,
		packages: [{ grossMassKg: 2.4, affected: true }],
		loss: "total",
		eventDate: "2025-06-01",
		currencyPerSdr: 1.2,
		currency: "EUR",
		...more,
	});
}
function of(regime: Regime, more: Partial<ClaimCapInput> = {}) {
	const { result } = ask(regime, more);
	if (result === null) throw new Error("not assessed");
	return result;
}
const said = (regime: Regime, more: Partial<ClaimCapInput> = {}) => {
	const { cautions, validity } = ask(regime, more);
	return [...cautions, ...validity.notes].map(({ sentence }) => sentence);
};

describe("limits of 2.4 kg", () => {
	it.each([
		["C1", "cmr", {}, 19.992, 23.99],
		["C1", "de-hgb", {}, 19.992, 23.99],
		["C2", "montreal", { eventDate: "2024-12-27" }, 52.8, 63.36],
		["C3", "montreal", { eventDate: "2024-12-28" }, 62.4, 74.88],
		["C5", "cim", {}, 40.8, 48.96],
		["C6", "upu", {}, 50.8, 60.96],
		["C7", "nl-road", {}, null, 8.16],
		["C8", "fr-post", {}, null, 55.2],
		["C10, least", "de-hgb", { agreedSdrPerKg: 2 }, 4.8, 5.76],
		["C10, most", "de-hgb", { agreedSdrPerKg: 40 }, 96, 115.2],
	] as const)("%s: %s", (_, regime, more, sdr, amount) => {
		const { capSdr, capAmount } = of(regime, more);
		if (sdr === null) expect(capSdr).toBeNull();
		else expect(capSdr).toBeCloseTo(sdr, 9);
		expect(capAmount).toEqual(eur(amount));
	});
	it.each([
		["cmr", 120.05],
		["montreal", 38.46],
		["upu", 213.33],
	] as const)("C13: mass at which the limit of %s covers 1200 EUR", (regime, massKg) => {
		expect(of(regime, { value: eur(1200) }).massCoveringValueKg).toBeCloseTo(massKg, 2);
	});
	it("covers 2.0 % of a card of 1200 EUR by road, and says so", () => {
		expect(of("cmr", { value: eur(1200) }).shareOfValue).toBeCloseTo(0.02, 4);
		expect(said("cmr", { value: eur(1200) })).toContain("claims.value-decides");
	});
});

describe("the limit by air is a dated table: 17, 19, 22, 26", () => {
	it.each([
		["2003-11-04", 17],
		["2009-12-29", 17],
		["2009-12-30", 19],
		["2019-12-27", 19],
		["2019-12-28", 22],
		["2024-12-27", 22],
		["2024-12-28", 26],
	])("%s", (eventDate, perKg) => {
		expect(of("montreal", { eventDate }).capSdr).toBeCloseTo(2.4 * perKg, 9);
	});
	it("is not assessed before the first, and flagged within 60 days of a step", () => {
		expect(ask("montreal", { eventDate: "2003-11-03" })).toMatchObject({ reason: { code: "no-limit-yet" } });
		expect(said("montreal", { eventDate: "2025-02-26" })).toContain("claims.near-step");
		expect(said("montreal", { eventDate: "2024-10-29" })).toContain("claims.near-step");
		expect(said("montreal", { eventDate: "2025-02-27" })).not.toContain("claims.near-step");
	});
});

describe("amounts beside the limit", () => {
	const HEAVY = { packages: [{ grossMassKg: 200, affected: true }] };
	it("C12: interest by CMR, 5 % simple: 500 EUR over 90 of 365 days", () => {
		const interest = { from: "2025-01-01", to: "2025-04-01" };
		const result = of("cmr", { ...HEAVY, value: eur(500), interest });
		expect(result.interestAmount).toEqual(eur(6.16));
		expect(result.total).toEqual(eur(506.16));
		expect(of("cim", { ...HEAVY, value: eur(500), interest }).interestAmount).toBeNull();
		expect(said("cim", { interest })).toContain("claims.interest-elsewhere");
	});
	it("only what is affected counts, and what is left of the value is taken off", () => {
		const packages = [
			{ grossMassKg: 2.4, affected: true },
			{ grossMassKg: 7.6, affected: false },
		];
		expect(of("cmr", { packages }).capAmount).toEqual(eur(23.99));
		const partial = of("cmr", { ...HEAVY, loss: "partial", value: eur(500), residualValue: eur(200) });
		expect(partial.total).toEqual(eur(300));
	});
	it("freight comes back in proportion, on top of the limit", () => {
		const packages = [
			{ grossMassKg: 2.5, affected: true },
			{ grossMassKg: 7.5, affected: false },
		];
		const total = of("cmr", { packages, value: eur(1200), freight: eur(40) });
		expect(total.freightRefund).toEqual(eur(10));
		expect(total.total).toEqual(eur(34.99));
		const half = of("cmr", { packages, loss: "partial", value: eur(1200), residualValue: eur(600), freight: eur(40) });
		expect(half.freightRefund).toEqual(eur(5));
		expect(of("montreal", { value: eur(1200), freight: eur(40) }).freightRefund).toBeNull();
	});
	it("a survey's cost counts in Germany, inside the limit", () => {
		expect(of("de-hgb", { ...HEAVY, value: eur(500), surveyCost: eur(80) }).total).toEqual(eur(580));
		expect(of("de-hgb", { value: eur(500), surveyCost: eur(80) }).total).toEqual(eur(23.99));
		expect(of("cmr", { ...HEAVY, value: eur(500), surveyCost: eur(80) }).total).toEqual(eur(500));
		expect(said("cmr", { surveyCost: eur(80) })).toContain("claims.survey-elsewhere");
	});
	it("agreed amounts outside 2 to 40 are given, and flagged; elsewhere they are not taken", () => {
		expect(ask("de-hgb", { agreedSdrPerKg: 41 }).validity.within).toBe(false);
		expect(ask("de-hgb", { agreedSdrPerKg: 40 }).validity.within).toBe(true);
		expect(of("cmr", { agreedSdrPerKg: 40 }).capSdr).toBeCloseTo(19.992, 9);
		expect(said("cmr", { agreedSdrPerKg: 40 })).toContain("claims.agreed-elsewhere");
	});
	it("what was recalled and not read is flagged: the post's amounts, the French default contract", () => {
		expect(ask("upu").validity.within).toBe(false);
		const road = ask("fr-road", { packages: [{ grossMassKg: 50, affected: true }] });
		expect(road.result?.capAmount).toEqual(eur(1000));
		expect(road.validity.within).toBe(false);
		expect(road.sources[0]?.standing).toBe("from-memory");
	});
	it("without a limit the loss counts in full; without a rate or a currency the limit is not said in money", () => {
		const american = of("us-motor", {
			value: { amount: 900, currency: "USD" },
			currency: "USD",
			currencyPerSdr: undefined,
		});
		expect(american).toMatchObject({ capSdr: null, capAmount: null, total: { amount: 900, currency: "USD" } });
		expect(of("cmr", { currencyPerSdr: undefined, value: eur(1200) })).toMatchObject({ capAmount: null, total: null });
		expect(of("cmr", { currency: null }).capAmount).toBeNull();
		expect(ask("nl-road", { currency: "USD" })).toMatchObject({ reason: { code: "other-currency" } });
	});
	it("half a cent goes up, also where a double holds it just below", () => {
		// 1.005 EUR.
		const rule = {
			eventDate: "2025-06-01",
			currencyPerSdr: 1.005 / 8.33,
			packages: [{ grossMassKg: 1, affected: true }],
		};
		expect(of("cmr", rule).capAmount).toEqual(eur(1.01));
	});
});
