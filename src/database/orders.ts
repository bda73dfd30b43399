/**
 * Rows of parties, items, orders and consignments. JSON members are shaped by `contract/orders.ts`. What is about a person
 * is encrypted: a party's own data with its key, everything about an order with its owner's.
 */
import type { Queryable } from "./connection.ts";

export interface PartyRow {
	readonly id: string;
	readonly kind: "consumer" | "business";
	readonly country: string;
	readonly name: string;
	readonly email: string | null;
	readonly address: string | null;
	readonly erased_at: Date | null;
}

export interface ItemRow {
	readonly id: string;
	readonly class: string;
	readonly owner_id: string;
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

/** A row as it lies in the database. */
type Stored = { readonly id: string; readonly personal: Buffer };

export const partyPlace = (id: string) => `party/${id}`;
export const itemPlace = (id: string) => `item/${id}`;
export const orderPlace = (id: string) => `repair_order/${id}`;
export const consignmentPlace = (id: string) => `consignment/${id}`;

export async function insertParty(database: Queryable, row: Omit<PartyRow, "erased_at">): Promise<void> {
	const { id, kind, country, ...personal } = row;
	await database.query("INSERT INTO party (id, kind, country, personal) VALUES ($1, $2, $3, $4)", [
		id,
		kind,
		country,
		database.vault.seal(id, partyPlace(id), personal),
	]);
}

export async function insertItem(database: Queryable, row: ItemRow): Promise<void> {
	const { id, class: itemClass, owner_id, ...personal } = row;
	await database.query("INSERT INTO item (id, class, owner_id, personal) VALUES ($1, $2, $3, $4)", [
		id,
		itemClass,
		owner_id,
		database.vault.seal(owner_id, itemPlace(id), personal),
	]);
}

export async function insertOrder(database: Queryable, row: Omit<OrderRow, "created_at">): Promise<void> {
	await database.query(
		"INSERT INTO repair_order (id, repairer_id, owner_id, item_id, contract_kind, personal) VALUES ($1, $2, $3, $4, $5, $6)",
		[
			row.id,
			row.repairer_id,
			row.owner_id,
			row.item_id,
			row.contract_kind,
			database.vault.seal(row.owner_id, orderPlace(row.id), row.terms),
		],
	);
}

/** Adds the next leg of an order's journey and gives its number. */
export async function insertConsignment(
	database: Queryable,
	row: Omit<ConsignmentRow, "leg" | "version">,
): Promise<number> {
	// The order's row is locked so that two legs made at once get two numbers.
	const [order] = await database.query<{ owner_id: string }>(
		"SELECT owner_id FROM repair_order WHERE id = $1 FOR UPDATE",
		[row.order_id],
	);
	if (order === undefined) throw new Error(`there is no order ${row.order_id}`);
	const [inserted] = await database.query<{ leg: number }>(
		`INSERT INTO consignment (id, order_id, leg, consignor_id, consignee_id, personal)
		 SELECT $1, $2, coalesce(max(leg), 0) + 1, $3, $4, $5 FROM consignment WHERE order_id = $2 RETURNING leg`,
		[
			row.id,
			row.order_id,
			row.consignor_id,
			row.consignee_id,
			database.vault.seal(order.owner_id, consignmentPlace(row.id), row.facts),
		],
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
	const [order] = await database.query<{ owner_id: string }>(
		"SELECT o.owner_id FROM consignment c JOIN repair_order o ON o.id = c.order_id WHERE c.id = $1",
		[id],
	);
	if (order === undefined) return false;
	const rows = await database.query(
		"UPDATE consignment SET personal = $3, version = version + 1 WHERE id = $1 AND version = $2 RETURNING id",
		[id, version, database.vault.seal(order.owner_id, consignmentPlace(id), facts)],
	);
	return rows.length === 1;
}

export async function partyById(database: Queryable, id: string): Promise<PartyRow | null> {
	const [row] = await database.query<Omit<PartyRow, "name" | "email" | "address"> & Stored>(
		"SELECT * FROM party WHERE id = $1",
		[id],
	);
	if (row === undefined) return null;
	const { personal, ...plain } = row;
	return {
		...plain,
		...database.vault.open<Pick<PartyRow, "name" | "email" | "address">>(id, partyPlace(id), personal),
	};
}

/** Ids of the parties whose data is there. */
export async function partiesNotErased(database: Queryable): Promise<string[]> {
	const rows = await database.query<{ id: string }>("SELECT id FROM party WHERE erased_at IS NULL");
	return rows.map(({ id }) => id);
}

type ItemText = Pick<ItemRow, "maker" | "model" | "serial_number" | "details">;

export async function itemById(database: Queryable, id: string): Promise<ItemRow | null> {
	const [row] = await database.query<Omit<ItemRow, keyof ItemText> & Stored>("SELECT * FROM item WHERE id = $1", [id]);
	if (row === undefined) return null;
	const { personal, ...plain } = row;
	return { ...plain, ...database.vault.open<ItemText>(row.owner_id, itemPlace(id), personal) };
}

type StoredOrder = Omit<OrderRow, "terms"> & Stored;

export async function orderById(database: Queryable, id: string): Promise<OrderRow | null> {
	const [row] = await database.query<StoredOrder>("SELECT * FROM repair_order WHERE id = $1", [id]);
	return row === undefined ? null : openOrder(database, row);
}

/** Orders, newest first, after the one with the cursor's time and id. */
export async function listOrders(
	database: Queryable,
	limit: number,
	after: { readonly createdAt: string; readonly id: string } | null,
): Promise<OrderRow[]> {
	const rows = await database.query<StoredOrder>(
		`SELECT * FROM repair_order
		 WHERE $2::timestamptz IS NULL OR (created_at, id COLLATE "C") < ($2::timestamptz, $3 COLLATE "C")
		 ORDER BY created_at DESC, id COLLATE "C" DESC LIMIT $1`,
		[limit, after?.createdAt ?? null, after?.id ?? ""],
	);
	return rows.map((row) => openOrder(database, row));
}

/** Every order of an owner. */
export async function ordersOfOwner(database: Queryable, ownerId: string): Promise<OrderRow[]> {
	const rows = await database.query<StoredOrder>("SELECT * FROM repair_order WHERE owner_id = $1", [ownerId]);
	return rows.map((row) => openOrder(database, row));
}

function openOrder(database: Queryable, { personal, ...plain }: StoredOrder): OrderRow {
	return { ...plain, terms: database.vault.open(plain.owner_id, orderPlace(plain.id), personal) };
}

type StoredConsignment = Omit<ConsignmentRow, "facts"> & Stored & { readonly owner_id: string };

const CONSIGNMENTS = "SELECT c.*, o.owner_id FROM consignment c JOIN repair_order o ON o.id = c.order_id";

export async function consignmentById(database: Queryable, id: string): Promise<ConsignmentRow | null> {
	const [row] = await database.query<StoredConsignment>(`${CONSIGNMENTS} WHERE c.id = $1`, [id]);
	return row === undefined ? null : openConsignment(database, row);
}

export async function consignmentsOfOrder(database: Queryable, orderId: string): Promise<ConsignmentRow[]> {
	const rows = await database.query<StoredConsignment>(`${CONSIGNMENTS} WHERE c.order_id = $1 ORDER BY c.leg`, [
		orderId,
	]);
	return rows.map((row) => openConsignment(database, row));
}

function openConsignment(database: Queryable, { personal, owner_id, ...plain }: StoredConsignment): ConsignmentRow {
	return { ...plain, facts: database.vault.open(owner_id, consignmentPlace(plain.id), personal) };
}
