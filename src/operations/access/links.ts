/** Links for the other side: an address and a six-digit code that goes another way. */
import type { Caller } from "../../access/caller.ts";
import { isOver } from "../../access/resolve-caller.ts";
import {
	hashSecret,
	makeCode,
	makeShortCode,
	makeToken,
	readShortCode,
	secretMatches,
	tokenHash,
} from "../../access/secrets.ts";
import type { LinkEntryInput, LinkInput, LinkView, NewLinkView } from "../../contract/access.ts";
import {
	clearTries,
	insertContinuation,
	insertLink,
	insertLinkSession,
	type LinkRow,
	linkByToken,
	linksOfOrder,
	revokeLink,
	takeTry,
	useContinuation,
} from "../../database/access.ts";
import { orderById } from "../../database/orders.ts";
import { recordById } from "../../database/records.ts";
import { fault, invalid } from "../../faults.ts";
import type { Deps } from "../deps.ts";
import { appendToLog } from "../log/append-to-log.ts";
import { callerId, mustBeShop } from "../may.ts";
import { refuseReadIn } from "../read-in/refuse-read-in.ts";

/** Validity where none is asked for. Source: our choice, long enough for a slow parcel. */
const VALID_DAYS = 30;
/** Wrong codes, and how long a link is locked then. Source: the contract page. */
const TRIES = 5;
const LOCK_S = 15 * 60;
/** How long a device stays inside after the code. Source: our choice. */
const SESSION_DAYS = 30;
/** How long a short code for another device is good. Source: our choice. */
const CONTINUE_MINUTES = 15;

/** Makes a link. Address and code are shown this once; only hashes are kept. */
export async function makeLink(deps: Deps, caller: Caller, input: LinkInput): Promise<NewLinkView> {
	mustBeShop(caller);
	const order = await orderById(deps.database, input.orderId);
	if (order === null) throw invalid([{ path: "/orderId", code: "unknown-id" }]);
	// Its first use would be sealed in this service's log.
	await refuseReadIn(deps.database, order.id);
	const record = input.recordId === undefined ? null : await recordById(deps.database, input.recordId);
	if (input.recordId !== undefined && record?.order_id !== order.id) {
		throw invalid([{ path: "/recordId", code: "unknown-id" }]);
	}
	if (input.partyId !== undefined && ![order.owner_id, order.repairer_id].includes(input.partyId)) {
		throw invalid([{ path: "/partyId", code: "unknown-id" }]);
	}
	const token = makeToken(deps.randomBytes);
	const code = makeCode();
	const row = {
		id: deps.newId("lnk"),
		code_hash: await hashSecret(code, deps.randomBytes(16), deps.secretCost),
		scope: input.scope,
		order_id: order.id,
		record_id: record?.id ?? null,
		// Who settles speaks for a party; where none is named, for the side that has no account.
		party_id: input.partyId ?? record?.holder_id ?? (input.scope === "settle" ? order.owner_id : null),
		expires_at: new Date(deps.now().getTime() + (input.validDays ?? VALID_DAYS) * 86_400_000),
	};
	await insertLink(deps.database, { ...row, tokenSha256: tokenHash(token), createdBy: callerId(caller) });
	return {
		...linkViewOf({ ...row, created_at: deps.now(), revoked_at: null, first_used_at: null }),
		url: `${deps.publicUrl}/l/${token}`,
		code,
	};
}

/** Whether an address belongs to a link that can be entered. @throws link-unknown, link-revoked, link-expired */
export async function findLink(deps: Deps, token: string): Promise<LinkView> {
	return linkViewOf(await usableLink(deps, token));
}

/** Enters by address and code; the use is an entry of the log. Gives the token of the device's session. */
export async function enterLink(deps: Deps, input: LinkEntryInput) {
	const link = await usableLink(deps, input.token);
	const key = `code ${link.id}`;
	const left = await takeTry(deps.database, key, TRIES, LOCK_S);
	if (left === null) throw fault("code-locked", { retryAfterS: LOCK_S });
	if (!(await secretMatches(input.code, link.code_hash))) throw fault("code-wrong", { facts: { left } });
	const sessionToken = makeToken(deps.randomBytes);
	const expiresAt = new Date(deps.now().getTime() + SESSION_DAYS * 86_400_000);
	await deps.database.transaction(async (transaction) => {
		await clearTries(transaction, key);
		await insertLinkSession(transaction, tokenHash(sessionToken), link.id, expiresAt);
		await appendToLog(deps, transaction, { kind: "link-used", subject: link.id, byId: link.id, statementBytes: null });
	});
	return { sessionToken, link: linkViewOf(link), expiresAt };
}

/** Gives a short code by which a record's link goes on at another device: once, within a quarter of an hour. */
export async function offerContinuation(
	deps: Deps,
	caller: Caller,
	recordId: string,
): Promise<{ code: string; expiresAt: Date }> {
	if (caller.kind !== "link") throw fault("forbidden");
	// A record that the link was not made for does not exist for it.
	if (caller.recordId !== recordId) throw fault("not-found");
	const code = makeShortCode();
	const now = deps.now();
	const expiresAt = new Date(now.getTime() + CONTINUE_MINUTES * 60_000);
	await deps.database.transaction((transaction) =>
		insertContinuation(transaction, tokenHash(code), caller.linkId, { now, expiresAt }),
	);
	return { code, expiresAt };
}

/** Goes on at this device; the use is an entry of the log, as each device's is. @throws code-gone */
export async function continueHere(deps: Deps, typed: string) {
	const code = readShortCode(typed);
	const sessionToken = makeToken(deps.randomBytes);
	const expiresAt = new Date(deps.now().getTime() + SESSION_DAYS * 86_400_000);
	const link = await deps.database.transaction(async (transaction) => {
		const found = code === null ? null : await useContinuation(transaction, tokenHash(code), deps.now());
		if (found === null || found.revoked_at !== null || isOver(found, deps.now())) return null;
		await insertLinkSession(transaction, tokenHash(sessionToken), found.id, expiresAt);
		await appendToLog(deps, transaction, {
			kind: "link-used",
			subject: found.id,
			byId: found.id,
			statementBytes: null,
		});
		return found;
	});
	if (link === null) throw fault("code-gone");
	return { sessionToken, link: linkViewOf(link), expiresAt };
}

/** The links of an order, used, expired and withdrawn ones too: sent, opened and withdrawn are dated facts. */
export async function readLinks(deps: Deps, caller: Caller, orderId: string): Promise<LinkView[]> {
	mustBeShop(caller);
	return (await linksOfOrder(deps.database, orderId)).map(linkViewOf);
}

export async function withdrawLink(deps: Deps, caller: Caller, id: string): Promise<void> {
	mustBeShop(caller);
	if (!(await revokeLink(deps.database, id))) throw fault("not-found");
}

async function usableLink(deps: Deps, token: string): Promise<LinkRow> {
	const link = await linkByToken(deps.database, tokenHash(token));
	if (link === null) throw fault("link-unknown");
	if (link.revoked_at !== null) throw fault("link-revoked");
	if (isOver(link, deps.now())) throw fault("link-expired");
	return link;
}

function linkViewOf(row: LinkRow): LinkView {
	return {
		id: row.id,
		scope: row.scope,
		orderId: row.order_id,
		recordId: row.record_id,
		partyId: row.party_id,
		createdAt: row.created_at.toISOString(),
		expiresAt: row.expires_at.toISOString(),
		revokedAt: row.revoked_at?.toISOString() ?? null,
		firstUsedAt: row.first_used_at?.toISOString() ?? null,
	};
}
