/** State records: what may be drafted, and what is given back. */
import { z } from "zod";
import {
	CONDITIONS,
	DELIVERY_MANNERS,
	DEPTHS,
	EXHIBIT_VIEWS,
	ITEM_STATES,
	NOT_TESTED_REASONS,
	OUTER_DAMAGE,
	PROVENANCES,
	RECORD_PROVENANCES,
	RECORD_STATES,
	REPORT_CHANNELS,
	STAGES,
	STOP_SIGNS,
	TEMPERATURE_BASES,
} from "../catalogue/codes.ts";
import { typedUnit } from "./benches.ts";
import { dateTime, id, sha256, text } from "./common.ts";
import { linkJudgementRequest } from "./link-judgement.ts";

/** Digits as typed, with a point or a comma. */
export const typedDigits = z.string().regex(/^-?[0-9]+([.,][0-9]+)?([eE][+-]?[0-9]+)?$/);

/** Larger than any reading, small enough that no square of it overflows. */
const readingNumber = z.number().min(-1e15).max(1e15);

/** A number in the unit it was typed in; `typed` keeps the digits and must say the same number. */
export const typedQuantity = z
	.strictObject({ value: readingNumber, unit: typedUnit, typed: typedDigits.max(40).optional() })
	.refine((quantity) => quantity.typed === undefined || Number(quantity.typed.replace(",", ".")) === quantity.value, {
		path: ["typed"],
		error: "the digits typed and the value must be the same number",
	});

export const ownCheck = z.strictObject({
	name: text(200),
	kind: z.enum(["measured", "count", "score", "outcome"]),
	unit: typedUnit,
	comparability: z.enum(["any-bench", "stated-uncertainty", "same-instrument", "same-bench"]),
	betterIs: z.enum(["higher", "lower", "neither"]),
	limitLow: readingNumber.optional(),
	limitHigh: readingNumber.optional(),
	equivalenceMargin: readingNumber.positive().optional(),
});

/** How readings name an instrument that is described in the record itself. */
const ownInstrumentId = z.string().regex(/^meter-[1-5]$/);

export const ownInstrument = z.strictObject({
	id: ownInstrumentId,
	label: text(100),
	unit: typedUnit,
	percentOfReading: z.number().min(0).max(100).optional(),
	counts: z.number().min(0).max(10_000).optional(),
	resolution: readingNumber.positive().optional(),
});

export const readingInput = z
	.strictObject({
		check: z
			.string()
			.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/)
			.max(60),
		definition: ownCheck.optional(),
		condition: z.enum(CONDITIONS).optional(),
		provenance: z.enum(PROVENANCES).optional(),
		instrumentId: z.union([id("ins"), ownInstrumentId]).optional(),
		leadsNulled: z.boolean().optional(),
		values: z.array(typedQuantity).min(1).max(50).optional(),
		count: z.number().int().min(0).max(1e12).optional(),
		exposure: typedQuantity.optional(),
		trials: z.number().int().min(1).max(10_000).optional(),
		successes: z.number().int().min(0).max(10_000).optional(),
		limitLow: readingNumber.optional(),
		limitHigh: readingNumber.optional(),
		notTested: z.strictObject({ reason: z.enum(NOT_TESTED_REASONS), note: text(500).optional() }).optional(),
		importSha256: sha256.optional(),
		remark: text(1000).optional(),
	})
	.refine(
		(reading) =>
			[reading.values, reading.count, reading.trials, reading.notTested].filter((part) => part !== undefined).length ===
			1,
		{ error: "a reading has exactly one of values, count, trials or notTested" },
	)
	.refine((reading) => (reading.trials === undefined) === (reading.successes === undefined), {
		path: ["successes"],
		error: "trials and successes come together",
	})
	.refine((reading) => (reading.successes ?? 0) <= (reading.trials ?? 10_000), {
		path: ["successes"],
		error: "no more successes than trials",
	})
	.refine((reading) => (reading.count === undefined) === (reading.exposure === undefined), {
		path: ["exposure"],
		error: "a count comes with the exposure it was counted over",
	})
	.refine((reading) => (reading.definition !== undefined) === /^own-[1-5]$/.test(reading.check), {
		path: ["definition"],
		error: "own-1 to own-5 carry a definition, a catalogue check carries none",
	});

