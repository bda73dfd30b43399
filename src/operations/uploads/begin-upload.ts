/** Begins an upload: who may, whether there is room, under which key. */
import type { Caller } from "../../access/caller.ts";
import type { UploadMetadata } from "../../contract/exhibits.ts";
import { insertUpload } from "../../database/exhibit-uploads.ts";
import { consignmentById, ownerOfOrder } from "../../database/orders.ts";
import { recordById } from "../../database/records.ts";
import { FILE_KEY_BYTES } from "../../exhibits/segments.ts";
import { fault, invalid } from "../../faults.ts";
import type { Deps } from "../deps.ts";
import { needRoom } from "../exhibits/room.ts";
import { callerId, mustBeShop, mustWriteRecord } from "../may.ts";

/** The largest file that is taken. Source: our choice, some hours of film or weeks of a recorder. */
export const UPLOAD_MOST_BYTES = 8 * 1024 ** 3;
/** For how long an upload may be gone on with, and a finished one be asked for. Source: our choice. */
export const UPLOAD_LASTS_MS = 7 * 24 * 3_600_000;

/** @throws not-found; forbidden; already-sealed; too-large; disk-full; quota-full; bad-input where it is empty */
export async function beginUpload(
	deps: Deps,
	caller: Caller,
	id: string,
	sizeBytes: number,
	{ filename, record, consignment }: UploadMetadata,
): Promise<void> {
	const orderId =
		record === undefined ? await orderOfLeg(deps, caller, consignment ?? "") : await orderOfDraft(deps, caller, record);
	if (sizeBytes === 0) throw invalid([{ path: "/file", code: "empty-file" }]);
	if (!(sizeBytes <= UPLOAD_MOST_BYTES)) throw fault("too-large");
	await deps.database.transaction(async (transaction) => {
		const partyId = await ownerOfOrder(transaction, orderId);
		await needRoom(deps, transaction, orderId, sizeBytes);
		await insertUpload(transaction, {
			id,
			party_id: partyId,
			order_id: orderId,
			record_id: record ?? null,
			consignment_id: consignment ?? null,
			size_bytes: sizeBytes,
			brought_by: callerId(caller),
			expires_at: new Date(deps.now().getTime() + UPLOAD_LASTS_MS),
			fileName: filename,
			key: deps.randomBytes(FILE_KEY_BYTES).toString("base64"),
		});
	});
}

async function orderOfDraft(deps: Deps, caller: Caller, recordId: string): Promise<string> {
	const record = await recordById(deps.database, recordId);
	if (record === null) throw fault("not-found");
	mustWriteRecord(caller, record);
	if (record.state !== "draft") throw fault("already-sealed");
	return record.order_id;
}

async function orderOfLeg(deps: Deps, caller: Caller, consignmentId: string): Promise<string> {
	mustBeShop(caller);
	const consignment = await consignmentById(deps.database, consignmentId);
	if (consignment === null) throw fault("not-found");
	return consignment.order_id;
}
