/**
 * Check cases of the cushioning page by id: part I W2 to W5, part II K1 to K23, part III. Tolerances are the page's. What
 * fails in the source's own figures is kept as failing and must not be tuned to.
 */
import { describe, expect, it } from "vitest";
import { cushion } from "../../../src/calculations/cushioning/cushion.ts";
import { cushionFit } from "../../../src/calculations/cushioning/cushion-fit.ts";
import type { FoamModel } from "../../../src/calculations/cushioning/foam.ts";
import { optimumOf, strainAt, stressKPa } from "../../../src/calculations/cushioning/foam-model.ts";
import { pressed } from "../../../src/calculations/cushioning/pad.ts";
import { leastPadAreaM2 } from "../../../src/calculations/packaging/pad-checks.ts";
import { impact } from "../../../src/calculations/shock/impact.ts";
import { FOAMS, foamById } from "../../../src/catalogue/foams.ts";

const INCH = 0.0254;
const PSI = 6.894757;
const within = (got: number, expected: number, tolerance: number) =>
	expect(Math.abs(got / expected - 1), `${got} against ${expected}`).toBeLessThan(tolerance);
const model = (id: string): FoamModel => {
	const foam = foamById(id);
	if (foam === null) throw new Error(id);
	return foam.model;
};
/** Peak at a static stress from 24 in on 2 in. */
const chart = (set: FoamModel, stressPsi: number) => stressKPa(set, stressPsi * PSI * 12) / (stressPsi * PSI);
const gas = (yieldStressKPa: number, gasPressureKPa: number, relativeDensity: number): FoamModel => ({
	kind: "gas-compression",
	yieldStressKPa,
	gasPressureKPa,
	relativeDensity,
});
const stressAt = (set: FoamModel, strain: number) =>
	pressed({ model: set, thicknessM: 1, areaM2: 1, peakFactor: 1, optimumFactor: 1 }, strain).forceKN;

describe("a supplier's chart: 40 Gn at 0.4 and 1.2 psi", () => {
	it("K1, K2: the plank's set and its gas form to 10 %", () => {
		for (const id of ["pe-plank-23c", "pe-gas-effective"])
			for (const psi of [0.4, 1.2]) within(chart(model(id), psi), 40, 0.1);
	});
	it("K3: at one atmosphere no yield stress comes nearer than 20 %; 50 kPa gives 45.4 and 43.4", () => {
		const set = gas(50, 101.325, 0.037);
		within(chart(set, 0.4), 45.4, 1e-3);
		within(chart(set, 1.2), 43.4, 1e-3);
		for (const psi of [0.4, 1.2]) within(chart(set, psi), 40, 0.2);
	});
	it("K4: 36 lb at 1.2 psi need 30 in² exactly", () => {
		expect(36 / 1.2).toBe(30);
	});
	it("fitted, gives a 9.2376 psi, b 0.114439 1/psi, least factor 2.874 (1e-4)", () => {
		const point = (psi: number) => ({
			staticStressKPa: psi * PSI,
			dropHeightM: 24 * INCH,
			thicknessM: 2 * INCH,
			peakGn: 40,
		});
		const { result } = cushionFit([point(0.4), point(1.2)]);
		within((result?.aKPa ?? 0) / PSI, 9.237604, 1e-4);
		within((result?.bPerKPa ?? 0) * PSI, 0.1144388, 1e-4);
		within(result?.minimumCushionFactor ?? 0, 2.874, 1e-3);
	});
});

describe("gas law against a supplier's static sheet (cross-linked polyethylene, 33 kg/m³)", () => {
	const set = gas(5.83, 101.325, 33 / 950);
	it.each([
		["K6", 0.25, 40],
		["K7", 0.4, 75],
		["K8", 0.6, 175],
	])("%s: at strain %f %i kPa to 5 %%, the yield stress from the point at 50 %%", (_, strain, kPa) => {
		within(stressAt(set, strain), kPa, 0.05);
	});
	it("K16 fails: no gas law below a strain of 0.2, which the sets' ranges keep out", () => {
		const eps = gas(115.4, 101.325, 0.0175);
		const rise = stressAt(eps, 0.1) - stressAt(eps, 0.05);
		expect(Math.abs(rise / 20 - 1)).toBeGreaterThan(0.2);
		for (const foam of FOAMS) expect(foam.strainRange?.[0] ?? 0.2).toBeGreaterThanOrEqual(0.2);
	});
});

