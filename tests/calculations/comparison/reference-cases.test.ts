/**
 * Further cases of the reference page on measurement by id, and of the page on bench practice; source, kind and tolerance
 * beside each. Other ids stand with the function that they check: M01 M02 M04 M14 (uncertainty), M05-M08 M11 P05 P06
 * (reading-comparison), P01-P03 (rates), B_* (shares), T01 T05 T06 T10 (means), U01-U05 (summary), S* (screening), E*
 * (origin). Not used by the program and so not here: M10 global risk, M15 second moments of a logarithm, T03 T04 rank tests,
 * T08 T09 tolerance limits, BH in T10.
 */
import { describe, expect, test } from "vitest";
import { burstsIn } from "../../../src/calculations/comparison/bursts.ts";
import { conformanceProbability } from "../../../src/calculations/comparison/conformity.ts";
import { enNumber } from "../../../src/calculations/comparison/measured-difference.ts";
import { measuredError } from "../../../src/calculations/comparison/measured-error.ts";
import { readingComparison } from "../../../src/calculations/comparison/reading-comparison.ts";
import type { ReadingComparison, ReadingComparisonInput } from "../../../src/calculations/comparison/types.ts";
import { chiSquareQuantile, normalQuantile, tQuantile } from "../../../src/calculations/statistics/distributions.ts";
import { predictionInterval, type SpreadSummary } from "../../../src/calculations/statistics/means.ts";
import { ratioInterval } from "../../../src/calculations/statistics/ratios.ts";
import { summary } from "../../../src/calculations/statistics/summary.ts";

const within = (got: number | null | undefined, wanted: number, tolerance: number) =>
	expect(Math.abs((got ?? Number.NaN) - wanted)).toBeLessThanOrEqual(tolerance);
function compared(input: ReadingComparisonInput): ReadingComparison {
	const answer = readingComparison(input);
	if (answer.status !== "assessed") throw new Error(answer.reason.code);
	return answer.result;
}

