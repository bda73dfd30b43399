/** The receipt about a sealed record, made anew each time against the newest checkpoint. */
import type { Caller } from "../../access/caller.ts";
import { recordById } from "../../database/records.ts";
import { fault } from "../../faults.ts";
import type { Receipt } from "../../records/receipt.ts";
import type { Deps } from "../deps.ts";
import { orderLog } from "../log/order-log.ts";
import { mustReadOrder } from "../may.ts";

/**
 * The receipt about a record: every entry of its order, all shown to both parties, each with its proof in the newest
 * checkpoint's tree; the proof that this tree begins with the one signed when the record was sealed; and for each entry the
 * first time stamp that covers it.
 */
export async function readReceipt(deps: Deps, caller: Caller, recordId: string): Promise<Receipt> {
	const row = await recordById(deps.database, recordId);
	if (row === null) throw fault("not-found");
	mustReadOrder(caller, row.order_id);
	if (row.state !== "sealed") throw fault("not-sealed");
	const { entries, receipt } = await orderLog(deps.database, row.order_id);
	const sealedAt = entries.find((entry) => entry.subject === recordId && entry.kind === "record-sealed");
	if (sealedAt === undefined) throw new Error(`record ${recordId} is sealed and not in the log`);
	return receipt(recordId, [sealedAt.index + 1]);
}
