/** Shares, bounds of silence, time to show, and the whole of a year; source and tolerance beside each. */
import { describe, expect, it, test } from "vitest";
import { knownShare } from "../../../src/calculations/learning/known-share.ts";
import { learn } from "../../../src/calculations/learning/learn.ts";
import type { LearnedLeg } from "../../../src/calculations/learning/learned-leg.ts";
import { casesPerGroup, timeToShow } from "../../../src/calculations/learning/time-to-show.ts";
import { type InventedOrder, inventedYear } from "../../../src/start/demo/invented-year.ts";

describe("published values", () => {
	test("interval of 4 of 20: .057334 to .436614 (NIST e-Handbook 7.2.4.1 as quoted in the Boost.Math documentation), 1e-6", () => {
		const { interval, share } = knownShare({ seen: 4, known: 20, unknown: 5 });
		expect(share).toBe(0.2);
		expect(interval?.[0]).toBeCloseTo(0.057334, 6);
		expect(interval?.[1]).toBeCloseTo(0.436614, 6);
	});
	test("cases per group: 76.7 for .50 against .75 at a power of .90 (example of R's power.prop.test, from memory)", () => {
		expect(casesPerGroup(0.5, 0.75, 0.9)).toBe(77);
		expect(casesPerGroup(0.75, 0.5, 0.9)).toBe(77);
	});
});

describe("independent recomputation", () => {
	// Exact power of the test that the formula approximates, by adding up both binomials; the approximation may be off by some points.
	it.each([
		[0.1, 0.2],
		[0.3, 0.45],
		[0.5, 0.75],
	])("so many cases find %f against %f four times in five, within 0.03", (one, other) => {
		const n = casesPerGroup(one, other);
		expect(Math.abs(powerOf(n, one, other) - 0.8)).toBeLessThan(0.03);
	});
	it("both bounds of silence are what counting all silent ones as good, or as bad, gives", () => {
		expect(knownShare({ seen: 3, known: 40, unknown: 10 })).toMatchObject({ allGood: 3 / 50, allBad: 13 / 50 });
		expect(knownShare({ seen: 0, known: 0, unknown: 4 })).toMatchObject({
			share: null,
			interval: null,
			allGood: 0,
			allBad: 1,
		});
		expect(knownShare({ seen: 0, known: 0, unknown: 0 })).toMatchObject({ allGood: null, allBad: null, isFew: true });
	});
	it("marks fewer than thirty known ones", () => {
		expect(knownShare({ seen: 0, known: 29, unknown: 100 }).isFew).toBe(true);
		expect(knownShare({ seen: 0, known: 30, unknown: 0 }).isFew).toBe(false);
	});
});

describe("when a difference could show", () => {
	it("is twice the cases over the shop's legs a year, and longer the smaller the share", () => {
		const some = timeToShow(0.04, 0.02, 320);
		expect(some?.years).toBeCloseTo((2 * casesPerGroup(0.04, 0.02)) / 320, 12);
		expect(timeToShow(0.01, 0.005, 320)?.years ?? 0).toBeGreaterThan(some?.years ?? 0);
		expect(timeToShow(0.04, 0.02, 0)?.years).toBeNull();
		expect(timeToShow(0.6, 1.2, 320)).toBeNull();
		expect(timeToShow(0, 0, 320)).toBeNull();
		expect(timeToShow(0.001, 0.5, 320)?.isRough).toBe(true);
		// Hardly any without: 1 - 0.9 of some 15 is no five.
		expect(timeToShow(0.9, 0.45, 320)?.isRough).toBe(true);
		expect(() => casesPerGroup(Number.NaN, 0.1)).toThrow(RangeError);
	});
});

