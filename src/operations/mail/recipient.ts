/** Where a mail goes. */
import { sendableAddress } from "../../contract/mail-address.ts";
import type { OrderView } from "../../contract/orders.ts";

/** To the address that was typed for it, else to the party's own. Null where there is none. */
export function recipientOf(order: OrderView, partyId: string, typed: string | undefined): string | null {
	const party = partyId === order.repairer.id ? order.repairer : order.owner;
	const address = typed ?? party.email;
	return address === undefined ? null : sendableAddress(address);
}
