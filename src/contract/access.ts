/** Sessions, API tokens, links. */
import { z } from "zod";
import { LINK_SCOPES } from "../catalogue/codes.ts";
import { id, text } from "./common.ts";

const passphrase = text(200);
const token = z.string().regex(/^[A-Za-z0-9_-]{43}$/);

export const setUpInput = z.strictObject({ token, name: text(100), passphrase });
export type SetUpInput = z.infer<typeof setUpInput>;

export const signInInput = z.strictObject({ name: text(100), passphrase });
export type SignInInput = z.infer<typeof signInInput>;

export const sessionView = z.strictObject({ accountId: id("acc"), name: z.string(), expiresAt: z.string() });

export const tokenInput = z.strictObject({ label: text(100) });
export const tokenView = z.strictObject({ id: id("tok"), label: z.string(), createdAt: z.string() });
/** The token itself is given once. */
export const newTokenView = z.strictObject({ id: id("tok"), label: z.string(), token: z.string() });
export const tokenList = z.strictObject({ tokens: z.array(tokenView) });

export const linkInput = z
	.strictObject({
		scope: z.enum(LINK_SCOPES),
		orderId: id("ord"),
		recordId: id("rec").optional(),
		partyId: id("pty").optional(),
		validDays: z.number().int().min(1).max(365).optional(),
	})
	.refine((link) => (link.scope === "record") === (link.recordId !== undefined), {
		path: ["recordId"],
		error: "a link of scope record names its record, others name none",
	});
export type LinkInput = z.infer<typeof linkInput>;

export const linkView = z.strictObject({
	id: id("lnk"),
	scope: z.enum(LINK_SCOPES),
	orderId: id("ord"),
	recordId: id("rec").nullable(),
	partyId: id("pty").nullable(),
	createdAt: z.string(),
	expiresAt: z.string(),
	revokedAt: z.string().nullable(),
	firstUsedAt: z.string().nullable(),
});
export type LinkView = z.infer<typeof linkView>;
export const linkList = z.strictObject({ links: z.array(linkView) });
/** Address and code are given once; the code goes to the other side by another way than the address. */
export const newLinkView = linkView.extend({ url: z.string(), code: z.string() });
export type NewLinkView = z.infer<typeof newLinkView>;

export const linkEntryInput = z.strictObject({ token, code: z.string().regex(/^[0-9]{6}$/) });
export type LinkEntryInput = z.infer<typeof linkEntryInput>;
export const linkEntryView = z.strictObject({
	scope: z.enum(LINK_SCOPES),
	orderId: id("ord"),
	recordId: id("rec").nullable(),
	expiresAt: z.string(),
});
