/** Rows of time stamps: the one that is waited for, and those that came. */
import type { Queryable } from "./connection.ts";

/** Key of the advisory lock under which the queue is changed; unlike the log's and the migrations'. */
const TIME_STAMP_LOCK = 4_862_203;

export interface WaitingStamp {
	readonly size: number;
	readonly note: string;
	readonly attempts: number;
}

/** Whether this instance may look at the queue now; until the transaction ends no other may. */
export async function takeStampQueue(transaction: Queryable): Promise<boolean> {
	const [row] = await transaction.query<{ taken: boolean }>("SELECT pg_try_advisory_xact_lock($1) AS taken", [
		TIME_STAMP_LOCK,
	]);
	return row?.taken === true;
}

/**
 * Queues the newest checkpoint where it is newer than the last one stamped and the interval has passed; one that waits
 * already gives its place, and its count of attempts, to a newer one when it is due.
 */
export async function queueNewestCheckpoint(transaction: Queryable, everyMin: number): Promise<void> {
	await transaction.query(
		`WITH newest AS (
			SELECT size, encode(sha256(convert_to(note, 'UTF8')), 'hex') AS note_sha256 FROM checkpoint ORDER BY size DESC LIMIT 1
		), moved AS (
			UPDATE time_stamp t SET size = n.size, note_sha256 = n.note_sha256 FROM newest n
			WHERE t.token IS NULL AND t.next_try_at <= clock_timestamp()
		)
		INSERT INTO time_stamp (size, note_sha256)
		SELECT n.size, n.note_sha256 FROM newest n
		WHERE NOT EXISTS (
			SELECT FROM time_stamp t
			WHERE t.token IS NULL OR t.size >= n.size OR t.verified_at > clock_timestamp() - make_interval(mins => $1)
		)`,
		[everyMin],
	);
}

/**
 * Claims the waiting stamp if it is due: counts the attempt and sets the next one, so that no other instance tries
 * meanwhile, and none forgets it when this one ends. The pause doubles with each attempt up to a limit.
 */
export async function claimWaitingStamp(
	transaction: Queryable,
	pauseS: { readonly first: number; readonly most: number },
): Promise<WaitingStamp | null> {
	const [row] = await transaction.query<WaitingStamp>(
		`UPDATE time_stamp t SET attempts = attempts + 1,
			next_try_at = clock_timestamp() + make_interval(secs => least($2::float8, $1::float8 * 2 ^ least(attempts, 30)))
		 FROM checkpoint c WHERE c.size = t.size AND t.token IS NULL AND t.next_try_at <= clock_timestamp()
		 RETURNING t.size, c.note, t.attempts`,
		[pauseS.first, pauseS.most],
	);
	return row ?? null;
}

export async function fillStamp(database: Queryable, size: number, token: Uint8Array, genTime: Date): Promise<void> {
	await database.query(
		`UPDATE time_stamp SET token = $2, gen_time = $3, verified_at = clock_timestamp(), last_error = NULL
		 WHERE size = $1 AND token IS NULL`,
		[size, token, genTime],
	);
}

export async function noteStampError(database: Queryable, size: number, code: string): Promise<void> {
	await database.query("UPDATE time_stamp SET last_error = $2 WHERE size = $1 AND token IS NULL", [size, code]);
}

/** The newest stamp that came; null where none has. */
export async function newestStamp(database: Queryable): Promise<{ readonly size: number; readonly time: Date } | null> {
	const [row] = await database.query<{ size: number; time: Date }>(
		"SELECT size, gen_time AS time FROM time_stamp WHERE token IS NOT NULL ORDER BY size DESC LIMIT 1",
	);
	return row ?? null;
}

export interface StampedCheckpoint {
	readonly size: number;
	readonly note: string;
	/** The TimeStampToken, DER. */
	readonly token: Buffer;
	/** The time that the authority states. */
	readonly genTime: Date;
}

/**
 * The stamps worth giving with a checkpoint of `size`: for each entry the first one that covers it, since the time of that
 * one bounds it best. Newest first, none twice, so a receipt holds no more of them than entries.
 */
export async function timeStampsFor(
	database: Queryable,
	size: number,
	indexes: readonly number[],
): Promise<StampedCheckpoint[]> {
	return database.query<StampedCheckpoint>(
		`SELECT t.size, c.note, t.token, t.gen_time AS "genTime" FROM time_stamp t JOIN checkpoint c USING (size)
		 WHERE t.size IN (
			SELECT (SELECT min(s.size) FROM time_stamp s WHERE s.token IS NOT NULL AND s.size > i.index AND s.size <= $1)
			FROM unnest($2::bigint[]) AS i (index)
		 ) ORDER BY t.size DESC`,
		[size, indexes],
	);
}
