/**
 * A pad of foam under a weight: force and energy by compression, alone or with others in a row, each at the same force. A
 * set whose peak is off by a factor and whose optimum lies elsewhere, S′(E) = peak·f·S(E/f), is the same foam with its
 * stress times f and its strain over the peak factor. Derivation: our own, from the stress-energy and gas forms.
 */
import type { Foam, FoamModel } from "./foam.ts";
import { energyAtStrain, energyWithin, risingZero, strainWithin, stressKPa } from "./foam-model.ts";

export interface Pad {
	readonly model: FoamModel;
	readonly thicknessM: number;
	readonly areaM2: number;
	/** Peak over that of the set, and optimum over that of the set: 1 for the set itself. */
	readonly peakFactor: number;
	readonly optimumFactor: number;
}

export interface Compressed {
	readonly forceKN: number;
	readonly energyKJ: number;
}

/** The six corners of what is uncertain about a set: peak off by ± its uncertainty, optimum off by its factor. */
export function bandCorners({ peakUncertainty, optimumFactor }: Foam): readonly (readonly [number, number])[] {
	return [1 - peakUncertainty, 1 + peakUncertainty].flatMap((peak) =>
		[1 / optimumFactor, 1, optimumFactor].map((factor) => [peak, factor] as const),
	);
}

/** Force, kN, once the pad has taken an energy, kJ. */
export function forceAtEnergyKN(
	{ model, thicknessM, areaM2, peakFactor, optimumFactor }: Pad,
	energyKJ: number,
): number {
	const density = energyKJ / (areaM2 * thicknessM * optimumFactor);
	return areaM2 * peakFactor * optimumFactor * stressKPa(model, density);
}

/** Energy, kJ, that the pad has taken at a force, kN: none below the force at which it yields. */
export function energyAtForceKJ(
	{ model, thicknessM, areaM2, peakFactor, optimumFactor }: Pad,
	forceKN: number,
): number {
	const within = energyWithin(model, forceKN / (areaM2 * peakFactor * optimumFactor)) ?? 0;
	return areaM2 * thicknessM * optimumFactor * within;
}

/** Force and energy of a pad pressed by a length, m; both without bound at its locking strain. */
export function pressed(
	{ model, thicknessM, areaM2, peakFactor, optimumFactor }: Pad,
	compressionM: number,
): Compressed {
	const strain = (peakFactor * compressionM) / thicknessM;
	const density = strain < lockingStrain(model) ? energyAtStrain(model, strain) : Number.POSITIVE_INFINITY;
	if (!Number.isFinite(density)) return { forceKN: Number.POSITIVE_INFINITY, energyKJ: Number.POSITIVE_INFINITY };
	const stress =
		model.kind === "stress-energy"
			? model.aKPa / (1 - model.aKPa * model.bPerKPa * strain)
			: model.yieldStressKPa + (model.gasPressureKPa * strain) / (1 - strain - model.relativeDensity);
	return {
		forceKN: areaM2 * peakFactor * optimumFactor * stress,
		energyKJ: areaM2 * thicknessM * optimumFactor * density,
	};
}

/** The strain at which the model's stress has no bound. */
export function lockingStrain(model: FoamModel): number {
	return model.kind === "stress-energy" ? 1 / (model.aKPa * model.bPerKPa) : 1 - model.relativeDensity;
}

/** Peak force, kN, of pads in a row that take an energy, kJ, together: Σ energy(force) = energy. */
export function rowPeakKN(pads: readonly Pad[], energyKJ: number): number {
	const [only, ...more] = pads;
	if (only === undefined) return Number.POSITIVE_INFINITY;
	if (more.length === 0) return forceAtEnergyKN(only, energyKJ);
	const high = Math.min(...pads.map((pad) => forceAtEnergyKN(pad, energyKJ)));
	if (!Number.isFinite(high)) return high;
	return risingZero((force) => rowEnergyKJ(pads, force) - energyKJ, 0, high);
}

/** Energy, kJ, that pads in a row have taken at a force, kN. */
export function rowEnergyKJ(pads: readonly Pad[], forceKN: number): number {
	return pads.reduce((sum, pad) => sum + energyAtForceKJ(pad, forceKN), 0);
}

/** Force and energy of pads in a row pressed together by a length, m. */
export function rowPressed(pads: readonly Pad[], compressionM: number): Compressed {
	const [only, ...more] = pads;
	if (only === undefined) return { forceKN: Number.POSITIVE_INFINITY, energyKJ: Number.POSITIVE_INFINITY };
	if (more.length === 0) return pressed(only, compressionM);
	const together = (force: number) => pads.reduce((sum, pad) => sum + compressionAtForceM(pad, force), 0);
	let high = 1e-3;
	while (together(high) < compressionM) {
		if (high > MOST_FORCE_KN) return { forceKN: Number.POSITIVE_INFINITY, energyKJ: Number.POSITIVE_INFINITY };
		high *= 2;
	}
	const forceKN = risingZero((force) => together(force) - compressionM, 0, high);
	return { forceKN, energyKJ: rowEnergyKJ(pads, forceKN) };
}

/** Beyond it every foam counts as locked. */
const MOST_FORCE_KN = 1e9;

function compressionAtForceM(pad: Pad, forceKN: number): number {
	const strain = strainWithin(pad.model, forceKN / (pad.areaM2 * pad.peakFactor * pad.optimumFactor));
	return strain === null ? 0 : (strain * pad.thicknessM) / pad.peakFactor;
}
