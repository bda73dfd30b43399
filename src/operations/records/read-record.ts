/** Reading state records. */
import type { Caller } from "../../access/caller.ts";
import type { RecordView } from "../../contract/records.ts";
import { recordById } from "../../database/records.ts";
import { fault } from "../../faults.ts";
import type { Deps } from "../deps.ts";
import { mustReadOrder } from "../may.ts";
import { recordViewsOfOrder } from "./record-views.ts";

/**
 * One record. A draft is shown to the shop and to the link made for it; other callers of the order see it once it is
 * sealed.
 */
export async function readRecord(deps: Deps, caller: Caller, recordId: string): Promise<RecordView> {
	const row = await recordById(deps.database, recordId);
	if (row === null) throw fault("not-found");
	mustReadOrder(caller, row.order_id);
	const record = (await readRecords(deps, caller, row.order_id)).find((candidate) => candidate.id === recordId);
	if (record === undefined) throw fault("not-found");
	return record;
}

/** The records of an order that the caller may see. */
export async function readRecords(deps: Deps, caller: Caller, orderId: string): Promise<RecordView[]> {
	mustReadOrder(caller, orderId);
	const records = await recordViewsOfOrder(deps.database, orderId);
	return records.filter(
		(record) =>
			record.state === "sealed" ||
			caller.kind === "account" ||
			(caller.kind === "link" && caller.recordId === record.id),
	);
}
