/** Shares of attempts; source and tolerance beside each. */
import { describe, expect, test } from "vitest";
import {
	clopperPearson,
	fisherExact,
	newcombeDifference,
	upperShare,
	wilson,
} from "../../../src/calculations/statistics/shares.ts";

const within = (got: number | null, wanted: number, tolerance: number) =>
	expect(Math.abs((got ?? Number.NaN) - wanted)).toBeLessThanOrEqual(tolerance);

describe("published values, 1e-6", () => {
	test.each([
		[
			"B_81_263, Two-sided confidence intervals for the single proportion (1998), table I (from memory)",
			81,
			263,
			[0.2527367, 0.3676219],
			[0.2552885, 0.3662096],
		],
		["B_0_20, the same (from memory)", 0, 20, [0, 0.1684335], [0, 0.1611252]],
		["B_1_29, the same (from memory)", 1, 29, [0.0008726, 0.1776443], [0.0061132, 0.1717552]],
		["B_4_20, Boost.Math documentation, NIST e-Handbook 7.2.4.1", 4, 20, [0.057334, 0.436614], [0.0806577, 0.4160174]],
	])("%s", (_, successes, trials, exact, score) => {
		clopperPearson(successes, trials, 0.95).forEach((bound, index) => {
			within(bound, exact[index] ?? Number.NaN, 1e-6);
		});
		wilson(successes, trials, 0.95).forEach((bound, index) => {
			within(bound, score[index] ?? Number.NaN, 1e-6);
		});
	});

	test("B_newc, Interval estimation for the difference between independent proportions (1998), method 10 (.0524 .3339, from memory)", () => {
		const [low, high] = newcombeDifference([56, 70], [48, 80], 0.95);
		within(low, 0.0524315, 1e-6);
		within(high, 0.3338727, 1e-6);
	});

	test("B_fish, examples of R's fisher.test (printed 0.0005367 two-sided; tea tasting 0.4857 two-sided = twice 0.2429)", () => {
		within(fisherExact([2, 17], [10, 13]), 0.000536724, 1e-8);
		within(fisherExact([3, 4], [1, 4]), 2 * 0.242857143, 1e-8);
	});
});

describe("independent recomputation (scipy and R), 1e-8", () => {
	test("B_fish: no start missed of 20, then 3 of 5; of 10, then 2 of 3", () => {
		within(fisherExact([20, 20], [2, 5]), 0.004347826, 1e-8);
		within(fisherExact([10, 10], [1, 3]), 0.038461538, 1e-8);
	});

	test("B_zero: none of n leaves 1 − 0.05^(1/n) (closed form)", () => {
		[3, 10, 20, 30, 59, 100, 300, 1000].forEach((n) => {
			within(upperShare(0, n, 0.95), 1 - 0.05 ** (1 / n), 1e-10);
		});
		within(upperShare(0, 3, 0.95), 0.63159685, 1e-8);
		within(upperShare(0, 59, 0.95), 0.04950761, 1e-8);
	});
});

test("nothing to compare gives p = 1", () => {
	expect(fisherExact([5, 5], [3, 3])).toBe(1);
	expect(fisherExact([0, 5], [0, 3])).toBe(1);
});
