/** Who may do what. Routes say which kinds of caller may come in; here stands which order or record they may touch. */
import type { Caller } from "../access/caller.ts";
import { fault } from "../faults.ts";

/** The id under which an act of this caller is logged. */
export function callerId(caller: Caller): string {
	if (caller.kind === "account") return caller.accountId;
	if (caller.kind === "link") return caller.linkId;
	throw fault("not-signed-in");
}

/** Only an account of the shop. */
export function mustBeShop(caller: Caller): void {
	if (caller.kind !== "account") throw fault(caller.kind === "nobody" ? "not-signed-in" : "forbidden");
}

/** The shop, or a link made for this order. An order that a link is not for does not exist for it. */
export function mustReadOrder(caller: Caller, orderId: string): void {
	if (caller.kind === "account") return;
	if (caller.kind === "nobody") throw fault("not-signed-in");
	if (caller.orderId !== orderId) throw fault("not-found");
}

/** The shop, or the link made for this very record. */
export function mustWriteRecord(caller: Caller, record: { readonly id: string; readonly order_id: string }): void {
	mustReadOrder(caller, record.order_id);
	if (caller.kind === "account") return;
	if (caller.kind === "link" && caller.scope === "record" && caller.recordId === record.id) return;
	throw fault("forbidden");
}
