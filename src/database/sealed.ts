/** Sealed statements with the openings of their commitments, as an order's parties are shown them. */
import type { SealedEntry } from "../records/receipt.ts";
import type { Queryable } from "./connection.ts";
import { openingsOf } from "./records.ts";

interface SealedRow {
	readonly index: number;
	readonly kind: string;
	readonly subject: string;
	readonly by_id: string;
	readonly sealed_at: Date;
	readonly entry_bytes: Buffer;
	readonly leaf_sha256: string;
	readonly statement_bytes: Buffer;
	readonly statement_sha256: string;
}

/** Every sealed statement of an order, records and assessments, in log order. */
export async function sealedOfOrder(database: Queryable, orderId: string): Promise<SealedEntry[]> {
	const rows = await database.query<SealedRow>(
		`SELECT s.index, p.kind, p.subject, p.by_id, s.sealed_at, s.entry_bytes, s.leaf_sha256, s.statement_bytes, s.statement_sha256
		 FROM entry_projection p JOIN sealed_entry s USING (index)
		 WHERE s.statement_bytes IS NOT NULL AND p.subject IN (
			SELECT id FROM state_record WHERE order_id = $1 UNION ALL SELECT id FROM packaging_assessment WHERE order_id = $1
		 ) ORDER BY s.index`,
		[orderId],
	);
	const openings = await openingsOf(
		database,
		rows.map((row) => row.subject),
	);
	return rows.map((row) => ({
		index: row.index,
		kind: row.kind,
		subject: row.subject,
		byId: row.by_id,
		time: row.sealed_at,
		entryBytes: row.entry_bytes,
		leafSha256: row.leaf_sha256,
		statementBytes: row.statement_bytes,
		statementSha256: row.statement_sha256,
		openings: openings.get(row.subject) ?? [],
	}));
}

export async function insertAssessment(
	transaction: Queryable,
	row: { readonly id: string; readonly orderId: string; readonly consignmentId: string },
): Promise<void> {
	await transaction.query("INSERT INTO packaging_assessment (id, order_id, consignment_id) VALUES ($1, $2, $3)", [
		row.id,
		row.orderId,
		row.consignmentId,
	]);
}

/** Ids of the sealed assessments of a leg, oldest first. */
export async function assessmentsOfConsignment(database: Queryable, consignmentId: string): Promise<string[]> {
	const rows = await database.query<{ id: string }>(
		"SELECT id FROM packaging_assessment WHERE consignment_id = $1 ORDER BY created_at",
		[consignmentId],
	);
	return rows.map((row) => row.id);
}
