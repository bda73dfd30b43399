/** `static-protection`, `condensation`, `packaging`. */
import { staticProtection as protectFromStatic } from "../../calculations/electrostatics/static-protection.ts";
import { condensation as condensationOf } from "../../calculations/moisture/condensation.ts";
import { damageRisk } from "../../calculations/packaging/damage-risk.ts";
import { packaging as assessPack } from "../../calculations/packaging/packaging.ts";
import { FACES, type FaceLayers, type FoamLayer, type PackagingInput } from "../../calculations/packaging/types.ts";
import { DROP_TABLES, dropTableById, MEASURED_DROPS, ORIENTATION_SHARES } from "../../catalogue/drop-tables.ts";
import { FOAMS } from "../../catalogue/foams.ts";
import { FRAGILITY_LEVELS } from "../../catalogue/fragility-levels.ts";
import { DEFAULT_VIBRATION_PROFILE, vibrationProfileById } from "../../catalogue/vibration-profiles.ts";
import {
	condensationRequest,
	condensationResult,
	type PackagingRequest,
	packagingRequest,
	packagingWithRisk,
	staticProtectionRequest,
	staticProtectionResult,
} from "../../contract/packaging.ts";
import { type BadMember, invalid } from "../../faults.ts";
import { calculation } from "./calculation.ts";
import { fillerOf, foamOf } from "./foam-of.ts";

export const staticProtection = calculation({
	name: "static-protection",
	summary: "Whether the layers around an item protect it from static on its way.",
	request: staticProtectionRequest,
	result: staticProtectionResult,
	example: {
		request: {
			item: "populated-card",
			layers: [{ kind: "low-charging-film", closed: true, intact: true, evidence: "looks-like" }],
			cell: "none",
		},
		result: { verdict: "not-acceptable" },
	},
	assess: protectFromStatic,
});

export const condensation = calculation({
	name: "condensation",
	summary: "Whether a cold board sweats when its bag is opened, and how long to wait.",
	request: condensationRequest,
	result: condensationResult,
	example: {
		request: {
			roomTemperatureDegC: 22,
			roomHumidityPercent: 35,
			parcelTemperatureDegC: -20,
			parcelTemperatureBasis: "weather",
			timeConstantH: 1.75,
		},
		result: { dewPointDegC: 5.8, condenses: true, modelWaitH: 2.0, openAfterH: 4.1, powerAfterH: 12 },
	},
	assess: condensationOf,
});

const CARD_FACE = { layers: [{ foam: { id: "pe-plank-23c" }, thicknessM: 0.0508, fullFace: true as const }] };

export const packaging = calculation({
	name: "packaging",
	summary: "Whether a pack is adequate for an item on a trip: each check with margin, reason and mend.",
	request: packagingRequest,
	result: packagingWithRisk,
	example: {
		request: {
			item: {
				class: "graphics-card",
				massKg: 2,
				lengthM: 0.27,
				widthM: 0.11,
				heightM: 0.04,
				fragility: { gn: 50, basis: "maker" },
				cell: "none",
			},
			pack: {
				box: { innerLengthM: 0.38, innerWidthM: 0.22, innerHeightM: 0.15, reused: false },
				faces: {
					top: CARD_FACE,
					bottom: CARD_FACE,
					left: CARD_FACE,
					right: CARD_FACE,
					front: CARD_FACE,
					back: CARD_FACE,
				},
				bagLayers: [{ kind: "shielding-metal-in", closed: true, intact: true, evidence: "data-sheet" }],
			},
			route: { dropBasis: "our-choice-762", mode: "road", transitDays: 2 },
		},
		result: { verdict: "falls-short" },
	},
	assess: (request) => {
		const input = packagingInput(request);
		const answer = assessPack(input);
		if (answer.status !== "assessed") return answer;
		return { ...answer, result: { ...answer.result, damageRisk: damageRisk(input, ORIENTATION_SHARES) } };
	},
});

/**
 * A request with its foams and tables resolved.
 * @throws bad-input for an id that the catalogue does not have, a box smaller than the item, temperatures that cross
 */
export function packagingInput(request: PackagingRequest): PackagingInput {
	const { item, pack } = request;
	const { innerBox } = pack;
	const bad = tooSmall(item, innerBox ?? pack.box, innerBox === undefined ? "/pack/box" : "/pack/innerBox");
	if (bad.length > 0) throw invalid(bad);
	return {
		item,
		pack: {
			...pack,
			faces: layersOf(pack.faces, "/pack/faces"),
			innerBox:
				innerBox === undefined ? undefined : { ...innerBox, faces: layersOf(innerBox.faces, "/pack/innerBox/faces") },
		},
		route: routeInput(request.route),
		catalogue: FOAMS,
		classLevel: FRAGILITY_LEVELS[item.class] ?? null,
	};
}

/** A trip with its tables. @throws bad-input for an id that the catalogue does not have, temperatures that cross */
export function routeInput(route: PackagingRequest["route"]): PackagingInput["route"] {
	const dropTable = dropTableById(route.dropBasis);
	const profile = vibrationProfileById(route.vibrationProfileId ?? DEFAULT_VIBRATION_PROFILE);
	const { temperatureLowDegC: low, temperatureHighDegC: high } = route;
	const bad = [
		...(dropTable === null ? [{ path: "/route/dropBasis", code: "unknown-id" }] : []),
		...(profile === null ? [{ path: "/route/vibrationProfileId", code: "unknown-id" }] : []),
		...(low !== undefined && high !== undefined && !(high >= low)
			? [{ path: "/route/temperatureHighDegC", code: "not-above" }]
			: []),
	];
	if (dropTable === null || profile === null || bad.length > 0) throw invalid(bad);
	return { ...route, dropTable, dropTables: DROP_TABLES, measured: MEASURED_DROPS, vibrationProfile: profile };
}

function layersOf(faces: PackagingRequest["pack"]["faces"], path: string): FaceLayers {
	const of = (face: (typeof FACES)[number]): FoamLayer[] =>
		faces[face].layers.map((layer, index) => ({
			foam: foamOf(layer.foam, `${path}/${face}/layers/${index}/foam`),
			filler: fillerOf(layer.foam),
			thicknessM: layer.thicknessM,
			bearing: layer.pads === undefined ? { fullFace: true } : { pads: layer.pads },
		}));
	return Object.fromEntries(FACES.map((face) => [face, of(face)])) as unknown as FaceLayers;
}

/** A box that the item does not go into is a slip of unit or digit. */
function tooSmall(
	item: PackagingRequest["item"],
	box: { readonly innerLengthM: number; readonly innerWidthM: number; readonly innerHeightM: number },
	path: string,
): BadMember[] {
	return (
		[
			["innerLengthM", "lengthM"],
			["innerWidthM", "widthM"],
			["innerHeightM", "heightM"],
		] as const
	)
		.filter(([inner, side]) => !(box[inner] >= item[side]))
		.map(([inner, side]) => ({ path: `${path}/${inner}`, code: "smaller-than-item", facts: { itemM: item[side] } }));
}
