/** The log's rows. Places are taken one after another under one lock; see `appendToLog` for the act around it. */
import type { Checkpoint, LogKey } from "../records/log/checkpoint.ts";
import type { HashedSubtree } from "../records/log/tree.ts";
import type { Queryable } from "./connection.ts";

/** Key of the advisory lock that every writer of the log takes; any constant will do, all instances use this one. */
const LOG_LOCK = 4_862_201;

export interface LogSlot {
	readonly index: number;
	readonly time: Date;
}

/** The next place, and what the tree and its checkpoint need to grow by it. */
export interface OpenSlot extends LogSlot {
	/** Hashes of the complete subtrees over all leaves so far, `subtreesOf(0, index)`, from left to right. */
	readonly peaks: readonly string[];
	/** The key that signs now; null in a log that was never opened. */
	readonly key: LogKey | null;
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
 * and never earlier than the last entry's. One statement reads the rest, since every writer waits for it: for each bit
 * that is set in the size there is one complete subtree of that level, the last of its level, less one.
 */
export async function nextLogSlot(transaction: Queryable): Promise<OpenSlot> {
	await lockLog(transaction);
	const [slot] = await transaction.query<OpenSlot>(
		`WITH slot AS (
		   SELECT coalesce(newest.index, -1) + 1 AS index,
		          greatest(date_trunc('milliseconds', clock_timestamp()), newest.sealed_at) AS time
		   FROM (SELECT) nothing LEFT JOIN (SELECT index, sealed_at FROM sealed_entry ORDER BY index DESC LIMIT 1) newest ON true)
		 SELECT index, time,
		   ARRAY(SELECT coalesce(t.sha256, s.leaf_sha256)
		         FROM generate_series(0, 62) AS bit
		         LEFT JOIN tree_node t ON t.level = bit AND t.index = (slot.index >> bit) - 1
		         LEFT JOIN sealed_entry s ON bit = 0 AND s.index = slot.index - 1
		         WHERE (slot.index >> bit) & 1 = 1 ORDER BY bit DESC) AS peaks,
		   (SELECT json_build_object('id', id, 'origin', origin, 'publicKey', public_key)
		    FROM log_key ORDER BY from_size DESC LIMIT 1) AS key
		 FROM slot`,
	);
	if (slot === undefined) throw new Error("an outer join gave no row");
	return slot;
}

/** Adds an entry at the place that `nextLogSlot` gave, with what it makes whole in the tree and its checkpoint. */
export async function insertLogEntry(
	transaction: Queryable,
	entry: LogEntry,
	made: readonly HashedSubtree[],
	checkpoint: Checkpoint & { readonly keyId: string },
): Promise<void> {
	const interior = made.filter((subtree) => subtree.level > 0);
	await transaction.query(
		`WITH entry AS (
		   INSERT INTO sealed_entry (index, entry_bytes, statement_bytes, leaf_sha256, statement_sha256, sealed_at)
		   VALUES ($1, $2, $3, $4, $5, $6)),
		 subtrees AS (
		   INSERT INTO tree_node (level, index, sha256) SELECT * FROM unnest($7::smallint[], $8::bigint[], $9::text[])),
		 note AS (
		   INSERT INTO checkpoint (size, note, key_id) VALUES ($10, $11, $12))
		 INSERT INTO entry_projection (index, kind, subject, by_id) VALUES ($1, $13, $14, $15)`,
		[
			entry.index,
			entry.entryBytes,
			entry.statementBytes,
			entry.leafSha256,
			entry.statementSha256,
			entry.time,
			interior.map(({ level }) => level),
			interior.map(({ index }) => index),
			interior.map(({ sha256 }) => sha256),
			checkpoint.size,
			checkpoint.note,
			checkpoint.keyId,
			entry.kind,
			entry.subject,
			entry.byId,
		],
	);
}
