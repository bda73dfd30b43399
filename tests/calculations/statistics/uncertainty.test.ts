/** Checks of the combination of uncertainties; source and tolerance beside each. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tQuantile } from "../../../src/calculations/statistics/distributions.ts";
import {
	rectangularSumCumulative,
	rectangularSumHalfWidth,
} from "../../../src/calculations/statistics/rectangular-sum.ts";
import { combined, errorDistribution } from "../../../src/calculations/statistics/uncertainty.ts";

const within = (got: number, wanted: number, tolerance: number) =>
	expect(Math.abs(got - wanted)).toBeLessThanOrEqual(tolerance);
const INFINITE = Number.POSITIVE_INFINITY;

describe("published values", () => {
	test("M01, GUM example H.1 (JCGM 100:2008): 32 nm, 16 degrees of freedom, U99 93 nm; unrounded values to 1e-5", () => {
		const parts = [25, 9.681942, 2.886787, 16.599027].map((standardUncertainty, index) => ({
			standardUncertainty,
			degreesOfFreedom: [18, 25.4473, 50, 2][index] ?? Number.NaN,
		}));
		const { standardUncertainty, degreesOfFreedom } = combined(parts);
		within(standardUncertainty, 31.663879, 1e-5);
		within(degreesOfFreedom, 16.75186, 1e-4); // the second degree of freedom is printed to six digits
		within(tQuantile(0.995, Math.floor(degreesOfFreedom)), 2.9207816, 1e-6);
		within(errorDistribution({ rectangular: [], normal: parts }).halfWidth(0.99), 92.4833, 1e-3);
	});

	test("M02, inputs of the example of the Welch-Satterthwaite function of the R package metRology; 1e-8", () => {
		const sensitivities = [1, 2, 3, 0.5];
		const got = combined(
			[0.1, 0.3, 0.2, 1.1].map((u, index) => ({
				standardUncertainty: u * (sensitivities[index] ?? Number.NaN),
				degreesOfFreedom: [INFINITE, 6, 8, 3][index] ?? Number.NaN,
			})),
		);
		within(got.degreesOfFreedom, 15.607960958, 1e-8);
		within(got.standardUncertainty, 1.016120072, 1e-8);
	});

	test("M04, coverage factors of one rectangular and of a triangle (GUM table G.2 and EA-4/02 print two digits); 1e-6", () => {
		within(rectangularSumHalfWidth([Math.sqrt(3)], 0.95), 1.645448, 1e-6);
		within(rectangularSumHalfWidth([Math.sqrt(3)], 0.99), 1.71473, 1e-6);
		const triangle = Math.sqrt(6) / 2; // two equal rectangulars make a triangle of unit standard deviation
		within(rectangularSumHalfWidth([triangle, triangle], 0.95), 1.901767, 1e-6);
	});

	test("M14, JCGM 101:2008 table 3: four rectangulars, printed ±3.88; exact value to 1e-8", () => {
		const width = Math.sqrt(3);
		within(rectangularSumHalfWidth([width, width, width, width], 0.95), 3.879406741, 1e-8);
	});
});

describe("independent recomputation", () => {
	test("two rectangulars: c − √(0.2·a·b), the trapezium's tail solved by hand", () => {
		const [a, b] = [0.08015, 0.0799];
		within(rectangularSumHalfWidth([a, b], 0.95), a + b - Math.sqrt(0.2 * a * b), 1e-12);
	});

	test("a small part is gathered into the largest within the stated 5e-5", () => {
		const exact = rectangularSumHalfWidth([1, 0.0101], 0.95);
		const near = rectangularSumHalfWidth([1, 0.0099], 0.95);
		expect(Math.abs(near / exact - 1)).toBeLessThan(5e-5);
	});
});

test("property: half width and distribution agree, and the half width never passes the sum of the parts", () => {
	const width = fc.double({ min: 1e-6, max: 1e3, noNaN: true });
	fc.assert(
		fc.property(
			fc.array(width, { minLength: 1, maxLength: 6 }),
			fc.double({ min: 0.5, max: 0.999, noNaN: true }),
			(widths, p) => {
				const half = rectangularSumHalfWidth(widths, p);
				expect(half).toBeLessThanOrEqual(widths.reduce((total, part) => total + part, 0) * (1 + 1e-12));
				const inside = rectangularSumCumulative(widths, half) - rectangularSumCumulative(widths, -half);
				expect(Math.abs(inside - p)).toBeLessThan(1e-7);
			},
		),
	);
});

test("a spread whose square is too small to be held counts as none", () => {
	const tiny = errorDistribution({
		rectangular: [5e-324],
		normal: [{ standardUncertainty: 1e-200, degreesOfFreedom: 3 }],
	});
	expect([tiny.standardUncertainty, tiny.halfWidth(0.95), tiny.cumulative(0), tiny.cumulative(-1)]).toEqual([
		0, 0, 1, 0,
	]);
});

test("rounding does not cost a degree of freedom: five repeats alone are judged at four, whatever their scatter", () => {
	for (const standardUncertainty of [7.297944, 0.1, 1 / 3, 1e-7, 12345.678]) {
		const parts = { rectangular: [], normal: [{ standardUncertainty, degreesOfFreedom: 4 }] };
		within(errorDistribution(parts).halfWidth(0.95) / standardUncertainty, 2.776445105197794, 1e-9);
	}
});

test("no part at all is an exact value", () => {
	const exact = errorDistribution({ rectangular: [0], normal: [{ standardUncertainty: 0, degreesOfFreedom: 1 }] });
	expect(exact.halfWidth(0.95)).toBe(0);
	expect([exact.cumulative(-1), exact.cumulative(0), exact.cumulative(1)]).toEqual([0, 1, 1]);
});
