/**
 * Independent recomputation: anchors worked out with mpmath at 40 digits (special-function anchors). Tolerance: 1e-12 relative, a few thousand units in the last place of a double, far below what any verdict needs.
 */
import { describe, expect, test } from "vitest";
import {
	betaQuantile,
	binomialCumulative,
	binomialProbability,
	chiSquareQuantile,
	normalCumulative,
	normalQuantile,
	tCumulative,
	tQuantile,
} from "../../../src/calculations/statistics/distributions.ts";

const close = (got: number, wanted: number) => expect(Math.abs(got / wanted - 1)).toBeLessThan(1e-12);

describe("anchors of mpmath, 40 digits", () => {
	test.each([
		[0.95, 1.644853626951473],
		[0.975, 1.959963984540054],
		[0.99, 2.326347874040841],
		[0.995, 2.575829303548901],
		[0.999, 3.090232306167814],
	])("normal quantile %f", (p, z) => close(normalQuantile(p), z));

	test.each([
		[0.975, 2, 4.302652729749464],
		[0.975, 4, 2.776445105197794],
		[0.975, 10, 2.228138851986275],
		[0.995, 16, 2.9207816224251],
		[0.975, 3.189561036132359, 3.078076999797427],
	])("t quantile %f, %f degrees of freedom", (p, nu, t) => close(tQuantile(p, nu), t));

	test.each([
		[0.95, 2, 5.991464547107982],
		[0.9, 4, 7.779440339734858],
		[0.975, 22, 36.78071208403556],
		[0.025, 20, 9.590777392264867],
		[0.95, 42, 58.12403768086803],
	])("chi-square quantile %f, %i degrees of freedom", (p, nu, x) => close(chiSquareQuantile(p, nu), x));

	test.each([
		[4, 17, 0.2, 0.5885511380434315],
		[5, 1, 0.04, 1.024e-7],
	])("incomplete beta (%i, %i) through binomial and beta", (a, b, x, area) => {
		// I_x(a, b) = P(X ≥ a) of n = a + b − 1 trials.
		const n = a + b - 1;
		close(binomialCumulative(n - a, n, 1 - x), area);
		close(betaQuantile(area, a, b), x);
	});

	test("two-sided t tail", () => {
		const p = 2 * tCumulative(-18.52853481303059, 3.189561036132359);
		expect(Math.abs(p / 0.000234882778523 - 1)).toBeLessThan(1e-11); // the anchor has 12 digits
	});

	test("infinite degrees of freedom are the normal distribution", () => {
		expect(tCumulative(1.3, Number.POSITIVE_INFINITY)).toBe(normalCumulative(1.3));
		expect(tQuantile(0.9, Number.POSITIVE_INFINITY)).toBe(normalQuantile(0.9));
	});

	test("binomial probabilities add up to the distribution", () => {
		let total = 0;
		for (let k = 0; k <= 7; k++) total += binomialProbability(k, 20, 0.3);
		close(binomialCumulative(7, 20, 0.3), total);
	});
});

test("outside the domain the answer is NaN, so that no comparison passes", () => {
	expect(normalQuantile(1.5)).toBeNaN();
	expect(tQuantile(0.9, -1)).toBeNaN();
	expect(chiSquareQuantile(-0.1, 2)).toBeNaN();
	expect(betaQuantile(0.5, 0, 1)).toBeNaN();
});
