/**
 * The two foam models: stress at an energy density, its inverse, the least cushion factor. Derivations: cushioning
 * handbook method (stress-energy) and the gas-compression form; the two are the same law where σ₀ = p = a and
 * R = 1 − 1/(ab) (derived).
 */
import type { FoamModel } from "./foam.ts";

/** Peak stress, kPa, at an energy density of 0 or more, kJ/m³. */
export function stressKPa(model: FoamModel, energyKJPerM3: number): number {
	if (model.kind === "stress-energy") return model.aKPa * Math.exp(model.bPerKPa * energyKJPerM3);
	const strain = strainAt(model, energyKJPerM3);
	const { yieldStressKPa, gasPressureKPa, relativeDensity } = model;
	return yieldStressKPa + (gasPressureKPa * strain) / (1 - strain - relativeDensity);
}

/** Strain that the model implies at an energy density; for stress-energy by its identity with the gas form. */
export function strainAt(model: FoamModel, energyKJPerM3: number): number {
	if (model.kind === "stress-energy") {
		return (1 - Math.exp(-model.bPerKPa * energyKJPerM3)) / (model.aKPa * model.bPerKPa);
	}
	return risingZero(
		(strain) => energyAtStrain(model, strain) - energyKJPerM3,
		0,
		(1 - model.relativeDensity) * (1 - 1e-15),
	);
}

/** Energy density, kJ/m³, taken up to a strain below the locking strain. */
export function energyAtStrain(model: FoamModel, strain: number): number {
	if (model.kind === "stress-energy") return -Math.log(1 - model.aKPa * model.bPerKPa * strain) / model.bPerKPa;
	const { yieldStressKPa, gasPressureKPa, relativeDensity } = model;
	const locking = 1 - relativeDensity;
	return yieldStressKPa * strain + gasPressureKPa * (locking * Math.log(locking / (locking - strain)) - strain);
}

/** The strain at which the stress reaches a limit, kPa; null where even no strain is within it. */
export function strainWithin(model: FoamModel, limitKPa: number): number | null {
	if (model.kind === "stress-energy") {
		const { aKPa, bPerKPa } = model;
		return limitKPa > aKPa ? (1 - aKPa / limitKPa) / (aKPa * bPerKPa) : null;
	}
	const { yieldStressKPa, gasPressureKPa, relativeDensity } = model;
	const excess = limitKPa - yieldStressKPa;
	if (!(excess > 0)) return null;
	return Number.isFinite(excess) ? ((1 - relativeDensity) * excess) / (gasPressureKPa + excess) : 1 - relativeDensity;
}

/** The largest energy density at which the stress stays within a limit; null where even none exceeds it. */
export function energyWithin(model: FoamModel, limitKPa: number): number | null {
	if (model.kind === "stress-energy")
		return limitKPa > model.aKPa ? Math.log(limitKPa / model.aKPa) / model.bPerKPa : null;
	const strain = strainWithin(model, limitKPa);
	return strain === null ? null : energyAtStrain(model, strain);
}

/** Energy density at the optimum, kJ/m³, and the least cushion factor C = stress/energy there. */
export function optimumOf(model: FoamModel): { readonly energyKJPerM3: number; readonly cushionFactor: number } {
	if (model.kind === "stress-energy") {
		return { energyKJPerM3: 1 / model.bPerKPa, cushionFactor: Math.E * model.aKPa * model.bPerKPa };
	}
	const known = KNOWN_OPTIMUM.get(model);
	if (known !== undefined) return known;
	// C falls to one minimum over the strain and rises again, so the golden section finds it.
	const { yieldStressKPa, gasPressureKPa, relativeDensity } = model;
	const locking = 1 - relativeDensity;
	const factor = (strain: number) =>
		(yieldStressKPa + (gasPressureKPa * strain) / (locking - strain)) / energyAtStrain(model, strain);
	const strain = goldenSection(factor, 1e-6 * locking, (1 - 1e-9) * locking);
	const optimum = { energyKJPerM3: energyAtStrain(model, strain), cushionFactor: factor(strain) };
	KNOWN_OPTIMUM.set(model, optimum);
	return optimum;
}

/** A gas model's optimum is searched once: it depends on nothing else. */
const KNOWN_OPTIMUM = new WeakMap<FoamModel, { readonly energyKJPerM3: number; readonly cushionFactor: number }>();

/** The stress of a model whose peak is off by a factor and whose optimum lies elsewhere: factor·f·S(E/f). */
export function shiftedStressKPa(
	model: FoamModel,
	energyKJPerM3: number,
	peakFactor: number,
	optimumFactor: number,
): number {
	return peakFactor * optimumFactor * stressKPa(model, energyKJPerM3 / optimumFactor);
}

/**
 * The zero of a rising function between two points: a secant that may not stay on one side (Illinois), halving where an end
 * has no finite value and wherever the bracket shrinks slowly.
 */
export function risingZero(rising: (x: number) => number, low: number, high: number): number {
	let [from, to] = [low, high];
	let [below, above] = [rising(from), rising(to)];
	if (!(below < 0)) return from;
	if (above <= 0) return to;
	let kept = 0;
	for (let step = 0; step < 200; step += 1) {
		const width = to - from;
		const secant = from - (below * width) / (above - below);
		const halve = !(secant > from && secant < to) || step % 4 === 3;
		const next = halve ? (from + to) / 2 : secant;
		if (next === from || next === to) break;
		const value = rising(next);
		if (value === 0) return next;
		if (value < 0) {
			[from, below] = [next, value];
			// The other end stood still once too often: it weighs half.
			if (kept < 0 && Number.isFinite(above)) above /= 2;
			kept = -1;
		} else {
			[to, above] = [next, value];
			if (kept > 0) below /= 2;
			kept = 1;
		}
		if (to - from <= 4 * Number.EPSILON * Math.abs(to)) break;
	}
	return (from + to) / 2;
}

function goldenSection(valley: (x: number) => number, low: number, high: number): number {
	const ratio = (Math.sqrt(5) - 1) / 2;
	let [from, to] = [low, high];
	let [left, right] = [to - ratio * (to - from), from + ratio * (to - from)];
	for (let step = 0; step < 200 && to - from > 1e-12; step += 1) {
		if (valley(left) < valley(right)) [to, right, left] = [right, left, right - ratio * (right - from)];
		else [from, left, right] = [left, right, left + ratio * (to - left)];
	}
	return (from + to) / 2;
}
