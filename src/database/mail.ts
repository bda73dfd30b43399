/** Rows of mails. What a row holds of a person, an address that was typed and what a server answered, is encrypted. */
import type { Queryable } from "./connection.ts";

export interface MailRow {
	readonly id: string;
	readonly kind: "link" | "code" | "reminder" | "receipt" | "sealed" | "period";
	readonly order_id: string;
	readonly party_id: string;
	readonly subject: string;
	readonly rule_id: string | null;
	readonly language: "en" | "de" | "fr";
	readonly asked_by: string;
	readonly asked_at: Date;
	readonly state: "queued" | "sending" | "sent" | "refused" | "given-up" | "unclear" | "dropped";
	readonly reason: string | null;
	readonly attempts: number;
	readonly next_try_at: Date;
	readonly ended_at: Date | null;
	readonly personal: MailPersonal;
}

export interface MailPersonal {
	/** Another address than the party's. */
	readonly to?: string;
	/** What the server last said. */
	readonly answer?: string;
}

/** What is queued; `once_key` null where the same may be asked for again. */
export type NewMail = Pick<MailRow, "id" | "kind" | "order_id" | "party_id" | "subject" | "language" | "asked_by"> & {
	readonly rule_id?: string;
	readonly to?: string;
	readonly once_key: string | null;
	/** Days until it is due. */
	readonly after_days?: number;
};

type StoredMail = Omit<MailRow, "personal"> & { readonly personal: Buffer };

const COLUMNS = `id, kind, order_id, party_id, subject, rule_id, language, asked_by, asked_at, state, reason, attempts,
	next_try_at, ended_at, personal`;
const mailPlace = (id: string) => `mail/${id}`;

/** Queues a mail; false where one with its key was queued before. */
export async function insertMail(transaction: Queryable, row: NewMail): Promise<boolean> {
	const personal: MailPersonal = row.to === undefined ? {} : { to: row.to };
	const rows = await transaction.query(
		`INSERT INTO mail (id, kind, order_id, party_id, subject, rule_id, language, asked_by, once_key, personal, next_try_at)
		 VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, clock_timestamp() + make_interval(days => $11))
		 ON CONFLICT (once_key) DO NOTHING RETURNING id`,
		[
			row.id,
			row.kind,
			row.order_id,
			row.party_id,
			row.subject,
			row.rule_id ?? null,
			row.language,
			row.asked_by,
			row.once_key,
			transaction.vault.of(row.party_id).seal(mailPlace(row.id), personal),
			row.after_days ?? 0,
		],
	);
	return rows.length === 1;
}

/** The mails of an order, oldest first. */
export async function mailsOfOrder(database: Queryable, orderId: string): Promise<MailRow[]> {
	const rows = await database.query<StoredMail>(
		`SELECT ${COLUMNS} FROM mail WHERE order_id = $1 ORDER BY asked_at, id COLLATE "C"`,
		[orderId],
	);
	return rows.map((row) => opened(database, row));
}

export async function mailById(database: Queryable, id: string): Promise<MailRow | null> {
	const [row] = await database.query<StoredMail>(`SELECT ${COLUMNS} FROM mail WHERE id = $1`, [id]);
	return row === undefined ? null : opened(database, row);
}

/**
 * Whoever was sending these ended before saying what came of it, so nobody knows whether the server took them.
 * @returns how many
 */
export async function markUnclear(database: Queryable): Promise<number> {
	const rows = await database.query(
		`UPDATE mail SET state = 'unclear', sending_until = NULL, ended_at = clock_timestamp()
		 WHERE state = 'sending' AND sending_until < clock_timestamp() RETURNING id`,
	);
	return rows.length;
}

/**
 * After a restore: what was due or being sent when the backup was made may have gone out since, so nobody knows.
 * @returns how many; a database from before there were mails has none
 */
export async function holdRestoredMails(session: Queryable): Promise<number> {
	const [table] = await session.query<{ name: string | null }>("SELECT to_regclass('mail')::text AS name");
	if (table?.name == null) return 0;
	const rows = await session.query(
		`UPDATE mail SET state = 'unclear', sending_until = NULL, ended_at = clock_timestamp()
		 WHERE state = 'sending' OR (state = 'queued' AND next_try_at <= clock_timestamp()) RETURNING id`,
	);
	return rows.length;
}

/** The mail that is due longest, its row locked; rows that another instance has locked are passed over. */
export async function lockDueMail(transaction: Queryable): Promise<MailRow | null> {
	const [row] = await transaction.query<StoredMail>(
		`SELECT ${COLUMNS} FROM mail WHERE state = 'queued' AND next_try_at <= clock_timestamp()
		 ORDER BY next_try_at LIMIT 1 FOR UPDATE SKIP LOCKED`,
	);
	return row === undefined ? null : opened(transaction, row);
}

/** Says that it is being sent from now on; the attempt's number tells this try from a later one. */
export async function beginSending(transaction: Queryable, id: string, leaseS: number): Promise<number> {
	const [row] = await transaction.query<{ attempts: number }>(
		`UPDATE mail SET state = 'sending', attempts = attempts + 1,
			sending_until = clock_timestamp() + make_interval(secs => $2) WHERE id = $1 RETURNING attempts`,
		[id, leaseS],
	);
	if (row === undefined) throw new Error(`mail ${id} was locked and is gone`);
	return row.attempts;
}

