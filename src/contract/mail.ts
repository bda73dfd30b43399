/** Mails to the parties of an order: what is asked for, and what became of it. */
import { z } from "zod";
import { id } from "./common.ts";
import { mailAddress } from "./mail-address.ts";

export const MAIL_KINDS = ["link", "code", "reminder", "receipt", "sealed", "period"] as const;
export type MailKind = (typeof MAIL_KINDS)[number];

export const MAIL_STATES = ["queued", "sending", "sent", "refused", "given-up", "unclear", "dropped"] as const;
export type MailState = (typeof MAIL_STATES)[number];

const linkId = id("lnk");
const to = mailAddress;

/** `to` is another address than the party's. The code of a link goes by mail only to another address than the link itself. */
export const mailInput = z.discriminatedUnion("kind", [
	z.strictObject({ kind: z.literal("link"), linkId, to: to.optional() }),
	z.strictObject({ kind: z.literal("code"), linkId, to }),
	z.strictObject({
		kind: z.literal("reminder"),
		linkId,
		to: to.optional(),
		/** Queued now, written then, and only if the link is still unanswered; without it, at once. */
		afterDays: z.number().int().min(1).max(60).optional(),
	}),
	z.strictObject({ kind: z.literal("receipt"), recordId: id("rec"), to: to.optional() }),
]);
export type MailInput = z.infer<typeof mailInput>;

export const mailView = z.strictObject({
	id: id("mal"),
	kind: z.enum(MAIL_KINDS),
	orderId: id("ord"),
	partyId: id("pty"),
	/** Link, record, position or leg that it is about. */
	subject: z.string(),
	/** Where it goes or went; null once the party is erased, or where no address is known. */
	to: z.string().nullable(),
	state: z.enum(MAIL_STATES),
	/** Why it was dropped. */
	reason: z.string().nullable(),
	/** What the mail server last said. */
	answer: z.string().nullable(),
	attempts: z.number().int(),
	askedAt: z.string(),
	nextTryAt: z.string().nullable(),
	endedAt: z.string().nullable(),
});
export type MailView = z.infer<typeof mailView>;

export const mailChoice = z.strictObject({
	/** Tell the owner when the shop has sealed something. */
	toOwner: z.boolean(),
	/** Tell the shop when the owner has. */
	toRepairer: z.boolean(),
	/** Tell the shop that a date of a claim comes near. */
	periods: z.boolean(),
	/** Tell the owner too, where the date is the owner's; said by nobody, they are told. */
	periodsToOwner: z.boolean().default(true),
});
export type MailChoice = z.infer<typeof mailChoice>;

export const mailList = z.strictObject({
	/** Whether this service has a mail server. */
	canSend: z.boolean(),
	mails: z.array(mailView),
	choice: mailChoice,
});
export type MailList = z.infer<typeof mailList>;

/** A mail's text, to be sent by hand. */
export const mailText = z.strictObject({ to: z.string().nullable(), subject: z.string(), text: z.string() });
export type MailTextView = z.infer<typeof mailText>;
