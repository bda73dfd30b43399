/** Creations that may be asked twice with one `Idempotency-Key`. */
import type { Queryable } from "./connection.ts";

export interface IdempotentCreation {
	readonly requestSha256: string;
	readonly resourceId: string;
}

export async function findCreation(
	database: Queryable,
	callerId: string,
	key: string,
): Promise<IdempotentCreation | null> {
	const [row] = await database.query<{ request_sha256: string; resource_id: string }>(
		"SELECT request_sha256, resource_id FROM idempotent_creation WHERE caller_id = $1 AND key = $2",
		[callerId, key],
	);
	return row === undefined ? null : { requestSha256: row.request_sha256, resourceId: row.resource_id };
}

/** Notes a creation; false where the key has been used in the meantime. */
export async function noteCreation(
	transaction: Queryable,
	callerId: string,
	key: string,
	creation: IdempotentCreation,
): Promise<boolean> {
	const rows = await transaction.query(
		`INSERT INTO idempotent_creation (caller_id, key, request_sha256, resource_id) VALUES ($1, $2, $3, $4)
		 ON CONFLICT DO NOTHING RETURNING key`,
		[callerId, key, creation.requestSha256, creation.resourceId],
	);
	return rows.length === 1;
}
