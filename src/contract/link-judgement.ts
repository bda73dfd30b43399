/** `link-judgement`. */
import { z } from "zod";
import type { LinkJudgementInput } from "../calculations/link/link-judgement.ts";

/** 0 GT/s: no speed in the register; 63 lanes: all ones. */
export const link = z.strictObject({
	speedGTPerS: z.number().min(0).max(1000),
	width: z.number().int().min(0).max(63),
});

export const linkJudgementRequest = z.strictObject({
	card: link,
	function: link.optional(),
	upstreamPath: z.array(link).max(16).optional(),
	idle: link.optional(),
	load: link.optional(),
	slot: link.optional(),
	control: link.optional(),
}) satisfies z.ZodType<LinkJudgementInput>;

export const linkJudgementResult = z.strictObject({
	judgement: z.enum([
		"ok",
		"ok-idle-saving",
		"ok-card-limit",
		"slot-limited",
		"width-reduced",
		"speed-reduced",
		"unjudged-idle",
		"unjudged-path-not-seen",
		"bus-lost",
		"no-link-data",
	]),
	why: z.string(),
	effective: link.nullable(),
	effectiveGBytePerS: z.number().nullable(),
	capabilityGBytePerS: z.number().nullable(),
});
