/** The drop that a pack protects to: the one at which its worst face reaches the item's limit. */
import { coversEnergy, coversThickness } from "../cushioning/foam-range.ts";
import { energyAtForceKJ, rowEnergyKJ } from "../cushioning/pad.ts";
import { dropSets, type FaceStacks, padsOf, type StackLayer, weightN } from "./face-stacks.ts";
import { limitOf } from "./fragility.ts";
import { cornersOf } from "./stack-peak.ts";
import { FACES, type Face, type PackedItem } from "./types.ts";

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
	readonly stack: readonly StackLayer[];
	readonly dropHeightM: number;
	readonly bandM: readonly [low: number, high: number];
}

/**
 * At the limit a face bears the force limit · weight; what its layers have taken until then is weight · drop. Solved in
 * closed form on each face, for first and later drops, nominally and at the six corners of the foams' bands. Null where a
 * face has no cushion.
 */
export function protectedDrop(item: PackedItem, stacks: FaceStacks): ProtectedDrop | null {
	if (FACES.some((face) => stacks[face].length === 0)) return null;
	const forceKN = (limitOf(item).limitGn * weightN(item)) / 1000;
	const drops = FACES.flatMap((face) => dropSets(stacks[face]).map((stack) => faceDrop(item, face, stack, forceKN)));
	const worst = drops.reduce((least, next) => (next.dropHeightM < least.dropHeightM ? next : least));
	const outside = drops.find(({ stack }) => !covered(item, stack, worst.dropHeightM, forceKN));
	return {
		dropHeightM: worst.dropHeightM,
		face: worst.face,
		bandM: [Math.min(...drops.map((drop) => drop.bandM[0])), Math.min(...drops.map((drop) => drop.bandM[1]))],
		complete: drops.every(({ stack }) => stack.every((layer) => layer.foam !== null)),
		outside: outside?.face ?? null,
	};
}

function faceDrop(item: PackedItem, face: Face, stack: readonly StackLayer[], forceKN: number): FaceDrop {
	const dropOf = (energyKJ: number) => (1000 * energyKJ) / weightN(item);
	const pads = padsOf(stack);
	if (pads === null) {
		// No foam takes more than the force over its whole thickness.
		const bound = dropOf(stack.reduce((sum, layer) => sum + forceKN * layer.thicknessM, 0));
		return { face, stack, dropHeightM: bound, bandM: [0, bound] };
	}
	const corners = cornersOf(stack).map((corner) => dropOf(rowEnergyKJ(corner, forceKN)));
	return {
		face,
		stack,
		dropHeightM: dropOf(rowEnergyKJ(pads, forceKN)),
		bandM: [Math.min(...corners), Math.max(...corners)],
	};
}

/** Whether the foams' data cover the drop; a foam that is not known has none. */
function covered(item: PackedItem, stack: readonly StackLayer[], dropHeightM: number, forceKN: number): boolean {
	const pads = padsOf(stack);
	if (pads === null) return false;
	const whole = (weightN(item) * dropHeightM) / 1000;
	return stack.every(({ foam, thicknessM, areaM2 }, index) => {
		const pad = pads[index];
		if (foam === null || pad === undefined) return false;
		// One layer takes all; of several, each what it has taken at the limit.
		const energyKJ = stack.length === 1 ? whole : energyAtForceKJ(pad, forceKN);
		return coversThickness(foam, thicknessM) && coversEnergy(foam, foam.model, energyKJ / (areaM2 * thicknessM));
	});
}
