/** `/consignments/{id}/comparison`. */
import { z } from "zod";
import { STANDINGS } from "../calculations/sources.ts";
import { id } from "./common.ts";
import { linkJudgementResult } from "./link-judgement.ts";
import { readingComparisonResult } from "./reading-comparison.ts";

const sources = z.array(
	z.strictObject({ id: z.string(), document: z.string(), locator: z.string(), standing: z.enum(STANDINGS) }),
);
const support = {
	cautions: z.array(z.string()),
	validity: z.strictObject({ within: z.boolean(), notes: z.array(z.string()) }),
	sources,
};
/** A judged value, its sentences in words. */
export const judged = (result: z.ZodType) =>
	z.discriminatedUnion("status", [
		z.strictObject({ status: z.literal("assessed"), result, ...support }),
		z.strictObject({
			status: z.literal("not-assessed"),
			result: z.null(),
			reason: z.strictObject({ code: z.string(), message: z.string() }),
			...support,
		}),
	]);

const names = z.array(z.string());

export const comparisonView = z.strictObject({
	consignmentId: id("con"),
	departureRecordId: id("rec").nullable(),
	arrivalRecordId: id("rec").nullable(),
	outcome: z.enum(["compared", "identity-mismatch", "no-first-state", "state-conflict", "moisture-hold"]),
	why: z.string(),
	identity: z.strictObject({ agree: names, differ: names, readAlike: names, notSeen: names }),
	betterOnArrival: names,
	adjustedFor: z.number().int(),
	checks: z.array(z.strictObject({ check: z.string(), name: z.string(), comparison: judged(readingComparisonResult) })),
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
	disclaimer: z.string(),
});
export type ComparisonView = z.infer<typeof comparisonView>;
