/** The legs of an order's journey: adding one, and noting what becomes known of it. */
import type { Caller } from "../../access/caller.ts";
import type { ConsignmentFacts, ConsignmentInput, ConsignmentView } from "../../contract/orders.ts";
import { consignmentById, insertConsignment, orderById, updateConsignment } from "../../database/orders.ts";
import { fault, invalid } from "../../faults.ts";
import { createOnce } from "../create-once.ts";
import type { Deps } from "../deps.ts";
import { mustBeShop, mustReadOrder } from "../may.ts";
import { refuseReadIn } from "../read-in/refuse-read-in.ts";
import { impossibleTimes } from "./impossible-times.ts";
import { consignmentViewOf } from "./order-view.ts";
import { partsOfFacts } from "./personal-parts.ts";

/** Adds the next leg. */
export async function addConsignment(
	deps: Deps,
	caller: Caller,
	orderId: string,
	input: ConsignmentInput,
	idempotencyKey: string | null,
): Promise<ConsignmentView> {
	mustBeShop(caller);
	refuseImpossibleTimes(input.facts, "/facts", deps.now());
	const order = await orderById(deps.database, orderId);
	if (order === null) throw fault("not-found");
	await refuseReadIn(deps.database, orderId);
	const toRepairer = input.direction === "to-repairer";
	const id = await createOnce(deps, caller, idempotencyKey, { orderId, ...input }, async (transaction) => {
		const consignmentId = deps.newId("con");
		await insertConsignment(transaction, {
			id: consignmentId,
			order_id: orderId,
			consignor_id: toRepairer ? order.owner_id : order.repairer_id,
			consignee_id: toRepairer ? order.repairer_id : order.owner_id,
			...partsOfFacts(input.facts),
		});
		return consignmentId;
	});
	return readConsignment(deps, caller, id);
}

/** One leg. */
export async function readConsignment(deps: Deps, caller: Caller, id: string): Promise<ConsignmentView> {
	const consignment = await consignmentById(deps.database, id);
	if (consignment === null) throw fault("not-found");
	mustReadOrder(caller, consignment.order_id);
	const order = await orderById(deps.database, consignment.order_id);
	if (order === null) throw new Error(`consignment ${id} has no order`);
	return consignmentViewOf(consignment, order);
}

/** Replaces the facts of a leg. @throws bad-input for times that cannot be; version-stale where someone else changed it. */
export async function changeConsignment(
	deps: Deps,
	caller: Caller,
	id: string,
	version: number,
	facts: ConsignmentFacts,
): Promise<ConsignmentView> {
	mustBeShop(caller);
	const consignment = await consignmentById(deps.database, id);
	if (consignment === null) throw fault("not-found");
	refuseImpossibleTimes(facts, "", deps.now());
	const changed = { id, order_id: consignment.order_id, version, ...partsOfFacts(facts) };
	const isNewest = await deps.database.transaction((transaction) => updateConsignment(transaction, changed));
	if (!isNewest) throw fault("version-stale");
	return readConsignment(deps, caller, id);
}

function refuseImpossibleTimes(facts: ConsignmentFacts, place: string, now: Date): void {
	const found = impossibleTimes(facts, now);
	if (found.length > 0) throw invalid(found.map(({ path, code }) => ({ path: place + path, code })));
}
