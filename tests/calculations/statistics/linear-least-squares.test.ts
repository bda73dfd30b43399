/**
 * NIST Statistical Reference Datasets, linear regression: Longley (higher difficulty) and Wampler 1 to 3 (higher), with
 * their certified values. The observations were typed from memory; that the certified values come out shows them right.
 * Tolerances are the digits that a double reaches on these sets, as measured here, less one.
 */
import { describe, expect, it } from "vitest";
import { linearLeastSquares } from "../../../src/calculations/statistics/linear-least-squares.ts";

const LONGLEY = [
	[60323, 83.0, 234289, 2356, 1590, 107608, 1947],
	[61122, 88.5, 259426, 2325, 1456, 108632, 1948],
	[60171, 88.2, 258054, 3682, 1616, 109773, 1949],
	[61187, 89.5, 284599, 3351, 1650, 110929, 1950],
	[63221, 96.2, 328975, 2099, 3099, 112075, 1951],
	[63639, 98.1, 346999, 1932, 3594, 113270, 1952],
	[64989, 99.0, 365385, 1870, 3547, 115094, 1953],
	[63761, 100.0, 363112, 3578, 3350, 116219, 1954],
	[66019, 101.2, 397469, 2904, 3048, 117388, 1955],
	[67857, 104.6, 419180, 2822, 2857, 118734, 1956],
	[68169, 108.4, 442769, 2936, 2798, 120445, 1957],
	[66513, 110.8, 444546, 4681, 2637, 121950, 1958],
	[68655, 112.6, 482704, 3813, 2552, 123366, 1959],
	[69564, 114.2, 502601, 3931, 2514, 125368, 1960],
	[69331, 115.7, 518173, 4806, 2572, 127852, 1961],
	[70551, 116.9, 554894, 4007, 2827, 130081, 1962],
];
const LONGLEY_CERTIFIED = {
	coefficients: [
		-3482258.63459582, 15.0618722713733, -0.03581917929259, -2.02022980381683, -1.03322686717359, -0.0511041056535807,
		1829.15146461355,
	],
	errors: [
		890420.383607373, 84.9149257747669, 0.0334910077722432, 0.488399681651699, 0.214274163161675, 0.22607320006937,
		455.478499142212,
	],
	residualSd: 304.854073561965,
};
const WAMPLER_X = Array.from({ length: 21 }, (_, x) => x);
const POWERS = Array.from({ length: 6 }, (_, power) => WAMPLER_X.map((x) => x ** power));
const WAMPLER_3 = [
	760, -2042, 2111, -1684, 3888, 1858, 11379, 17560, 39287, 64382, 113159, 175108, 273291, 400186, 581243, 811568,
	1121004, 1506550, 2002767, 2611612, 3369180,
];
const WAMPLER_3_ERRORS = [
	2152.3262467817, 2363.55173469681, 779.343524331583, 101.47550755035, 5.64566512170752, 0.112324854679312,
];
const expectAll = (got: readonly number[] | null | undefined, certified: readonly number[], tolerance: number) => {
	expect(got?.length).toBe(certified.length);
	certified.forEach((value, index) => {
		const off = Math.abs((got?.[index] ?? Number.NaN) / value - 1);
		expect(off, `value ${index}: ${got?.[index]} against ${value}`).toBeLessThan(tolerance);
	});
};

describe("least squares against certified sets", () => {
	it("Longley: coefficients, their errors, residual deviation", () => {
		const columns = [LONGLEY.map(() => 1), ...[1, 2, 3, 4, 5, 6].map((at) => LONGLEY.map((row) => row[at] ?? 0))];
		const fit = linearLeastSquares(
			columns,
			LONGLEY.map(([y = 0]) => y),
		);
		expectAll(fit?.coefficients, LONGLEY_CERTIFIED.coefficients, 1e-11);
		expectAll(fit?.standardErrors, LONGLEY_CERTIFIED.errors, 1e-11);
		expectAll([fit?.residualSd ?? 0], [LONGLEY_CERTIFIED.residualSd], 1e-12);
	});
	it("Wampler 1 and 2: exact polynomials of the fifth degree", () => {
		const sum = (base: number) =>
			WAMPLER_X.map((x) => POWERS.reduce((total, _, power) => total + (base * x) ** power, 0));
		expectAll(linearLeastSquares(POWERS, sum(1))?.coefficients, [1, 1, 1, 1, 1, 1], 1e-8);
		expectAll(linearLeastSquares(POWERS, sum(0.1))?.coefficients, [1, 0.1, 0.01, 1e-3, 1e-4, 1e-5], 1e-10);
	});
	it("Wampler 3: the same polynomial under large residuals", () => {
		const fit = linearLeastSquares(POWERS, WAMPLER_3);
		expectAll(fit?.coefficients, [1, 1, 1, 1, 1, 1], 1e-8);
		expectAll(fit?.standardErrors, WAMPLER_3_ERRORS, 1e-11);
		expectAll([fit?.residualSd ?? 0], [2360.14502379268], 1e-12);
	});
	it("gives nothing for columns that depend on each other, or for fewer points than columns", () => {
		expect(linearLeastSquares([WAMPLER_X, WAMPLER_X.map((x) => 2 * x)], WAMPLER_X)).toBeNull();
		expect(
			linearLeastSquares(
				POWERS.map((column) => column.slice(0, 5)),
				[1, 2, 3, 4, 5],
			),
		).toBeNull();
	});
});
