/** Reading orders. */
import type { Caller } from "../../access/caller.ts";
import type { OrderView } from "../../contract/orders.ts";
import { listOrders } from "../../database/orders.ts";
import type { Deps } from "../deps.ts";
import { mustBeShop, mustReadOrder } from "../may.ts";
import { orderViewById, orderViewOf } from "./order-view.ts";

/** One order, for the shop or a link of that order. */
export async function readOrder(deps: Deps, caller: Caller, orderId: string): Promise<OrderView> {
	mustReadOrder(caller, orderId);
	return orderViewById(deps.database, orderId);
}

export interface OrderCursor {
	readonly createdAt: string;
	readonly id: string;
}

/** A page of the shop's orders, newest first, and the cursor of the next page. */
export async function readOrders(
	deps: Deps,
	caller: Caller,
	limit: number,
	after: OrderCursor | null,
): Promise<{ readonly orders: readonly OrderView[]; readonly next: OrderCursor | null }> {
	mustBeShop(caller);
	const rows = await listOrders(deps.database, limit + 1, after);
	const shown = rows.slice(0, limit);
	const last = shown.at(-1);
	return {
		orders: await Promise.all(shown.map((row) => orderViewOf(deps.database, row))),
		next: rows.length > limit && last !== undefined ? { createdAt: last.created_at.toISOString(), id: last.id } : null,
	};
}
