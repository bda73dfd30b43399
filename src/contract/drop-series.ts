/** `drop-series`: a foam characterised by the shop's own drops. */
import { z } from "zod";
import { cushionFitResult, thicknessM } from "./cushion.ts";
import { judged } from "./judged.ts";
import { RECORDER_DEVICES } from "./transit-recordings.ts";

const MOST_SAMPLES = 20_000;
const trace = z.array(z.number().min(-1e6).max(1e6)).min(20).max(MOST_SAMPLES);

export const dropSeriesRequest = z.strictObject({
	thicknessM,
	/** Of the sample, under the dummy. */
	bearingAreaM2: z.number().min(1e-4).max(10),
	temperatureDegC: z.number().min(-80).max(100),
	device: z.enum(RECORDER_DEVICES),
	/** Largest value that the recorder can show. */
	fullScaleGn: z.number().positive().max(1e6),
	drops: z
		.array(
			z
				.strictObject({
					massKg: z.number().min(1e-3).max(200),
					dropHeightM: z.number().min(0.01).max(5),
					/** Which drop on this sample it is. */
					drop: z.number().int().min(1).max(100),
					sampleRateHz: z.number().min(10).max(1e7),
					/** Before the impact, in rest or in fall: their mean is the baseline. */
					pretriggerSamples: z.number().int().min(1).max(MOST_SAMPLES),
					axes: z.array(trace).min(1).max(3),
				})
				.refine(({ axes }) => axes.length !== 2 && axes.every((axis) => axis.length === axes[0]?.length), {
					path: ["axes"],
					error: "give one axis or three, with equally many samples",
				})
				.refine(({ axes, pretriggerSamples }) => pretriggerSamples < (axes[0]?.length ?? 0), {
					path: ["pretriggerSamples"],
					error: "there must be samples after those before the shock",
				}),
		)
		.min(1)
		.max(60),
});
export type DropSeriesRequest = z.infer<typeof dropSeriesRequest>;

const number = z.number().nullable();
const group = z.strictObject({
	/** As the stock takes them: `{ "foam": { "points": … }, "thicknessM": … }`. */
	points: z.array(
		z.strictObject({
			staticStressKPa: z.number(),
			dropHeightM: z.number(),
			thicknessM: z.number(),
			peakGn: z.number(),
			drop: z.number().int(),
		}),
	),
	fit: judged(cushionFitResult),
});
export const dropSeriesAnswer = judged(
	z.strictObject({
		drops: z.array(
			z.strictObject({
				staticStressKPa: z.number(),
				energyDensityKJPerM3: z.number(),
				peakGn: number,
				samplesInPulse: number,
				velocityRatio: number,
				refusal: z.string().nullable(),
			}),
		),
		first: group,
		later: group,
	}),
);
export type DropSeriesAnswer = z.infer<typeof dropSeriesAnswer>;
