/**
 * Distributions against a second library: values of SciPy 1.17.1, drawn once at random (`scipy-values.json`: function,
 * arguments, value). Relative tolerance 1e-10: both libraries promise more, and no verdict needs as much.
 */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import * as distributions from "../../../src/calculations/statistics/distributions.ts";

const functions: Readonly<Record<string, (...values: number[]) => number>> = { ...distributions };
type Row = [name: string, args: number[], value: number];
const rows: Row[] = JSON.parse(readFileSync(new URL("scipy-values.json", import.meta.url), "utf8"));
const names = [...new Set(rows.map(([name]) => name))];

test("all distribution functions that the program uses are in the table", () => {
	expect(names.sort()).toEqual(Object.keys(functions).sort());
});

test.each(names)("%s", (name) => {
	for (const [, args, value] of rows.filter((row) => row[0] === name)) {
		const got = functions[name]?.(...args) ?? Number.NaN;
		expect(Math.abs(got / value - 1), `${args}: ${got} against ${value}`).toBeLessThan(1e-10);
	}
});
