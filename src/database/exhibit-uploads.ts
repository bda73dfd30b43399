/** Rows of uploads: what of a file is here, and what became of it. */
import type { Queryable } from "./connection.ts";

export interface UploadRow {
	readonly id: string;
	readonly party_id: string;
	readonly order_id: string;
	/** Either this or the leg. */
	readonly record_id: string | null;
	readonly consignment_id: string | null;
	readonly size_bytes: number;
	/** On disk and acknowledged. */
	readonly offset_bytes: number;
	readonly brought_by: string;
	readonly expires_at: Date;
	readonly finished_at: Date | null;
	/** These four once all bytes are here. */
	readonly sha256: string | null;
	readonly stored_sha256: string | null;
	readonly crc32: number | null;
	readonly media_type: string | null;
	readonly recording_id: string | null;
}

/** What stands under the key of the order's owner. */
export interface UploadSecrets {
	readonly fileName: string;
	/** The file's own key, base64. */
	readonly key: string;
}

const uploadPlace = (id: string) => `exhibit_upload/${id}`;
const tailPlace = (id: string) => `exhibit_upload/${id}/tail`;
const COLUMNS = `id, party_id, order_id, record_id, consignment_id, size_bytes, offset_bytes, brought_by, expires_at,
	finished_at, sha256, stored_sha256, crc32, media_type, recording_id`;

export async function insertUpload(
	transaction: Queryable,
	row: Pick<
		UploadRow,
		"id" | "party_id" | "order_id" | "record_id" | "consignment_id" | "size_bytes" | "brought_by" | "expires_at"
	> &
		UploadSecrets,
): Promise<void> {
	const party = transaction.vault.of(row.party_id);
	await transaction.query(
		`INSERT INTO exhibit_upload (id, party_id, order_id, record_id, consignment_id, size_bytes, brought_by, expires_at, personal, tail)
		 VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10)`,
		[
			row.id,
			row.party_id,
			row.order_id,
			row.record_id,
			row.consignment_id,
			row.size_bytes,
			row.brought_by,
			row.expires_at,
			party.seal(uploadPlace(row.id), { fileName: row.fileName, key: row.key } satisfies UploadSecrets),
			party.sealBytes(tailPlace(row.id), Buffer.alloc(0)),
		],
	);
}

export async function uploadById(database: Queryable, id: string): Promise<UploadRow | null> {
	const [row] = await database.query<UploadRow>(`SELECT ${COLUMNS} FROM exhibit_upload WHERE id = $1`, [id]);
	return row ?? null;
}

/** What of an upload is encrypted: name, key, and the bytes behind its last whole segment. */
export async function uploadSecrets(
	database: Queryable,
	{ id, party_id }: Pick<UploadRow, "id" | "party_id">,
): Promise<UploadSecrets & { readonly tail: Buffer }> {
	const [row] = await database.query<{ personal: Buffer; tail: Buffer }>(
		"SELECT personal, tail FROM exhibit_upload WHERE id = $1",
		[id],
	);
	if (row === undefined) throw new Error(`upload ${id} is gone`);
	const party = database.vault.of(party_id);
	return {
		...party.open<UploadSecrets>(uploadPlace(id), row.personal),
		tail: party.openBytes(tailPlace(id), row.tail),
	};
}

/** Notes that more is on disk; false where another got further meanwhile. */
export async function advanceUpload(
	database: Queryable,
	{ id, party_id, offset_bytes }: Pick<UploadRow, "id" | "party_id" | "offset_bytes">,
	to: { readonly offsetBytes: number; readonly tail: Uint8Array },
): Promise<boolean> {
	const rows = await database.query(
		"UPDATE exhibit_upload SET offset_bytes = $3, tail = $4 WHERE id = $1 AND offset_bytes = $2 RETURNING id",
		[id, offset_bytes, to.offsetBytes, database.vault.of(party_id).sealBytes(tailPlace(id), to.tail)],
	);
	return rows.length === 1;
}

/** Notes what a whole file is, before it gets its place in the store. */
export async function noteWhole(
	database: Queryable,
	id: string,
	facts: {
		readonly sha256: string;
		readonly storedSha256: string;
		readonly crc32: number;
		readonly mediaType: string;
	},
): Promise<void> {
	await database.query(
		"UPDATE exhibit_upload SET sha256 = $2, stored_sha256 = $3, crc32 = $4, media_type = $5 WHERE id = $1",
		[id, facts.sha256, facts.storedSha256, facts.crc32, facts.mediaType],
	);
}

/** Notes, beside the exhibit's rows, that an upload is done. */
export async function finishUpload(transaction: Queryable, id: string, recordingId: string | null): Promise<void> {
	await transaction.query(
		"UPDATE exhibit_upload SET finished_at = clock_timestamp(), recording_id = $2 WHERE id = $1",
		[id, recordingId],
	);
}

export async function deleteUpload(database: Queryable, id: string): Promise<void> {
	await database.query("DELETE FROM exhibit_upload WHERE id = $1", [id]);
}

/** The same, unless it became whole meanwhile; gives whether it is gone. */
export async function deleteLostUpload(database: Queryable, id: string): Promise<boolean> {
	return (
		(await database.query("DELETE FROM exhibit_upload WHERE id = $1 AND sha256 IS NULL RETURNING id", [id])).length > 0
	);
}

/** Uploads whose time is over, finished or not. */
export async function expiredUploads(database: Queryable, now: Date): Promise<UploadRow[]> {
	return database.query<UploadRow>(`SELECT ${COLUMNS} FROM exhibit_upload WHERE expires_at <= $1 ORDER BY id`, [now]);
}

/** Ids of the uploads of this list that are still to be finished. */
export async function unfinishedAmong(database: Queryable, ids: readonly string[]): Promise<string[]> {
	const rows = await database.query<{ id: string }>(
		"SELECT id FROM exhibit_upload WHERE id = ANY ($1) AND finished_at IS NULL",
		[ids],
	);
	return rows.map(({ id }) => id);
}

/** Bytes that an order's files take or will take, and how many uploads of it are not done; nobody begins another meanwhile. */
export async function spaceOfOrder(
	transaction: Queryable,
	orderId: string,
): Promise<{ readonly bytes: number; readonly unfinished: number }> {
	await transaction.query("SELECT FROM repair_order WHERE id = $1 FOR NO KEY UPDATE", [orderId]);
	const [row] = await transaction.query<{ bytes: number; unfinished: number }>(
		`SELECT stored.bytes + coming.bytes AS bytes, coming.count AS unfinished
		 FROM (
				SELECT coalesce(sum(size_bytes), 0)::bigint AS bytes FROM exhibit JOIN (
					SELECT sha256, party_id FROM exhibit_use WHERE order_id = $1
					UNION SELECT sha256, party_id FROM transit_recording WHERE order_id = $1
				) AS used USING (sha256, party_id)
			) AS stored,
			(
				SELECT coalesce(sum(size_bytes), 0)::bigint AS bytes, count(*)::int AS count
				FROM exhibit_upload WHERE order_id = $1 AND finished_at IS NULL
			) AS coming`,
		[orderId],
	);
	return row ?? { bytes: 0, unfinished: 0 };
}

/** An erased party's uploads: their rows go, and with them what their bytes were under. */
export async function deleteUploadsOf(transaction: Queryable, partyId: string): Promise<void> {
	await transaction.query("DELETE FROM exhibit_upload WHERE party_id = $1", [partyId]);
}