describe("measurement, section 1", () => {
	test("M04, GUM table G.2 and EA-4/02 table E.1 (printed to two digits, from memory): 1e-6", () => {
		const normal = { 0.9: 1.644854, 0.95: 1.959964, 0.9545: 2.000002, 0.99: 2.575829, 0.9973: 2.999977 };
		for (const [p, k] of Object.entries(normal)) within(normalQuantile((1 + Number(p)) / 2), k, 1e-6);
		const t95 = { 1: 12.706205, 2: 4.302653, 3: 3.182446, 5: 2.570582, 10: 2.228139, 16: 2.119905, 50: 2.008559 };
		for (const [nu, k] of Object.entries(t95)) within(tQuantile(0.975, Number(nu)), k, 1e-6);
		const t9545 = { 1: 13.967811, 2: 4.526551, 4: 2.869315, 8: 2.366419, 10: 2.283682, 20: 2.133028, 50: 2.051251 };
		for (const [nu, k] of Object.entries(t9545)) within(tQuantile(1.9545 / 2, Number(nu)), k, 1e-5);
	});
	test("M09, specific risk at the acceptance limit AL = TU − r·U, k = 2 (simple acceptance under 50 %, w = U under 2.5 %): 1e-8", () => {
		const riskAt = (r: number) => 1 - conformanceProbability(10 - r * 2 * 0.1, 0.1, { high: 10 });
		within(riskAt(0), 0.5, 1e-8);
		within(riskAt(0.83), 0.048457226, 1e-8);
		within(riskAt(1), 0.022750132, 1e-8);
		within(riskAt(0.822426813), 0.05, 1e-8);
	});
	test("M12, zeta scores of the Dataplot page on ISO 13528 (printed 0.785 -0.523 -0.261 0 -1.047, truncated): 1e-5; En·k is zeta", () => {
		const end = (value: number, u: number) =>
			measuredError({ values: [value], instrument: { id: "m", certificate: { expanded: u, k: 1 } } });
		const wanted = [0.785717, -0.523812, -0.261906, 0, -1.047623];
		[1.006, 0.996, 0.998, 1.0, 0.992].forEach((value, index) => {
			const en = enNumber(value - 1, end(1, 0.006278908), end(value, 0.004346135), 0.95);
			within((en ?? 0) * normalQuantile(0.975), wanted[index] ?? 0, 1e-5);
		});
		const batch = summary([1.006, 0.996, 0.998, 1.0, 0.992, 0.993, 1.002, 0.999, 0.994, 1.0]);
		within(batch.standardDeviation, 0.004346135, 1e-8);
	});
	const M13 = {
		kind: "ratio",
		comparability: "stated-uncertainty",
		betterIs: "higher",
		departure: { values: [92.5], instrument: { id: "a", certificate: { expanded: 0.9, k: 1 } } },
		arrival: { values: [87.2], instrument: { id: "b", certificate: { expanded: 1.1, k: 1 } } },
	} as const;
	test("M13, a ratio by Fieller (closed form and root finding): 1e-8", () => {
		const got = compared(M13);
		within(got.ratio, 0.942702703, 1e-8);
		within(got.interval?.[0], 0.913603118, 1e-8);
		within(got.interval?.[1], 0.972488186, 1e-8);
		expect(got).toMatchObject({ intervalOf: "ratio", verdict: "differs", direction: "worse" });
		expect(compared({ ...M13, equivalenceMargin: 0.1 }).verdict).toBe("equivalent");
		expect(compared({ ...M13, equivalenceMargin: 0.08 }).verdict, "0.9136 lies below 0.92").toBe("differs");
	});
	test("the bounds are the ratios at which numerator minus ratio times denominator is just told from zero (root finding)", () => {
		const parts = {
			numerator: 3,
			denominator: 2,
			numeratorVariance: 0.04,
			denominatorVariance: 0.09,
			covariance: 0.02,
		};
		for (const bound of ratioInterval(parts, 1.96) ?? []) {
			const r = bound ?? Number.NaN;
			const sd = Math.sqrt(0.04 - 2 * r * 0.02 + r ** 2 * 0.09);
			within(Math.abs(3 - r * 2) / sd, 1.96, 1e-9);
		}
	});
	test("a denominator that can not be told from zero leaves the ratio open (g ≥ 1)", () => {
		const small = { values: [1], instrument: { id: "a", certificate: { expanded: 0.6, k: 1 } } };
		expect(compared({ ...M13, departure: small })).toMatchObject({ verdict: "inconclusive", interval: null });
		expect(compared({ ...M13, departure: { ...small, values: [0] } }).verdict).toBe("inconclusive");
	});
	test("one instrument at both ends: its scale error hardly touches the ratio", () => {
		const end = (value: number, id: string) => ({ values: [value], instrument: { id, percentOfReading: 2 } });
		const width = (id: string) => {
			const [low, high] = compared({ ...M13, departure: end(100, "a"), arrival: end(97, id) }).interval ?? [];
			return (high ?? Number.NaN) - (low ?? Number.NaN);
		};
		expect(width("a") / width("b")).toBeLessThan(0.4);
	});
	test("T05, prediction of one, of a mean of three: 1e-4", () => {
		const five = summary([10412, 10388, 10431, 10405, 10397]) as SpreadSummary;
		predictionInterval(five, 1, 0.95).forEach((bound, index) => {
			within(bound, [10356.9676, 10456.2324][index] ?? 0, 1e-4);
		});
		predictionInterval(five, 3, 0.95).forEach((bound, index) => {
			within(bound, [10373.5117, 10439.6883][index] ?? 0, 1e-4);
		});
	});
	test("T11, interval of a standard deviation (Boost.Math documentation on NIST gear data, printed .00551 .00729): 1e-7", () => {
		const bound = (p: number) => 0.006278908 * Math.sqrt(99 / chiSquareQuantile(p, 99));
		within(bound(0.975), 0.0055129, 1e-7);
		within(bound(0.025), 0.0072941, 1e-7);
	});
	test("section 0.7: 40 readings at 5 % give a false alarm with probability 87 %", () => {
		within(1 - 0.95 ** 40, 0.871488, 1e-6);
	});
});

