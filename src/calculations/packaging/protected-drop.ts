/** The drop that a pack protects to: the one at which its worst face reaches the item's limit. */
import { energyWithin } from "../cushioning/foam-model.ts";
import { coversEnergy, coversThickness } from "../cushioning/foam-range.ts";
import { limitOf, staticStressKPa } from "./face-cushions.ts";
import { FACES, type Face, type FoamLayer, type PackagingInput, type PackedItem } from "./types.ts";

export interface ProtectedDrop {
	readonly dropHeightM: number;
	/** Lowest of the faces' low edges and lowest of their high edges: the pack is as good as its worst face. */
	readonly bandM: readonly [low: number, high: number];
	/** The worst face. */
	readonly face: Face;
	/** False where a foam is not known: its thickness only bounds the drop from above, h = limit · thickness. */
	readonly complete: boolean;
	/** A face whose foam has no data at that drop; null where all have. */
	readonly outside: Face | null;
}

interface FaceDrop {
	readonly face: Face;
	readonly dropHeightM: number;
	readonly bandM: readonly [low: number, high: number];
}

/**
 * S(s·h/t) = limit·s is solved for h on each face, nominally and at the six corners of the foam's band. Null where a face
 * has no cushion or several layers.
 */
export function protectedDrop(input: PackagingInput): ProtectedDrop | null {
	const { limitGn } = limitOf(input.item);
	const layers = FACES.flatMap((face) => {
		const [layer, ...more] = input.pack.faces[face];
		return layer === undefined || more.length > 0 ? [] : [{ face, layer }];
	});
	if (layers.length < FACES.length) return null;
	const drops = layers.map(({ face, layer }) => faceDrop(input.item, face, layer, limitGn));
	const worst = drops.reduce((least, next) => (next.dropHeightM < least.dropHeightM ? next : least));
	const outside = layers.find(({ face, layer }) => !covered(input.item, face, layer, worst.dropHeightM));
	return {
		...worst,
		bandM: [Math.min(...drops.map((drop) => drop.bandM[0])), Math.min(...drops.map((drop) => drop.bandM[1]))],
		complete: layers.every(({ layer }) => layer.foam !== null),
		outside: outside?.face ?? null,
	};
}

function faceDrop(item: PackedItem, face: Face, { foam, thicknessM, bearing }: FoamLayer, limitGn: number): FaceDrop {
	if (foam === null) {
		const bound = limitGn * thicknessM;
		return { face, dropHeightM: bound, bandM: [0, bound] };
	}
	const stress = staticStressKPa(item, face, bearing);
	// A shifted model reaches the limit at f times the energy at which the nominal one reaches limit / (peak · f).
	const height = (peak: number, factor: number) =>
		(factor * (energyWithin(foam.model, (limitGn * stress) / (peak * factor)) ?? 0) * thicknessM) / stress;
	const corners = [1 - foam.peakUncertainty, 1 + foam.peakUncertainty].flatMap((peak) =>
		[1 / foam.optimumFactor, 1, foam.optimumFactor].map((factor) => height(peak, factor)),
	);
	return { face, dropHeightM: height(1, 1), bandM: [Math.min(...corners), Math.max(...corners)] };
}

/** Whether the foam's data cover a drop; a foam that is not known has none. */
function covered(item: PackedItem, face: Face, { foam, thicknessM, bearing }: FoamLayer, dropHeightM: number): boolean {
	if (foam === null) return false;
	const energy = (staticStressKPa(item, face, bearing) * dropHeightM) / thicknessM;
	return coversThickness(foam, thicknessM) && coversEnergy(foam, foam.model, energy);
}
