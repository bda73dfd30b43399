/** What the shop's own legs show, as the page `/learning` tells it. */
import { z } from "zod";
import { EVENTS, type LearnedGroup, type Learning } from "../calculations/learning/learn.ts";
import { LEG_OUTCOMES } from "../calculations/learning/learned-leg.ts";
import { judged } from "./judged.ts";

const count = z.number().int();
const fraction = z.number().nullable();

/** `share` is of the known ones; `allGood` and `allBad` are its bounds were all unknown ones good, or bad. */
const share = z.strictObject({
	seen: count,
	known: count,
	unknown: count,
	share: fraction,
	/** Exact, at 95 %. */
	interval: z.tuple([z.number(), z.number()]).readonly().nullable(),
	allGood: fraction,
	allBad: fraction,
	/** Too few known ones to read much from it. */
	isFew: z.boolean(),
});

const group = z.strictObject({
	/** Null where it is not known, and for all legs together. */
	name: z.string().nullable(),
	legs: count,
	outcomes: z.record(z.enum(LEG_OUTCOMES), count),
	shares: z.record(z.enum(EVENTS), share),
}) satisfies z.ZodType<LearnedGroup>;

/** How many legs, and years, until a difference could show. */
const timeToShow = z
	.strictObject({
		from: z.number(),
		to: z.number(),
		cases: count,
		years: z.number().nullable(),
		isRough: z.boolean(),
	})
	.nullable();

const groups = z.array(group).readonly();
const learning = z.strictObject({
	firstOn: z.string(),
	lastOn: z.string(),
	legsPerYear: z.number().nullable(),
	all: group,
	by: z.strictObject({ carrier: groups, pack: groups, foam: groups, soak: groups }),
	toShow: z.array(z.strictObject({ event: z.enum(EVENTS), halved: timeToShow, doubled: timeToShow })).readonly(),
}) satisfies z.ZodType<Learning>;

export const learningAnswer = judged(learning);
