/** Expected loss and premiums by id from the claims page, section 9. E1 is published (course notes); others computed there. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type InsuranceInput, insurance } from "../../../src/calculations/insurance/insurance.ts";

const eur = (amount: number) => ({ amount, currency: "EUR" });
const of = (input: InsuranceInput) => {
	const { result } = insurance(input);
	if (result === null) throw new Error("not assessed");
	return result;
};
const MEASURED = 16 / 3234;

describe("worked cases", () => {
	it("E1: a loss of 100 with a probability of 0.25 costs 25 on average", () => {
		expect(of({ value: eur(100), damageProbability: 0.25 }).expectedLoss).toEqual(eur(25));
	});
	it("E1: of a wealth of 120 that leaves 95 on average", () => {
		expect(of({ value: eur(100), damageProbability: 0.25, wealth: eur(120) }).certaintyEquivalent).toEqual(eur(95));
	});
	it("E2: the same with the square root as utility: worth 87.121 for certain, insured for at most 32.879 (to the cent)", () => {
		const offer = { value: eur(100), damageProbability: 0.25, wealth: eur(120), relativeRiskAversion: 0.5 };
		expect(of(offer)).toMatchObject({ certaintyEquivalent: eur(87.12), maximumPremium: eur(32.88) });
		// The same loss of a part of a dearer item, which is all that there is.
		expect(of({ ...offer, value: eur(120), residualValue: eur(20) }).maximumPremium).toEqual(eur(32.88));
		// To the page's third decimal, in a currency a thousand times as small.
		const fine = of({ ...offer, value: eur(100_000), wealth: eur(120_000) });
		expect(fine.certaintyEquivalent?.amount).toBeCloseTo(87_121, -0.31);
		expect(fine.maximumPremium.amount).toBeCloseTo(32_879, -0.31);
	});
	it("E3: 16 of 3234 parcels, 1200: 5.94", () => {
		expect(of({ value: eur(1200), damageProbability: MEASURED }).expectedLoss).toEqual(eur(5.94));
	});
	it("E5: aversion 0.001, probability 0.01, loss 1200: 22.936 where 12 is fair (to the cent)", () => {
		const result = of({ value: eur(1200), damageProbability: 0.01, riskAversion: 0.001 });
		expect(result.maximumPremium).toEqual(eur(22.94));
		expect(result.expectedLoss).toEqual(eur(12));
	});
	it("E7: four legs: 1.964 %", () => {
		expect(of({ value: eur(1200), damageProbability: MEASURED, legs: 4 }).anyDamageProbability).toBeCloseTo(0.01964, 5);
	});
	it("breaks even at premium / ((V − deductible) − q·cap), where the highest premium of the risk-neutral is that premium", () => {
		const offer = {
			value: eur(1200),
			deductible: eur(50),
			capAmount: eur(24),
			recoveryProbability: 0.5,
			premium: eur(10),
		};
		const { breakEvenProbability } = of({ ...offer, damageProbability: 0.01 });
		expect(breakEvenProbability).toBeCloseTo(10 / (1150 - 12), 12);
		expect(of({ ...offer, damageProbability: breakEvenProbability ?? 0 }).maximumPremium).toEqual(eur(10));
	});
});

describe("a relative aversion, against its utility written out", () => {
	const utilities: readonly (readonly [number, (wealth: number) => number])[] = [
		[0, (wealth) => wealth],
		[0.5, Math.sqrt],
		[1, Math.log],
		[2, (wealth) => -1 / wealth],
		[5, (wealth) => -(wealth ** -4)],
	];
	it.each(utilities)(
		"of %s makes insured and not insured worth the same (to what half a cent of premium changes)",
		(relativeRiskAversion, utility) => {
			const offer = {
				value: eur(1200),
				damageProbability: 0.3,
				capAmount: eur(400),
				recoveryProbability: 0.5,
				deductible: eur(100),
				wealth: eur(1500),
				relativeRiskAversion,
			};
			const { maximumPremium, certaintyEquivalent } = of(offer);
			const without = 0.7 * utility(1500) + 0.15 * utility(300) + 0.15 * utility(700);
			const insured = (premium: number) => 0.7 * utility(1500 - premium) + 0.3 * utility(1400 - premium);
			expect(insured(maximumPremium.amount - 0.0051)).toBeGreaterThan(without);
			expect(insured(maximumPremium.amount + 0.0051)).toBeLessThan(without);
			expect(utility((certaintyEquivalent?.amount ?? 0) - 0.0051)).toBeLessThan(without);
			expect(utility((certaintyEquivalent?.amount ?? 0) + 0.0051)).toBeGreaterThan(without);
		},
	);
	it("of 1 or more finds no premium where all that there is may be lost; below 1 it does", () => {
		const all = { value: eur(1200), damageProbability: 0.01, wealth: eur(1200) };
		for (const relativeRiskAversion of [1, 2])
			expect(insurance({ ...all, relativeRiskAversion })).toMatchObject({ reason: { code: "aversion-too-great" } });
		// W·(1 − 0.99²) by hand.
		expect(of({ ...all, relativeRiskAversion: 0.5 }).maximumPremium).toEqual(eur(23.88));
	});
});

describe("properties", () => {
	const offers = fc.record({
		value: fc.integer({ min: 1, max: 100_000 }).map(eur),
		damageProbability: fc.double({ min: 0, max: 1, noNaN: true }),
		recoveryProbability: fc.double({ min: 0, max: 1, noNaN: true }),
		capAmount: fc.integer({ min: 0, max: 100_000 }).map(eur),
		deductible: fc.integer({ min: 0, max: 1000 }).map(eur),
		legs: fc.integer({ min: 1, max: 20 }),
	});
	it("all figures are finite, in range, and the averse pay no less than the neutral (a cent for rounding)", () => {
		fc.assert(
			fc.property(offers, fc.double({ min: 1e-7, max: 0.005, noNaN: true }), (offer, riskAversion) => {
				const neutral = of(offer);
				const { result: averse } = insurance({ ...offer, riskAversion });
				expect(neutral.anyDamageProbability).toBeGreaterThanOrEqual(offer.damageProbability - 1e-12);
				expect(neutral.anyDamageProbability).toBeLessThanOrEqual(1);
				expect(neutral.expectedLoss.amount).toBeGreaterThanOrEqual(0);
				expect(neutral.expectedLoss.amount).toBeLessThanOrEqual(offer.value.amount);
				if (averse === null) return;
				// A deductible over what the carrier leaves can make insurance the greater gamble: then nothing is paid for it by either.
				if (offer.deductible.amount <= offer.value.amount - Math.min(offer.value.amount, offer.capAmount.amount))
					expect(averse.maximumPremium.amount).toBeGreaterThanOrEqual(neutral.maximumPremium.amount - 0.011);
				expect(averse.maximumPremium.amount).toBeLessThanOrEqual(offer.value.amount);
			}),
		);
	});
	it("an aversion near none gives the premium of the neutral (a cent)", () => {
		fc.assert(
			fc.property(offers, (offer) => {
				const near = of({ ...offer, riskAversion: 1e-12 }).maximumPremium.amount;
				expect(Math.abs(near - of(offer).maximumPremium.amount)).toBeLessThanOrEqual(0.0101);
			}),
		);
	});
	it("a deductible that is the greater gamble makes insurance worth nothing to anyone, never less", () => {
		const offer = { value: eur(1200), damageProbability: 0.1, capAmount: eur(1200), recoveryProbability: 1 };
		const premiums = [{}, { riskAversion: 0.001 }, { relativeRiskAversion: 2, wealth: eur(5000) }].map(
			(aversion) => of({ ...offer, deductible: eur(100), ...aversion }).maximumPremium,
		);
		expect(premiums).toEqual([eur(0), eur(0), eur(0)]);
	});
	it("what cannot happen costs nothing, though it were all that there is", () => {
		const never = { value: eur(1200), damageProbability: 0, wealth: eur(1200), relativeRiskAversion: 2 };
		expect(of(never)).toMatchObject({ maximumPremium: eur(0), certaintyEquivalent: eur(1200) });
	});
	it("without any aversion, of either kind, it says that it reckons as the risk-neutral do", () => {
		const saysNeutral = (aversion: Partial<InsuranceInput>) =>
			insurance({ value: eur(1200), damageProbability: 0.1, ...aversion }).cautions.some(
				({ sentence }) => sentence === "insurance.neutral",
			);
		const relative = (relativeRiskAversion: number) => ({ relativeRiskAversion, wealth: eur(5000) });
		expect([{}, { riskAversion: 0 }, relative(0)].map(saysNeutral)).toEqual([true, true, true]);
		expect([{ riskAversion: 0.001 }, relative(0.5)].map(saysNeutral)).toEqual([false, false]);
	});
	it("an aversion that no number holds is not assessed; nothing left to insure is said", () => {
		expect(insurance({ value: eur(1200), damageProbability: 0.01, riskAversion: 1 })).toMatchObject({
			reason: { code: "aversion-too-great" },
		});
		const covered = insurance({
			value: eur(20),
			damageProbability: 0.01,
			capAmount: eur(24),
			recoveryProbability: 1,
			premium: eur(1),
		});
		expect(covered.result).toMatchObject({ maximumPremium: eur(0), breakEvenProbability: null });
		expect(covered.cautions.map(({ sentence }) => sentence)).toContain("insurance.no-exposure");
	});
});
