/** Opens the draft of a state record. Opening is an entry of the log, so nobody can keep three and seal the best unseen. */
import type { Caller } from "../../access/caller.ts";
import type { RecordInput, RecordView } from "../../contract/records.ts";
import type { Queryable } from "../../database/connection.ts";
import { consignmentById, orderById } from "../../database/orders.ts";
import { ownCatalogueAt, ownCatalogueVersionOfOrder } from "../../database/own-catalogue.ts";
import { insertRecord, recordById } from "../../database/records.ts";
import { fault, invalid } from "../../faults.ts";
import { createOnce } from "../create-once.ts";
import type { Deps } from "../deps.ts";
import { appendToLog } from "../log/append-to-log.ts";
import { callerId, mustBeShop } from "../may.ts";
import { refuseReadIn } from "../read-in/refuse-read-in.ts";
import { notedTemperatures } from "./noted-temperatures.ts";
import { readRecord } from "./read-record.ts";

/** Where a record belongs: a leg of the journey, or the order itself for a bench record. */
export type RecordPlace = { readonly consignmentId: string } | { readonly orderId: string };

export async function openRecord(
	deps: Deps,
	caller: Caller,
	place: RecordPlace,
	input: RecordInput,
	idempotencyKey: string | null,
): Promise<RecordView> {
	mustBeShop(caller);
	const { orderId, consignmentId, holderId } = await holderAt(deps, place, input);
	await refuseReadIn(deps.database, orderId);
	if (input.amends !== undefined) {
		const amended = await recordById(deps.database, input.amends);
		if (amended === null || amended.order_id !== orderId || amended.state !== "sealed") {
			throw invalid([{ path: "/amends", code: "unknown-id" }]);
		}
		if (amended.stage !== input.stage) throw invalid([{ path: "/amends", code: "other-stage" }]);
	}
	const id = await createOnce(deps, caller, idempotencyKey, { place, ...input }, async (transaction) => {
		const recordId = deps.newId("rec");
		await insertRecord(transaction, {
			id: recordId,
			order_id: orderId,
			consignment_id: consignmentId,
			stage: input.stage,
			depth: input.depth ?? "short",
			provenance: input.provenance ?? "recorded-by-holder",
			holder_id: holderId,
			amends: input.amends ?? null,
			content: notedTemperatures({}, input.content ?? {}, deps.now()),
			opened_by: callerId(caller),
			own_catalogue_version: await ownVersionFor(transaction, orderId),
		});
		await appendToLog(deps, transaction, {
			kind: "record-opened",
			subject: recordId,
			byId: callerId(caller),
			statementBytes: null,
		});
		return recordId;
	});
	return readRecord(deps, caller, id);
}

/** Records of an order go by one version of the shop's own checks, so that both ends are asked the same. */
async function ownVersionFor(transaction: Queryable, orderId: string): Promise<number | null> {
	const begun = await ownCatalogueVersionOfOrder(transaction, orderId);
	return begun ?? (await ownCatalogueAt(transaction, null))?.version ?? null;
}

/** Who holds the item: the consignor before a leg, the consignee after it, the repairer on the bench. */
async function holderAt(deps: Deps, place: RecordPlace, input: RecordInput) {
	if ("orderId" in place) {
		if (input.stage !== "bench") throw invalid([{ path: "/stage", code: "needs-consignment" }]);
		const order = await orderById(deps.database, place.orderId);
		if (order === null) throw fault("not-found");
		return { orderId: order.id, consignmentId: null, holderId: order.repairer_id };
	}
	if (input.stage === "bench") throw invalid([{ path: "/stage", code: "needs-order" }]);
	const consignment = await consignmentById(deps.database, place.consignmentId);
	if (consignment === null) throw fault("not-found");
	return {
		orderId: consignment.order_id,
		consignmentId: consignment.id,
		holderId: input.stage === "departure" ? consignment.consignor_id : consignment.consignee_id,
	};
}
