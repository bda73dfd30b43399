/** For which party of an order a caller speaks: the shop for the repairer, a `settle` link for the party it was made for. */
import type { Caller } from "../../access/caller.ts";
import type { OrderRow } from "../../database/orders.ts";
import { fault } from "../../faults.ts";
import { mustReadOrder } from "../may.ts";

/** @throws forbidden for a caller that may read alone */
export function sideOf(caller: Caller, order: Pick<OrderRow, "id" | "owner_id" | "repairer_id">): string {
	mustReadOrder(caller, order.id);
	if (caller.kind === "account") return order.repairer_id;
	if (caller.kind !== "link" || caller.scope !== "settle" || caller.partyId === null || caller.expired)
		throw fault("forbidden");
	return caller.partyId;
}

/** The same, or null for a caller that may read alone. */
export function sideOrNull(caller: Caller, order: Pick<OrderRow, "id" | "owner_id" | "repairer_id">): string | null {
	mustReadOrder(caller, order.id);
	return caller.kind === "account" || (caller.kind === "link" && caller.scope === "settle" && caller.partyId !== null)
		? sideOf(caller, order)
		: null;
}
