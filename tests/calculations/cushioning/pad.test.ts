/**
 * Pads: the gas and stress-energy identity, rows, drops on edges and corners. Worked values of the derived rule are those of
 * cushioning part III section 3 (relative 1e-3: printed to two decimals).
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { FoamModel } from "../../../src/calculations/cushioning/foam.ts";
import { optimumOf, stressKPa } from "../../../src/calculations/cushioning/foam-model.ts";
import {
	forceAtEnergyKN,
	type Pad,
	pressed,
	rowEnergyKJ,
	rowPeakKN,
} from "../../../src/calculations/cushioning/pad.ts";
import { skewPeakKN } from "../../../src/calculations/cushioning/skew-drop.ts";
import { FOAMS } from "../../../src/catalogue/foams.ts";

const PLANK: FoamModel = { kind: "stress-energy", aKPa: 68.0444, bPerKPa: 0.0156641 };
const pad = (model: FoamModel, thicknessM = 0.05, areaM2 = 0.01, peakFactor = 1, optimumFactor = 1): Pad => ({
	model,
	thicknessM,
	areaM2,
	peakFactor,
	optimumFactor,
});
const near = (got: number, expected: number, tolerance: number) =>
	expect(Math.abs(got / expected - 1), `${got} against ${expected}`).toBeLessThan(tolerance);

describe("edges and corners by the derived rule", () => {
	it.each([
		[1, 86.34, 108.39, 127.59],
		[3, 46.33, 45.84, 49.85],
		[5, 44.75, 34.9, 35.05],
		[8, 57.14, 31.18, 27.8],
	])("at %i kPa, 760 mm on 50 mm: flat %f, edge %f, corner %f", (stress, flat, edge, corner) => {
		const areaM2 = 0.01;
		const weightKN = stress * areaM2;
		const peak = (faces: number) =>
			skewPeakKN(
				Array.from({ length: faces }, () => [pad(PLANK, 0.05, areaM2)]),
				weightKN * 0.76,
			) / weightKN;
		near(peak(1), flat, 1e-3);
		near(peak(2), edge, 1e-3);
		near(peak(3), corner, 1e-3);
	});
	it("on one face is the flat drop, for every foam that is built in (1e-9)", () => {
		for (const { model } of FOAMS) {
			const { energyKJPerM3 } = optimumOf(model);
			const one = pad(model);
			const energyKJ = energyKJPerM3 * one.areaM2 * one.thicknessM;
			near(skewPeakKN([[one]], energyKJ), forceAtEnergyKN(one, energyKJ), 1e-9);
		}
	});
	it("is worse than flat exactly below b·s·h/t of ln 2 (edge) and 1.5·ln √3 (corner)", () => {
		const ratio = (be: number, faces: number) => {
			const one = pad(PLANK);
			const energyKJ = (be / PLANK.bPerKPa) * one.areaM2 * one.thicknessM;
			return skewPeakKN(Array(faces).fill([one]), energyKJ) / forceAtEnergyKN(one, energyKJ);
		};
		near(ratio(Math.log(2), 2), 1, 1e-9);
		near(ratio(1.5 * Math.log(Math.sqrt(3)), 3), 1, 1e-9);
		expect(ratio(0.5, 3)).toBeGreaterThan(1);
		expect(ratio(1, 3)).toBeLessThan(1);
	});
});

describe("a pad pressed", () => {
	it("has taken the energy whose force it shows, shifted or not, for every foam (1e-6)", () => {
		fc.assert(
			fc.property(
				fc.constantFrom(...FOAMS),
				fc.double({ min: 0.05, max: 0.6, noNaN: true }),
				fc.double({ min: 0.7, max: 1.3, noNaN: true }),
				fc.double({ min: 0.7, max: 1.5, noNaN: true }),
				({ model }, strain, peak, factor) => {
					const one = pad(model, 0.05, 0.01, peak, factor);
					const { forceKN, energyKJ } = pressed(one, strain * 0.05);
					// A pad that locks has no finite force.
					if (Number.isFinite(forceKN)) near(forceAtEnergyKN(one, energyKJ), forceKN, 1e-6);
					else expect(energyKJ).toBe(Number.POSITIVE_INFINITY);
				},
			),
		);
	});
	it("the work along the way is the energy: force is its slope (central difference, 1e-4)", () => {
		for (const { model } of FOAMS) {
			const one = pad(model, 0.05, 0.01, 1.1, 1.2);
			const [x, step] = [0.02, 1e-6];
			const slope = (pressed(one, x + step).energyKJ - pressed(one, x - step).energyKJ) / (2 * step);
			near(slope, pressed(one, x).forceKN, 1e-4);
		}
	});
	it("K21: with σ₀ = p and R = 0 the gas form is the stress-energy form, a = p and b = 1/p", () => {
		const gas: FoamModel = { kind: "gas-compression", yieldStressKPa: 80, gasPressureKPa: 80, relativeDensity: 0 };
		const energy: FoamModel = { kind: "stress-energy", aKPa: 80, bPerKPa: 1 / 80 };
		for (const at of [1, 20, 60, 150]) near(stressKPa(gas, at), stressKPa(energy, at), 1e-9);
		near(optimumOf(gas).cushionFactor, Math.E, 1e-8);
	});
});

describe("pads in a row", () => {
	it("share one force and add their energies", () => {
		const row = [pad(PLANK, 0.03, 0.02), pad({ ...PLANK, aKPa: 20, bPerKPa: 0.08 }, 0.05, 0.01)];
		const force = rowPeakKN(row, 0.02);
		near(rowEnergyKJ(row, force), 0.02, 1e-9);
		expect(force).toBeLessThan(Math.min(...row.map((one) => forceAtEnergyKN(one, 0.02))));
	});
});

describe("optimum in closed form and by search", () => {
	it("a numerical minimiser over the energy finds no better factor, and the same place (1e-4)", () => {
		for (const { id, model } of FOAMS) {
			const { energyKJPerM3, cushionFactor } = optimumOf(model);
			const factor = (energy: number) => stressKPa(model, energy) / energy;
			let best = energyKJPerM3;
			for (let step = -200; step <= 200; step += 1) {
				const energy = energyKJPerM3 * 1.01 ** step;
				expect(factor(energy), id).toBeGreaterThanOrEqual(cushionFactor * (1 - 1e-9));
				if (factor(energy) < factor(best)) best = energy;
			}
			near(best, energyKJPerM3, 1e-4);
		}
	});
	it("thicker foam at its optimum never raises the peak, nor does a lower drop (factor · h/t)", () => {
		for (const { model } of FOAMS) {
			const { energyKJPerM3 } = optimumOf(model);
			const peak = (h: number, t: number) => {
				const stress = (energyKJPerM3 * t) / h;
				return stressKPa(model, energyKJPerM3) / stress;
			};
			expect(peak(0.8, 0.06)).toBeLessThan(peak(0.8, 0.05));
			expect(peak(0.7, 0.05)).toBeLessThan(peak(0.8, 0.05));
		}
	});
});
