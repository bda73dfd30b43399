/** Rows of parties, items, orders and consignments. JSON members are shaped by `contract/orders.ts`. */
import type { Queryable } from "./connection.ts";

export interface PartyRow {
	readonly id: string;
	readonly kind: "consumer" | "business";
	readonly country: string;
	readonly name: string;
	readonly email: string | null;
	readonly address: string | null;
}

export interface ItemRow {
	readonly id: string;
	readonly class: string;
	readonly maker: string;
	readonly model: string;
	readonly serial_number: string | null;
	readonly details: unknown;
}

export interface OrderRow {
	readonly id: string;
	readonly repairer_id: string;
	readonly owner_id: string;
	readonly item_id: string;
	readonly contract_kind: "repair" | "exchange" | "warranty-return";
	readonly terms: unknown;
	readonly created_at: Date;
}

export interface ConsignmentRow {
	readonly id: string;
	readonly order_id: string;
	readonly leg: number;
	readonly consignor_id: string;
	readonly consignee_id: string;
	readonly facts: unknown;
	readonly version: number;
}

export async function insertParty(database: Queryable, row: PartyRow): Promise<void> {
	await database.query("INSERT INTO party (id, kind, country, name, email, address) VALUES ($1, $2, $3, $4, $5, $6)", [
		row.id,
		row.kind,
		row.country,
		row.name,
		row.email,
		row.address,
	]);
}

export async function insertItem(database: Queryable, row: ItemRow): Promise<void> {
	await database.query(
		"INSERT INTO item (id, class, maker, model, serial_number, details) VALUES ($1, $2, $3, $4, $5, $6)",
		[row.id, row.class, row.maker, row.model, row.serial_number, JSON.stringify(row.details)],
	);
}

export async function insertOrder(database: Queryable, row: Omit<OrderRow, "created_at">): Promise<void> {
	await database.query(
		"INSERT INTO repair_order (id, repairer_id, owner_id, item_id, contract_kind, terms) VALUES ($1, $2, $3, $4, $5, $6)",
		[row.id, row.repairer_id, row.owner_id, row.item_id, row.contract_kind, JSON.stringify(row.terms)],
	);
}

/** Adds the next leg of an order's journey and gives its number. */
export async function insertConsignment(
	database: Queryable,
	row: Omit<ConsignmentRow, "leg" | "version">,
): Promise<number> {
	// The order's row is locked so that two legs made at once get two numbers.
	await database.query("SELECT id FROM repair_order WHERE id = $1 FOR UPDATE", [row.order_id]);
	const [inserted] = await database.query<{ leg: number }>(
		`INSERT INTO consignment (id, order_id, leg, consignor_id, consignee_id, facts)
		 SELECT $1, $2, coalesce(max(leg), 0) + 1, $3, $4, $5 FROM consignment WHERE order_id = $2 RETURNING leg`,
		[row.id, row.order_id, row.consignor_id, row.consignee_id, JSON.stringify(row.facts)],
	);
	if (inserted === undefined) throw new Error("an INSERT … RETURNING gave no row");
	return inserted.leg;
}

/** Replaces a consignment's facts if it still has that version; false where it has not. */
export async function updateConsignment(
	database: Queryable,
	id: string,
	version: number,
	facts: unknown,
): Promise<boolean> {
	const rows = await database.query(
		"UPDATE consignment SET facts = $3, version = version + 1 WHERE id = $1 AND version = $2 RETURNING id",
		[id, version, JSON.stringify(facts)],
	);
	return rows.length === 1;
}

export async function partyById(database: Queryable, id: string): Promise<PartyRow | null> {
	const [row] = await database.query<PartyRow>("SELECT * FROM party WHERE id = $1", [id]);
	return row ?? null;
}

export async function itemById(database: Queryable, id: string): Promise<ItemRow | null> {
	const [row] = await database.query<ItemRow>("SELECT * FROM item WHERE id = $1", [id]);
	return row ?? null;
}

export async function orderById(database: Queryable, id: string): Promise<OrderRow | null> {
	const [row] = await database.query<OrderRow>("SELECT * FROM repair_order WHERE id = $1", [id]);
	return row ?? null;
}

/** Orders, newest first, after the one with the cursor's time and id. */
export async function listOrders(
	database: Queryable,
	limit: number,
	after: { readonly createdAt: string; readonly id: string } | null,
): Promise<OrderRow[]> {
	return database.query<OrderRow>(
		`SELECT * FROM repair_order
		 WHERE $2::timestamptz IS NULL OR (created_at, id COLLATE "C") < ($2::timestamptz, $3 COLLATE "C")
		 ORDER BY created_at DESC, id COLLATE "C" DESC LIMIT $1`,
		[limit, after?.createdAt ?? null, after?.id ?? ""],
	);
}

export async function consignmentById(database: Queryable, id: string): Promise<ConsignmentRow | null> {
	const [row] = await database.query<ConsignmentRow>("SELECT * FROM consignment WHERE id = $1", [id]);
	return row ?? null;
}

export async function consignmentsOfOrder(database: Queryable, orderId: string): Promise<ConsignmentRow[]> {
	return database.query<ConsignmentRow>("SELECT * FROM consignment WHERE order_id = $1 ORDER BY leg", [orderId]);
}
