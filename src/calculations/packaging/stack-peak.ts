/** The peak of a stack of known foams in a flat drop, its band, and whether the foams' data cover it. */
import type { Foam, FoamModel } from "../cushioning/foam.ts";
import { coversEnergy, coversThickness } from "../cushioning/foam-range.ts";
import { bandCorners, energyAtForceKJ, type Pad, rowPeakKN } from "../cushioning/pad.ts";
import { padsOf, type StackLayer } from "./face-stacks.ts";

export interface StackPeak {
	readonly peakGn: number;
	readonly bandGn: readonly [low: number, high: number];
	/** Whether every foam's data cover its thickness and the energy that it takes. */
	readonly covered: boolean;
}

/** Null where a foam is not known, or has no model at this temperature. */
export function stackPeak(
	stack: readonly StackLayer[],
	weightN: number,
	dropHeightM: number,
	modelOf: (foam: Foam) => FoamModel | null = (foam) => foam.model,
): StackPeak | null {
	const energyKJ = (weightN * dropHeightM) / 1000;
	const gnOf = (pads: readonly Pad[]) => (1000 * rowPeakKN(pads, energyKJ)) / weightN;
	const nominal = padsOf(stack, undefined, modelOf);
	if (nominal === null || nominal.length === 0) return null;
	const peaks = cornersOf(stack, modelOf).map(gnOf);
	const forceKN = rowPeakKN(nominal, energyKJ);
	return {
		peakGn: gnOf(nominal),
		bandGn: [Math.min(...peaks), Math.max(...peaks)],
		covered: stack.every(({ foam, thicknessM }, index) => {
			const pad = nominal[index];
			if (foam === null || pad === undefined) return false;
			const density = energyAtForceKJ(pad, forceKN) / (pad.areaM2 * pad.thicknessM);
			return coversThickness(foam, thicknessM) && coversEnergy(foam, pad.model, density);
		}),
	};
}

/** The stack's pads at each corner of the band, every foam shifted the same way. */
export function cornersOf(
	stack: readonly StackLayer[],
	modelOf?: (foam: Foam) => FoamModel | null,
): readonly (readonly Pad[])[] {
	return [0, 1, 2, 3, 4, 5].flatMap((index) => {
		const pads = padsOf(stack, (foam) => bandCorners(foam)[index] ?? [1, 1], modelOf);
		return pads === null ? [] : [pads];
	});
}
