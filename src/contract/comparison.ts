/** `/consignments/{id}/comparison`. */
import { z } from "zod";
import { ORIGINS } from "../calculations/origin/origins.ts";
import { ITEM_STATES, STAGES } from "../catalogue/codes.ts";
import { FINDING_RULES } from "../catalogue/origins/findings.ts";
import { id } from "./common.ts";
import { judged, sources } from "./judged.ts";
import { linkJudgementResult } from "./link-judgement.ts";
import { readingComparisonResult } from "./reading-comparison.ts";

const names = z.array(z.string());
const some = z.number().nullable();

/** Finding ids of the catalogue, separated by commas. */
const findingIds = z
	.string()
	.max(2000)
	.refine((list) => idsIn(list).every((id) => FINDING_RULES.some((rule) => rule.id === id)), {
		error: "ids of findings that have a rule, separated by commas",
	})
	.optional();

/**
 * Any two sealed records of the order in place of the leg's own ends; and findings that the records do not hold, for this
 * answer only.
 */
export const comparisonQuery = z.strictObject({
	from: id("rec").optional(),
	to: id("rec").optional(),
	present: findingIds,
	absent: findingIds,
});

/** The ids of a list. */
export function idsIn(list: string | undefined): string[] {
	return (list ?? "").split(",").filter((id) => id !== "");
}

const said = z.strictObject({ id: z.string(), says: z.string() });
const endView = z
	.strictObject({
		condition: z.string(),
		provenance: z.string().nullable(),
		instrumentId: z.string().nullable(),
		values: z.array(z.number()).nullable(),
		count: some,
		exposure: z.strictObject({ amount: z.number(), unit: z.string() }).nullable(),
		trials: some,
		successes: some,
		notTested: z.string().nullable(),
		/** Mean, rate, counter or share with the interval in which the true one lies at 95 %. */
		estimate: z
			.strictObject({
				value: z.number(),
				interval: z.tuple([some, some]).nullable(),
				of: z.enum(["value", "rate", "counter", "share"]),
			})
			.nullable(),
	})
	.nullable();
const firstStatePoint = z.strictObject({ id: z.string(), says: z.string(), how: z.string().nullable() });
const origin = z.strictObject({
	findings: z.array(
		z.strictObject({
			...said.shape,
			state: z.enum(["present", "absent", "unknown"]),
			recordIds: z.array(id("rec")),
			/** Recordings that it was read from. They are not sealed. */
			recordingIds: z.array(id("trc")),
			/** Said in the request, kept nowhere. */
			given: z.boolean(),
		}),
	),
	/** Best supported first. */
	origins: z.array(
		z.strictObject({
			id: z.enum(ORIGINS),
			name: z.string(),
			support: z.enum(["supports", "does-not-support", "neutral", "not-tested"]),
			why: z.string(),
			for: z.array(said),
			against: z.array(said),
			/** Findings that would bear on it and were not made, by who could have made them. */
			missing: z.strictObject({ departure: z.array(said), transit: z.array(said), arrival: z.array(said) }),
			countedFor: z.number().int(),
			countedAgainst: z.number().int(),
		}),
	),
	nextTests: z.array(
		z.strictObject({ ...said.shape, destructive: z.boolean(), breaksCustody: z.boolean(), why: z.string() }),
	),
	turnsOn: said.nullable(),
	cautions: names,
	sources,
});

export const comparisonView = z.strictObject({
	consignmentId: id("con"),
	departureRecordId: id("rec").nullable(),
	arrivalRecordId: id("rec").nullable(),
	outcome: z.enum(["compared", "identity-mismatch", "no-first-state", "state-conflict", "moisture-hold"]),
	why: z.string(),
	/** The first screen; null while an end is missing. */
	lead: z.strictObject({ certain: names, uncertain: names, placed: names, elsewhere: names, next: names }).nullable(),
	identity: z.strictObject({
		agree: names,
		differ: names,
		readAlike: names,
		notSeen: names,
		likelySlips: names,
		mismatches: names,
		/** Of the marks recorded at departure that a board shows without power, how many were compared, and how many of these agree. */
		withoutPower: z.strictObject({ agree: z.number().int(), compared: z.number().int(), of: z.number().int() }),
	}),
	/** What the first test on arrival excludes, the grade after it; null without an arrival record. */
	firstState: z
		.strictObject({
			excluded: z.array(firstStatePoint),
			notExcluded: z.array(firstStatePoint),
			grade: z.enum(["full", "fair", "weak", "void"]).nullable(),
			why: z.string(),
		})
		.nullable(),
	betterOnArrival: names,
	adjustedFor: z.number().int(),
	checks: z.array(
		z.strictObject({
			check: z.string(),
			name: z.string(),
			unit: z.string().nullable(),
			departure: endView,
			arrival: endView,
			comparison: judged(readingComparisonResult),
		}),
	),
	link: z.strictObject({
		departure: judged(linkJudgementResult).nullable(),
		arrival: judged(linkJudgementResult).nullable(),
	}),
	custodyLine: z.strictObject({
		recordIds: z.array(id("rec")),
		spans: z.array(
			z.strictObject({
				kind: z.enum(["stay", "transit", "nobody", "unrecorded"]),
				holderId: id("pty").nullable(),
				consignmentId: id("con").nullable(),
				startsAt: z.string(),
				endsAt: z.string(),
				afterRecordId: id("rec"),
				beforeRecordId: id("rec"),
			}),
		),
		changes: z.array(
			z.strictObject({
				check: z.string(),
				kind: z.enum(["lost", "mended", "conflict", "first-seen"]),
				afterRecordId: id("rec").nullable(),
				beforeRecordId: id("rec"),
				spans: z.array(z.number().int()),
				widenedBy: z.array(id("rec")),
			}),
		),
	}),
	/** Records of the order in observed order; any two of them can be compared. */
	records: z.array(
		z.strictObject({
			recordId: id("rec"),
			stage: z.enum(STAGES),
			holderId: id("pty"),
			consignmentId: id("con").nullable(),
			provenance: z.string(),
			observedAt: z.string(),
			sealedAt: z.string(),
			state: z.enum(ITEM_STATES),
		}),
	),
	/** Null where nothing became worse and nothing is at odds. */
	origin: origin.nullable(),
	disclaimer: z.string(),
});
export type ComparisonView = z.infer<typeof comparisonView>;
