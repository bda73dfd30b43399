/** Where a link leads: its record, where both sides settle, or the order's comparison. */
import type { LinkView } from "../contract/access.ts";

/** Also where its holder's way back leads. */
export function placeOf(link: Pick<LinkView, "scope" | "orderId" | "recordId">): string {
	if (link.scope === "settle") return `/orders/${link.orderId}/positions`;
	return link.recordId === null ? `/orders/${link.orderId}/comparison` : `/guided/${link.recordId}`;
}
