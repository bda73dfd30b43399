/** Rows of state records, the openings of their commitments, and the exhibits brought to them. */
import type { Opening } from "../records/commitment.ts";
import type { RecordHeader } from "../records/record-statement.ts";
import type { Queryable } from "./connection.ts";

export interface RecordRow {
	readonly id: string;
	readonly order_id: string;
	readonly consignment_id: string | null;
	readonly stage: RecordHeader["stage"];
	readonly depth: RecordHeader["depth"];
	readonly provenance: RecordHeader["provenance"];
	readonly holder_id: string;
	readonly amends: string | null;
	readonly state: "draft" | "sealed" | "discarded";
	readonly content: unknown;
	readonly version: number;
	readonly opened_by: string;
	readonly opened_at: Date;
}

export async function insertRecord(
	database: Queryable,
	row: Omit<RecordRow, "state" | "version" | "opened_at">,
): Promise<void> {
	await database.query(
		`INSERT INTO state_record (id, order_id, consignment_id, stage, depth, provenance, holder_id, amends, content, opened_by)
		 VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10)`,
		[
			row.id,
			row.order_id,
			row.consignment_id,
			row.stage,
			row.depth,
			row.provenance,
			row.holder_id,
			row.amends,
			JSON.stringify(row.content),
			row.opened_by,
		],
	);
}

export async function recordById(database: Queryable, id: string): Promise<RecordRow | null> {
	const [row] = await database.query<RecordRow>("SELECT * FROM state_record WHERE id = $1", [id]);
	return row ?? null;
}

/** The record, its row locked until the transaction ends, so that a save and a seal cannot cross. */
export async function lockRecord(transaction: Queryable, id: string): Promise<RecordRow | null> {
	const [row] = await transaction.query<RecordRow>("SELECT * FROM state_record WHERE id = $1 FOR UPDATE", [id]);
	return row ?? null;
}

export async function recordsOfOrder(database: Queryable, orderId: string): Promise<RecordRow[]> {
	return database.query<RecordRow>(
		'SELECT * FROM state_record WHERE order_id = $1 ORDER BY opened_at, id COLLATE "C"',
		[orderId],
	);
}

/** Stores a draft's new content; the caller holds the row's lock and has compared the version. */
export async function updateDraft(transaction: Queryable, id: string, content: unknown): Promise<void> {
	await transaction.query(
		"UPDATE state_record SET content = $2, version = version + 1 WHERE id = $1 AND state = 'draft'",
		[id, JSON.stringify(content)],
	);
}

/** Marks a draft sealed or discarded and empties it. */
export async function closeDraft(transaction: Queryable, id: string, state: "sealed" | "discarded"): Promise<void> {
	await transaction.query(
		"UPDATE state_record SET state = $2, content = NULL, version = version + 1 WHERE id = $1 AND state = 'draft'",
		[id, state],
	);
}

export async function insertOpenings(
	transaction: Queryable,
	subject: string,
	openings: readonly (Opening & { readonly valueJson: string })[],
): Promise<void> {
	await transaction.query(
		`INSERT INTO opening (commitment, salt, value_json, subject)
		 SELECT commitment, salt, value_json, $4 FROM unnest($1::text[], $2::text[], $3::text[]) AS o (commitment, salt, value_json)`,
		[
			openings.map((opening) => opening.commitment),
			openings.map((opening) => opening.salt),
			openings.map((opening) => opening.valueJson),
			subject,
		],
	);
}

export async function openingsOf(database: Queryable, subjects: readonly string[]): Promise<Map<string, Opening[]>> {
	const rows = await database.query<{ commitment: string; salt: string; value_json: string; subject: string }>(
		"SELECT commitment, salt, value_json, subject FROM opening WHERE subject = ANY ($1)",
		[subjects],
	);
	const bySubject = new Map<string, Opening[]>(subjects.map((subject) => [subject, []]));
	for (const row of rows) {
		bySubject.get(row.subject)?.push({ commitment: row.commitment, salt: row.salt, value: JSON.parse(row.value_json) });
	}
	return bySubject;
}

export interface ExhibitRow {
	readonly sha256: string;
	readonly size_bytes: number;
	readonly media_type: string;
	readonly file_name: string;
	readonly record_id: string;
	readonly order_id: string;
}

/** Notes a stored file and the record it was brought to; a file or use that is there already is left as it is. */
export async function insertExhibit(
	transaction: Queryable,
	row: ExhibitRow & { readonly broughtBy: string },
): Promise<void> {
	await transaction.query(
		"INSERT INTO exhibit (sha256, size_bytes, media_type) VALUES ($1, $2, $3) ON CONFLICT DO NOTHING",
		[row.sha256, row.size_bytes, row.media_type],
	);
	await transaction.query(
		`INSERT INTO exhibit_use (sha256, record_id, order_id, file_name, brought_by) VALUES ($1, $2, $3, $4, $5)
		 ON CONFLICT DO NOTHING`,
		[row.sha256, row.record_id, row.order_id, row.file_name, row.broughtBy],
	);
}

export async function exhibitsOfRecord(database: Queryable, recordId: string): Promise<ExhibitRow[]> {
	return database.query<ExhibitRow>(
		`SELECT e.sha256, e.size_bytes, e.media_type, u.file_name, u.record_id, u.order_id
		 FROM exhibit_use u JOIN exhibit e USING (sha256) WHERE u.record_id = $1 ORDER BY u.brought_at`,
		[recordId],
	);
}

/** Every use of one file. */
export async function usesOfExhibit(database: Queryable, sha256: string): Promise<ExhibitRow[]> {
	return database.query<ExhibitRow>(
		`SELECT e.sha256, e.size_bytes, e.media_type, u.file_name, u.record_id, u.order_id
		 FROM exhibit_use u JOIN exhibit e USING (sha256) WHERE u.sha256 = $1 ORDER BY u.brought_at`,
		[sha256],
	);
}

/** Every stored file. */
export async function allExhibits(database: Queryable): Promise<{ sha256: string; sizeBytes: number }[]> {
	return database.query('SELECT sha256, size_bytes AS "sizeBytes" FROM exhibit ORDER BY sha256 COLLATE "C"');
}
