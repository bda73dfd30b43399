/**
 * Published values: NIST Statistical Reference Datasets, univariate summary statistics, all nine sets with their certified
 * mean and standard deviation. Data and certified values as in the tests of the GNU Scientific Library 2.7.1 (Debian source
 * package, `statistics/test_nist.c`), the numerical-accuracy sets by their rule. Tolerances: what a two-pass algorithm
 * reaches in doubles, as measured here, less one digit.
 */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { summary } from "../../../src/calculations/statistics/summary.ts";

const NIST = JSON.parse(readFileSync(new URL("nist-univariate.json", import.meta.url), "utf8"));
const alternating = (first: number, low: number, high: number) => [
	first,
	...Array.from({ length: 1000 }, (_, index) => (index % 2 === 0 ? low : high)),
];

test.each([
	["Lew (200)", NIST.Lew, -177.435, 277.332168044316, 1e-14],
	["Lottery (218)", NIST.Lottery, 518.95871559633, 291.699727470969, 1e-14],
	["PiDigits (5000)", [...NIST.PiDigits].map(Number), 4.5348, 2.86733906028871, 1e-14],
	["Michelso (100)", NIST.Michelso, 299.8524, 0.0790105478190518, 1e-13],
	["U01 NumAcc1", [10000001, 10000003, 10000002], 10000002, 1, 1e-14],
	["U02 NumAcc2", alternating(1.2, 1.1, 1.3), 1.2, 0.1, 1e-13],
	["U03 NumAcc3", alternating(1000000.2, 1000000.1, 1000000.3), 1000000.2, 0.1, 1e-9],
	["U04 NumAcc4", alternating(10000000.2, 10000000.1, 10000000.3), 10000000.2, 0.1, 1e-8],
	["U05 Mavro (50)", NIST.Mavro, 2.001856, 0.000429123454003053, 1e-12],
] as const)("NIST StRD %s", (_, values, mean, standardDeviation, tolerance) => {
	const got = summary(values);
	expect(Math.abs(got.mean / mean - 1)).toBeLessThan(tolerance);
	expect(Math.abs((got.standardDeviation ?? Number.NaN) / standardDeviation - 1)).toBeLessThan(tolerance);
});

test("a single value shows no spread; no value is refused", () => {
	expect(summary([3])).toEqual({ n: 1, mean: 3, standardDeviation: null });
	expect(() => summary([])).toThrow(RangeError);
});
