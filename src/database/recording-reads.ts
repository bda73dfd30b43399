/** Rows of long recordings that are being read, or could not be. */
import type { Queryable } from "./connection.ts";

export interface RecordingReadRow {
	readonly recording_id: string;
	readonly reading: unknown;
	readonly bytes_read: number;
	readonly heard_at: Date;
	/** What ended it; null while it is read. */
	readonly refusal: unknown;
}

/** Notes that a recording is read from now on; false where another reads it, of whom something was heard since `silentSince`. */
export async function beginRead(
	database: Queryable,
	recordingId: string,
	reading: unknown,
	{ now, silentSince }: { readonly now: Date; readonly silentSince: Date },
): Promise<boolean> {
	const rows = await database.query(
		`INSERT INTO recording_read (recording_id, reading, heard_at) VALUES ($1, $2, $3)
		 ON CONFLICT (recording_id) DO UPDATE SET reading = $2, heard_at = $3, bytes_read = 0, refusal = NULL
		 WHERE recording_read.refusal IS NOT NULL OR recording_read.heard_at < $4 RETURNING recording_id`,
		[recordingId, JSON.stringify(reading), now, silentSince],
	);
	return rows.length === 1;
}

export async function noteRead(database: Queryable, recordingId: string, bytesRead: number, now: Date): Promise<void> {
	await database.query("UPDATE recording_read SET bytes_read = $2, heard_at = $3 WHERE recording_id = $1", [
		recordingId,
		bytesRead,
		now,
	]);
}

export async function refuseRead(database: Queryable, recordingId: string, refusal: unknown): Promise<void> {
	await database.query("UPDATE recording_read SET refusal = $2 WHERE recording_id = $1", [
		recordingId,
		JSON.stringify(refusal),
	]);
}

/** It has been read. */
export async function endRead(transaction: Queryable, recordingId: string): Promise<void> {
	await transaction.query("DELETE FROM recording_read WHERE recording_id = $1", [recordingId]);
}

export async function readsOf(database: Queryable, recordingIds: readonly string[]): Promise<RecordingReadRow[]> {
	return database.query("SELECT * FROM recording_read WHERE recording_id = ANY ($1)", [recordingIds]);
}
