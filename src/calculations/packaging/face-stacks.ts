/** What lies on each face between the item and the outer box: layers from the item outwards, with what really bears. */
import type { Foam, FoamModel } from "../cushioning/foam.ts";
import type { Pad } from "../cushioning/pad.ts";
import { STANDARD_GRAVITY_M_PER_S2 } from "../quantities.ts";
import { type Box, FACES, type Face, type FoamLayer, type PackagingInput, type PackedItem } from "./types.ts";

export interface StackLayer extends Omit<FoamLayer, "bearing"> {
	/** Weight spreads over this area, m²: pads, and no more than the face that they bear. */
	readonly areaM2: number;
	/** Sides of each pad; the whole face where there are none. */
	readonly pads: readonly { readonly lengthM: number; readonly widthM: number }[];
	/** A sheet over the whole face: it lines the box from wall to wall, and bears where the face touches it. */
	readonly lines: boolean;
	/** Whether pads were given that are larger than the face. */
	readonly exceeds: boolean;
	/** In the gap between inner and outer box. */
	readonly inGap: boolean;
}
export type FaceStacks = Readonly<Record<Face, readonly StackLayer[]>>;

/** Thickness of a box's board where it is not given. Source: our choice, a single wall of C flute. */
export const CALIPER_M = 0.004;

/** The layers on every face. In the gap, an inner box spreads the weight over its own face. */
export function faceStacks({ item, pack }: Pick<PackagingInput, "item" | "pack">): FaceStacks {
	const { innerBox } = pack;
	const inner = innerBox === undefined ? null : outerSidesM(innerBox);
	const of = (face: Face) => [
		...stackOf(pack.faces[face], faceSidesM(item, face), false),
		...(innerBox === undefined || inner === null ? [] : stackOf(innerBox.faces[face], faceSidesM(inner, face), true)),
	];
	return Object.fromEntries(FACES.map((face) => [face, of(face)])) as unknown as FaceStacks;
}

/** Layers that bear a face of these sides. */
export function stackOf(layers: readonly FoamLayer[], sidesM: readonly [number, number], inGap: boolean): StackLayer[] {
	return layers.map((layer) => stackLayer(layer, sidesM, inGap));
}

function stackLayer({ bearing, ...layer }: FoamLayer, [lengthM, widthM]: readonly [number, number], inGap: boolean) {
	const whole = lengthM * widthM;
	if ("fullFace" in bearing)
		return { ...layer, areaM2: whole, pads: [{ lengthM, widthM }], lines: true, exceeds: false, inGap };
	const area = bearing.pads.reduce((sum, pad) => sum + pad.lengthM * pad.widthM, 0);
	// Pads larger than the face touch with no more than the face.
	const exceeds = area > whole * (1 + 1e-9);
	return { ...layer, areaM2: Math.min(area, whole), pads: bearing.pads, lines: false, exceeds, inGap };
}

/** Outer sides of a box. */
export function outerSidesM(box: Box): Pick<PackedItem, "lengthM" | "widthM" | "heightM"> {
	const walls = 2 * (box.caliperM ?? CALIPER_M);
	return {
		lengthM: box.innerLengthM + walls,
		widthM: box.innerWidthM + walls,
		heightM: box.innerHeightM + walls,
	};
}

function faceSidesM(
	{ lengthM, widthM, heightM }: Pick<PackedItem, "lengthM" | "widthM" | "heightM">,
	face: Face,
): readonly [number, number] {
	if (face === "top" || face === "bottom") return [lengthM, widthM];
	return face === "front" || face === "back" ? [lengthM, heightM] : [widthM, heightM];
}

export function weightN({ massKg }: PackedItem): number {
	return massKg * STANDARD_GRAVITY_M_PER_S2;
}

/** Weight over what really touches, kPa. */
export function staticStressKPa(item: PackedItem, layer: Pick<StackLayer, "areaM2">): number {
	return weightN(item) / layer.areaM2 / 1000;
}

/** The sets for which a stack is judged: as given, and with the later drops' sets where a foam names one. */
export function dropSets(stack: readonly StackLayer[]): readonly (readonly StackLayer[])[] {
	const later = stack.map((layer) => (layer.foam?.later === undefined ? layer : { ...layer, foam: layer.foam.later }));
	return later.some((layer, index) => layer !== stack[index]) ? [stack, later] : [stack];
}

/** Whether a foam of the stack is known for its first drop only: trips have several. */
export function firstDropOnly(stack: readonly StackLayer[]): boolean {
	return stack.some(({ foam }) => foam !== null && foam.dropNumber === "first" && foam.later === undefined);
}

/** The stack's pads, its sets shifted by a corner of the band of each; null where a foam is not known. */
export function padsOf(
	stack: readonly StackLayer[],
	corner: (foam: Foam) => readonly [peak: number, factor: number] = () => [1, 1],
	modelOf: (foam: Foam) => FoamModel | null = (foam) => foam.model,
): Pad[] | null {
	const pads = stack.flatMap(({ foam, thicknessM, areaM2 }): Pad[] => {
		const model = foam === null ? null : modelOf(foam);
		if (foam === null || model === null) return [];
		const [peakFactor, optimumFactor] = corner(foam);
		return [{ model, thicknessM, areaM2, peakFactor, optimumFactor }];
	});
	return pads.length === stack.length ? pads : null;
}
