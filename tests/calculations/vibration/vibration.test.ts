/** Random vibration. V1, V2, V6 and PSD cases by id of the reference pages; tolerances are theirs (half of the last digit stated). */
import { describe, expect, it } from "vitest";
import { densityAt, meanSquareGn2, weightedMeanSquareGn2 } from "../../../src/calculations/vibration/random-profile.ts";
import { transmissibilityAt, vibration } from "../../../src/calculations/vibration/vibration.ts";
import { VIBRATION_PROFILES, vibrationProfileById } from "../../../src/catalogue/vibration-profiles.ts";

const profile = (id: string) => {
	const found = vibrationProfileById(id);
	if (found === null) throw new Error(id);
	return found;
};
const level = (id: string) => Math.sqrt(meanSquareGn2(profile(id).points));

describe("levels printed in the source", () => {
	it.each([
		["V1", "jis-z-0200-2020", 0.604, 0.001],
		["PSD-board_unpackaged_3p13", "board-unpackaged", 3.13, 0.01],
		["PSD-common_carrier_1p15", "common-carrier", 1.15, 0.005],
	])("%s: %s integrates to %f", (_, id, grms, tolerance) => {
		expect(Math.abs(level(id) - grms)).toBeLessThan(tolerance);
	});
	it("V2: the same in m/s² is 5.926 to 0.004, from 0.6043 gn", () => {
		expect(Math.abs(level("jis-z-0200-2020") * 9.80665 - 5.926)).toBeLessThan(0.004);
	});
	it("PSD-navmat_p9492: a screening profile, 6.0 to 0.07 as the source rounds it (exact 6.058)", () => {
		const points = [
			{ frequencyHz: 20, gn2PerHz: 0.01 },
			{ frequencyHz: 80, gn2PerHz: 0.04 },
			{ frequencyHz: 350, gn2PerHz: 0.04 },
			{ frequencyHz: 2000, gn2PerHz: 0.007 },
		];
		expect(Math.abs(Math.sqrt(meanSquareGn2(points)) - 6)).toBeLessThan(0.07);
	});
	it("SLOPE: 3 dB per octave from 0.01 at 20 Hz reach 0.04 at 80 Hz, as a screening guideline prints (1e-6)", () => {
		// 3 dB double the density per octave: a straight line on logarithmic axes through 160 Hz.
		const points = [
			{ frequencyHz: 20, gn2PerHz: 0.01 },
			{ frequencyHz: 160, gn2PerHz: 0.08 },
		];
		expect(Math.abs(densityAt(points, 80) - 0.04)).toBeLessThan(1e-6);
	});
	it("V6: straight lines on plain axes would give 0.666, which is wrong", () => {
		const { points } = profile("jis-z-0200-2020");
		const straight = points.reduce((sum, point, index) => {
			const before = points[index - 1];
			return before === undefined
				? 0
				: sum + ((point.gn2PerHz + before.gn2PerHz) / 2) * (point.frequencyHz - before.frequencyHz);
		}, 0);
		expect(Math.sqrt(straight)).toBeCloseTo(0.666, 3);
		expect(Math.abs(level("jis-z-0200-2020") - 0.666)).toBeGreaterThan(0.05);
	});
});

describe("consistency only: points from memory against a stated level", () => {
	it.each(VIBRATION_PROFILES.filter((one) => one.statedGnRms !== null).map((one) => [one.id, one] as const))(
		"%s",
		(_, one) => {
			expect(Math.abs(Math.sqrt(meanSquareGn2(one.points)) - (one.statedGnRms ?? 0))).toBeLessThan(
				one.id === "jis-z-0200-2020" ? 0.001 : one.id === "system" ? 0.01 : 0.006,
			);
		},
	);
	it("PSD-board_packaged: 1.0783, our own regression value", () => {
		expect(level("board-packaged")).toBeCloseTo(1.0783, 4);
	});
});

describe("integrals", () => {
	it("the numerical integral of weight one equals the closed form to 1e-8", () => {
		for (const { points } of VIBRATION_PROFILES)
			expect(Math.abs(weightedMeanSquareGn2(points, () => 1) / meanSquareGn2(points) - 1)).toBeLessThan(1e-8);
	});
	it("on white noise over a wide band the response is Miles', which is its closed form (1 % at Q 20)", () => {
		const points = [
			{ frequencyHz: 0.1, gn2PerHz: 0.01 },
			{ frequencyHz: 10_000, gn2PerHz: 0.01 },
		];
		const white = { id: "white", points, statedGnRms: null, source: profile("board-unpackaged").source };
		const { result } = vibration({ profile: white, naturalFrequencyHz: 100, q: 20 });
		// ∫|T|² df = π/2·f·Q·(1 + 1/Q²), exactly.
		const exact = Math.sqrt((Math.PI / 2) * 100 * 20 * (1 + 1 / 400) * 0.01);
		expect(Math.abs((result?.responseBandGnRms ?? 0) / exact - 1)).toBeLessThan(1e-4);
		expect(Math.abs((result?.responseGnRms ?? 0) / exact - 1)).toBeLessThan(0.01);
	});
});

describe("transmissibility (source S6 2.48, values of the reference page)", () => {
	it.each([
		[1, 5.099],
		[Math.SQRT2, 1],
		[2, 0.356],
		[3, 0.145],
	])("at ratio %f with damping 0.1: %f", (ratio, value) => {
		expect(transmissibilityAt(ratio, 0.1)).toBeCloseTo(value, 3);
	});
});

describe("MILES-2, FN-dst, Z-G (printed; g 9800 mm/s² in the source, so 1e-3 relative)", () => {
	it("7 gn at 14.4 Hz move 8.38 mm; a static deflection of 1.19 mm gives 14.443 Hz", () => {
		const move = (gn: number, hz: number) => (gn * 9806.65) / (2 * Math.PI * hz) ** 2;
		expect(Math.abs(move(7, 14.4) / 8.38 - 1)).toBeLessThan(1e-3);
		expect(Math.abs(Math.sqrt(9806.65 / 1.19) / (2 * Math.PI) / 14.443 - 1)).toBeLessThan(1e-3);
	});
	it("refuses points that do not rise, and says where the board lies outside the profile", () => {
		const flat = { ...profile("board-packaged"), points: [...profile("board-packaged").points].reverse() };
		expect(vibration({ profile: flat }).status).toBe("not-assessed");
		const { result, validity } = vibration({ profile: profile("jis-z-0200-2020"), naturalFrequencyHz: 300 });
		expect(result?.responseGnRms).toBeNull();
		expect(validity.within).toBe(false);
	});
});
