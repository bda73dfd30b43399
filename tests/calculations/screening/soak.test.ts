/** Soak and cold starts. Case ids are those of the reference page on measurement; source and tolerance beside each. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
	escapeByHours,
	escapeByHoursSeen,
	hoursEconomic,
	hoursForTarget,
	meanTimeUpperH,
	posteriorAfterClean,
	startsNeeded,
	testTimeFactor,
} from "../../../src/calculations/screening/escape.ts";
import { type SoakInput, soak } from "../../../src/calculations/screening/soak.ts";
import { upperShare } from "../../../src/calculations/statistics/shares.ts";

const within = (got: number | null | undefined, wanted: number, tolerance: number) =>
	expect(Math.abs((got ?? Number.NaN) - wanted)).toBeLessThanOrEqual(tolerance);
const CLEAN: SoakInput = { hours: 24, failures: 0, coldStarts: 10, coldStartFailures: 0, confidence: 0.95 };
function judged(input: Partial<SoakInput>) {
	const answer = soak({ ...CLEAN, ...input });
	if (answer.status !== "assessed") throw new Error(answer.reason.code);
	return answer.result;
}

describe("published values", () => {
	test("S03, NIST e-Handbook 8.3.1.1, test time factors (90 % row printed 2.30 3.89 5.32 6.68 7.99 9.27, from memory; the rest recomputed in R): 1e-5", () => {
		const table = {
			0.6: [0.91629, 2.02231, 3.10538, 4.17526, 5.23662, 6.29192],
			0.8: [1.60944, 2.99431, 4.27903, 5.51505, 6.72098, 7.90599],
			0.9: [Math.LN10, 3.88972, 5.32232, 6.68078, 7.99359, 9.27467],
			0.95: [2.99573, 4.74386, 6.29579, 7.75366, 9.15352, 10.51303],
		};
		for (const [confidence, row] of Object.entries(table)) {
			row.forEach((wanted, failures) => {
				within(testTimeFactor(failures, Number(confidence)), wanted, 1e-5);
			});
		}
	});

	test("S05, classic table of success runs (from memory): whole numbers, exact", () => {
		const pairs = [
			[0.8, 0.9, 11],
			[0.9, 0.9, 22],
			[0.9, 0.95, 29],
			[0.95, 0.95, 59],
			[0.99, 0.9, 230],
			[0.99, 0.95, 299],
		] as const;
		expect(pairs.map(([reliability, confidence]) => startsNeeded(1 - reliability, confidence, 0))).toEqual(
			pairs.map(([, , starts]) => starts),
		);
	});
});

describe("independent recomputation (SciPy, closed forms)", () => {
	test("S01, exp(−t/T): 1e-8", () => {
		const wanted = [0.939413063, 0.60653066, 0.367879441, 0.135335283, 0.049787068, 0.01];
		[0.0625, 0.5, 1, 2, 3, 4.605170186].forEach((share, index) => {
			within(escapeByHours(share, 1), wanted[index] ?? 0, 1e-8);
		});
	});
	test("S02, clean time of zero failures, both forms: 1e-8", () => {
		const wanted = [1.609437912, Math.LN10, 2.995732274, 4.605170186];
		[0.8, 0.9, 0.95, 0.99].forEach((confidence, index) => {
			within(testTimeFactor(0, confidence), wanted[index] ?? 0, 1e-8);
		});
	});
	test("S06, clean cold starts at 95 %: exact", () => {
		expect([0.5, 0.3, 0.2, 0.1, 0.05, 0.02, 0.01].map((share) => startsNeeded(share, 0.95, 0))).toEqual([
			5, 9, 14, 29, 59, 149, 299,
		]);
	});
	test("S07 and E07, after 24 clean hours at T = 8 h: 1e-8", () => {
		within(escapeByHours(24, 8), 0.049787068, 1e-9);
		within(posteriorAfterClean(0.3, escapeByHours(24, 8)), 0.020891546, 1e-8);
	});
	test("S09, the hour at which cost and saving meet: 1e-4", () => {
		within(hoursEconomic(8, 0.2, 1.5, 300), 12.875503, 1e-4);
		expect(hoursEconomic(8, 0.01, 50, 300), "not worth one hour").toBe(0);
	});
	test("S10, a mean time known from one show in 4 h: 1e-8", () => {
		within(escapeByHoursSeen(24, 1, 4), 0.142857143, 1e-8);
		within(judged({ reproduced: { shows: 1, hours: 4 } }).escapeProbability, 0.142857143, 1e-8);
	});
	test("section 2 of the page: 24.36 h from 30 % to 2 % at T = 8 h (printed to 0.01)", () => {
		within(hoursForTarget(8, 0.3, 0.02), 24.36, 0.005);
		expect(hoursForTarget(8, 0.01, 0.02), "there already").toBe(0);
	});
	test("upper 80 % limit of a mean time, 2t/χ²(0.2, 2r), χ²(0.2, 6) = 3.070088 by SciPy 1.17.1: 1e-6", () => {
		within(meanTimeUpperH(3, 2.5, 0.8), 5 / 3.070088, 1e-6);
		expect(meanTimeUpperH(0, 2.5, 0.8)).toBe(Number.POSITIVE_INFINITY);
	});
	test("a half-hour test misses a fault of once in 8 h 94 % of the time; bench practice: ten of ten excludes 26 % of starts", () => {
		within(escapeByHours(0.5, 8), 0.94, 0.005);
		within(judged({}).coldStartFailureUpperBound, 0.259, 0.0005);
	});
});

describe("the calculation", () => {
	test("the whole mission: hours and starts multiply, each only if exercised", () => {
		const described = { meanTimeToShowH: 8, startFaultProbability: 0.2 };
		within(judged(described).escapeProbability, Math.exp(-3) * 0.8 ** 10, 1e-15);
		within(judged({ ...described, coldStarts: 0 }).escapeProbability, Math.exp(-3), 1e-15);
		within(judged({ ...described, hours: 0 }).escapeProbability, 0.8 ** 10, 1e-15);
	});
	test("a condition that was not exercised is not bounded", () => {
		expect(judged({ hours: 0 })).toMatchObject({ rateUpperBoundPerH: null, meanTimeLowerBoundH: null });
		expect(judged({ coldStarts: 0 }).coldStartFailureUpperBound).toBeNull();
		expect(judged({ hours: 0, coldStarts: 0 }).says.map((said) => said.sentence)).toEqual([
			"soak.no-hours",
			"soak.no-starts",
			"soak.only-exercised",
		]);
	});
	test("a fault that showed did not escape: no posterior, no target, and the bound counts it", () => {
		const got = judged({ failures: 1, meanTimeToShowH: 8, priorProbability: 0.3, targetProbability: 0.02 });
		expect(got).toMatchObject({ escapeProbability: null, posteriorProbability: null, hoursForTarget: null });
		within(got.rateUpperBoundPerH, 4.743865 / 24, 1e-7); // P03, one seen
		within(got.hoursForConfidence, 8 * 4.743865, 1e-5);
	});
	test("no posterior without a party's own prior", () => {
		expect(judged({ meanTimeToShowH: 8 }).posteriorProbability).toBeNull();
	});
	test("property: starts needed are the first that bring the upper bound down to the share", () => {
		const shares = fc.record({
			share: fc.double({ min: 0.01, max: 0.9, noNaN: true }),
			failures: fc.nat(3),
			confidence: fc.constantFrom(0.8, 0.9, 0.95, 0.99),
		});
		fc.assert(
			fc.property(shares, ({ share, failures, confidence }) => {
				const starts = startsNeeded(share, confidence, failures);
				expect(upperShare(failures, starts, confidence)).toBeLessThanOrEqual(share + 1e-9);
				if (starts - 1 > failures) {
					expect(upperShare(failures, starts - 1, confidence)).toBeGreaterThan(share - 1e-9);
				}
			}),
		);
	});
	test("property: more clean hours and more clean starts never exclude less", () => {
		const inputs = fc.record({ hours: fc.nat(500), coldStarts: fc.nat(100), more: fc.integer({ min: 1, max: 50 }) });
		fc.assert(
			fc.property(inputs, ({ hours, coldStarts, more }) => {
				const fault = { meanTimeToShowH: 8, startFaultProbability: 0.1, priorProbability: 0.3 };
				const less = judged({ ...fault, hours, coldStarts });
				const longer = judged({ ...fault, hours: hours + more, coldStarts: coldStarts + more });
				expect(longer.escapeProbability ?? 1).toBeLessThanOrEqual(less.escapeProbability ?? 1);
				expect(longer.posteriorProbability ?? 1).toBeLessThanOrEqual(less.posteriorProbability ?? 1);
			}),
		);
	});
});