describe("counts in bursts, counters (measurement, section 1.2)", () => {
	const errors = { kind: "count", comparability: "any-bench", betterIs: "lower", limits: { high: 0 } } as const;
	const hours = (count: number, amount: number) => ({ count, exposure: { amount, unit: "h" } });
	test("events within a second of each other are one burst", () => {
		expect(burstsIn([5, 0, 0.4, 1.2, 5.9])).toBe(2);
		expect(burstsIn([])).toBe(0);
		expect(burstsIn([0, 1.01])).toBe(2);
	});
	test("forty errors in one burst are one event to the test, and forty to the limit", () => {
		const burst = { ...hours(40, 1), bursts: 1 };
		const got = compared({ ...errors, departure: hours(0, 1), arrival: burst });
		expect(got.verdict).toBe("inconclusive");
		expect(got.conformity.arrival?.verdict).toBe("proven-bad");
		expect(compared({ ...errors, departure: hours(0, 1), arrival: hours(40, 1) }).verdict).toBe("differs");
	});
	test("bursts at one end only are not set against single events at the other", () => {
		const got = compared({ ...errors, departure: hours(3, 1), arrival: { ...hours(40, 1), bursts: 3 } });
		expect(got.verdict).toBe("differs");
	});
	const counter = { ...errors, counter: "lifetime", limits: undefined } as const;
	test("a counter that fell is pointed out and never subtracted", () => {
		expect(compared({ ...counter, departure: { count: 9 }, arrival: { count: 2 } })).toMatchObject({
			verdict: "not-comparable",
			difference: null,
			why: { sentence: "comparison.counter-fell" },
		});
	});
	test("a counter that rose is a change, one that stands still is not, a full one says nothing", () => {
		expect(compared({ ...counter, departure: { count: 2 }, arrival: { count: 3 } })).toMatchObject({
			verdict: "differs",
			direction: "worse",
			difference: 1,
		});
		expect(compared({ ...counter, departure: { count: 2 }, arrival: { count: 2 } }).verdict).toBe("equivalent");
		const full = { ...counter, saturatesAt: 255, departure: { count: 255 }, arrival: { count: 255 } };
		expect(compared(full).verdict).toBe("inconclusive");
	});
});

