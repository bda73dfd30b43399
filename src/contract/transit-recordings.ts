/** `consignments/{id}/transit-recordings`: what a recorder that travelled with the item noted. */
import { z } from "zod";
import { RECORDER_PLACES } from "../calculations/shock/recording/event-against-pack.ts";
import { dateTime, id, sha256, text } from "./common.ts";

/** Columns are counted from 1, from the left. */
const column = z.number().int().min(1).max(500);
export const TIME_UNITS = ["s", "ms", "us", "count", "epoch-s", "epoch-ms", "date-time"] as const;
export const ACCELERATION_UNITS = ["Gn", "mGn", "m/s2", "mm/s2"] as const;
export const TEMPERATURE_UNITS = ["degC", "degF", "K"] as const;
export const RECORDER_DEVICES = ["recorder", "phone"] as const;

export const recorderMapping = z
	.strictObject({
		time: z.strictObject({
			column,
			unit: z.enum(TIME_UNITS),
			/** Of a column that counts samples. */
			sampleRateHz: z.number().min(0.001).max(1e6).optional(),
			/** Of dates and times that are printed without a zone: minutes ahead of UTC. */
			offsetMinutes: z.number().int().min(-840).max(840).optional(),
		}),
		axes: z
			.array(z.strictObject({ column, unit: z.enum(ACCELERATION_UNITS) }))
			.min(1)
			.max(3),
		temperature: z.strictObject({ column, unit: z.enum(TEMPERATURE_UNITS) }).optional(),
		humidity: z.strictObject({ column }).optional(),
	})
	.refine(({ time }) => (time.unit === "count") === (time.sampleRateHz !== undefined), {
		path: ["time", "sampleRateHz"],
		error: "a column that counts samples needs the samples per second, and no other does",
	})
	.refine(({ time }) => time.offsetMinutes === undefined || time.unit === "date-time", {
		path: ["time", "offsetMinutes"],
		error: "only dates and times have a zone",
	})
	.superRefine(({ time, axes, temperature, humidity }, context) => {
		const columns = [time, ...axes, temperature, humidity].flatMap((one) => (one === undefined ? [] : [one.column]));
		if (new Set(columns).size < columns.length)
			context.addIssue({ code: "custom", path: ["axes"], message: "one column is named twice" });
	});
export type RecorderMapping = z.infer<typeof recorderMapping>;

/** How a recorder's file is to be read, as a person confirmed it. */
export const recordingReading = z
	.strictObject({
		/** Where in the parcel the recorder sat: decides what its figures say. */
		place: z.enum(RECORDER_PLACES),
		device: z.enum(RECORDER_DEVICES),
		mapping: recorderMapping,
		/** Units that were told from the file are a proposal. */
		unitsConfirmed: z.literal(true),
		/** Where the file only counts its time: when the first row was recorded. */
		startsAt: dateTime.optional(),
		/** How far the recorder's clock may be off, either way. Without it no event is placed. */
		clockUncertaintyS: z.number().min(0).max(1e7).optional(),
		/** Largest value that the recorder can show. */
		fullScaleGn: z.number().positive().max(1e6).optional(),
		/** An impact begins where the resultant reaches this; 5 where nothing is said. */
		thresholdGn: z.number().min(1.5).max(10_000).optional(),
	})
	.refine(({ startsAt, mapping: { time } }) => startsAt === undefined || !hasClock(time.unit), {
		path: ["startsAt"],
		error: "the file holds times of its own",
	});
export type RecordingReading = z.infer<typeof recordingReading>;

/** Whether a time column says when, not only how long after the beginning. */
export function hasClock(unit: (typeof TIME_UNITS)[number]): boolean {
	return unit === "epoch-s" || unit === "epoch-ms" || unit === "date-time";
}

export const bringRecordingQuery = z.strictObject({
	fileName: text(200),
	/** JSON of how it is to be read; without it the file is kept and waits for that. */
	reading: z.string().max(8000).optional(),
});

