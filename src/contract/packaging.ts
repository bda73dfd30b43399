/** `static-protection`, `condensation`, `packaging`, and sealed assessments. */
import { z } from "zod";
import { LAYER_KINDS, type StaticProtectionInput } from "../calculations/electrostatics/static-protection.ts";
import type { CondensationInput } from "../calculations/moisture/condensation.ts";
import { RISK_FACTORS } from "../calculations/packaging/damage-risk.ts";
import { COOLER_SUPPORTS, FRAGILITY_BASES } from "../calculations/packaging/types.ts";
import { STANDINGS } from "../calculations/sources.ts";
import { ITEM_CLASSES } from "../catalogue/codes.ts";
import { id, money, sha256, text } from "./common.ts";
import { checkVerdict, foamInput, thicknessM } from "./cushion.ts";
import { dropBasis } from "./handling.ts";
import { sources } from "./judged.ts";
import { boardInput, dunnageInput } from "./strength.ts";

/** The faces of a pack; top and bottom are ± height. */
export const FACES = ["top", "bottom", "left", "right", "front", "back"] as const;
const cell = z.enum(["none", "coin", "lithium-ion", "supercapacitor"]);

export const staticLayer = z.strictObject({
	kind: z.enum(LAYER_KINDS),
	closed: z.boolean(),
	intact: z.boolean(),
	stapled: z.boolean().optional(),
	reused: z.boolean().optional(),
	evidence: z.enum(["measured", "data-sheet", "looks-like", "none"]),
	shieldingNJ: z.number().min(0).max(1e6).optional(),
	edition: text(100).optional(),
	surfaceResistanceOhm: z.number().positive().max(1e18).optional(),
});

export const staticProtectionRequest = z.strictObject({
	item: z.enum(["board", "module", "populated-card"]),
	layers: z.array(staticLayer).max(10),
	makerDeclaresNotSensitive: z.boolean().optional(),
	connectorsCapped: z.boolean().optional(),
	edgesPadded: z.boolean().optional(),
	cell,
}) satisfies z.ZodType<StaticProtectionInput>;

const outcome = z.enum(["pass", "fail", "unproven"]);
export const staticProtectionResult = z.strictObject({
	verdict: z.enum(["acceptable", "conditional", "not-acceptable"]),
	tests: z.strictObject({ lowCharging: outcome, dissipativeContact: outcome, dischargeShielding: outcome }),
	conditions: z.array(z.string()),
	evidence: z.enum(["verified", "declared", "assumed", "unknown"]),
});

const temperature = z.number().min(-100).max(100);
const outerSide = z.number().min(0.01).max(10);
export const condensationRequest = z.strictObject({
	roomTemperatureDegC: temperature,
	roomHumidityPercent: z.number().min(0.1).max(100),
	parcelTemperatureDegC: temperature,
	parcelTemperatureBasis: z.enum(["measured", "weather", "guess"]).optional(),
	timeConstantH: z.number().min(1e-3).max(1000).optional(),
	parcel: z
		.strictObject({
			outerM: z.tuple([outerSide, outerSide, outerSide]),
			layers: z
				.array(
					z.strictObject({
						thicknessM: z.number().min(1e-5).max(1),
						conductivityWPerMK: z.number().min(1e-3).max(500),
					}),
				)
				.max(10),
			contentsMassKg: z.number().min(1e-3).max(1000),
			specificHeatJPerKgK: z.number().min(1).max(10_000).optional(),
		})
		.optional(),
	surfaceTemperatureDegC: temperature.optional(),
	wetnessSeen: z.boolean().optional(),
}) satisfies z.ZodType<CondensationInput>;

const number = z.number().nullable();
export const condensationResult = z.strictObject({
	dewPointDegC: z.number(),
	frostPointDegC: number,
	condenses: z.boolean(),
	timeConstantH: number,
	modelWaitH: number,
	openAfterH: number,
	powerAfterH: number,
});

/** A side of a thing that is packed. */
const side = z.number().min(1e-3).max(5);
const pad = z.strictObject({ lengthM: side, widthM: side });
const layer = z
	.strictObject({
		foam: foamInput,
		thicknessM,
		pads: z.array(pad).min(1).max(50).optional(),
		fullFace: z.literal(true).optional(),
	})
	.refine((input) => (input.pads === undefined) !== (input.fullFace === undefined), {
		path: ["pads"],
		error: "give either pads or fullFace",
	});
const face = z.strictObject({ layers: z.array(layer).max(5) });

const faces = z.strictObject({
	top: face,
	bottom: face,
	left: face,
	right: face,
	front: face,
	back: face,
} satisfies Record<(typeof FACES)[number], typeof face>);
/** A box by what is free inside it, and its board. */
export const boxInput = z.strictObject({
	innerLengthM: side,
	innerWidthM: side,
	innerHeightM: side,
	edgeCrushKNPerM: z.number().positive().max(100).optional(),
	caliperM: z.number().positive().max(0.1).optional(),
	reused: z.boolean(),
});

