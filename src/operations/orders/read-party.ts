/** One party of an order, for the shop or a link of an order that the party stands in. */
import type { Caller } from "../../access/caller.ts";
import type { PartyView } from "../../contract/orders.ts";
import { orderById, partyById } from "../../database/orders.ts";
import { fault } from "../../faults.ts";
import type { Deps } from "../deps.ts";
import { partyViewOf } from "./order-view.ts";

/** A party that is none of the link's order does not exist for it. */
export async function readParty(deps: Deps, caller: Caller, partyId: string): Promise<PartyView> {
	if (caller.kind === "nobody") throw fault("not-signed-in");
	if (caller.kind === "link") {
		const order = await orderById(deps.database, caller.orderId);
		if (order === null || ![order.owner_id, order.repairer_id].includes(partyId)) throw fault("not-found");
	}
	const party = await partyById(deps.database, partyId);
	if (party === null) throw fault("not-found");
	return partyViewOf(party);
}
