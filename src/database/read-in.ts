/** Rows of what was read in from dossiers: another log's entries with their proofs, its checkpoint and keys. */
import type { EarlierCheckpoint, LoggedEntry, Receipt } from "../records/receipt.ts";
import type { Queryable } from "./connection.ts";
import type { RecordRow } from "./records.ts";

/** The log that sealed an order which was read in. */
export interface ReadInLog {
	readonly origin: string;
	readonly size: number;
	/** The signed note. */
	readonly checkpoint: string;
	readonly keys: Receipt["keys"];
	readonly earlier: readonly EarlierCheckpoint[];
	readonly timeStamps: Receipt["timeStamps"];
	readonly dossierSha256: string;
	readonly readInAt: Date;
}

/** An entry as another log sealed it. */
export type ReadInEntry = Omit<LoggedEntry, "openings"> & { readonly proof: readonly string[] };

/** Null where the order is this service's own. */
export async function readInLogOf(database: Queryable, orderId: string): Promise<ReadInLog | null> {
	const [row] = await database.query<ReadInLog>(
		`SELECT origin, size, checkpoint, keys, earlier, time_stamps AS "timeStamps", dossier_sha256 AS "dossierSha256",
			read_in_at AS "readInAt" FROM read_in_log WHERE order_id = $1`,
		[orderId],
	);
	return row ?? null;
}

/** In the order of their log. */
export async function readInEntriesOf(database: Queryable, orderId: string): Promise<ReadInEntry[]> {
	return database.query<ReadInEntry>(
		`SELECT index, kind, subject, by_id AS "byId", sealed_at AS time, entry_bytes AS "entryBytes", proof,
			leaf_sha256 AS "leafSha256", statement_bytes AS "statementBytes", statement_sha256 AS "statementSha256"
		 FROM read_in_entry WHERE order_id = $1 ORDER BY index`,
		[orderId],
	);
}

/** Whether a party came with an order of this log. */
export async function isPartyOfLog(database: Queryable, partyId: string, origin: string): Promise<boolean> {
	const rows = await database.query(
		`SELECT 1 FROM repair_order o JOIN read_in_log r ON r.order_id = o.id
		 WHERE r.origin = $2 AND $1 IN (o.owner_id, o.repairer_id) LIMIT 1`,
		[partyId, origin],
	);
	return rows.length > 0;
}

export async function insertReadInLog(
	transaction: Queryable,
	orderId: string,
	log: Omit<ReadInLog, "readInAt">,
	entries: readonly ReadInEntry[],
): Promise<void> {
	await transaction.query(
		`INSERT INTO read_in_log (order_id, origin, size, checkpoint, keys, earlier, time_stamps, dossier_sha256)
		 VALUES ($1, $2, $3, $4, $5, $6, $7, $8)`,
		[
			orderId,
			log.origin,
			log.size,
			log.checkpoint,
			JSON.stringify(log.keys),
			JSON.stringify(log.earlier),
			JSON.stringify(log.timeStamps),
			log.dossierSha256,
		],
	);
	for (const entry of entries) {
		await transaction.query(
			`INSERT INTO read_in_entry (order_id, index, entry_bytes, statement_bytes, leaf_sha256, statement_sha256, proof,
				kind, subject, by_id, sealed_at) VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11)`,
			[
				orderId,
				entry.index,
				entry.entryBytes,
				entry.statementBytes,
				entry.leafSha256,
				entry.statementSha256,
				entry.proof,
				entry.kind,
				entry.subject,
				entry.byId,
				entry.time,
			],
		);
	}
}

/** The row of a record that another log sealed: it never was a draft here. */
export async function insertSealedRecord(
	transaction: Queryable,
	row: Omit<RecordRow, "state" | "content" | "version">,
): Promise<void> {
	await transaction.query(
		`INSERT INTO state_record (id, order_id, consignment_id, stage, depth, provenance, holder_id, amends, state, opened_by, opened_at)
		 VALUES ($1, $2, $3, $4, $5, $6, $7, $8, 'sealed', $9, $10)`,
		[
			row.id,
			row.order_id,
			row.consignment_id,
			row.stage,
			row.depth,
			row.provenance,
			row.holder_id,
			row.amends,
			row.opened_by,
			row.opened_at,
		],
	);
}

/** Gives an order that was read in the time at which it was taken in there, and marks parties that were erased there. */
export async function noteEarlierTimes(
	transaction: Queryable,
	orderId: string,
	createdAt: string,
	erased: readonly { readonly id: string; readonly erasedAt: string }[],
): Promise<void> {
	await transaction.query("UPDATE repair_order SET created_at = $2 WHERE id = $1", [orderId, createdAt]);
	for (const { id, erasedAt } of erased) {
		await transaction.query("UPDATE party SET erased_at = $2 WHERE id = $1", [id, erasedAt]);
	}
}
