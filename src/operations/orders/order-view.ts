/** Rows of an order as the view that the API and the pages give. */
import type { ConsignmentView, OrderView, PartyView } from "../../contract/orders.ts";
import type { Queryable } from "../../database/connection.ts";
import {
	type ConsignmentRow,
	consignmentsOfOrder,
	type ItemRow,
	itemById,
	type OrderRow,
	orderById,
	type PartyRow,
	partyById,
} from "../../database/orders.ts";
import { ownClassNameOf } from "../../database/own-catalogue.ts";
import { readInLogOf } from "../../database/read-in.ts";
import { fault } from "../../faults.ts";
import { type FactsParts, factsOf, type ItemParts, itemOf, type TermsParts, termsOf } from "./personal-parts.ts";

/** The order with its parties, item and legs. @throws not-found */
export async function orderViewById(database: Queryable, orderId: string): Promise<OrderView> {
	const order = await orderById(database, orderId);
	if (order === null) throw fault("not-found");
	return orderViewOf(database, order);
}

/** The view of a row. */
export async function orderViewOf(database: Queryable, order: OrderRow): Promise<OrderView> {
	const [repairer, owner, row, consignments, readIn] = await Promise.all([
		partyById(database, order.repairer_id),
		partyById(database, order.owner_id),
		itemById(database, order.item_id),
		consignmentsOfOrder(database, order.id),
		readInLogOf(database, order.id),
	]);
	if (repairer === null || owner === null || row === null) throw new Error(`order ${order.id} lacks a part`);
	const item = itemOf(row as ItemParts & ItemRow);
	const ownClassName = item.ownClassId === undefined ? null : await ownClassNameOf(database, item.ownClassId);
	return {
		id: order.id,
		createdAt: order.created_at.toISOString(),
		contractKind: order.contract_kind,
		repairer: partyViewOf(repairer),
		owner: partyViewOf(owner),
		item: { ...item, id: row.id, ...(ownClassName === null ? {} : { ownClassName }) },
		terms: termsOf(order as TermsParts & OrderRow),
		consignments: consignments.map((consignment) => consignmentViewOf(consignment, order)),
		...(readIn === null
			? {}
			: {
					readIn: {
						origin: readIn.origin,
						keys: readIn.keys.map(({ publicKey }) => publicKey),
						treeSize: readIn.size,
						readInAt: readIn.readInAt.toISOString(),
						dossierSha256: readIn.dossierSha256,
					},
				}),
	};
}

/** The view of a leg; its direction follows from who consigns it. */
export function consignmentViewOf(row: ConsignmentRow, order: Pick<OrderRow, "owner_id">): ConsignmentView {
	return {
		id: row.id,
		orderId: row.order_id,
		leg: row.leg,
		direction: row.consignor_id === order.owner_id ? "to-repairer" : "to-owner",
		consignorId: row.consignor_id,
		consigneeId: row.consignee_id,
		facts: factsOf(row as FactsParts & ConsignmentRow),
		version: row.version,
	};
}

export function partyViewOf(row: PartyRow): PartyView {
	return {
		id: row.id,
		kind: row.kind,
		country: row.country,
		...(row.language === null ? {} : { language: row.language }),
		name: row.name,
		...(row.email === null ? {} : { email: row.email }),
		...(row.address === null ? {} : { address: row.address }),
		...(row.erased_at === null ? {} : { erasedAt: row.erased_at.toISOString() }),
	};
}
