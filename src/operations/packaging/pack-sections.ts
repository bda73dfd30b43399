/** Two sections through a pack: along the box and across it, so that all six faces are seen. */
import { outerSidesM } from "../../calculations/packaging/face-stacks.ts";
import type { Box, Face, FaceLayers, FoamLayer, PackagingInput } from "../../calculations/packaging/types.ts";
import type { SectionFrame, SideCushion } from "../../charts/pack-section.ts";

export interface PackSection {
	readonly of: "front" | "side";
	readonly frame: SectionFrame;
	/** Play along the section and upright, m; below 0 the cushions are pressed by so much. */
	readonly playM: readonly [along: number, upright: number];
}

/** Less than this is what arithmetic leaves. */
const ROUNDING_M = 1e-6;

type Sides = { readonly lengthM: number; readonly widthM: number; readonly heightM: number };

export function packSections({ item, pack }: Pick<PackagingInput, "item" | "pack">): readonly PackSection[] {
	return (["front", "side"] as const).map((of) => {
		const around = pack.innerBox ?? pack.box;
		const within = frameOf(of, around, pack.faces, item, {
			itemAlongM: of === "front" ? item.lengthM : item.widthM,
			itemUprightM: item.heightM,
		});
		if (pack.innerBox === undefined) return { of, ...within };
		const outside = outerSidesM(pack.innerBox);
		const whole = frameOf(of, pack.box, pack.innerBox.faces, outside, within.frame);
		const telling = (index: 0 | 1) => moreTelling(whole.playM[index], within.playM[index]);
		return { of, frame: whole.frame, playM: [telling(0), telling(1)] as const };
	});
}

/** Of two plays the one that is pressed, else the larger. */
function moreTelling(one: number, other: number): number {
	const least = Math.min(one, other);
	return least < -ROUNDING_M ? least : Math.max(one, other);
}

function frameOf(
	of: PackSection["of"],
	box: Box,
	faces: FaceLayers,
	body: Sides,
	inside: SectionFrame["inside"],
): Pick<PackSection, "frame" | "playM"> {
	const along = of === "front" ? (["left", "right"] as const) : (["front", "back"] as const);
	const alongM = of === "front" ? box.innerLengthM : box.innerWidthM;
	const uprightM = box.innerHeightM;
	const sideOf = (face: Face) => cushionsOf(faces[face], face, of, body);
	const frame = {
		alongM,
		uprightM,
		left: sideOf(along[0]),
		right: sideOf(along[1]),
		top: sideOf("top"),
		bottom: sideOf("bottom"),
		inside,
	};
	const thick = (side: readonly SideCushion[]) => side.reduce((sum, cushion) => sum + cushion.thicknessM, 0);
	return {
		frame,
		playM: [
			alongM - (of === "front" ? body.lengthM : body.widthM) - thick(frame.left) - thick(frame.right),
			uprightM - body.heightM - thick(frame.top) - thick(frame.bottom),
		],
	};
}

/** From the outside inwards; layers are given from the item outwards. */
function cushionsOf(
	layers: readonly FoamLayer[],
	face: Face,
	of: PackSection["of"],
	body: Sides,
): readonly SideCushion[] {
	return layers.toReversed().map(({ thicknessM, bearing }) => {
		if ("fullFace" in bearing) return { thicknessM, pads: null };
		const [first] = bearing.pads;
		const { sidesM, seen } = seenOf(face, of, body);
		const grid = padGrid(bearing.pads.length, sidesM);
		const sides = first === undefined ? [0, 0] : [first.lengthM, first.widthM];
		return { thicknessM, pads: { count: grid[seen], lengthM: sides[seen] ?? 0 } };
	});
}

/** The face's sides as pads are given in them, and which of the two the section runs along. */
function seenOf(face: Face, of: PackSection["of"], { lengthM, widthM, heightM }: Sides) {
	if (face === "top" || face === "bottom")
		return { sidesM: [lengthM, widthM] as const, seen: of === "front" ? (0 as const) : (1 as const) };
	return { sidesM: [face === "front" || face === "back" ? lengthM : widthM, heightM] as const, seen: 1 as const };
}

/** How many pads lie along each side of a face: two along the longer, four at its corners, more in a grid. */
export function padGrid(count: number, [firstM, secondM]: readonly [number, number]): readonly [number, number] {
	const more = Math.ceil(Math.sqrt(count));
	const fewer = Math.ceil(count / more);
	return firstM >= secondM ? [more, fewer] : [fewer, more];
}
