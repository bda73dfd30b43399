/** Steps of an order's parties towards a settlement. */
import { z } from "zod";
import { ITEM_NEXT, PAYERS, SETTLEMENT_ACTS, SETTLEMENT_OUTCOMES } from "../catalogue/codes.ts";
import { id, money, sha256, text } from "./common.ts";

const payer = z.enum(PAYERS);
const words = text(5000).optional();
const answer = <Act extends string>(act: Act) =>
	z.strictObject({ act: z.literal(act), proposalId: id("stl"), text: words });

export const settlementInput = z.discriminatedUnion("act", [
	z.strictObject({
		act: z.literal("proposes"),
		outcome: z.enum(SETTLEMENT_OUTCOMES),
		amounts: z
			.array(
				money.extend({ from: payer, to: payer }).refine(({ from, to }) => from !== to, {
					path: ["to"],
					error: "an amount goes from one to another",
				}),
			)
			.max(20)
			.optional(),
		itemNext: z.enum(ITEM_NEXT),
		text: words,
	}),
	answer("assents"),
	answer("declines"),
	answer("retracts"),
	answer("reopens"),
]);
export type SettlementInput = z.infer<typeof settlementInput>;

const step = z.strictObject({
	id: id("stl"),
	partyId: id("pty"),
	act: z.enum(SETTLEMENT_ACTS),
	/** Of a proposal; null in the other acts. */
	outcome: z.enum(SETTLEMENT_OUTCOMES).nullable(),
	amounts: z.array(z.strictObject({ amount: z.number(), currency: z.string(), from: payer, to: payer })),
	itemNext: z.enum(ITEM_NEXT).nullable(),
	/** What became of a proposal; null in the other acts. */
	state: z.enum(["open", "agreed", "declined", "retracted", "lapsed", "reopened"]).nullable(),
	/** The proposal that the act is about; null in a proposal. */
	proposalId: id("stl").nullable(),
	text: z.string().nullable(),
	sealedAt: z.string(),
	/** Account or link. */
	sealedBy: z.string(),
	index: z.number().int(),
	fingerprint: sha256,
});
export type SettlementStepView = z.infer<typeof step>;

export const settlementView = z.strictObject({
	orderId: id("ord"),
	status: z.enum(["none", "proposed", "agreed", "reopened"]),
	/** The proposal that both parties assented to and that holds. */
	agreedId: id("stl").nullable(),
	/** In the order of the log. */
	steps: z.array(step),
});
export type SettlementView = z.infer<typeof settlementView>;
