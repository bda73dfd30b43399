/** What is known of an arrival record's leg beside it: when it was delivered, and when the item was seen before it left. */
import type { ConsignmentFacts } from "../../contract/orders.ts";
import type { Queryable } from "../../database/connection.ts";
import { consignmentById } from "../../database/orders.ts";
import type { NotedTimes } from "../../records/claimed-times.ts";
import type { RecordHeader } from "../../records/record-statement.ts";
import { sealedRecordsOfOrder } from "./record-views.ts";

/** Empty for a record of another stage. */
export async function notedTimes(
	database: Queryable,
	{ stage, consignmentId, orderId }: Pick<RecordHeader, "stage" | "consignmentId" | "orderId">,
): Promise<NotedTimes> {
	if (stage !== "arrival" || consignmentId === null) return {};
	const leg = await consignmentById(database, consignmentId);
	const sealed = await sealedRecordsOfOrder(database, orderId);
	const departure = sealed.findLast(
		({ view }) => view.consignmentId === consignmentId && view.stage === "departure" && view.supersededBy === null,
	);
	const facts = leg?.plain as Partial<ConsignmentFacts> | undefined;
	return { deliveredAt: facts?.deliveredAt, departureSeenAt: departure?.statement.observed.at };
}
