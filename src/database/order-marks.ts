/** What stands in plain of every order at once, for the list of orders: codes, times and whether something is sealed. */
import type { SettlementFacts } from "../records/settlement-statement.ts";
import type { Queryable } from "./connection.ts";

export interface OrderMark {
	readonly id: string;
	readonly createdAt: Date;
	readonly class: string;
	readonly ownClassId: string | null;
	readonly isReadIn: boolean;
	/** Records that are begun and not sealed. */
	readonly drafts: number;
}

export interface LegMark {
	readonly id: string;
	readonly orderId: string;
	readonly leg: number;
	readonly isToOwner: boolean;
	readonly wasDispatched: boolean;
	readonly wasDelivered: boolean;
}

export interface SealedMark {
	readonly orderId: string;
	readonly consignmentId: string | null;
	readonly stage: string;
	/** Of the item as a whole, as sealed. */
	readonly state: string;
	/** Told to the other side, not recorded by its holder. */
	readonly isReported: boolean;
}

export interface StepMark {
	readonly orderId: string;
	readonly facts: SettlementFacts;
	readonly sealedAt: Date;
}

/** Newest first; of one order where it is named, here and in what follows. */
export function orderMarks(database: Queryable, orderId: string | null): Promise<OrderMark[]> {
	return database.query<OrderMark>(
		`SELECT o.id, o.created_at AS "createdAt", i.class, i.plain->>'ownClassId' AS "ownClassId",
			r.order_id IS NOT NULL AS "isReadIn", coalesce(d.drafts, 0)::int AS drafts
		 FROM repair_order o JOIN item i ON i.id = o.item_id LEFT JOIN read_in_log r ON r.order_id = o.id
		 LEFT JOIN (SELECT order_id, count(*) AS drafts FROM state_record WHERE state = 'draft' GROUP BY order_id) d
			ON d.order_id = o.id
		 WHERE $1::text IS NULL OR o.id = $1 ORDER BY o.created_at DESC, o.id COLLATE "C" DESC`,
		[orderId],
	);
}

export function legMarks(database: Queryable, orderId: string | null): Promise<LegMark[]> {
	return database.query<LegMark>(
		`SELECT c.id, c.order_id AS "orderId", c.leg, c.consignor_id <> o.owner_id AS "isToOwner",
			c.plain ? 'dispatchedAt' AS "wasDispatched", c.plain ? 'deliveredAt' AS "wasDelivered"
		 FROM consignment c JOIN repair_order o ON o.id = c.order_id
		 WHERE $1::text IS NULL OR o.id = $1 ORDER BY c.order_id, c.leg`,
		[orderId],
	);
}

/** Statements of every order of this log, and of those that were read in, in the order of their log. */
const STATEMENTS = `
	SELECT p.kind, p.subject, s.index, s.sealed_at, convert_from(s.statement_bytes, 'UTF8')::jsonb AS said
	FROM entry_projection p JOIN sealed_entry s USING (index) WHERE p.kind = $1 AND s.statement_bytes IS NOT NULL
	UNION ALL
	SELECT kind, subject, index, sealed_at, convert_from(statement_bytes, 'UTF8')::jsonb
	FROM read_in_entry WHERE kind = $1 AND statement_bytes IS NOT NULL`;

/** Of the records that no later one amends, in the order in which they were sealed. */
export function sealedMarks(database: Queryable, orderId: string | null): Promise<SealedMark[]> {
	return database.query<SealedMark>(
		`SELECT r.order_id AS "orderId", r.consignment_id AS "consignmentId", r.stage, e.said->>'state' AS state,
			r.provenance = 'reported-to' AS "isReported"
		 FROM (${STATEMENTS}) e JOIN state_record r ON r.id = e.subject
		 WHERE NOT EXISTS (SELECT 1 FROM state_record a WHERE a.amends = r.id AND a.state = 'sealed')
			AND ($2::text IS NULL OR r.order_id = $2)
		 ORDER BY e.index`,
		["record-sealed", orderId],
	);
}

export function stepMarks(database: Queryable, orderId: string | null): Promise<StepMark[]> {
	return database.query<StepMark>(
		`SELECT t.order_id AS "orderId", e.said AS facts, e.sealed_at AS "sealedAt"
		 FROM (${STATEMENTS}) e JOIN settlement_step t ON t.id = e.subject
		 WHERE $2::text IS NULL OR t.order_id = $2 ORDER BY e.index`,
		["settlement-sealed", orderId],
	);
}
