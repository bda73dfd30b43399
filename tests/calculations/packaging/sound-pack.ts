/** A pack in which every check holds, to be spoilt in one place: a 3 kg card on pads of polyethylene plank. */
import { packaging } from "../../../src/calculations/packaging/packaging.ts";
import type { PackagingRequest } from "../../../src/contract/packaging.ts";
import { packagingInput } from "../../../src/operations/calculations/packaging.ts";

type Layer = PackagingRequest["pack"]["faces"]["top"]["layers"][number];
export const layer = (
	thicknessM: number,
	sideM: number,
	count = 1,
	foam: Layer["foam"] = { id: "pe-plank-23c" },
): Layer => ({
	foam,
	thicknessM,
	pads: Array.from({ length: count }, () => ({ lengthM: sideM, widthM: sideM })),
});
export const allFaces = (...layers: Layer[]): PackagingRequest["pack"]["faces"] => {
	const face = { layers };
	return { top: face, bottom: face, left: face, right: face, front: face, back: face };
};

export const SOUND: PackagingRequest = {
	item: {
		class: "graphics-card",
		massKg: 3,
		lengthM: 0.3,
		widthM: 0.14,
		heightM: 0.08,
		fragility: { gn: 125, basis: "tested" },
		board: {
			component: { kind: "ball-grid-array", lengthM: 0.045, position: "centre", boardEdgeM: 0.27 },
			boardThicknessM: 0.0016,
			naturalFrequencyHz: 200,
		},
		heavyCooler: { massKg: 1, support: "cushion" },
		cell: "coin",
		edgesPadded: true,
		value: { amount: 1000, currency: "EUR" },
	},
	pack: {
		box: {
			innerLengthM: 0.3 + 2 * 0.0508,
			innerWidthM: 0.14 + 2 * 0.0508,
			innerHeightM: 0.08 + 2 * 0.0508,
			edgeCrushKNPerM: 8,
			caliperM: 0.004,
			reused: false,
		},
		faces: allFaces(layer(0.0508, 0.0775)),
		bagLayers: [
			{ kind: "shielding-metal-in", closed: true, intact: true, evidence: "data-sheet" },
			{ kind: "moisture-barrier", closed: true, intact: true, evidence: "data-sheet" },
		],
		desiccantUnits: 1,
	},
	route: {
		dropBasis: "din-55439",
		mode: "road",
		transitDays: 3,
		temperatureLowDegC: 0,
		temperatureHighDegC: 40,
		humidityPercent: 60,
		carrierCap: { amount: 1500, currency: "EUR" },
	},
};

/** The sound pack with some members of item, pack and route changed. */
export function soundBut(change: {
	readonly item?: Partial<PackagingRequest["item"]>;
	readonly box?: Partial<PackagingRequest["pack"]["box"]>;
	readonly pack?: Partial<PackagingRequest["pack"]>;
	readonly route?: Partial<PackagingRequest["route"]>;
}): PackagingRequest {
	return {
		item: { ...SOUND.item, ...change.item },
		pack: { ...SOUND.pack, ...change.pack, box: { ...SOUND.pack.box, ...change.box } },
		route: { ...SOUND.route, ...change.route },
	};
}

export function assess(request: PackagingRequest) {
	const answer = packaging(packagingInput(request));
	if (answer.status !== "assessed") throw new Error(answer.reason.code);
	return answer.result;
}
export const check = (result: ReturnType<typeof assess>, id: string) => {
	const found = result.checks.find((one) => one.id === id);
	if (found === undefined) throw new Error(id);
	return found;
};
/** Checks that fall short. */
export const short = (result: ReturnType<typeof assess>) =>
	result.checks.filter((one) => one.verdict === "falls-short").map((one) => one.id);