export async function dropMail(transaction: Queryable, id: string, reason: string): Promise<void> {
	await transaction.query(
		"UPDATE mail SET state = 'dropped', reason = $2, ended_at = clock_timestamp() WHERE id = $1 AND state = 'queued'",
		[id, reason],
	);
}

/** What came of a try: over, or queued again after a pause. Of a person who was erased meanwhile nothing is written. */
export async function noteMailOutcome(
	transaction: Queryable,
	row: Pick<MailRow, "id" | "party_id" | "personal">,
	attempt: number,
	outcome: {
		readonly state: "sent" | "refused" | "given-up" | "unclear" | "queued";
		readonly pauseS: number;
		readonly answer: string;
	},
): Promise<void> {
	const [party] = await transaction.query<{ erased_at: Date | null }>("SELECT erased_at FROM party WHERE id = $1", [
		row.party_id,
	]);
	const personal =
		party?.erased_at === null
			? transaction.vault.of(row.party_id).seal(mailPlace(row.id), { ...row.personal, answer: outcome.answer })
			: null;
	const isOver = outcome.state !== "queued";
	await transaction.query(
		`UPDATE mail SET state = $3, sending_until = NULL, personal = coalesce($5, personal),
			next_try_at = clock_timestamp() + make_interval(secs => $4),
			ended_at = CASE WHEN $6 THEN clock_timestamp() END
		 WHERE id = $1 AND attempts = $2 AND state IN ('sending', 'unclear')`,
		[row.id, attempt, outcome.state, outcome.pauseS, personal, isOver],
	);
}

export interface MailChoiceRow {
	readonly to_owner: boolean;
	readonly to_repairer: boolean;
	readonly periods: boolean;
	readonly periods_to_owner: boolean;
}

export async function mailChoiceOf(database: Queryable, orderId: string): Promise<MailChoiceRow> {
	const [row] = await database.query<MailChoiceRow>(
		"SELECT to_owner, to_repairer, periods, periods_to_owner FROM mail_choice WHERE order_id = $1",
		[orderId],
	);
	return row ?? { to_owner: true, to_repairer: true, periods: true, periods_to_owner: true };
}

export async function saveMailChoice(database: Queryable, orderId: string, choice: MailChoiceRow): Promise<void> {
	await database.query(
		`INSERT INTO mail_choice (order_id, to_owner, to_repairer, periods, periods_to_owner) VALUES ($1, $2, $3, $4, $5)
		 ON CONFLICT (order_id) DO UPDATE SET to_owner = $2, to_repairer = $3, periods = $4, periods_to_owner = $5`,
		[orderId, choice.to_owner, choice.to_repairer, choice.periods, choice.periods_to_owner],
	);
}

/** An entry of the log that the other side should hear of. */
export interface SealedNotice {
	readonly index: number;
	readonly kind: string;
	readonly subject: string;
	readonly by_id: string;
}

/** Whether the log has entries that were not looked through. */
export async function hasNewSeals(database: Queryable): Promise<boolean> {
	const [row] = await database.query<{ is_new: boolean }>(
		`SELECT coalesce((SELECT log_size FROM mail_progress), -1)
			< coalesce((SELECT max(index) + 1 FROM entry_projection), 0) AS is_new`,
	);
	return row?.is_new === true;
}

/**
 * What was sealed since the last look; from here on it counts as looked through. The first look ever begins at the log's
 * end, so that nobody is written to about what was sealed before there was a mail server.
 */
export async function takeNewSeals(transaction: Queryable, kinds: readonly string[]): Promise<SealedNotice[]> {
	await transaction.query(
		`INSERT INTO mail_progress (log_size) SELECT coalesce(max(index) + 1, 0) FROM entry_projection
		 ON CONFLICT DO NOTHING`,
	);
	const [progress] = await transaction.query<{ log_size: number }>("SELECT log_size FROM mail_progress FOR UPDATE");
	const from = progress?.log_size ?? 0;
	const rows = await transaction.query<SealedNotice>(
		"SELECT index, kind, subject, by_id FROM entry_projection WHERE index >= $1 ORDER BY index LIMIT 500",
		[from],
	);
	const last = rows.at(-1);
	if (last === undefined) return [];
	await transaction.query("UPDATE mail_progress SET log_size = $1", [last.index + 1]);
	return rows.filter(({ kind }) => kinds.includes(kind));
}

/** Puts another address in the place of a link's; false where the link was used, withdrawn or is over. */
export async function replaceLinkToken(
	transaction: Queryable,
	linkId: string,
	tokenSha256: string,
	now: Date,
): Promise<boolean> {
	const rows = await transaction.query(
		`UPDATE link SET token_sha256 = $2
		 WHERE id = $1 AND first_used_at IS NULL AND revoked_at IS NULL AND expires_at > $3 RETURNING id`,
		[linkId, tokenSha256, now],
	);
	return rows.length === 1;
}

/** The same for the code. */
export async function replaceLinkCode(
	transaction: Queryable,
	linkId: string,
	codeHash: string,
	now: Date,
): Promise<boolean> {
	const rows = await transaction.query(
		`UPDATE link SET code_hash = $2
		 WHERE id = $1 AND first_used_at IS NULL AND revoked_at IS NULL AND expires_at > $3 RETURNING id`,
		[linkId, codeHash, now],
	);
	return rows.length === 1;
}

function opened(database: Queryable, row: StoredMail): MailRow {
	return { ...row, personal: database.vault.of(row.party_id).open<MailPersonal>(mailPlace(row.id), row.personal) };
}
