/** The order as it is noted, `handover-risk/order/1`: what a service needs to read the dossier in. It is not sealed. */

import { ORDER_FILE_FORMAT } from "../../contract/order-file.ts";
import type { OrderView, PartyView } from "../../contract/orders.ts";
import { canonicalBytes, type JsonValue } from "../../records/canonical.ts";

/** Without how the parties are written to: who hands a dossier on decides about addresses. */
export function orderFile({ readIn: _, owner, repairer, ...order }: OrderView): Buffer {
	return canonicalBytes({
		$format: ORDER_FILE_FORMAT,
		order: { ...order, owner: named(owner), repairer: named(repairer) },
	} as unknown as JsonValue);
}

function named({ language: _, email: __, address: ___, ...party }: PartyView): PartyView {
	return party;
}
