/** An order with its records on the custody line, as pages lay it out. */
import type { Caller } from "../../access/caller.ts";
import type { CustodyLine } from "../../calculations/comparison/types.ts";
import type { OrderView } from "../../contract/orders.ts";
import type { RecordView } from "../../contract/records.ts";
import { lineOf } from "../comparison/compare-consignment.ts";
import type { Deps } from "../deps.ts";
import { readRecords } from "../records/read-record.ts";
import { type SealedRecord, sealedRecordsOfOrder } from "../records/record-views.ts";
import { readOrder } from "./read-orders.ts";

export interface OrderLine {
	readonly order: OrderView;
	/** Sealed records in observed order, those that were amended included. */
	readonly records: readonly SealedRecord[];
	readonly drafts: readonly RecordView[];
	/** Made from the records that no later one amends. */
	readonly line: CustodyLine;
}

export async function readOrderLine(deps: Deps, caller: Caller, orderId: string): Promise<OrderLine> {
	const [order, views, records] = await Promise.all([
		readOrder(deps, caller, orderId),
		readRecords(deps, caller, orderId),
		sealedRecordsOfOrder(deps.database, orderId),
	]);
	const valid = records.filter((record) => record.view.supersededBy === null);
	return {
		order,
		records,
		drafts: views.filter((view) => view.state === "draft"),
		line: lineOf(order, valid),
	};
}
