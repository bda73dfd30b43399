/**
 * Rows of parties, items, orders and consignments. What someone typed is encrypted, a party's own data with its key and
 * everything about an order with its owner's; codes, numbers and times stand beside it in plain
 * (`operations/orders/personal-parts.ts` says which is which).
 */
import { fault } from "../faults.ts";
import type { Queryable } from "./connection.ts";

export interface PartyRow {
	readonly id: string;
	readonly kind: "consumer" | "business";
	readonly country: string;
	/** In which it is written to; null where nobody said. */
	readonly language: "en" | "de" | "fr" | null;
	readonly name: string;
	readonly email: string | null;
	readonly address: string | null;
	readonly erased_at: Date | null;
}

/** What is encrypted of a row, and what stands beside it. */
interface TwoParts {
	readonly plain: unknown;
	readonly personal: unknown;
}

export interface ItemRow extends TwoParts {
	readonly id: string;
	readonly class: string;
	readonly owner_id: string;
}

export interface OrderRow extends TwoParts {
	readonly id: string;
	readonly repairer_id: string;
	readonly owner_id: string;
	readonly item_id: string;
	readonly contract_kind: "repair" | "exchange" | "warranty-return";
	readonly created_at: Date;
}

export interface ConsignmentRow extends TwoParts {
	readonly id: string;
	readonly order_id: string;
	readonly leg: number;
	readonly consignor_id: string;
	readonly consignee_id: string;
	readonly version: number;
}

/** A row as it lies in the database. */
type Stored<Row> = Omit<Row, "personal"> & { readonly personal: Buffer };

const partyPlace = (id: string) => `party/${id}`;
const itemPlace = (id: string) => `item/${id}`;
const orderPlace = (id: string) => `repair_order/${id}`;
const consignmentPlace = (id: string) => `consignment/${id}`;

export async function insertParty(database: Queryable, row: Omit<PartyRow, "erased_at">): Promise<void> {
	const { id, kind, country, language, ...personal } = row;
	await database.query("INSERT INTO party (id, kind, country, language, personal) VALUES ($1, $2, $3, $4, $5)", [
		id,
		kind,
		country,
		language,
		database.vault.of(id).seal(partyPlace(id), personal),
	]);
}

export async function insertItem(database: Queryable, row: ItemRow): Promise<void> {
	await database.query("INSERT INTO item (id, class, owner_id, plain, personal) VALUES ($1, $2, $3, $4, $5)", [
		row.id,
		row.class,
		row.owner_id,
		JSON.stringify(row.plain),
		database.vault.of(row.owner_id).seal(itemPlace(row.id), row.personal),
	]);
}

export async function insertOrder(database: Queryable, row: Omit<OrderRow, "created_at">): Promise<void> {
	await database.query(
		`INSERT INTO repair_order (id, repairer_id, owner_id, item_id, contract_kind, plain, personal)
		 VALUES ($1, $2, $3, $4, $5, $6, $7)`,
		[
			row.id,
			row.repairer_id,
			row.owner_id,
			row.item_id,
			row.contract_kind,
			JSON.stringify(row.plain),
			database.vault.of(row.owner_id).seal(orderPlace(row.id), row.personal),
		],
	);
}

/**
 * The owner of an order, under whose key everything about the order is written.
 * @throws erased where nothing can be written any more
 */
export async function ownerOfOrder(transaction: Queryable, orderId: string): Promise<string> {
	const [order] = await transaction.query<{ owner_id: string; erased_at: Date | null }>(
		"SELECT o.owner_id, p.erased_at FROM repair_order o JOIN party p ON p.id = o.owner_id WHERE o.id = $1",
		[orderId],
	);
	if (order === undefined) throw new Error(`there is no order ${orderId}`);
	if (order.erased_at !== null) throw fault("erased");
	return order.owner_id;
}

/** Adds the next leg of an order's journey and gives its number. */
export async function insertConsignment(
	transaction: Queryable,
	row: Omit<ConsignmentRow, "leg" | "version">,
): Promise<number> {
	const ownerId = await ownerOfOrder(transaction, row.order_id);
	// The order's row is locked so that two legs made at once get two numbers.
	await transaction.query("SELECT id FROM repair_order WHERE id = $1 FOR UPDATE", [row.order_id]);
	const [inserted] = await transaction.query<{ leg: number }>(
		`INSERT INTO consignment (id, order_id, leg, consignor_id, consignee_id, plain, personal)
		 SELECT $1, $2, coalesce(max(leg), 0) + 1, $3, $4, $5, $6 FROM consignment WHERE order_id = $2 RETURNING leg`,
		[
			row.id,
			row.order_id,
			row.consignor_id,
			row.consignee_id,
			JSON.stringify(row.plain),
			transaction.vault.of(ownerId).seal(consignmentPlace(row.id), row.personal),
		],
	);
	if (inserted === undefined) throw new Error("an INSERT … RETURNING gave no row");
	return inserted.leg;
}

