/** Orders with what each waits for and has come to, from what stands of them in plain. */
import type { Caller } from "../../access/caller.ts";
import type { Queryable } from "../../database/connection.ts";
import { legMarks, type OrderMark, orderMarks, sealedMarks, stepMarks } from "../../database/order-marks.ts";
import type { Deps } from "../deps.ts";
import { mustBeShop } from "../may.ts";
import { type OrderAttention, orderAttention } from "./order-attention.ts";

export interface MarkedOrder {
	readonly mark: OrderMark;
	readonly attention: OrderAttention;
}

/** Of one order, for the shop; null where there is none. */
export async function readOrderAttention(deps: Deps, caller: Caller, orderId: string): Promise<OrderAttention | null> {
	mustBeShop(caller);
	return (await markedOrders(deps.database, orderId))[0]?.attention ?? null;
}

/** Newest first; all of them, or one. */
export async function markedOrders(database: Queryable, orderId: string | null): Promise<MarkedOrder[]> {
	const [orders, legs, sealed, steps] = await Promise.all([
		orderMarks(database, orderId),
		legMarks(database, orderId),
		sealedMarks(database, orderId),
		stepMarks(database, orderId),
	]);
	const [legsOf, sealedOf, stepsOf] = [byOrder(legs), byOrder(sealed), byOrder(steps)];
	return orders.map((mark) => ({
		mark,
		attention: orderAttention(mark, legsOf.get(mark.id) ?? [], sealedOf.get(mark.id) ?? [], stepsOf.get(mark.id) ?? []),
	}));
}

function byOrder<Mark extends { readonly orderId: string }>(marks: readonly Mark[]): ReadonlyMap<string, Mark[]> {
	const found = new Map<string, Mark[]>();
	for (const mark of marks) {
		const same = found.get(mark.orderId);
		if (same === undefined) found.set(mark.orderId, [mark]);
		else same.push(mark);
	}
	return found;
}