describe("the control route (bench practice, 1.1: class C with a control item; by hand)", () => {
	const link = { kind: "measured", comparability: "same-bench", betterIs: "higher", limits: { low: 16 } } as const;
	const lanes = (value: number, benchId: string) => ({
		values: [value],
		benchId,
		instrument: { id: "item", percentOfReading: 0 },
	});
	const controls = { departure: lanes(16, "shop"), arrival: lanes(16, "home") };
	test("eight lanes where the control item has sixteen: a change of the card", () => {
		const ends = { departure: lanes(16, "shop"), arrival: lanes(8, "home") };
		expect(compared({ ...link, ...ends, control: controls })).toMatchObject({
			verdict: "differs",
			direction: "worse",
			difference: -8,
		});
		expect(compared({ ...link, ...ends }).verdict).toBe("not-comparable");
	});
	test("eight lanes where the control item has eight too: the slot's, not the card's", () => {
		const control = { departure: lanes(16, "shop"), arrival: lanes(8, "home") };
		const ends = { departure: lanes(16, "shop"), arrival: lanes(8, "home") };
		expect(compared({ ...link, ...ends, control })).toMatchObject({ verdict: "equivalent", difference: 0 });
	});
	test("a control item that was on another bench, or not measured, joins nothing", () => {
		const ends = { departure: lanes(16, "shop"), arrival: lanes(8, "home") };
		const astray = { ...controls, arrival: lanes(16, "office") };
		expect(compared({ ...link, ...ends, control: astray })).toMatchObject({
			verdict: "not-comparable",
			why: { sentence: "comparison.control-other-bench" },
		});
		const untested = { ...controls, arrival: { notTested: "no-time" } };
		expect(compared({ ...link, ...ends, control: untested }).why.sentence).toBe("comparison.control-not-measured");
	});
	const runs = (values: readonly number[], benchId: string) => ({ values, benchId });
	const score = { kind: "score", comparability: "same-bench", betterIs: "higher", equivalenceMargin: 300 } as const;
	test("a slower computer slows the control item as much: no change", () => {
		const got = compared({
			...score,
			departure: runs([10000, 10020, 9980, 10010], "shop"),
			arrival: runs([8010, 7990, 8000, 8020], "home"),
			control: {
				departure: runs([9000, 9010, 8990, 9000], "shop"),
				arrival: runs([7200, 7210, 7190, 7205], "home"),
			},
		});
		expect(got.verdict).toBe("equivalent");
		within(got.ratio, 1, 0.01);
	});
	test("ratio of ratios by hand: (7520/7200)/(10000/9000) = 0.94", () => {
		const two = (mean: number, benchId: string) => runs([mean * 0.999, mean, mean * 1.001], benchId);
		const got = compared({
			...score,
			departure: two(10000, "shop"),
			arrival: two(7520, "home"),
			control: { departure: two(9000, "shop"), arrival: two(7200, "home") },
		});
		within(got.ratio, 0.94, 1e-9);
		expect(got).toMatchObject({ verdict: "differs", direction: "worse", intervalOf: "ratio" });
		within(got.difference, -600, 1e-6);
	});
	test("a single run takes the scatter of the other set on its bench; without any there is none", () => {
		const single = (value: number, benchId: string) => runs([value], benchId);
		const three = (mean: number, benchId: string) => runs([mean * 0.999, mean, mean * 1.001], benchId);
		const lean = {
			...score,
			departure: three(10000, "shop"),
			arrival: single(7520, "home"),
			control: { departure: single(9000, "shop"), arrival: three(7200, "home") },
		};
		expect(compared(lean).verdict).toBe("differs");
		const bare = { ...lean, control: { ...lean.control, arrival: single(7200, "home") } };
		expect(compared(bare)).toMatchObject({
			verdict: "inconclusive",
			why: { sentence: "comparison.control-no-spread" },
		});
	});
	test("starts do not become comparable by a control item, they are already", () => {
		const starts = { kind: "outcome", comparability: "same-bench", betterIs: "higher" } as const;
		const end = (benchId: string) => ({ trials: 5, successes: 5, benchId });
		const got = compared({
			...starts,
			departure: end("shop"),
			arrival: end("home"),
			control: { departure: end("shop"), arrival: end("home") },
		});
		expect(got.why.sentence).toBe("comparison.control-not-for-counts");
	});
});

describe("published supply windows (bench practice, 1.4; supply design guides as cited there): which side of which limit", () => {
	const verdictOf = (value: number, low: number, high: number) =>
		compared({
			kind: "measured",
			comparability: "any-bench",
			betterIs: "neither",
			limits: { low, high },
			departure: { notTested: "no-time" },
			arrival: { values: [value], instrument: { id: "exact", percentOfReading: 0 } },
		}).conformity.arrival?.verdict;
	test.each([
		["11.39 V at the supply's plug, ±5 %", 11.39, 11.4, 12.6, "proven-bad"],
		["11.39 V at the card's plug, +5/−8 %", 11.39, 11.04, 12.6, "proven-good"],
		["12.61 V at the card's plug, +5/−8 %", 12.61, 11.04, 12.6, "proven-bad"],
		["12.61 V in the older window ±8 %", 12.61, 11.04, 12.96, "proven-good"],
		["3.135 V, the window as computed and not as printed (3.14)", 3.135, 3.135, 3.465, "proven-good"],
	] as const)("%s", (_, value, low, high, verdict) => {
		expect(verdictOf(value, low, high)).toBe(verdict);
	});
});
