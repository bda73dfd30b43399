/** Codes that were shown to be written beside a board, each with the size of the checkpoint that it is made from. */
import type { Queryable } from "./connection.ts";

export interface PhotoCodeRow {
	readonly record_id: string;
	readonly tree_size: number;
	readonly code: string;
	readonly other_party_id: string;
	readonly shown_at: Date;
}

const CODES = "SELECT record_id, tree_size, code, other_party_id, shown_at FROM photo_code";

/** The code that was last shown for a record, where that was after `since`. */
export async function shownCode(database: Queryable, recordId: string, since: Date): Promise<PhotoCodeRow | null> {
	const [row] = await database.query<PhotoCodeRow>(
		`${CODES} WHERE record_id = $1 AND shown_at > $2 ORDER BY tree_size DESC LIMIT 1`,
		[recordId, since],
	);
	return row ?? null;
}

/** Notes that a code is shown; one that was shown before is left as it is. */
export async function insertPhotoCode(database: Queryable, row: PhotoCodeRow): Promise<void> {
	await database.query(
		`INSERT INTO photo_code (record_id, tree_size, code, other_party_id, shown_at) VALUES ($1, $2, $3, $4, $5)
		 ON CONFLICT DO NOTHING`,
		[row.record_id, row.tree_size, row.code, row.other_party_id, row.shown_at],
	);
}

/** Where an order's records were shown this code. */
export function photoCodesOfOrder(database: Queryable, orderId: string, code: string): Promise<PhotoCodeRow[]> {
	return database.query<PhotoCodeRow>(
		`${CODES} JOIN state_record r ON r.id = record_id WHERE r.order_id = $1 AND code = $2 ORDER BY tree_size`,
		[orderId, code],
	);
}

/** When the last entry under each checkpoint was made, by size. */
export async function timesOfCheckpoints(
	database: Queryable,
	sizes: readonly number[],
): Promise<ReadonlyMap<number, Date>> {
	const rows = await database.query<{ size: number; sealed_at: Date }>(
		"SELECT index + 1 AS size, sealed_at FROM sealed_entry WHERE index = ANY ($1)",
		[sizes.map((size) => size - 1)],
	);
	return new Map(rows.map(({ size, sealed_at }) => [size, sealed_at]));
}
