/** What a foam's data cover: energy densities, thicknesses, temperatures. */
import { type Sentence, sentence } from "../judged.ts";
import type { Foam, FoamModel } from "./foam.ts";
import { energyAtStrain, optimumOf, strainAt, stressKPa } from "./foam-model.ts";

/** Temperature for which sets without temperature data stand. Source: cushioning page 4.1, our choice. */
export const ROOM_DEG_C: readonly [number, number] = [15, 30];
/** No foam measured has a cushion factor below this: a slip of unit or digit is likelier. Source: our choice. */
const LIKELY_CUSHION_FACTOR = 2;

/** Share of the locking strain up to which the gas form is taken; at it, the stress is without bound. Source: our choice. */
const LOCKED_SHARE = 0.99;

/** Energy densities that the foam's data cover, kJ/m³; those of its strains where it names strains; null where neither. */
export function energyRangeOf(foam: Foam, model: FoamModel): readonly [low: number, high: number] | null {
	if (foam.energyRangeKJPerM3 !== null || foam.strainRange === null) return foam.energyRangeKJPerM3;
	const [low, high] = foam.strainRange;
	// A dense foam locks before the strain to which the form was checked.
	const most = model.kind === "gas-compression" ? Math.min(high, LOCKED_SHARE * (1 - model.relativeDensity)) : high;
	return [energyAtStrain(model, low), energyAtStrain(model, most)];
}

/** Whether the foam's data cover an energy density, kJ/m³. */
export function coversEnergy(foam: Foam, model: FoamModel, energyKJPerM3: number): boolean {
	const range = energyRangeOf(foam, model);
	return range === null || (energyKJPerM3 >= range[0] && energyKJPerM3 <= range[1]);
}

/** Whether the foam's data cover a thickness; a rounded conversion from inches is not outside. */
export function coversThickness(foam: Foam, thicknessM: number): boolean {
	const [thin, thick] = foam.thicknessRangeM;
	return thicknessM >= thin - 1e-9 && (thick === null || thicknessM <= thick + 1e-9);
}

/** The least factor C = stress/energy that the foam reaches inside its data: C falls to one minimum and rises again. */
export function leastFactorInside(foam: Foam): number {
	const { energyKJPerM3 } = optimumOf(foam.model);
	const [low, high] = energyRangeOf(foam, foam.model) ?? [energyKJPerM3, energyKJPerM3];
	const best = Math.min(Math.max(energyKJPerM3, low), high);
	return stressKPa(foam.model, best) / best;
}

/** What lies outside the foam's data; none where everything is inside. */
export function rangeNotes(
	foam: Foam,
	model: FoamModel,
	at: { readonly energyKJPerM3: number; readonly thicknessM: number; readonly temperatureDegC?: number | undefined },
): Sentence[] {
	const notes: Sentence[] = [];
	if (!coversEnergy(foam, model, at.energyKJPerM3)) {
		const [low, high] = energyRangeOf(foam, model) ?? [0, 0];
		notes.push(sentence("cushion.outside-energy", { energy: at.energyKJPerM3, low, high }));
	}
	if (!coversThickness(foam, at.thicknessM)) {
		const [thin, thick] = foam.thicknessRangeM;
		notes.push(
			thick === null
				? sentence("cushion.outside-thin", { low: thin * 1000 })
				: sentence("cushion.outside-thickness", { low: thin * 1000, high: thick * 1000 }),
		);
	}
	if (at.temperatureDegC !== undefined && foam.overTemperature === undefined) {
		const [low, high] = foam.temperatureRangeDegC ?? ROOM_DEG_C;
		if (!(at.temperatureDegC >= low && at.temperatureDegC <= high))
			notes.push(sentence("cushion.outside-temperature", { low, high }));
	}
	// A stress-energy set with ab < 1 implies a locking strain over 1: no foam strains that far.
	if (model.kind === "stress-energy" && !(strainAt(model, at.energyKJPerM3) < 1))
		notes.push(sentence("cushion.locked"));
	return notes;
}

/** What is uncertain about the set itself. */
export function setNotes(foam: Foam): Sentence[] {
	const factor = optimumOf(foam.model).cushionFactor;
	return [
		...(foam.noteKey === null ? [] : [sentence(foam.noteKey)]),
		...(factor < LIKELY_CUSHION_FACTOR ? [sentence("cushion.unlikely-set", { factor })] : []),
	];
}
