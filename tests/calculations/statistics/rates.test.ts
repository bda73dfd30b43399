/** Rates of events; source and tolerance beside each. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { binomialProbability } from "../../../src/calculations/statistics/distributions.ts";
import { equalRatesP, garwood, rateRatioInterval, upperRate } from "../../../src/calculations/statistics/rates.ts";

const within = (got: number | null, wanted: number, tolerance: number) =>
	expect(Math.abs((got ?? Number.NaN) - wanted)).toBeLessThanOrEqual(tolerance);

describe("published values", () => {
	test("P01, example of R's poisson.test (printed 4.753125 6.692709): 1e-6", () => {
		const [low, high] = garwood(137, 24.19893, 0.95);
		within(low, 4.7531248, 1e-6);
		within(high, 6.6927093, 1e-6);
	});

	test.each([
		[0.9, 17.382126, 34.91608],
		[0.95, 16.178682, 36.904932],
		[0.99, 13.995374, 41.000413],
	])(
		"P02, Fiducial limits for the Poisson distribution (1936), 25 events (printed to 0.01, seen as quoted): %f, 1e-6",
		(confidence, low, high) => {
			const got = garwood(25, 1, confidence);
			within(got[0], low, 1e-6);
			within(got[1], high, 1e-6);
		},
	);

	test("P03, one-sided 95 % bounds; the first is printed 2.996 and its two-sided 3.689 in the manual of epitools: 1e-6", () => {
		[2.995732, 4.743865, 6.295794, 7.753657, 9.153519, 10.513035].forEach((bound, count) => {
			within(upperRate(count, 1, 0.95), bound, 1e-6);
		});
		within(garwood(0, 1, 0.95)[1], 3.688879, 1e-6);
	});
});

describe("independent recomputation (R poisson.test, relative 1e-5)", () => {
	test("P05: 5 in 1 against 0 in 24", () => {
		within(equalRatesP(5, 1, 0, 24), 1.024e-7, 1e-12);
		const [low, high] = rateRatioInterval(5, 1, 0, 24, 0.95);
		within(low, 21.992541, 2e-4);
		expect(high).toBeNull();
	});

	test("P06: 3 in 1 against 0 in 1", () => {
		within(equalRatesP(3, 1, 0, 1), 0.25, 2.5e-6);
		within(rateRatioInterval(3, 1, 0, 1, 0.95)[0], 0.413231, 4e-6);
	});

	test("the bisected tail equals the sum over every outcome", () => {
		fc.assert(
			fc.property(
				fc.nat(40),
				fc.nat(40),
				fc.integer({ min: 1, max: 50 }),
				fc.integer({ min: 1, max: 50 }),
				(x1, x2, t1, t2) => {
					const n = x1 + x2;
					const share = t1 / (t1 + t2);
					let wanted = 0;
					for (let k = 0; k <= n; k++) {
						const next = binomialProbability(k, n, share);
						if (next <= binomialProbability(x1, n, share) * (1 + 1e-7)) wanted += next;
					}
					expect(Math.abs(equalRatesP(x1, t1, x2, t2) - Math.min(1, wanted))).toBeLessThan(1e-9);
				},
			),
		);
	});
});

test("huge counts are answered at once", () => {
	const p = equalRatesP(1_000_000_000, 1, 1_000_100_000, 1);
	// z = 100000/√2000100000 = 2.236, p = 0.02535 by the normal approximation, good to four digits here
	expect(Math.abs(p - 0.02535)).toBeLessThan(1e-4);
});
