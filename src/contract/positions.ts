/** What the parties of an order state. */
import { z } from "zod";
import { DONE_BY, POSITION_KINDS, POSITION_TESTS, STANCES } from "../catalogue/codes.ts";
import { civilDate, id, sha256, text } from "./common.ts";

const test = z.strictObject({
	id: z.enum(POSITION_TESTS),
	doneBy: z.enum(DONE_BY),
	/** On which it can be done. */
	dates: z.array(civilDate).max(20).optional(),
});

export const positionInput = z
	.strictObject({
		kind: z.enum(POSITION_KINDS),
		text: text(5000),
		/** What it is about. */
		consignmentId: id("con").optional(),
		recordIds: z.array(id("rec")).max(20).optional(),
		checkIds: z.array(text(60)).max(50).optional(),
		answers: z.strictObject({ positionId: id("pos"), stance: z.enum(STANCES) }).optional(),
		test: test.optional(),
	})
	.refine((input) => (input.kind === "states") === (input.test === undefined), {
		path: ["test"],
		error: "a test is named where one is asked for or offered, and nowhere else",
	});
export type PositionInput = z.infer<typeof positionInput>;

export const positionView = z.strictObject({
	id: id("pos"),
	orderId: id("ord"),
	/** 1, 2, 3 … in the order of the log. */
	number: z.number().int(),
	partyId: id("pty"),
	kind: z.enum(POSITION_KINDS),
	/** Null once it was erased. */
	text: z.string().nullable(),
	consignmentId: id("con").nullable(),
	recordIds: z.array(id("rec")),
	checkIds: z.array(z.string()),
	answers: z.strictObject({ positionId: id("pos"), number: z.number().int(), stance: z.enum(STANCES) }).nullable(),
	test: z.strictObject({ id: z.enum(POSITION_TESTS), doneBy: z.enum(DONE_BY), dates: z.array(z.string()) }).nullable(),
	sealedAt: z.string(),
	/** Account or link. */
	sealedBy: z.string(),
	index: z.number().int(),
	fingerprint: sha256,
});
export type PositionView = z.infer<typeof positionView>;

export const positionList = z.strictObject({ positions: z.array(positionView) });
