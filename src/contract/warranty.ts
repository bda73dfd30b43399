/** Whether a new failure falls inside an order's warranty. */
import { z } from "zod";
import { STANDINGS } from "../calculations/sources.ts";
import { civilDate, id } from "./common.ts";

const answer = z.enum(["yes", "no", "not-known"]);
export const warrantyQuery = z.strictObject({
	failedOn: civilDate.optional(),
	sameFault: answer.optional(),
	samePart: answer.optional(),
	eventSince: answer.optional(),
});
export type WarrantyQuery = z.infer<typeof warrantyQuery>;

export const warrantyView = z.strictObject({
	orderId: id("ord"),
	/** Null where the order gives no warranty. */
	months: z.number().int().nullable(),
	/** What it covers, in the order's words; null where there is none. */
	covers: z.string().nullable(),
	startsOn: z.string().nullable(),
	startBasis: z.enum(["in-hand", "delivered", "not-known"]),
	endsOn: z.string().nullable(),
	/** From today, local to where the item was delivered; below 0 once it is over. */
	leftDays: z.number().int().nullable(),
	failedOn: z.string().nullable(),
	leftAtFailureDays: z.number().int().nullable(),
	time: z.enum(["inside", "outside", "open"]),
	for: z.array(z.string()),
	against: z.array(z.string()),
	open: z.array(z.string()),
	floors: z.array(
		z.strictObject({
			text: z.string(),
			document: z.string(),
			locator: z.string(),
			standing: z.enum(STANDINGS),
			readOn: z.string(),
		}),
	),
});
export type WarrantyView = z.infer<typeof warrantyView>;
