/** `board-strength`, `vibration`, `box-compression`, `desiccant`. */
import { z } from "zod";
import { type BoxCompressionInput, FLUTES, type Flute } from "../calculations/box/box-compression.ts";
import { DESICCANT_METHODS, type DesiccantInput, DUNNAGE_KINDS } from "../calculations/moisture/desiccant.ts";
import {
	type Board,
	type BoardStrengthInput,
	COMPONENT_FACTORS,
	type ComponentKind,
} from "../calculations/strength/board-strength.ts";
import { PLATE_SUPPORTS } from "../calculations/strength/plate-frequency.ts";

const number = z.number().nullable();
const side = z.number().min(1e-4).max(10);
const frequencyHz = z.number().min(0.1).max(100_000);

const boardMembers = {
	component: z
		.strictObject({
			kind: z.enum(Object.keys(COMPONENT_FACTORS) as [ComponentKind, ...ComponentKind[]]).optional(),
			factor: z.number().min(0.1).max(10).optional(),
			lengthM: side,
			position: z.enum(["centre", "quarter-edge", "quarter-quarter"]),
			boardEdgeM: side,
		})
		.refine((input) => (input.kind === undefined) !== (input.factor === undefined), {
			path: ["kind"],
			error: "give either kind or factor",
		}),
	boardThicknessM: z.number().min(1e-4).max(0.1),
	plate: z
		.strictObject({
			lengthM: side,
			widthM: side,
			massKg: z.number().min(1e-4).max(1000),
			modulusGPa: z.number().min(0.01).max(1000),
			poissonRatio: z.number().min(0).lt(0.5),
			support: z.enum(PLATE_SUPPORTS),
		})
		.optional(),
	naturalFrequencyHz: frequencyHz.optional(),
	amplification: z.number().min(0.01).max(10).optional(),
	/** Of a half-sine shock; the amplification follows from it where none is given. */
	pulseDurationMs: z.number().min(0.01).max(1000).optional(),
};

/** A board as `packaging` takes it. */
export const boardInput = z.strictObject(boardMembers) satisfies z.ZodType<Board>;

export const boardStrengthRequest = z.strictObject({
	...boardMembers,
	shockGn: z.number().min(0.01).max(100_000).optional(),
}) satisfies z.ZodType<BoardStrengthInput>;

export const boardStrengthResult = z.strictObject({
	allowableVibrationDeflectionM: z.number(),
	allowableShockDeflectionM: z.number(),
	naturalFrequencyHz: number,
	requiredFrequencyHz: number,
	responseDeflectionM: number,
	allowableShockGn: number,
	allowableShockByFrequency: z.array(z.strictObject({ frequencyHz: z.number(), allowableShockGn: z.number() })),
});

export const vibrationRequest = z
	.strictObject({
		profile: z
			.array(
				z.strictObject({ frequencyHz: z.number().min(0.01).max(100_000), gn2PerHz: z.number().min(1e-15).max(1e6) }),
			)
			.min(2)
			.max(1000)
			.optional(),
		profileId: z.string().max(60).optional(),
		naturalFrequencyHz: frequencyHz.optional(),
		q: z.number().min(0.5).max(1000).optional(),
		cushionFrequencyHz: frequencyHz.optional(),
		cushionDampingRatio: z.number().min(1e-3).max(1).optional(),
	})
	.refine((input) => input.profile === undefined || input.profileId === undefined, {
		path: ["profileId"],
		error: "give either profile or profileId",
	});

export const vibrationResult = z.strictObject({
	overallGnRms: z.number(),
	responseGnRms: number,
	responseBandGnRms: number,
	responseDeflectionRmsM: number,
	transmissibility: number,
});

export const boxCompressionRequest = z.strictObject({
	formula: z.enum(["mckee", "kellicutt"]).optional(),
	flute: z.enum(Object.keys(FLUTES) as [Flute, ...Flute[]]).optional(),
	edgeCrushKNPerM: z.number().min(0.01).max(100),
	caliperM: z.number().min(1e-4).max(0.1),
	perimeterM: z.number().min(0.01).max(50),
	days: z.number().min(0).max(10_000).optional(),
	humidityPercent: z.number().min(0).max(100).optional(),
	palletFactor: z.number().min(0.01).max(1).optional(),
	stack: z
		.strictObject({
			lengthM: side,
			widthM: side,
			heightM: side,
			stackHeightM: z.number().min(0).max(20),
			densityKgPerM3: z.number().min(0.1).max(20_000),
			factor: z.number().min(1).max(100),
		})
		.optional(),
}) satisfies z.ZodType<BoxCompressionInput>;

export const boxCompressionResult = z.strictObject({
	compressionStrengthN: z.number(),
	deratedStrengthN: z.number(),
	stackLoadN: number,
	marginDerated: number,
	marginFactored: number,
});

/** Paper, card and foam inside a barrier. */
export const dunnageInput = z.strictObject({
	kind: z.enum(DUNNAGE_KINDS),
	massKg: z.number().min(0).max(1000),
	moistureGramPerKg: z.number().min(0).max(1000).optional(),
});

export const desiccantRequest = z.strictObject({
	method: z.enum(DESICCANT_METHODS),
	barrierAreaM2: z.number().min(1e-4).max(1000).optional(),
	barrierVolumeM3: z.number().min(1e-6).max(1000).optional(),
	waterVapourGramPerM2Day: z.number().min(0).max(1000).optional(),
	days: z.number().min(0).max(10_000).optional(),
	months: z.number().min(0).max(1000).optional(),
	finalHumidityPercent: z.number().min(0).max(100).optional(),
	capacityGramPerUnit: z.number().min(1e-3).max(1000).optional(),
	dunnage: z.array(dunnageInput).max(50).optional(),
	airGramPerM3: z.number().min(0).max(1000).optional(),
}) satisfies z.ZodType<DesiccantInput>;

export const desiccantResult = z.strictObject({ units: z.number(), unitsRounded: number });