describe("derived sets", () => {
	const sigma10 = (density: number) => 1.842 * density ** 1.384;
	it("K9, K10: the density law of EPS to 10 %; K11 fails at 11.2 kg/m³, so no set is thinner than 14", () => {
		within(sigma10(21.6), 135, 0.1);
		within(sigma10(45.7), 345, 0.1);
		expect(Math.abs(sigma10(11.2) / 40 - 1)).toBeGreaterThan(0.1);
		const eps = FOAMS.filter((foam) => foam.material === "expanded polystyrene");
		for (const foam of eps) expect(foam.densityKgPerM3).toBeGreaterThan(14);
	});
	it.each([18.4, 20, 24, 28.8])(
		"the set of %f kg/m³ recomputed: 1.25·(σ₁₀ − p·0.1/(0.9 − R)), R = ρ/1050 (1 %%)",
		(density) => {
			const set = model(`eps-${density}-gas`);
			if (set.kind !== "gas-compression") throw new Error("form");
			const r = density / 1050;
			within(set.relativeDensity, r, 0.01);
			within(set.yieldStressKPa, 1.25 * (sigma10(density) - 10.1325 / (0.9 - r)), 0.01);
		},
	);
	it("K14, K15: the energies of EPP at 60 over 20 kg/m³, and the exponent of density, to 10 %", () => {
		within(optimumOf(model("epp-60-gas")).energyKJPerM3 / optimumOf(model("epp-20-gas")).energyKJPerM3, 3.428, 0.1);
		const optimumStress = (id: string) => optimumOf(model(id)).energyKJPerM3;
		within(optimumStress("epp-30.4-first") / optimumStress("epp-20.8-first"), (30.4 / 20.8) ** 1.128, 0.1);
	});
	it("K19: a rebound of 0.548 from 0.762 m changes the velocity by 5.98 m/s (1e-3)", () => {
		within(impact({ dropHeightM: 0.762, restitution: 0.548 }).result?.velocityChangeMPerS ?? 0, 5.98, 1e-3);
	});
	it("K22: trapped gas alone has a least factor of 4.6250, at strain 0.684", () => {
		const set = gas(1e-9, 101.325, 0);
		within(optimumOf(set).cushionFactor, 4.625, 1e-4);
		expect(strainAt(set, optimumOf(set).energyKJPerM3)).toBeCloseTo(0.684, 3);
	});
	it("the memory sets give the table's peaks of a 2 kg card on its full face, 30 in on 2 in, with their bands (rounded)", () => {
		const stress = (2 * 9.80665) / (0.27 * 0.11) / 1000;
		const at = (id: string, inches: number) => {
			const { result } = cushion({
				foam: foamById(id),
				thicknessM: inches * INCH,
				dropHeightM: 30 * INCH,
				staticStressKPa: stress,
				catalogue: FOAMS,
			});
			return [result?.peakGn, ...(result?.peakBandGn ?? [])].map((value) => Math.round(value ?? 0));
		};
		expect(at("pe-35-first", 2)).toEqual([125, 73, 203]);
		expect(at("pe-27-mean-2-to-5", 3)).toEqual([107, 63, 175]);
		expect(at("pu-ether-24-first", 2)).toEqual([58, 40, 87]);
		expect(at("pu-ester-32-first", 3)).toEqual([51, 28, 93]);
		expect(at("eps-24-mean-2-to-5", 2)).toEqual([275, 125, 539]);
		expect(at("epp-30.4-first", 2)).toEqual([211, 117, 360]);
	});
});

