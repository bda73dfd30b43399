/** Entries of the log with the openings of their commitments, as an order's parties are shown them. */
import type { LoggedEntry, SealedEntry } from "../records/receipt.ts";
import type { Queryable } from "./connection.ts";
import { openingsOf } from "./records.ts";

interface EntryRow {
	readonly index: number;
	readonly kind: string;
	readonly subject: string;
	readonly by_id: string;
	readonly sealed_at: Date;
	readonly entry_bytes: Buffer;
	readonly leaf_sha256: string;
	readonly statement_bytes: Buffer | null;
	readonly statement_sha256: string | null;
}

/**
 * Every entry about an order, in log order: its records, drafts too, its assessments, what its parties stated and settled,
 * the use of its links, what its parties signed, that a party was erased.
 */
export async function entriesOfOrder(database: Queryable, orderId: string): Promise<LoggedEntry[]> {
	const rows = await database.query<EntryRow>(
		`SELECT s.index, p.kind, p.subject, p.by_id, s.sealed_at, s.entry_bytes, s.leaf_sha256, s.statement_bytes, s.statement_sha256
		 FROM entry_projection p JOIN sealed_entry s USING (index)
		 WHERE p.subject IN (
			SELECT id FROM state_record WHERE order_id = $1 UNION ALL
			SELECT id FROM packaging_assessment WHERE order_id = $1 UNION ALL
			SELECT id FROM stated_position WHERE order_id = $1 UNION ALL
			SELECT id FROM settlement_step WHERE order_id = $1 UNION ALL
			SELECT id FROM link WHERE order_id = $1 UNION ALL
			SELECT unnest(ARRAY[owner_id, repairer_id]) FROM repair_order WHERE id = $1
		 ) ORDER BY s.index`,
		[orderId],
	);
	const openings = await openingsOf(
		database,
		rows.filter((row) => row.statement_bytes !== null).map((row) => row.subject),
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
		openings: row.statement_bytes === null ? [] : (openings.get(row.subject) ?? []),
	}));
}

/** Every sealed record and assessment of an order, in log order. */
export async function sealedOfOrder(database: Queryable, orderId: string): Promise<SealedEntry[]> {
	return (await entriesOfOrder(database, orderId)).filter(isSealed);
}

/** Whether an entry seals a record or an assessment. */
export function isSealed(entry: LoggedEntry): entry is SealedEntry {
	return entry.statementBytes !== null && ["record-sealed", "assessment-sealed"].includes(entry.kind);
}

/** The order that a record, a position or a step of a settlement belongs to; null for what is none of them. */
export async function orderOfSealed(database: Queryable, subject: string): Promise<string | null> {
	const [row] = await database.query<{ order_id: string }>(
		`SELECT order_id FROM state_record WHERE id = $1 UNION ALL
		 SELECT order_id FROM stated_position WHERE id = $1 UNION ALL
		 SELECT order_id FROM settlement_step WHERE id = $1`,
		[subject],
	);
	return row?.order_id ?? null;
}

/** What the parties of an order sealed of one kind, in log order. */
export async function sealedOfKind(
	database: Queryable,
	orderId: string,
	kind: "position-sealed" | "settlement-sealed",
): Promise<SealedEntry[]> {
	const entries = await entriesOfOrder(database, orderId);
	return entries.filter((entry): entry is SealedEntry => entry.kind === kind && entry.statementBytes !== null);
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
