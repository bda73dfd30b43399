/** Where a mail goes, and in which language it is written. */
import { sendableAddress } from "../../contract/mail-address.ts";
import type { OrderView } from "../../contract/orders.ts";
import type { Language } from "../../texts/language.ts";

/**
 * The language of a mail: its reader's, as far as one was said. A reading link is for someone of whom nothing is known.
 */
export function languageFor(order: OrderView, partyId: string, isToStranger = false): Language {
	if (isToStranger) return "en";
	return (partyId === order.repairer.id ? order.repairer : order.owner).language ?? "en";
}

/** To the address that was typed for it, else to the party's own. Null where there is none. */
export function recipientOf(order: OrderView, partyId: string, typed: string | undefined): string | null {
	const party = partyId === order.repairer.id ? order.repairer : order.owner;
	const address = typed ?? party.email;
	return address === undefined ? null : sendableAddress(address);
}
