/** Falls and pulses. `printed` cases stand in their sources; tolerance is the source's rounding. Others pin the arithmetic. */
import { describe, expect, it } from "vitest";
import { impact } from "../../../src/calculations/shock/impact.ts";
import { pulse } from "../../../src/calculations/shock/pulse.ts";

const INCH = 0.0254;
const near = (got: number | null | undefined, expected: number, tolerance: number) =>
	expect(Math.abs((got ?? Number.NaN) - expected), `${got} against ${expected}`).toBeLessThanOrEqual(tolerance);

describe("printed in the desktop board specification: free fall and its velocity change, in/s", () => {
	it.each([
		["DV-36", 36, 167],
		["DV-30", 30, 152],
		["DV-18", 18, 118],
	])("%s", (_, inches, velocity) => {
		near(
			(impact({ dropHeightM: inches * INCH, restitution: 0 }).result?.velocityChangeMPerS ?? 0) / INCH,
			velocity,
			0.5,
		);
	});
	it("DV-e05: 30 in with half rebound, printed as 225 for a system (interpretation, 4 in/s)", () => {
		near((impact({ dropHeightM: 30 * INCH, restitution: 0.5 }).result?.velocityChangeMPerS ?? 0) / INCH, 225, 4);
	});
});

describe("K19: expanded polypropylene takes 70 % of a 50 J impact (abstract of a published study)", () => {
	it("leaves a restitution of 0.548, and from 0.762 m a velocity change of 5.98 m/s (1e-3, rounding of the figures)", () => {
		const restitution = Math.sqrt(1 - 0.7);
		near(restitution, 0.548, 0.001);
		near(impact({ dropHeightM: 0.762, restitution }).result?.velocityChangeMPerS, 5.98, 0.006);
	});
});

describe("arithmetic of pulses (own regression values of the transit page, printed precision; the heights are those of HSH-2900 to HSH-100)", () => {
	it.each([
		["HS-2900", 2900, 0.3, 5.432, 1.504],
		["HS-1500", 1500, 0.5, 4.682, 1.118],
		["HSH-900", 900, 0.7, 3.933, 0.789],
		["HS-500", 500, 1, 3.122, 0.497],
		["HS-340", 340, 1.2, 2.547, 0.331],
		["HS-200", 200, 1.5, 1.873, 0.179],
		["HS-100", 100, 2, 1.249, 0.079],
		["REC-1", 60, 12, 4.495, 1.03],
	])("%s", (_, peakGn, durationMs, velocity, height) => {
		const { result } = pulse({ shape: "half-sine", peakGn, durationMs });
		near(result?.velocityChangeMPerS, velocity, 0.001);
		near(result?.equivalentDropHeightM.restitution0, height, 0.001);
	});
	it("TRAP-1: a card's pulse given by points (published breakpoints, 4.707 m/s)", () => {
		const points = [
			{ timeMs: 0, gn: 0 },
			{ timeMs: 3, gn: 30 },
			{ timeMs: 16, gn: 30 },
			{ timeMs: 19, gn: 0 },
		];
		near(pulse({ shape: "points", points }).result?.velocityChangeMPerS, 4.707, 0.001);
	});
	it("REC-3: a free fall of 0.394 s is 761.2 mm", () => {
		near(impact({ freeFallTimeS: 0.394, restitution: 0 }).result?.dropHeightM, 0.7612, 0.0002);
	});
	it("terminal sawtooth, triangle and versine have half the area, a trapezoid its ramps less", () => {
		for (const shape of ["terminal-sawtooth", "triangle", "versine"] as const) {
			near(pulse({ shape, peakGn: 50, durationMs: 11 }).result?.velocityChangeMPerS, (50 * 9.80665 * 0.011) / 2, 1e-9);
		}
		near(
			pulse({ shape: "trapezoid", peakGn: 50, durationMs: 11, rampShare: 0.1 }).result?.velocityChangeMPerS,
			50 * 9.80665 * 0.011 * 0.9,
			1e-9,
		);
	});
});
