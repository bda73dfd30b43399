/** Which order a sealed position or a step of a settlement is about. What it says stands in the log. */
import type { Queryable } from "./connection.ts";

interface OfOrder {
	readonly id: string;
	readonly orderId: string;
}

export async function insertPosition(transaction: Queryable, { id, orderId }: OfOrder): Promise<void> {
	await transaction.query("INSERT INTO stated_position (id, order_id) VALUES ($1, $2)", [id, orderId]);
}

export async function insertSettlementStep(transaction: Queryable, { id, orderId }: OfOrder): Promise<void> {
	await transaction.query("INSERT INTO settlement_step (id, order_id) VALUES ($1, $2)", [id, orderId]);
}

/** Holds the order until the transaction ends, so that two steps taken at once see each other. */
export async function lockOrder(transaction: Queryable, orderId: string): Promise<void> {
	await transaction.query("SELECT id FROM repair_order WHERE id = $1 FOR UPDATE", [orderId]);
}
