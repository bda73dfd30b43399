/** Comparison of samples; source and tolerance beside each. */
import { describe, expect, test } from "vitest";
import { holmAdjusted } from "../../../src/calculations/statistics/adjustment.ts";
import {
	differenceInterval,
	equivalenceP,
	noDifferenceP,
	predictionInterval,
	type SpreadSummary,
	welchDifference,
} from "../../../src/calculations/statistics/means.ts";
import { summary } from "../../../src/calculations/statistics/summary.ts";

const relative = (got: number, wanted: number, tolerance: number) =>
	expect(Math.abs(got / wanted - 1)).toBeLessThanOrEqual(tolerance);
const spread = (values: readonly number[]) => summary(values) as SpreadSummary;
const range = (from: number, to: number) => Array.from({ length: to - from + 1 }, (_, index) => from + index);
const DEPARTURE = [10412, 10388, 10431, 10405, 10397];

test("T01, published: example of R's t.test (-5.4349, 21.982, 1.855e-05, -11.052802 -4.947198); relative 1e-5", () => {
	const difference = welchDifference(spread(range(7, 20)), spread(range(1, 10)));
	relative(difference.difference / difference.standardError, -5.43493, 1e-5);
	relative(difference.degreesOfFreedom, 21.982212, 1e-5);
	relative(noDifferenceP(difference), 1.855282e-5, 1e-5);
	const [low, high] = differenceInterval(difference, 0.95);
	relative(low, -11.052802, 1e-5);
	relative(high, -4.947198, 1e-5);
});

describe("independent recomputation (R t.test, predict.lm); relative 1e-5", () => {
	test("T05: five runs of a score, then three lower ones", () => {
		const departure = spread(DEPARTURE);
		relative(departure.mean, 10406.6, 1e-9);
		relative(departure.standardDeviation, 16.318701, 1e-5);
		const difference = welchDifference(spread([10120, 10145, 10098]), departure);
		relative(difference.difference / difference.standardError, 18.528535, 1e-5);
		relative(noDifferenceP(difference), 0.000234882779, 1e-5);
		const [low, high] = differenceInterval(difference, 0.95);
		relative(low, 238.154328, 1e-5);
		relative(high, 333.045672, 1e-5);
		[predictionInterval(departure, 1, 0.95), predictionInterval(departure, 3, 0.95)].flat().forEach((bound, index) => {
			relative(bound, [10356.9676, 10456.2324, 10373.5117, 10439.6883][index] ?? Number.NaN, 1e-8);
		});
	});

	test("T06: equivalence within 1 %", () => {
		const difference = welchDifference(spread(DEPARTURE), spread([10380, 10402, 10391]));
		relative(difference.difference, -15.6, 1e-5);
		const { lower, upper } = equivalenceP(difference, 104.066);
		relative(lower, 6.107948e-5, 1e-5);
		relative(upper, 1.157109e-5, 1e-5);
		relative(noDifferenceP(difference), 0.1600905, 1e-5);
		const [low, high] = differenceInterval(difference, 0.9);
		relative(low, -34.544369, 1e-5);
		relative(high, 3.344369, 1e-5);
	});

	test("T10: Holm (R p.adjust), exact to 1e-12", () => {
		[0.03, 0.06, 0.06, 0.02].forEach((wanted, index) => {
			expect(Math.abs((holmAdjusted([0.01, 0.04, 0.03, 0.005])[index] ?? Number.NaN) - wanted)).toBeLessThan(1e-12);
		});
	});
});
