/** Rows of accounts, sessions, tokens, links and throttles. Tokens come here as hashes. */
import type { Queryable } from "./connection.ts";

export interface LinkRow {
	readonly id: string;
	readonly code_hash: string;
	readonly scope: "record" | "settle" | "reader";
	readonly order_id: string;
	readonly record_id: string | null;
	readonly party_id: string | null;
	readonly created_at: Date;
	readonly expires_at: Date;
	readonly revoked_at: Date | null;
	readonly first_used_at: Date | null;
}

export async function countAccounts(database: Queryable): Promise<number> {
	const [row] = await database.query<{ count: number }>("SELECT count(*) AS count FROM account");
	return row?.count ?? 0;
}

/** Puts a new set-up link in the place of any older one. */
export async function replaceSetUpLink(transaction: Queryable, tokenSha256: string): Promise<void> {
	await transaction.query("DELETE FROM set_up_link");
	await transaction.query("INSERT INTO set_up_link (token_sha256) VALUES ($1)", [tokenSha256]);
}

/** Uses the set-up link up; false where it is not the newest or was used. */
export async function useSetUpLink(transaction: Queryable, tokenSha256: string): Promise<boolean> {
	const rows = await transaction.query("DELETE FROM set_up_link WHERE token_sha256 = $1 RETURNING token_sha256", [
		tokenSha256,
	]);
	return rows.length === 1;
}

export async function isSetUpLink(database: Queryable, tokenSha256: string): Promise<boolean> {
	return (await database.query("SELECT FROM set_up_link WHERE token_sha256 = $1", [tokenSha256])).length === 1;
}

/** Adds an account; false where the name is taken. */
export async function insertAccount(
	database: Queryable,
	row: { readonly id: string; readonly name: string; readonly passphraseHash: string },
): Promise<boolean> {
	const rows = await database.query(
		"INSERT INTO account (id, name, passphrase_hash) VALUES ($1, $2, $3) ON CONFLICT DO NOTHING RETURNING id",
		[row.id, row.name, row.passphraseHash],
	);
	return rows.length === 1;
}

export async function accountByName(
	database: Queryable,
	name: string,
): Promise<{ readonly id: string; readonly passphrase_hash: string } | null> {
	const [row] = await database.query<{ id: string; passphrase_hash: string }>(
		"SELECT id, passphrase_hash FROM account WHERE name = $1",
		[name],
	);
	return row ?? null;
}

export async function accountName(database: Queryable, id: string): Promise<string | null> {
	const [row] = await database.query<{ name: string }>("SELECT name FROM account WHERE id = $1", [id]);
	return row?.name ?? null;
}

export async function insertSession(
	database: Queryable,
	tokenSha256: string,
	accountId: string,
	expiresAt: Date,
): Promise<void> {
	await database.query("INSERT INTO session (token_sha256, account_id, expires_at) VALUES ($1, $2, $3)", [
		tokenSha256,
		accountId,
		expiresAt,
	]);
}

export async function sessionAccount(database: Queryable, tokenSha256: string, now: Date): Promise<string | null> {
	const [row] = await database.query<{ account_id: string }>(
		"SELECT account_id FROM session WHERE token_sha256 = $1 AND expires_at > $2",
		[tokenSha256, now],
	);
	return row?.account_id ?? null;
}

export async function deleteSession(database: Queryable, tokenSha256: string): Promise<void> {
	await database.query("DELETE FROM session WHERE token_sha256 = $1", [tokenSha256]);
}

export interface ApiTokenRow {
	readonly id: string;
	readonly label: string;
	readonly created_at: Date;
}

export async function insertApiToken(
	database: Queryable,
	row: { readonly id: string; readonly tokenSha256: string; readonly accountId: string; readonly label: string },
): Promise<void> {
	await database.query("INSERT INTO api_token (id, token_sha256, account_id, label) VALUES ($1, $2, $3, $4)", [
		row.id,
		row.tokenSha256,
		row.accountId,
		row.label,
	]);
}

export async function apiTokenAccount(database: Queryable, tokenSha256: string): Promise<string | null> {
	const [row] = await database.query<{ account_id: string }>(
		"SELECT account_id FROM api_token WHERE token_sha256 = $1 AND revoked_at IS NULL",
		[tokenSha256],
	);
	return row?.account_id ?? null;
}

export async function listApiTokens(database: Queryable, accountId: string): Promise<ApiTokenRow[]> {
	return database.query<ApiTokenRow>(
		"SELECT id, label, created_at FROM api_token WHERE account_id = $1 AND revoked_at IS NULL ORDER BY created_at",
		[accountId],
	);
}

export async function revokeApiToken(database: Queryable, accountId: string, id: string): Promise<boolean> {
	const rows = await database.query(
		"UPDATE api_token SET revoked_at = clock_timestamp() WHERE id = $1 AND account_id = $2 AND revoked_at IS NULL RETURNING id",
		[id, accountId],
	);
	return rows.length === 1;
}

const LINK_COLUMNS =
	"id, code_hash, scope, order_id, record_id, party_id, created_at, expires_at, revoked_at, first_used_at";

