/** The legs of an order, each with who sends and who receives, by name. */
import type { OrderView } from "../../contract/orders.ts";
import type { Papers } from "./papers-page.tsx";

export function legsOf({ consignments, owner, repairer }: OrderView): Papers["legs"] {
	const nameOf = (id: string) => (id === owner.id ? owner.name : repairer.name);
	return consignments.map(({ leg, consignorId, consigneeId }) => ({
		leg,
		from: nameOf(consignorId),
		to: nameOf(consigneeId),
	}));
}
