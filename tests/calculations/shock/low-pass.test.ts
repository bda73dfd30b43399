/**
 * The channel filter: coefficients as an open implementation of SAE J211-1 appendix C and SciPy's `butter(2, 2.0775·class)` give
 * them (1e-12), its loss of 3 dB, and what it leaves of half sines (measurement page, F60 to F99).
 */
import { describe, expect, it } from "vitest";
import {
	canFilter,
	type FilterClass,
	lowPassed,
	lowPassFilter,
} from "../../../src/calculations/shock/trace/low-pass.ts";

const near = (got: number | undefined, expected: number, tolerance: number) =>
	expect(Math.abs((got ?? Number.NaN) - expected), `${got} against ${expected}`).toBeLessThanOrEqual(tolerance);
const CASES = [
	[
		"F60",
		60,
		10_000,
		[0.0014523674735534124, 0.002904734947106825, 0.0014523674735534124, -1.8893432242215735, 0.8951526941157872],
		100.0178,
	],
	[
		"F180",
		180,
		10_000,
		[0.011796271099778452, 0.023592542199556903, 0.011796271099778452, -1.670117463267827, 0.7173025476669411],
		300.4909,
	],
	[
		"F600",
		600,
		10_000,
		[0.09718462527936682, 0.19436925055873364, 0.09718462527936682, -0.9455740090617893, 0.3343125101792567],
		1018.2407,
	],
	[
		"F1000",
		1000,
		20_000,
		[0.07189309706838491, 0.14378619413676982, 0.07189309706838491, -1.111586176156447, 0.39915856442998654],
		1687.7705,
	],
] as const;

describe("channel classes", () => {
	it.each(CASES)("%s: coefficients", (_, filterClass, sampleRateHz, expected) => {
		const filter = lowPassFilter(filterClass, sampleRateHz);
		expected.forEach((value, index) => {
			near(filter[index], value, 1e-12 * Math.abs(value));
		});
	});
	it.each(CASES)(
		"%s: both passes lose 3 dB at the printed frequency (half a unit of its last digit)",
		(_, filterClass, rate, coefficients, halfPowerHz) => {
			// |H|² of one pass is the gain of both; 3 dB, taken as 1/√2 of the amplitude.
			const gain = (frequencyHz: number) => {
				const angle = (2 * Math.PI * frequencyHz) / rate;
				const size2 = (c0: number, c1: number, c2: number) =>
					(c0 + c1 * Math.cos(angle) + c2 * Math.cos(2 * angle)) ** 2 +
					(c1 * Math.sin(angle) + c2 * Math.sin(2 * angle)) ** 2;
				const [b0 = 0, b1 = 0, b2 = 0, a1 = 0, a2 = 0] = lowPassFilter(filterClass, rate);
				return size2(b0, b1, b2) / size2(1, a1, a2);
			};
			expect(coefficients).toHaveLength(5);
			let [low, high] = [1, rate / 2];
			for (let step = 0; step < 60; step += 1) {
				const middle = (low + high) / 2;
				if (gain(middle) > Math.SQRT1_2) low = middle;
				else high = middle;
			}
			near(low, halfPowerHz, 6e-5);
		},
	);
	it.each([
		["cfc60", 60, [0.336288, 0.702499, 0.96804]],
		["cfc180", 180, [0.782496, 0.995562, 0.99977]],
		["cfc1000", 1000, [0.999782, 0.999995, 1.0]],
	] as const)("F99: peaks of half sines of 2, 5 and 11 ms after %s (1e-5)", (_, filterClass, expected) => {
		[2, 5, 11].forEach((durationMs, index) => {
			const pulse = 100 * durationMs;
			const samples = Float64Array.from({ length: 6000 }, (__, at) =>
				at >= 2000 && at <= 2000 + pulse ? Math.sin((Math.PI * (at - 2000)) / pulse) : 0,
			);
			near(Math.max(...lowPassed(samples, filterClass as FilterClass, 100_000)), expected[index] ?? 0, 1e-5);
		});
	});
	it("lose 3 dB at 5/3 of their class: 2.0775·(√2 − 1)^(1/4) = 1.66666 (printed)", () => {
		near(2.0775 * (Math.SQRT2 - 1) ** 0.25, 1.66666, 5e-6);
		near(2.0775 * (Math.SQRT2 - 1) ** 0.25, 5 / 3, 1e-5);
	});
	it("leave a constant as it is, shift nothing, and keep a pulse's area", () => {
		const constant = new Float64Array(50).fill(3);
		for (const value of lowPassed(constant, 60, 1000)) near(value, 3, 1e-12);
		const pulse = Float64Array.from({ length: 801 }, (_, at) => Math.exp(-(((at - 400) / 20) ** 2)));
		const filtered = lowPassed(pulse, 180, 10_000);
		filtered.forEach((value, at) => {
			near(value, filtered[800 - at] ?? 0, 1e-12);
		});
		const sum = (values: Float64Array) => values.reduce((total, value) => total + value, 0);
		near(sum(filtered) / sum(pulse), 1, 1e-9);
	});
	it("need samples enough", () => {
		expect(canFilter(1000, 4156)).toBe(true);
		expect(canFilter(1000, 4155)).toBe(false);
	});
});