describe("mechanics of packages", () => {
	it("W2: an egg of 56 g from 12 m: 15.3 m/s; a constant force over 4.8 cm is 137 N (1 %)", () => {
		const { impactVelocityMPerS: v = 0 } = impact({ dropHeightM: 12, restitution: 0 }).result ?? {};
		within(v, 15.3, 0.01);
		within((v * 6.25e-3) / 2, 0.048, 0.01);
		within((0.056 * v) / 6.25e-3, 137, 0.01);
	});
	it("W3: 50 lb/in under 10 lb from 36 in, gravity left out: √(2hk/W) = 18.97 (1e-3)", () => {
		const frequency = Math.sqrt((50 * 386.09) / 10) / (2 * Math.PI);
		within(
			impact({ dropHeightM: 36 * INCH, restitution: 0, naturalFrequencyHz: frequency }).result?.peakGn ?? 0,
			18.97,
			1e-3,
		);
		within(frequency, 3.13 / Math.sqrt(0.2), 2e-3);
	});
	it("W5: 2(h + x)/x is the peak of a linear cushion, exactly: 22 for 1.5 m on 0.15 m", () => {
		const k = (2 * 3 * 9.80665 * 1.65) / 0.15 ** 2;
		within(k, 4316.4, 1e-3);
		within((k * 0.15) / (3 * 9.80665), 22, 1e-12);
	});
});

describe("part III", () => {
	const EPS_12: FoamModel = { kind: "stress-energy", aKPa: 50.96, bPerKPa: 0.02505 };
	const EPS_DYN: FoamModel = { kind: "stress-energy", aKPa: 66.22, bPerKPa: 0.02222 };
	it("buckling: 5 cm ask for 44.22 cm² (printed 44); a pad of 98 cm² passes", () => {
		expect(1e4 * leastPadAreaM2(0.05)).toBeCloseTo(44.22, 2);
		expect(98e-4).toBeGreaterThan(leastPadAreaM2(0.05));
		// Part I 4.2: 2 in 7.076 in², 3 in 15.920 in², 50 mm 4422 mm².
		expect(leastPadAreaM2(2 * INCH) / INCH ** 2).toBeCloseTo(7.076, 3);
		expect(leastPadAreaM2(3 * INCH) / INCH ** 2).toBeCloseTo(15.92, 2);
	});
	it("G1: the set's minimum at 90 cm on 5 cm is 72 Gn at 2.5 kPa (1 %)", () => {
		const { energyKJPerM3, cushionFactor } = optimumOf(EPS_DYN);
		within(energyKJPerM3 / 18, 2.5, 0.01);
		within(cushionFactor * 18, 72, 0.01);
	});
	it("V12: the static set gives the impact point as 62.9, 12.6 % on the unsafe side: why static data give no cushion", () => {
		within(stressKPa(EPS_12, 45) / 2.5, 62.9, 2e-3);
		within(62.9 / 72, 1 - 0.126, 2e-3);
	});
	it("G2, the floor a/s: at 0.8 kPa no thickness reaches 72 Gn, and 12.5 cm gives 94", () => {
		within(EPS_DYN.kind === "stress-energy" ? EPS_DYN.aKPa / 0.8 : 0, 82.8, 1e-3);
		within(stressKPa(EPS_DYN, (0.8 * 0.9) / 0.125) / 0.8, 94, 5e-3);
	});
	it("G3, G4: at 7.5 cm the minimum is 48 Gn, below 65; at 5 cm above it", () => {
		within(optimumOf(EPS_DYN).cushionFactor * (0.9 / 0.075), 48, 0.01);
		expect(optimumOf(EPS_DYN).cushionFactor * (0.9 / 0.05)).toBeGreaterThan(65);
	});
	it("C3, C4: the static set meets its two points (rounding of the source, 1 %)", () => {
		const factor = (stress: number) => {
			const energy = Math.log(stress / 50.96) / 0.02505;
			return stress / energy;
		};
		within(factor(69), 5.7, 0.01);
		within(factor(207), 3.7, 0.01);
	});
	it("C10 must fail: 2.50 · 700 mm / 85 is 20.59 mm, and the source prints 20", () => {
		expect((2.5 * 700) / 85).toBeCloseTo(20.59, 2);
		expect((2.5 * 700) / 85).toBeGreaterThan(20);
	});
	it("2h/(G − 2) is the linear spring's length, not the constant force's (part I 4.1)", () => {
		expect(1000 / (100 - 1)).toBeCloseTo(10.101, 3);
		expect((2 * 1000) / (100 - 2)).toBeCloseTo(20.408, 3);
	});
});