/** Replaces a consignment's facts if it still has that version; false where it has not. */
export async function updateConsignment(
	transaction: Queryable,
	{
		id,
		order_id,
		version,
		plain,
		personal,
	}: Pick<ConsignmentRow, "id" | "order_id" | "version" | "plain" | "personal">,
): Promise<boolean> {
	const ownerId = await ownerOfOrder(transaction, order_id);
	const rows = await transaction.query(
		"UPDATE consignment SET plain = $3, personal = $4, version = version + 1 WHERE id = $1 AND version = $2 RETURNING id",
		[id, version, JSON.stringify(plain), transaction.vault.of(ownerId).seal(consignmentPlace(id), personal)],
	);
	return rows.length === 1;
}

type PartyText = Pick<PartyRow, "name" | "email" | "address">;

export async function partyById(database: Queryable, id: string): Promise<PartyRow | null> {
	const [row] = await database.query<Omit<PartyRow, keyof PartyText> & { readonly personal: Buffer }>(
		"SELECT * FROM party WHERE id = $1",
		[id],
	);
	if (row === undefined) return null;
	const { personal, ...plain } = row;
	return { ...plain, ...database.vault.of(id).open<PartyText>(partyPlace(id), personal) };
}

/** Ids of the parties whose data is there. */
export async function partiesNotErased(database: Queryable): Promise<string[]> {
	const rows = await database.query<{ id: string }>("SELECT id FROM party WHERE erased_at IS NULL");
	return rows.map(({ id }) => id);
}

export async function itemById(database: Queryable, id: string): Promise<ItemRow | null> {
	const [row] = await database.query<Stored<ItemRow>>("SELECT * FROM item WHERE id = $1", [id]);
	return row === undefined ? null : opened(database, row, row.owner_id, itemPlace(id));
}

export async function orderById(database: Queryable, id: string): Promise<OrderRow | null> {
	const [row] = await database.query<Stored<OrderRow>>("SELECT * FROM repair_order WHERE id = $1", [id]);
	return row === undefined ? null : opened(database, row, row.owner_id, orderPlace(id));
}

/** Orders, newest first, after the one with the cursor's time and id. */
export async function listOrders(
	database: Queryable,
	limit: number,
	after: { readonly createdAt: string; readonly id: string } | null,
): Promise<OrderRow[]> {
	const rows = await database.query<Stored<OrderRow>>(
		`SELECT * FROM repair_order
		 WHERE $2::timestamptz IS NULL OR (created_at, id COLLATE "C") < ($2::timestamptz, $3 COLLATE "C")
		 ORDER BY created_at DESC, id COLLATE "C" DESC LIMIT $1`,
		[limit, after?.createdAt ?? null, after?.id ?? ""],
	);
	return rows.map((row) => opened(database, row, row.owner_id, orderPlace(row.id)));
}

type StoredConsignment = Stored<ConsignmentRow> & { readonly owner_id: string };

const CONSIGNMENTS = "SELECT c.*, o.owner_id FROM consignment c JOIN repair_order o ON o.id = c.order_id";

export async function consignmentById(database: Queryable, id: string): Promise<ConsignmentRow | null> {
	const [row] = await database.query<StoredConsignment>(`${CONSIGNMENTS} WHERE c.id = $1`, [id]);
	return row === undefined ? null : opened(database, row, row.owner_id, consignmentPlace(id));
}

export async function consignmentsOfOrder(database: Queryable, orderId: string): Promise<ConsignmentRow[]> {
	const rows = await database.query<StoredConsignment>(`${CONSIGNMENTS} WHERE c.order_id = $1 ORDER BY c.leg`, [
		orderId,
	]);
	return rows.map((row) => opened(database, row, row.owner_id, consignmentPlace(row.id)));
}

function opened<Row extends { readonly personal: Buffer }>(
	database: Queryable,
	row: Row,
	ownerId: string,
	place: string,
): Omit<Row, "personal"> & { readonly personal: unknown } {
	return { ...row, personal: database.vault.of(ownerId).open(place, row.personal) };
}
