/** Notices to a carrier as they were sent, with what shows their sending and their receipt. */
import { z } from "zod";
import { STANDINGS } from "../calculations/sources.ts";
import { NOTICE_WAYS } from "../catalogue/codes.ts";
import { LANGUAGES } from "../texts/language.ts";
import { civilDate, id, sha256, text } from "./common.ts";

export const noticeInput = z.strictObject({
	language: z.enum(LANGUAGES),
	/** As it was sent. */
	text: text(20_000),
	sentOn: civilDate,
	sentBy: z.enum(NOTICE_WAYS),
	/** Such as the number of a registered letter. */
	proofOfSending: text(500).optional(),
	/** Of a file that shows it, such as a photo of the post's receipt: one that a sealed record of the order names. */
	sendingFile: sha256.optional(),
});
export type NoticeInput = z.infer<typeof noticeInput>;

export const noticeReceipt = z.strictObject({
	receivedOn: civilDate,
	/** Such as the carrier's answer, or a signature on a slip. */
	proofOfReceipt: text(500).optional(),
	receiptFile: sha256.optional(),
});
export type NoticeReceipt = z.infer<typeof noticeReceipt>;

export const noticeView = z.strictObject({
	id: id("ntc"),
	consignmentId: id("con"),
	orderId: id("ord"),
	language: z.enum(LANGUAGES),
	text: z.string(),
	sentOn: z.string(),
	sentBy: z.enum(NOTICE_WAYS),
	proofOfSending: z.string().nullable(),
	/** SHA-256. */
	sendingFile: z.string().nullable(),
	receivedOn: z.string().nullable(),
	proofOfReceipt: z.string().nullable(),
	receiptFile: z.string().nullable(),
	/** Account or link. */
	notedBy: z.string(),
	notedAt: z.string(),
});
export type NoticeView = z.infer<typeof noticeView>;
export const noticeDraftQuery = z.strictObject({ language: z.enum(LANGUAGES).optional() });
export const noticeDraft = z.strictObject({
	language: z.enum(LANGUAGES),
	text: z.string(),
	/** The rule whose form the draft has; null where none that was read or recalled asks for a notice. */
	ruleId: z.string().nullable(),
	safeDate: z.string().nullable(),
	/** How well the rule is known. */
	standing: z.enum(STANDINGS).nullable(),
	/** What a claims clerk commonly asks for, whether the records hold it, and whether the carrier edition tells it. */
	papers: z.array(z.strictObject({ id: z.string(), held: z.enum(["yes", "in-part", "no"]), inEdition: z.boolean() })),
});
export const noticeList = z.strictObject({ notices: z.array(noticeView) });
