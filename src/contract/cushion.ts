/** `cushion`. */
import { z } from "zod";
import { STANDINGS } from "../calculations/sources.ts";

/** A foam thinner than this is none, a drop lower is none: below, quotients leave what a double holds. */
export const thicknessM = z.number().min(1e-4).max(2);
const dropHeightM = z.number().min(1e-4).max(20);
const staticStressKPa = z.number().min(1e-6).max(10_000);

/** Points of a foam's curve: its supplier's, or the shop's own drops. */
const curvePoints = z
	.array(
		z.strictObject({
			staticStressKPa,
			dropHeightM,
			thicknessM,
			peakGn: z.number().min(0.01).max(100_000),
			drop: z.number().int().min(1).max(100).optional(),
		}),
	)
	.min(2)
	.max(1000);

/** A foam by catalogue id, by its model, by points of its curve, or not known. */
export const foamInput = z.union([
	z.strictObject({ id: z.string().max(60) }),
	z.strictObject({
		model: z.literal("stress-energy"),
		aKPa: z.number().min(1e-3).max(1e6),
		bPerKPa: z.number().min(1e-6).max(1e3),
	}),
	z.strictObject({
		model: z.literal("gas-compression"),
		yieldStressKPa: z.number().min(0).max(1e6),
		gasPressureKPa: z.number().min(1e-3).max(1e6).optional(),
		relativeDensity: z.number().min(0).max(0.7),
	}),
	z.strictObject({ points: curvePoints }),
	z.strictObject({ unknown: z.literal(true) }),
]);
export type FoamInput = z.infer<typeof foamInput>;

export const cushionRequest = z.strictObject({
	foam: foamInput,
	thicknessM,
	dropHeightM,
	staticStressKPa,
	limitGn: z.number().min(0.01).max(100_000).optional(),
	temperatureDegC: z.number().min(-273.15).max(200).optional(),
});
export type CushionRequest = z.infer<typeof cushionRequest>;

const number = z.number().nullable();
export const checkVerdict = z.enum(["meets", "provisional", "marginal", "not-assessed", "falls-short"]);

export const cushionResult = z.strictObject({
	peakGn: number,
	peakBandGn: z.tuple([z.number(), z.number()]).nullable(),
	energyDensityKJPerM3: z.number(),
	optimumStaticStressKPa: number,
	optimumPeakGn: number,
	loading: z.enum(["over-supported", "near-optimum", "under-supported"]).nullable(),
	floorPeakGn: z.number(),
	bestPracticalPeakGn: number,
	bestPracticalFoam: z.string().nullable(),
	bestPracticalStanding: z.enum(STANDINGS).nullable(),
	verdict: checkVerdict.nullable(),
	verdictCode: z.enum(["within-band", "outside-range", "pad-too-large", "foam-unknown"]).nullable(),
	minimumThicknessAtStressM: number,
	minimumThicknessAtStressReason: z.literal("pad-too-large").nullable(),
	minimumThicknessAtOptimumM: number,
	staticStressRangeKPa: z.tuple([number, number]).nullable(),
	leastThicknessAnyFoamM: number,
	leastThicknessPracticalM: number,
});

export const cushionFitRequest = z.strictObject({ points: curvePoints });

export const cushionFitResult = z.strictObject({
	aKPa: z.number(),
	bPerKPa: z.number(),
	minimumCushionFactor: z.number(),
	residualPercent: number,
	r2: number,
	predictionIntervalPercent: number,
	energyDensityRangeKJPerM3: z.tuple([z.number(), z.number()]),
});
