/** NIST StRD, linear regression: Norris and a two-point line. Certified values as published; 9 digits asked (doubles reach more). */
import { describe, expect, it } from "vitest";
import { straightLine } from "../../../src/calculations/statistics/least-squares.ts";

/** Norris (lower difficulty), y then x, 36 observations. Published: NIST Statistical Reference Datasets; typed from memory, and right to the last digit, since the certified values come out. */
const NORRIS: readonly (readonly [y: number, x: number])[] = [
	[0.1, 0.2],
	[338.8, 337.4],
	[118.1, 118.2],
	[888.0, 884.6],
	[9.2, 10.1],
	[228.1, 226.5],
	[668.5, 666.3],
	[998.5, 996.3],
	[449.1, 448.6],
	[778.9, 777.0],
	[559.2, 558.2],
	[0.3, 0.4],
	[0.1, 0.6],
	[778.1, 775.5],
	[668.8, 666.9],
	[339.3, 338.0],
	[448.9, 447.5],
	[10.8, 11.6],
	[557.7, 556.0],
	[228.3, 228.1],
	[998.0, 995.8],
	[888.8, 887.6],
	[119.6, 120.2],
	[0.3, 0.3],
	[0.6, 0.3],
	[557.6, 556.8],
	[339.3, 339.1],
	[888.0, 887.2],
	[998.5, 999.0],
	[778.9, 779.0],
	[10.2, 11.1],
	[117.6, 118.3],
	[228.9, 229.2],
	[668.4, 669.1],
	[449.2, 448.9],
	[0.2, 0.5],
];

describe("least squares against the certified NIST set Norris", () => {
	const line = straightLine(NORRIS.map(([y, x]) => ({ x, y })));
	const digits = (got: number | null | undefined, certified: number) => Math.abs((got ?? Number.NaN) / certified - 1);
	it("slope, intercept, their errors, residual deviation and r²", () => {
		expect(digits(line?.intercept, -0.262323073774029)).toBeLessThan(1e-9);
		expect(digits(line?.slope, 1.00211681802045)).toBeLessThan(1e-12);
		expect(digits(line?.interceptSd, 0.232818234301152)).toBeLessThan(1e-9);
		expect(digits(line?.slopeSd, 0.429796848199937e-3)).toBeLessThan(1e-9);
		expect(digits(line?.residualSd, 0.884796396144373)).toBeLessThan(1e-9);
		expect(digits(line?.r2, 0.999993745883712)).toBeLessThan(1e-12);
	});
	it("gives no line through points at one x, nor an error for two points", () => {
		expect(
			straightLine([
				{ x: 1, y: 1 },
				{ x: 1, y: 2 },
			]),
		).toBeNull();
		expect(
			straightLine([
				{ x: 1, y: 1 },
				{ x: 2, y: 3 },
			]),
		).toMatchObject({ slope: 2, intercept: -1, residualSd: null, r2: null });
	});
});
