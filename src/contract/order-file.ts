/** `data/order.json` of a dossier: the order as it is noted, without addresses. */
import { z } from "zod";
import { orderView, partyView } from "./orders.ts";

export const ORDER_FILE_FORMAT = "handover-risk/order/1";

const party = partyView.omit({ language: true, email: true, address: true });
export const orderFileContent = z.strictObject({
	$format: z.literal(ORDER_FILE_FORMAT),
	order: orderView.omit({ readIn: true }).extend({ owner: party, repairer: party }),
});
export type OrderFileContent = z.infer<typeof orderFileContent>;