const number = z.number().nullable();
const against = z.strictObject({
	verdict: z.enum(["below", "above", "not-decided", "not-comparable"]),
	why: z.string(),
});
const eventView = z.strictObject({
	number: z.number().int(),
	/** Seconds after the recording's begin. */
	afterS: z.number(),
	at: z.string().nullable(),
	place: z.strictObject({
		status: z.enum(["in-span", "in-one-of", "outside", "cannot-be-placed"]),
		/** Spans of the order's custody line. */
		spans: z.array(
			z.strictObject({
				kind: z.enum(["stay", "transit", "nobody", "unrecorded"]),
				holderId: z.string().nullable(),
				consignmentId: z.string().nullable(),
				startsAt: z.string(),
				endsAt: z.string(),
			}),
		),
		why: z.string(),
	}),
	/** Of the stretch that it lies in. */
	sampleRateHz: z.number(),
	peakGn: z.number(),
	peakDoubt: z.enum(["few-samples", "slow-sampling", "clipped", "phone", "one-axis", "cut-trace"]).nullable(),
	clipped: z.boolean().nullable(),
	durationMs: z.number(),
	samplesInPulse: z.number(),
	velocityChangeMPerS: z.number(),
	equivalentDropHeightM: z.strictObject({
		restitution0: z.number(),
		restitutionHalf: z.number(),
		restitution1: z.number(),
	}),
	freeFallTimeS: number,
	freeFallDropBandM: z.tuple([z.number(), z.number()]).nullable(),
	peakAgainstLimit: against,
	dropAgainstPack: against,
	spectrum: z.array(z.strictObject({ frequencyHz: z.number(), maximaxGn: z.number() })),
});
export type RecordingEventView = z.infer<typeof eventView>;

export const recordingPreview = z.strictObject({
	columns: z.array(
		z.strictObject({
			column: z.number().int(),
			name: z.string(),
			quantity: z.enum(["time", "count", "acceleration", "temperature", "humidity"]).nullable(),
			unit: z.string().nullable(),
			unitFrom: z.enum(["header", "rest"]).nullable(),
		}),
	),
	rows: z.array(z.array(z.string())),
	/** How files with this header line were read before. */
	remembered: recorderMapping.nullable(),
});
export type RecordingPreview = z.infer<typeof recordingPreview>;

const ends = z.strictObject({ least: z.number(), greatest: z.number() });
export const recordingView = z.strictObject({
	id: id("trc"),
	consignmentId: id("con"),
	broughtAt: z.string(),
	fileName: z.string(),
	sizeBytes: z.number().int(),
	sha256,
	/** A long file that is being read, or whose reading ended without a result; null otherwise. */
	pending: z
		.strictObject({
			/** `stopped`: nothing was heard of it for a minute, as after a restart; it may be asked for again. */
			status: z.enum(["being-read", "stopped", "refused"]),
			bytesRead: z.number().int(),
			/** Why it was refused. */
			why: z.string().nullable(),
		})
		.nullable(),
	/** Null: the file waits for how it is to be read. */
	reading: recordingReading.nullable(),
	result: z
		.strictObject({
			rows: z.number().int(),
			/** Slowest first: more than one where the recorder logs slowly and samples impacts fast. */
			rates: z.array(z.strictObject({ sampleRateHz: z.number(), rows: z.number().int() })),
			durationS: z.number(),
			startsAt: z.string().nullable(),
			gaps: z.number().int(),
			/** All impacts; the 50 greatest are kept. */
			eventsFound: z.number().int(),
			events: z.array(eventView),
			temperatureDegC: ends.nullable(),
			humidityPercent: ends.nullable(),
			notes: z.array(z.string()),
		})
		.nullable(),
});
export type RecordingView = z.infer<typeof recordingView>;
export const recordingList = z.strictObject({ recordings: z.array(recordingView) });
export const recordingBrought = z.strictObject({ recording: recordingView, preview: recordingPreview });