/** The content of a draft; everything may be missing until it is sealed. */
export const recordContent = z.strictObject({
	observedAt: dateTime.optional(),
	state: z.enum(ITEM_STATES).optional(),
	identity: z
		.strictObject({
			serialNumber: text(100).optional(),
			maker: text(100).optional(),
			model: text(200).optional(),
			uuid: text(100).optional(),
			firmware: text(200).optional(),
			marks: z.array(text(300)).max(20).optional(),
		})
		.optional(),
	setUp: z
		.strictObject({
			benchId: id("ben").optional(),
			host: text(300).optional(),
			slot: text(100).optional(),
			supply: text(300).optional(),
			firmware: text(200).optional(),
			driver: text(200).optional(),
			load: text(300).optional(),
			ambient: typedQuantity.optional(),
			humidity: typedQuantity.optional(),
			platforms: z.number().int().min(0).max(20).optional(),
			controlBefore: z.boolean().optional(),
			controlAfter: z.boolean().optional(),
		})
		.optional(),
	ownInstruments: z.array(ownInstrument).max(5).optional(),
	readings: z.array(readingInput).max(200).optional(),
	link: linkJudgementRequest.optional(),
	exhibits: z
		.array(z.strictObject({ sha256, view: z.enum(EXHIBIT_VIEWS), note: text(500).optional() }))
		.max(100)
		.optional(),
	parcel: z
		.strictObject({
			mass: typedQuantity.optional(),
			temperature: typedQuantity.optional(),
			temperatureBasis: z.enum(TEMPERATURE_BASES).optional(),
			/** When temperature and `setUp.ambient` were last changed. Noted by the service, whatever is sent; never sealed. */
			temperaturesNotedAt: dateTime.optional(),
			outerDamage: z.enum(OUTER_DAMAGE).optional(),
			sealsIntact: z.boolean().optional(),
			indicatorTripped: z.boolean().optional(),
			deliveredAt: dateTime.optional(),
			inHandAt: dateTime.optional(),
			manner: z.enum(DELIVERY_MANNERS).optional(),
			remark: text(1000).optional(),
		})
		.optional(),
	firstPowerOn: z
		.strictObject({
			waitedH: z.number().min(0).max(1000).optional(),
			firstAttemptEver: z.boolean().optional(),
			workDoneBefore: z.boolean().optional(),
			wetnessSeen: z.boolean().optional(),
			stopSigns: z.array(z.enum(STOP_SIGNS)).max(10).optional(),
		})
		.optional(),
	reported: z
		.strictObject({
			words: text(10_000).optional(),
			channel: z.enum(REPORT_CHANNELS).optional(),
			receivedAt: dateTime.optional(),
			bySender: text(200).optional(),
		})
		.optional(),
	statement: text(10_000).optional(),
	recordedBy: text(200).optional(),
});
export type RecordContentInput = z.infer<typeof recordContent>;

/** Opens a draft: on a consignment, or on an order for a bench record. */
export const recordInput = z.strictObject({
	stage: z.enum(STAGES),
	depth: z.enum(DEPTHS).optional(),
	provenance: z.enum(RECORD_PROVENANCES).optional(),
	amends: id("rec").optional(),
	content: recordContent.optional(),
});
export type RecordInput = z.infer<typeof recordInput>;

const jsonObject = z.record(z.string(), z.json());

/** A record as shown: a draft has content, a sealed one its opened statement and the facts of its seal. */
export const recordView = z.strictObject({
	id: id("rec"),
	orderId: id("ord"),
	consignmentId: id("con").nullable(),
	stage: z.enum(STAGES),
	depth: z.enum(DEPTHS),
	provenance: z.enum(RECORD_PROVENANCES),
	state: z.enum(RECORD_STATES),
	holderId: id("pty"),
	amends: id("rec").nullable(),
	/** The sealed record that amends this one; derived. */
	supersededBy: id("rec").nullable(),
	openedAt: z.string(),
	openedBy: z.string(),
	version: z.number().int(),
	/** Version of the shop's own checks and classes that it was opened with; null where there were none. */
	ownCatalogueVersion: z.number().int().nullable(),
	content: recordContent.nullable(),
	sealed: z
		.strictObject({
			index: z.number().int(),
			at: z.string(),
			by: z.string(),
			fingerprint: sha256,
			leafSha256: sha256,
			/** Whether a device that used the link through which it was sealed has signed its entry, and when. */
			partySigned: z.boolean(),
			partySignedAt: z.string().nullable(),
			statement: jsonObject,
		})
		.nullable(),
});

export type RecordView = z.infer<typeof recordView>;

export const recordList = z.strictObject({ records: z.array(recordView) });
export const receiptView = jsonObject;
