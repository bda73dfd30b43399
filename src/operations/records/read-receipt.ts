/** The receipt about something sealed, made anew each time against the newest checkpoint. */
import type { Caller } from "../../access/caller.ts";
import { recordById } from "../../database/records.ts";
import { sealedOfKind } from "../../database/sealed.ts";
import { fault } from "../../faults.ts";
import type { Receipt } from "../../records/receipt.ts";
import type { Deps } from "../deps.ts";
import { orderLog } from "../log/order-log.ts";
import { mustReadOrder } from "../may.ts";

/** Kinds of entries that a receipt can be about. */
const SEALS: ReadonlySet<string> = new Set(["record-sealed", "position-sealed", "settlement-sealed"]);

/** The receipt about a sealed record. */
export async function readReceipt(deps: Deps, caller: Caller, recordId: string): Promise<Receipt> {
	const row = await recordById(deps.database, recordId);
	if (row === null) throw fault("not-found");
	mustReadOrder(caller, row.order_id);
	if (row.state !== "sealed") throw fault("not-sealed");
	return receiptAbout(deps, row.order_id, recordId);
}

/** The receipt about a position or a step of a settlement, sealed for this order. */
export async function readSettlingReceipt(
	deps: Deps,
	caller: Caller,
	orderId: string,
	subject: string,
): Promise<Receipt> {
	mustReadOrder(caller, orderId);
	const sealed = await Promise.all([
		sealedOfKind(deps.database, orderId, "position-sealed"),
		sealedOfKind(deps.database, orderId, "settlement-sealed"),
	]);
	if (!sealed.flat().some((entry) => entry.subject === subject)) throw fault("not-found");
	return receiptAbout(deps, orderId, subject);
}

/**
 * The receipt about what was sealed: every entry of its order, all shown to both parties, each with its proof in the newest
 * checkpoint's tree; the proof that this tree begins with the one signed when it was sealed; and for each entry the
 * first time stamp that covers it.
 */
async function receiptAbout(deps: Deps, orderId: string, about: string): Promise<Receipt> {
	const { entries, receipt } = await orderLog(deps.database, orderId);
	const sealedAt = entries.find((entry) => entry.subject === about && SEALS.has(entry.kind));
	if (sealedAt === undefined) throw new Error(`${about} is sealed and not in the log`);
	return receipt(about, [sealedAt.index + 1]);
}