describe("the invented year", () => {
	const year = inventedYear();
	const judged = learn(year.map(legOf));
	const { all, by, legsPerYear, toShow } = judged.result ?? expect.fail("assessed");

	it("is the same every time, a year of 400", () => {
		expect(inventedYear()).toEqual(year);
		expect(year).toHaveLength(400);
		expect(legsPerYear).toBeGreaterThan(395);
		expect(legsPerYear).toBeLessThan(405);
	});
	it("has the shares that counting its lines gives, with exact intervals by bisection on binomial sums", () => {
		for (const carrier of new Set(year.map((order) => order.carrier))) {
			const lines = year.filter((order) => order.carrier === carrier);
			const known = lines.filter(({ outcome }) => outcome !== "silent" && outcome !== "untested");
			const bad = known.filter(({ outcome }) => outcome === "changed" || outcome === "dead");
			const group = by.carrier.find(({ name }) => name === carrier);
			expect(group?.legs).toBe(lines.length);
			expect(group?.outcomes.silent).toBe(lines.filter(({ outcome }) => outcome === "silent").length);
			const { share, interval, allGood, allBad } = group?.shares.bad ?? expect.fail("there");
			expect(share).toBe(bad.length / known.length);
			expect(allGood).toBe(bad.length / lines.length);
			expect(allBad).toBe((bad.length + lines.length - known.length) / lines.length);
			expect(interval?.[0]).toBeCloseTo(exactBound(bad.length, known.length, "low"), 8);
			expect(interval?.[1]).toBeCloseTo(exactBound(bad.length, known.length, "high"), 8);
		}
		const noted = year.filter(({ padsShifted }) => padsShifted !== null);
		expect(all.shares["pads-shifted"]).toMatchObject({
			known: noted.length,
			seen: noted.filter(({ padsShifted }) => padsShifted).length,
		});
	});
	it("claims no more than its numbers bear: every two carriers' intervals overlap, and half the share of damage takes years to show", () => {
		for (const one of by.carrier)
			for (const other of by.carrier)
				expect((one.shares.bad.interval?.[0] ?? 0) <= (other.shares.bad.interval?.[1] ?? 1)).toBe(true);
		const damage = toShow.find(({ event }) => event === "bad");
		const near = toShow.find(({ event }) => event === "corner-crushed");
		expect(damage?.halved?.years ?? 0).toBeGreaterThan(4);
		expect(near?.halved?.years ?? 99).toBeLessThan(damage?.halved?.years ?? 0);
	});
	it("every group's legs add up to all of them", () => {
		for (const groups of Object.values(by)) expect(groups.reduce((sum, { legs }) => sum + legs, 0)).toBe(400);
	});
	it("without a leg is not assessed, and within a month tells no rate a year", () => {
		expect(learn([]).status).toBe("not-assessed");
		expect(learn(year.slice(0, 5).map(legOf)).result?.legsPerYear).toBeNull();
	});
});

function legOf(order: InventedOrder): LearnedLeg {
	return {
		sentOn: order.sentOn,
		factors: { carrier: order.carrier, pack: order.box, foam: order.foam, soak: String(order.soakHours) },
		outcome: order.outcome,
		nearMisses: {
			"pads-shifted": order.padsShifted,
			"corner-crushed": order.cornersCrushed,
			"tag-tripped": order.tagTripped,
			"new-correctable-errors": order.newErrors,
			"link-unanswered": order.outcome === "silent",
		},
	};
}

/** Probabilities of 0 … n of n by the recurrence of neighbours, from the logarithm of the first. */
function binomial(n: number, p: number): number[] {
	const all = [Math.exp(n * Math.log1p(-p))];
	for (let k = 1; k <= n; k++) all.push(((all[k - 1] as number) * (n - k + 1) * p) / (k * (1 - p)));
	return all;
}
const sumOf = (numbers: readonly number[]) => numbers.reduce((sum, one) => sum + one, 0);

/** Where the tail beyond what was seen is 2.5 %. */
function exactBound(seen: number, known: number, end: "low" | "high"): number {
	if (end === "low" && seen === 0) return 0;
	if (end === "high" && seen === known) return 1;
	let [from, to] = [0, 1];
	for (let step = 0; step < 60; step++) {
		const p = (from + to) / 2;
		const tail = end === "low" ? sumOf(binomial(known, p).slice(seen)) : sumOf(binomial(known, p).slice(0, seen + 1));
		const isHigher = end === "low" ? tail > 0.025 : tail < 0.025;
		[from, to] = isHigher ? [from, p] : [p, to];
	}
	return (from + to) / 2;
}

/** Chance that the pooled normal test of two shares at 5 %, two-sided, calls a difference. */
function powerOf(n: number, one: number, other: number): number {
	const [first, second] = [binomial(n, one), binomial(n, other)];
	let power = 0;
	for (let a = 0; a <= n; a++)
		for (let b = 0; b <= n; b++) {
			const pooled = (a + b) / (2 * n);
			const spread = Math.sqrt((2 * pooled * (1 - pooled)) / n);
			if (spread > 0 && Math.abs(a - b) / n / spread > 1.959964) power += (first[a] as number) * (second[b] as number);
		}
	return power;
}
