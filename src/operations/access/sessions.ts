/** Signing in and out, and tokens for programs. */
import type { Caller } from "../../access/caller.ts";
import { makeToken, NO_ACCOUNT_HASH, secretMatches, tokenHash } from "../../access/secrets.ts";
import type { SignInInput } from "../../contract/access.ts";
import {
	accountByName,
	clearTries,
	deleteSession,
	insertApiToken,
	insertSession,
	listApiTokens,
	revokeApiToken,
	takeTry,
} from "../../database/access.ts";
import { fault } from "../../faults.ts";
import type { Deps } from "../deps.ts";

/** How long a session lasts. Source: our choice, a working week. */
const SESSION_H = 7 * 24;
/** Wrong tries of one name, and how long it is locked then. Source: our choice, as for link codes. */
const TRIES = 10;
const LOCK_S = 15 * 60;

export interface OpenedSession {
	/** For the cookie; kept as a hash only. */
	readonly token: string;
	readonly accountId: string;
	readonly name: string;
	readonly expiresAt: Date;
}

/** Signs in with name and passphrase. @throws passphrase-wrong; too-many */
export async function signIn(deps: Deps, input: SignInInput): Promise<OpenedSession> {
	const key = `passphrase ${input.name}`;
	if ((await takeTry(deps.database, key, TRIES, LOCK_S)) === null) throw fault("too-many", { retryAfterS: LOCK_S });
	const account = await accountByName(deps.database, input.name);
	const matches = await secretMatches(input.passphrase, account?.passphrase_hash ?? NO_ACCOUNT_HASH);
	if (account === null || !matches) throw fault("passphrase-wrong");
	await clearTries(deps.database, key);
	return openSession(deps, account.id, input.name);
}

/** Opens a session of an account. */
export async function openSession(deps: Deps, accountId: string, name: string): Promise<OpenedSession> {
	const token = makeToken(deps.randomBytes);
	const expiresAt = new Date(deps.now().getTime() + SESSION_H * 3_600_000);
	await insertSession(deps.database, tokenHash(token), accountId, expiresAt);
	return { token, accountId, name, expiresAt };
}

export async function signOut(deps: Deps, sessionToken: string): Promise<void> {
	await deleteSession(deps.database, tokenHash(sessionToken));
}

/** Makes a token for a program; it is shown this once. */
export async function makeApiToken(deps: Deps, caller: Caller, label: string) {
	const token = makeToken(deps.randomBytes);
	const id = deps.newId("tok");
	await insertApiToken(deps.database, { id, tokenSha256: tokenHash(token), accountId: accountOf(caller), label });
	return { id, label, token };
}

export async function readApiTokens(deps: Deps, caller: Caller) {
	const rows = await listApiTokens(deps.database, accountOf(caller));
	return rows.map((row) => ({ id: row.id, label: row.label, createdAt: row.created_at.toISOString() }));
}

export async function withdrawApiToken(deps: Deps, caller: Caller, id: string): Promise<void> {
	if (!(await revokeApiToken(deps.database, accountOf(caller), id))) throw fault("not-found");
}

function accountOf(caller: Caller): string {
	if (caller.kind !== "account") throw fault("not-signed-in");
	return caller.accountId;
}
