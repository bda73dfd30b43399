/**
 * Published values: NIST Statistical Reference Datasets, univariate summary statistics, certified values (read in a
 * mirror of the NIST files). Tolerances: those the collection gives for a two-pass algorithm in doubles.
 */
import { expect, test } from "vitest";
import { summary } from "../../../src/calculations/statistics/summary.ts";

const alternating = (first: number, low: number, high: number) => [
	first,
	...Array.from({ length: 1000 }, (_, index) => (index % 2 === 0 ? low : high)),
];
const MAVRO = [
	2.0018, 2.0017, 2.0018, 2.0019, 2.0018, 2.0017, 2.0015, 2.0014, 2.0015, 2.0015, 2.0017, 2.0018, 2.0018, 2.0019,
	2.0019, 2.0021, 2.002, 2.0016, 2.0014, 2.0013, 2.0013, 2.0015, 2.0015, 2.0016, 2.0015, 2.0014, 2.0013, 2.0014, 2.0015,
	2.0014, 2.0015, 2.0016, 2.0015, 2.0016, 2.0019, 2.002, 2.002, 2.0021, 2.0022, 2.0023, 2.0024, 2.0025, 2.0027, 2.0026,
	2.0026, 2.0026, 2.0027, 2.0026, 2.0025, 2.0024,
];

test.each([
	["U01 NumAcc1", [10000001, 10000003, 10000002], 10000002, 1, 1e-9],
	["U02 NumAcc2", alternating(1.2, 1.1, 1.3), 1.2, 0.1, 1e-12],
	["U03 NumAcc3", alternating(1000000.2, 1000000.1, 1000000.3), 1000000.2, 0.1, 1e-9],
	["U04 NumAcc4", alternating(10000000.2, 10000000.1, 10000000.3), 10000000.2, 0.1, 1e-8],
	["U05 Mavro", MAVRO, 2.001856, 0.000429123454003053, 1e-12],
])("NIST StRD %s", (_, values, mean, standardDeviation, tolerance) => {
	const got = summary(values);
	expect(Math.abs(got.mean / mean - 1)).toBeLessThan(tolerance);
	expect(Math.abs((got.standardDeviation ?? Number.NaN) / standardDeviation - 1)).toBeLessThan(tolerance);
});

test("a single value shows no spread; no value is refused", () => {
	expect(summary([3])).toEqual({ n: 1, mean: 3, standardDeviation: null });
	expect(() => summary([])).toThrow(RangeError);
});