/** The item, its axes along the box's; top and bottom are ± height. */
export const packedItem = z.strictObject({
	class: z.enum(ITEM_CLASSES),
	massKg: z.number().min(1e-3).max(200),
	lengthM: side,
	widthM: side,
	heightM: side,
	fragility: z
		.strictObject({
			gn: z.number().min(0.1).max(100_000),
			basis: z.enum(FRAGILITY_BASES),
			velocityChangeMPerS: z.number().positive().max(100).optional(),
		})
		.optional(),
	board: boardInput.optional(),
	heavyCooler: z.strictObject({ massKg: z.number().min(1e-3).max(200), support: z.enum(COOLER_SUPPORTS) }).optional(),
	cell,
	edgesPadded: z.boolean().optional(),
	connectorsCapped: z.boolean().optional(),
	makerDeclaresNotSensitive: z.boolean().optional(),
	value: money.optional(),
});

export const packRoute = z.strictObject({
	dropBasis,
	mode: z.enum(["road", "air", "sea", "rail", "mixed", "carried-by-hand"]),
	transitDays: z.number().min(0).max(365),
	temperatureLowDegC: temperature.optional(),
	temperatureHighDegC: temperature.optional(),
	humidityPercent: z.number().min(0).max(100).optional(),
	vibrationProfileId: z.string().max(60).optional(),
	carrierCap: money.optional(),
});

export const packagingRequest = z.strictObject({
	item: packedItem,
	pack: z.strictObject({
		box: boxInput,
		faces,
		/** A box in the box; its `faces` lie in the gap between the two. */
		innerBox: boxInput.extend({ faces }).optional(),
		bagLayers: z.array(staticLayer).max(10),
		desiccantUnits: z.number().min(0).max(1000).optional(),
		/** Paper, card and foam inside the moisture barrier. */
		dunnage: z.array(dunnageInput).max(50).optional(),
		grossMassKg: z.number().positive().max(1000).optional(),
		closedHow: text(300).optional(),
		cornerDrops: z
			.array(
				z.strictObject({
					dropHeightM: z.number().min(0.01).max(20),
					orientation: z.enum(["corner", "edge", "face"]),
					peakGn: z.number().min(0.01).max(100_000),
					sampleRateHz: z.number().min(1).max(1e7),
					massKg: z.number().min(1e-3).max(200),
				}),
			)
			.max(100)
			.optional(),
	}),
	route: packRoute,
});
export type PackagingRequest = z.infer<typeof packagingRequest>;

export const packagingCheck = z.strictObject({
	id: z.string(),
	verdict: checkVerdict,
	value: number,
	limit: number,
	unit: z.string().nullable(),
	margin: number,
	why: z.string(),
	mend: z.string().nullable(),
	sources,
});
export const packagingResult = z.strictObject({
	verdict: checkVerdict,
	checks: z.array(packagingCheck),
	protectedDropHeightM: number,
	protectedBandM: z.tuple([z.number(), z.number()]).nullable(),
	measuredBelow: z.array(
		z.strictObject({ id: z.string(), percentile: z.enum(["p95", "max"]), dropHeightM: z.number() }),
	),
	fragility: z.strictObject({
		basis: z.enum(FRAGILITY_BASES),
		limitGn: z.number(),
		others: z.array(
			z.strictObject({
				basis: z.enum(FRAGILITY_BASES),
				limitGn: z.number(),
				standing: z.enum(STANDINGS),
				verdict: checkVerdict.nullable(),
			}),
		),
	}),
	dropBases: z.array(
		z.strictObject({
			basis: z.string(),
			dropHeightM: z.number(),
			standing: z.enum(STANDINGS),
			reached: z.boolean().nullable(),
		}),
	),
});

/** Beside the verdict, never part of what is sealed; null where the item's strength is neither tested nor stated by its maker. */
export const packagingWithRisk = packagingResult.extend({
	damageRisk: z
		.strictObject({
			probability: z.tuple([z.number(), z.number()]),
			turnsOn: z.enum(RISK_FACTORS),
			assumptions: z.array(z.string()),
		})
		.nullable(),
});

/** A sealed assessment of a pack as shipped. */
export const assessmentView = z.strictObject({
	id: id("pka"),
	consignmentId: id("con"),
	sealedAt: z.string(),
	index: z.number().int(),
	fingerprint: sha256,
	statement: z.record(z.string(), z.json()),
});
export type AssessmentView = z.infer<typeof assessmentView>;
export const assessmentList = z.strictObject({ assessments: z.array(assessmentView) });
