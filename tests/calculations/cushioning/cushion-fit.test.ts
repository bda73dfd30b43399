/** Fits: the two-point vector of the cushioning page (relative 1e-4), points made from a known set, and impossible points. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cushionFit } from "../../../src/calculations/cushioning/cushion-fit.ts";

const PSI = 6.894757;
const point = (s: number, peakGn: number, more: object = {}) => ({
	staticStressKPa: s,
	dropHeightM: 0.6096,
	thicknessM: 0.0508,
	peakGn,
	...more,
});

describe("cushion fit", () => {
	it("two points of a supplier's chart: a 9.237604 psi, b 0.1144388 per psi, nothing known of the fit", () => {
		const { result } = cushionFit([point(0.4 * PSI, 40), point(1.2 * PSI, 40)]);
		expect(Math.abs((result?.aKPa ?? 0) / (9.237604 * PSI) - 1)).toBeLessThan(1e-4);
		expect(Math.abs((result?.bPerKPa ?? 0) / (0.1144388 / PSI) - 1)).toBeLessThan(1e-4);
		expect(result).toMatchObject({ residualPercent: null, r2: null, predictionIntervalPercent: null });
	});
	it("finds again any set that its points were made from", () => {
		const numbers = fc.record({
			a: fc.double({ min: 10, max: 200, noNaN: true }),
			b: fc.double({ min: 0.006, max: 0.1, noNaN: true }),
		});
		fc.assert(
			fc.property(numbers, ({ a, b }) => {
				fc.pre(Math.E * a * b >= 1.05);
				const points = [1, 2, 3, 4, 6].map((s) => point(s, (a * Math.exp(b * s * 12)) / s));
				const { result } = cushionFit(points);
				expect(Math.abs((result?.aKPa ?? 0) / a - 1)).toBeLessThan(1e-6);
				expect(result?.residualPercent).toBeLessThan(1e-6);
			}),
		);
	});
	it.each([
		["impossible-point", [point(2, 5), point(4, 30)]],
		["one-energy", [point(2, 40), point(2, 41)]],
		["not-rising", [point(2, 60), point(8, 13)]],
		["mixed-drops", [point(2, 40, { drop: 1 }), point(4, 40, { drop: 3 })]],
	] as const)("refuses points that no physical foam gives: %s", (code, points) => {
		expect(cushionFit(points)).toMatchObject({ status: "not-assessed", reason: { code } });
	});
});
