/** `shock-trace`. */
import { z } from "zod";
import { FILTER_CLASSES, type FilterClass } from "../calculations/shock/trace/low-pass.ts";
import { judged } from "./judged.ts";

const MOST_SAMPLES = 200_000;
/** A lower frequency would need too many zeros after the trace, and loses digits in the recursion's coefficients. */
const MOST_SAMPLES_PER_PERIOD = 100_000;

const accelerationGn = z.array(z.number().min(-1e6).max(1e6)).min(2).max(MOST_SAMPLES);

export const shockTraceRequest = z
	.strictObject({
		sampleRateHz: z.number().min(1).max(1e7),
		accelerationGn: accelerationGn.optional(),
		axes: z.tuple([accelerationGn, accelerationGn, accelerationGn]).optional(),
		/** Samples before the shock; their mean is the baseline. */
		pretriggerSamples: z.number().int().min(1).max(MOST_SAMPLES).optional(),
		fullScaleGn: z.number().positive().max(1e6).optional(),
		filterClass: z.literal(FILTER_CLASSES as readonly FilterClass[]).optional(),
		peak: z.enum(["parabolic", "sample"]).optional(),
		q: z.number().gt(0.5).max(1e6).optional(),
		undamped: z.literal(true).optional(),
		frequenciesHz: z.array(z.number().positive().max(1e7)).min(1).max(500),
	})
	.refine((input) => (input.accelerationGn === undefined) !== (input.axes === undefined), {
		path: ["accelerationGn"],
		error: "give either accelerationGn or axes",
	})
	.refine((input) => (input.q === undefined) !== (input.undamped === undefined), {
		path: ["q"],
		error: "give either q or undamped",
	})
	.refine(({ axes }) => axes === undefined || axes.every((axis) => axis.length === axes[0].length), {
		path: ["axes"],
		error: "the three axes must have equally many samples",
	})
	.refine(
		({ pretriggerSamples, accelerationGn: one, axes }) =>
			pretriggerSamples === undefined || pretriggerSamples < (one ?? axes?.[0] ?? []).length,
		{ path: ["pretriggerSamples"], error: "there must be samples after those before the shock" },
	)
	.superRefine(({ frequenciesHz, sampleRateHz }, context) => {
		frequenciesHz.forEach((frequencyHz, index) => {
			const [least, most] = [sampleRateHz / MOST_SAMPLES_PER_PERIOD, sampleRateHz / 2];
			if (!(frequencyHz >= least && frequencyHz < most))
				context.addIssue({
					code: "custom",
					path: ["frequenciesHz", index],
					message: `at this sampling rate it must be at least ${least} and below ${most}`,
				});
		});
	});
export type ShockTraceRequest = z.infer<typeof shockTraceRequest>;

const number = z.number().nullable();
const signalMembers = {
	peakGn: z.number(),
	enoughSamples: z.boolean(),
	peakValid: z.boolean(),
	clipped: z.boolean().nullable(),
	durationMs: z.number(),
	velocityChangeMPerS: z.number(),
	wholeVelocityChangeMPerS: z.number(),
	equivalentDropHeightM: z.strictObject({
		restitution0: z.number(),
		restitutionHalf: z.number(),
		restitution1: z.number(),
	}),
	freeFallTimeS: number,
	freeFallDropHeightM: number,
	spectrum: z.array(
		z.strictObject({
			frequencyHz: z.number(),
			maximaxGn: z.number(),
			positiveGn: number,
			negativeGn: number,
			primaryGn: z.number(),
			residualGn: z.number(),
		}),
	),
};
export const shockTraceAnswer = judged(
	z.strictObject({ ...signalMembers, axes: z.array(z.strictObject(signalMembers)).nullable() }),
);
export type ShockTraceAnswer = z.infer<typeof shockTraceAnswer>;
