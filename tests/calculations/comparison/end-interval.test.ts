/** The interval that one end has by itself; published cases and hand figures, as named. */
import { expect, test } from "vitest";
import { endInterval } from "../../../src/calculations/comparison/end-interval.ts";
import type { ReadingRule } from "../../../src/calculations/comparison/types.ts";

const rule = (kind: ReadingRule["kind"], more: Partial<ReadingRule> = {}): ReadingRule => ({
	kind,
	comparability: "any-bench",
	betterIs: "neither",
	...more,
});
const close = (got: readonly (number | null)[] | null | undefined, wanted: readonly number[], tolerance: number) =>
	wanted.forEach((bound, index) => {
		expect(Math.abs((got?.[index] ?? Number.NaN) - bound)).toBeLessThanOrEqual(tolerance);
	});

test("a rate: 137 in 24.19893 (P01, example of R's poisson.test): 1e-6", () => {
	const got = endInterval(rule("count"), { count: 137, exposure: { amount: 24.19893, unit: "h" } });
	close(got?.interval, [4.7531248, 6.6927093], 1e-6);
	expect(got?.of).toBe("rate");
});
test("a share: 4 of 20 (B_4_20, Boost.Math documentation): 1e-6", () => {
	close(endInterval(rule("outcome"), { trials: 20, successes: 4 })?.interval, [0.057334, 0.436614], 1e-6);
});
test("a voltmeter of ±(0.5 % + 2 counts) at 12.03 V: one rectangular of ±0.08015, 95 % of it (by hand)", () => {
	const instrument = { id: "m", percentOfReading: 0.5, counts: 2, resolution: 0.01 };
	const half = 0.95 * 0.08015;
	close(endInterval(rule("measured"), { values: [12.03], instrument })?.interval, [12.03 - half, 12.03 + half], 1e-12);
});
test("five runs: mean 10406.6, t·s/√5 with s 16.3187 (by hand)", () => {
	const half = (2.776445105 * 16.318701) / Math.sqrt(5);
	const got = endInterval(rule("score"), { values: [10412, 10388, 10431, 10405, 10397] });
	close(got?.interval, [10406.6 - half, 10406.6 + half], 1e-4);
});
test("nothing is invented: one run, an unknown meter, a count without exposure, an end not tested", () => {
	expect(endInterval(rule("score"), { values: [10412] })).toEqual({ value: 10412, interval: null, of: "value" });
	expect(endInterval(rule("measured"), { values: [1], instrument: { id: "m" } })?.interval).toBeNull();
	expect(endInterval(rule("count"), { count: 3 })).toBeNull();
	expect(endInterval(rule("count"), { notTested: "no-time" })).toBeNull();
});
test("a lifetime counter is what it is", () => {
	expect(endInterval(rule("count", { counter: "lifetime" }), { count: 7 })).toEqual({
		value: 7,
		interval: [7, 7],
		of: "counter",
	});
});
