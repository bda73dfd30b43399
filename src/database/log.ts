/** The log's rows. Places are taken one after another under one lock; see `appendToLog` for the act around it. */
import type { Queryable } from "./connection.ts";

/** Key of the advisory lock that every writer of the log takes; any constant will do, all instances use this one. */
const LOG_LOCK = 4_862_201;

export interface LogSlot {
	readonly index: number;
	readonly time: Date;
}

export interface LogEntry extends LogSlot {
	readonly entryBytes: Buffer;
	readonly leafSha256: string;
	readonly statementBytes: Buffer | null;
	readonly statementSha256: string | null;
	readonly kind: string;
	readonly subject: string;
	readonly byId: string;
}

/** Keeps every other writer of the log out until the transaction ends. */
export async function lockLog(transaction: Queryable): Promise<void> {
	await transaction.query("SELECT pg_advisory_xact_lock($1)", [LOG_LOCK]);
}

/**
 * The next place in the log, held until the transaction ends. The lock is taken in a statement of its own: under READ
 * COMMITTED the next statement then sees what the holder before committed. Time is the database's, in milliseconds,
 * and never earlier than the last entry's.
 */
export async function nextLogSlot(transaction: Queryable): Promise<LogSlot> {
	await lockLog(transaction);
	const [slot] = await transaction.query<LogSlot>(
		`SELECT coalesce(newest.index, -1) + 1 AS index,
		        greatest(date_trunc('milliseconds', clock_timestamp()), newest.sealed_at) AS time
		 FROM (SELECT) nothing LEFT JOIN (SELECT index, sealed_at FROM sealed_entry ORDER BY index DESC LIMIT 1) newest ON true`,
	);
	if (slot === undefined) throw new Error("an outer join gave no row");
	return slot;
}

/** Adds an entry at the place that `nextLogSlot` gave, in the same transaction. */
export async function insertLogEntry(transaction: Queryable, entry: LogEntry): Promise<void> {
	await transaction.query(
		`INSERT INTO sealed_entry (index, entry_bytes, statement_bytes, leaf_sha256, statement_sha256, sealed_at)
		 VALUES ($1, $2, $3, $4, $5, $6)`,
		[entry.index, entry.entryBytes, entry.statementBytes, entry.leafSha256, entry.statementSha256, entry.time],
	);
	await transaction.query("INSERT INTO entry_projection (index, kind, subject, by_id) VALUES ($1, $2, $3, $4)", [
		entry.index,
		entry.kind,
		entry.subject,
		entry.byId,
	]);
}
