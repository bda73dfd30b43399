/** The check case of the cushion method: a 2 kg card over its full 270 × 110 mm face on 50.8 mm, dropped 762 mm. */
import type { PackagingRequest } from "../../../src/contract/packaging.ts";

const face = { layers: [{ foam: { id: "pe-plank-23c" }, thicknessM: 0.0508, fullFace: true as const }] };

export const CARD_PACK: PackagingRequest = {
	item: {
		class: "graphics-card",
		massKg: 2,
		lengthM: 0.27,
		widthM: 0.11,
		heightM: 0.04,
		fragility: { gn: 50, basis: "maker" },
		cell: "none",
		edgesPadded: true,
	},
	pack: {
		box: { innerLengthM: 0.38, innerWidthM: 0.22, innerHeightM: 0.15, reused: false },
		faces: { top: face, bottom: face, left: face, right: face, front: face, back: face },
		bagLayers: [
			{ kind: "shielding-metal-in", closed: true, intact: true, evidence: "data-sheet", edition: "ANSI/ESD S541-2018" },
		],
		closedHow: "tape in an H",
	},
	route: { dropBasis: "our-choice-762", mode: "road", transitDays: 2 },
};