export async function insertLink(
	database: Queryable,
	row: Pick<LinkRow, "id" | "code_hash" | "scope" | "order_id" | "record_id" | "party_id" | "expires_at"> & {
		readonly tokenSha256: string;
		readonly createdBy: string;
	},
): Promise<void> {
	await database.query(
		`INSERT INTO link (id, token_sha256, code_hash, scope, order_id, record_id, party_id, created_by, expires_at)
		 VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9)`,
		[
			row.id,
			row.tokenSha256,
			row.code_hash,
			row.scope,
			row.order_id,
			row.record_id,
			row.party_id,
			row.createdBy,
			row.expires_at,
		],
	);
}

export async function linkByToken(database: Queryable, tokenSha256: string): Promise<LinkRow | null> {
	const [row] = await database.query<LinkRow>(`SELECT ${LINK_COLUMNS} FROM link WHERE token_sha256 = $1`, [
		tokenSha256,
	]);
	return row ?? null;
}

/** The link that a session is of, and when the session was begun. */
export async function linkBySession(
	database: Queryable,
	tokenSha256: string,
	now: Date,
): Promise<(LinkRow & { readonly entered_at: Date }) | null> {
	const [row] = await database.query<LinkRow & { readonly entered_at: Date }>(
		`SELECT ${LINK_COLUMNS}, s.entered_at FROM link JOIN (
			SELECT link_id, created_at AS entered_at FROM link_session WHERE token_sha256 = $1 AND expires_at > $2
		 ) s ON s.link_id = link.id`,
		[tokenSha256, now],
	);
	return row ?? null;
}

export async function linkById(database: Queryable, id: string): Promise<LinkRow | null> {
	const [row] = await database.query<LinkRow>(`SELECT ${LINK_COLUMNS} FROM link WHERE id = $1`, [id]);
	return row ?? null;
}

export async function linksOfOrder(database: Queryable, orderId: string): Promise<LinkRow[]> {
	return database.query<LinkRow>(`SELECT ${LINK_COLUMNS} FROM link WHERE order_id = $1 ORDER BY created_at`, [orderId]);
}

export async function revokeLink(database: Queryable, id: string): Promise<boolean> {
	const rows = await database.query(
		"UPDATE link SET revoked_at = clock_timestamp() WHERE id = $1 AND revoked_at IS NULL RETURNING id",
		[id],
	);
	return rows.length === 1;
}

/** Opens a session of a link and notes its first use. */
export async function insertLinkSession(
	transaction: Queryable,
	tokenSha256: string,
	linkId: string,
	expiresAt: Date,
): Promise<void> {
	await transaction.query("INSERT INTO link_session (token_sha256, link_id, expires_at) VALUES ($1, $2, $3)", [
		tokenSha256,
		linkId,
		expiresAt,
	]);
	await transaction.query("UPDATE link SET first_used_at = clock_timestamp() WHERE id = $1 AND first_used_at IS NULL", [
		linkId,
	]);
}

export async function deleteLinkSession(database: Queryable, tokenSha256: string): Promise<void> {
	await database.query("DELETE FROM link_session WHERE token_sha256 = $1", [tokenSha256]);
}

/** Keeps the code of a link by which another device may go on; codes that were made before or are over are gone. */
export async function insertContinuation(
	transaction: Queryable,
	codeSha256: string,
	linkId: string,
	{ now, expiresAt }: { readonly now: Date; readonly expiresAt: Date },
): Promise<void> {
	await transaction.query("DELETE FROM continuation WHERE link_id = $1 OR expires_at <= $2", [linkId, now]);
	await transaction.query("INSERT INTO continuation (code_sha256, link_id, expires_at) VALUES ($1, $2, $3)", [
		codeSha256,
		linkId,
		expiresAt,
	]);
}

/** Takes a code, which is gone then, and gives its link; null for one that is over or was none. */
export async function useContinuation(transaction: Queryable, codeSha256: string, now: Date): Promise<LinkRow | null> {
	const [row] = await transaction.query<LinkRow>(
		`WITH taken AS (DELETE FROM continuation WHERE code_sha256 = $1 AND expires_at > $2 RETURNING link_id)
		 SELECT ${LINK_COLUMNS} FROM link WHERE id = (SELECT link_id FROM taken)`,
		[codeSha256, now],
	);
	return row ?? null;
}

/**
 * Takes one try of a limited number, in one statement, so that tries made at once are counted one after another.
 * Gives the tries left after this one, or null while the key is locked.
 */
export async function takeTry(
	database: Queryable,
	key: string,
	limit: number,
	lockSeconds: number,
): Promise<number | null> {
	const [row] = await database.query<{ failures: number; locked: boolean }>(
		`INSERT INTO throttle AS t (key, failures) VALUES ($1, 1)
		 ON CONFLICT (key) DO UPDATE SET
			failures = CASE WHEN t.locked_until <= clock_timestamp() THEN 1 ELSE t.failures + 1 END,
			locked_until = CASE
				WHEN t.locked_until > clock_timestamp() THEN t.locked_until
				WHEN t.locked_until IS NULL AND t.failures + 1 >= $2 THEN clock_timestamp() + make_interval(secs => $3)
			END
		 RETURNING failures, failures > $2 AS locked`,
		[key, limit, lockSeconds],
	);
	if (row === undefined) throw new Error("an INSERT … RETURNING gave no row");
	return row.locked ? null : limit - row.failures;
}

/** Forgets the tries of a key after a right one. */
export async function clearTries(database: Queryable, key: string): Promise<void> {
	await database.query("DELETE FROM throttle WHERE key = $1", [key]);
}
