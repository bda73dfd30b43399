/** Finds out who calls from what a request carries. */
import { apiTokenAccount, type LinkRow, linkBySession, sessionAccount } from "../database/access.ts";
import type { Queryable } from "../database/connection.ts";
import type { Caller } from "./caller.ts";
import { tokenHash } from "./secrets.ts";

/** A draft begun before its link expired may be sealed for this much longer. Source: the contract page. */
export const GRACE_H = 72;

/** The account behind a bearer token; null where there is none. */
export async function callerByApiToken(database: Queryable, token: string): Promise<Caller | null> {
	const accountId = await apiTokenAccount(database, tokenHash(token));
	return accountId === null ? null : { kind: "account", accountId, via: "token" };
}

/** The account behind a session cookie. */
export async function callerBySession(database: Queryable, token: string, now: Date): Promise<Caller | null> {
	const accountId = await sessionAccount(database, tokenHash(token), now);
	return accountId === null ? null : { kind: "account", accountId, via: "session" };
}

/** The link behind a link session's cookie; null once it is revoked, or expired for longer than the grace. */
export async function callerByLinkSession(database: Queryable, token: string, now: Date): Promise<Caller | null> {
	const link = await linkBySession(database, tokenHash(token), now);
	return link === null || link.revoked_at !== null || isOver(link, now)
		? null
		: callerOfLink(link, link.entered_at, now);
}

/** Whether a link opens nothing any more. */
export function isOver(link: LinkRow, now: Date): boolean {
	const grace = link.scope === "record" ? GRACE_H * 3_600_000 : 0;
	return !(now.getTime() <= link.expires_at.getTime() + grace);
}

function callerOfLink(link: LinkRow, enteredAt: Date, now: Date): Caller {
	return {
		kind: "link",
		linkId: link.id,
		scope: link.scope,
		orderId: link.order_id,
		recordId: link.record_id,
		partyId: link.party_id,
		expired: !(now.getTime() <= link.expires_at.getTime()),
		enteredAt,
	};
}
