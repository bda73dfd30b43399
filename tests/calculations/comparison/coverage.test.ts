/**
 * Coverage by simulation: over 10,000 seeded trials a 95 % interval holds the true value in 93 to 97 % of them. The
 * standard error of such a share is 0.2 %. Exact intervals of counts may cover more, never less.
 */
import { describe, expect, test } from "vitest";
import { readingComparison } from "../../../src/calculations/comparison/reading-comparison.ts";
import type { ReadingComparison, ReadingComparisonInput } from "../../../src/calculations/comparison/types.ts";
import { garwood } from "../../../src/calculations/statistics/rates.ts";
import { clopperPearson } from "../../../src/calculations/statistics/shares.ts";

const TRIALS = 10_000;

/** A seeded generator (mulberry32): the same trials at every run. */
function random(seed: number): () => number {
	let state = seed;
	return () => {
		state = (state + 0x6d2b79f5) | 0;
		let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
		mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
		return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
	};
}
function gauss(draw: () => number): () => number {
	return () => Math.sqrt(-2 * Math.log(1 - draw())) * Math.cos(2 * Math.PI * draw());
}
function coverage(seed: number, trial: (draw: () => number, normal: () => number) => boolean): number {
	const draw = random(seed);
	const normal = gauss(draw);
	let held = 0;
	for (let index = 0; index < TRIALS; index++) if (trial(draw, normal)) held++;
	return held / TRIALS;
}
function holds(input: ReadingComparisonInput, truth: number): boolean {
	const { result } = readingComparison(input) as { result: ReadingComparison };
	const [low, high] = result.interval ?? [Number.NaN, Number.NaN];
	return (low ?? Number.NEGATIVE_INFINITY) <= truth && truth <= (high ?? Number.POSITIVE_INFINITY);
}
const between = (share: number) => {
	expect(share).toBeGreaterThanOrEqual(0.93);
	expect(share).toBeLessThanOrEqual(0.97);
};
const SCORE = { kind: "score", comparability: "same-bench", betterIs: "higher" } as const;

describe("95 % intervals cover 93 to 97 %", () => {
	test("two instruments, rectangular errors in percent and counts", () => {
		const end = (truth: number, draw: () => number, id: string) => ({
			values: [truth + (2 * draw() - 1) * (0.005 * truth + 0.02)],
			instrument: { id, percentOfReading: 0.5, counts: 2, resolution: 0.01 },
		});
		const rule = { kind: "measured", comparability: "stated-uncertainty", betterIs: "neither" } as const;
		between(
			coverage(1, (draw) => holds({ ...rule, departure: end(12, draw, "a"), arrival: end(11.9, draw, "b") }, -0.1)),
		);
	});
	test("certificates and repeats, Student's t at the effective degrees of freedom", () => {
		const end = (truth: number, normal: () => number, id: string) => {
			const bias = 0.02 * normal();
			return {
				values: [1, 2, 3, 4].map(() => truth + bias + 0.05 * normal()),
				instrument: { id, certificate: { expanded: 0.04, k: 2 } },
			};
		};
		const rule = { kind: "measured", comparability: "stated-uncertainty", betterIs: "neither" } as const;
		between(
			coverage(2, (_, normal) =>
				holds({ ...rule, departure: end(5, normal, "a"), arrival: end(5.2, normal, "b") }, 0.2),
			),
		);
	});
	test("runs at both ends, unequal scatter (Welch)", () => {
		const runs = (mean: number, sd: number, n: number, normal: () => number) => ({
			values: Array.from({ length: n }, () => mean + sd * normal()),
			benchId: "b",
		});
		between(
			coverage(3, (_, normal) =>
				holds({ ...SCORE, departure: runs(10_400, 20, 5, normal), arrival: runs(10_300, 40, 4, normal) }, -100),
			),
		);
	});
	test("one run on arrival against five before (prediction)", () => {
		const one = (normal: () => number) => ({ values: [10_300 + 20 * normal()], benchId: "b" });
		const five = (normal: () => number) => ({
			values: Array.from({ length: 5 }, () => 10_400 + 20 * normal()),
			benchId: "b",
		});
		// A further run equal in its distribution falls into the interval around zero difference.
		between(coverage(4, (_, normal) => holds({ ...SCORE, departure: five(normal), arrival: one(normal) }, -100)));
	});
	test("a ratio of two values with repeats", () => {
		const end = (mean: number, normal: () => number) => ({
			values: Array.from({ length: 6 }, () => mean + 2 * normal()),
			benchId: "b",
		});
		const rule = { kind: "ratio", comparability: "same-bench", betterIs: "higher" } as const;
		between(coverage(5, (_, normal) => holds({ ...rule, departure: end(50, normal), arrival: end(45, normal) }, 0.9)));
	});
	test("two benches through a control item, scores", () => {
		const runs = (mean: number, benchId: string, normal: () => number) => ({
			values: Array.from({ length: 4 }, () => mean * (1 + 0.004 * normal())),
			benchId,
		});
		between(
			coverage(6, (_, normal) =>
				holds(
					{
						...SCORE,
						departure: runs(10_000, "shop", normal),
						arrival: runs(0.85 * 9400, "home", normal),
						control: { departure: runs(8000, "shop", normal), arrival: runs(0.85 * 8000, "home", normal) },
					},
					0.94,
				),
			),
		);
	});
});

describe("exact intervals of counts never cover less than 95 % (0.6 % allowed for chance, three standard errors)", () => {
	const poisson = (mean: number, draw: () => number) => {
		let [product, count] = [draw(), 0];
		while (product > Math.exp(-mean)) {
			product *= draw();
			count++;
		}
		return count;
	};
	test("a rate", () => {
		for (const mean of [0.7, 3, 12]) {
			const share = coverage(7, (draw) => {
				const [low, high] = garwood(poisson(mean, draw), 1, 0.95);
				return low <= mean && mean <= high;
			});
			expect(share).toBeGreaterThanOrEqual(0.944);
		}
	});
	test("a share", () => {
		for (const [n, p] of [
			[10, 0.1],
			[20, 0.5],
		] as const) {
			const share = coverage(8, (draw) => {
				const seen = Array.from({ length: n }, () => Number(draw() < p)).reduce((sum, hit) => sum + hit, 0);
				const [low, high] = clopperPearson(seen, n, 0.95);
				return low <= p && p <= high;
			});
			expect(share).toBeGreaterThanOrEqual(0.944);
		}
	});
	test("the ratio of two rates", () => {
		const share = coverage(9, (draw) =>
			holds(
				{
					kind: "count",
					comparability: "any-bench",
					betterIs: "lower",
					departure: { count: poisson(6, draw), exposure: { amount: 6, unit: "h" } },
					arrival: { count: poisson(8, draw), exposure: { amount: 4, unit: "h" } },
				},
				2,
			),
		);
		expect(share).toBeGreaterThanOrEqual(0.944);
	});
});
