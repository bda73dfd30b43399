/** The code that a person writes beside the board: given out for a record, and looked up again from a photo. */
import type { Caller } from "../../access/caller.ts";
import type { PhotoCodeView } from "../../contract/pictures.ts";
import { orderById } from "../../database/orders.ts";
import {
	insertPhotoCode,
	type PhotoCodeRow,
	photoCodesOfOrder,
	shownCode,
	timesOfCheckpoints,
} from "../../database/photo-codes.ts";
import { recordById } from "../../database/records.ts";
import { checkpointsOf, newestCheckpoint } from "../../database/tree.ts";
import { fault, invalid } from "../../faults.ts";
import { rootOf } from "../../records/log/checkpoint.ts";
import { photoCode, readPhotoCode } from "../../records/photo-code.ts";
import type { Deps } from "../deps.ts";
import { mustReadOrder, mustWriteRecord } from "../may.ts";

/** For how long a record keeps its code, so that one paper does for all its photos. Our choice. */
const KEPT_H = 12;

/** The code for a draft's photos, from the newest checkpoint; the same again for some hours. @throws not-found; already-sealed */
export async function givePhotoCode(deps: Deps, caller: Caller, recordId: string): Promise<PhotoCodeView> {
	const record = await recordById(deps.database, recordId);
	if (record === null) throw fault("not-found");
	mustWriteRecord(caller, record);
	if (record.state !== "draft") throw fault("already-sealed");
	const shownAt = deps.now();
	const kept = await shownCode(deps.database, recordId, new Date(shownAt.getTime() - KEPT_H * 3_600_000));
	const row = kept ?? (await newCode(deps, record, shownAt));
	if (kept === null) await insertPhotoCode(deps.database, row);
	const [view] = await viewsOf(deps, [row]);
	if (view === undefined) throw new Error(`the log lacks its checkpoint of ${row.tree_size} entries`);
	return view;
}

async function newCode(
	deps: Deps,
	record: { readonly id: string; readonly order_id: string; readonly holder_id: string },
	shownAt: Date,
): Promise<PhotoCodeRow> {
	const [order, checkpoint] = await Promise.all([
		orderById(deps.database, record.order_id),
		newestCheckpoint(deps.database),
	]);
	if (order === null || checkpoint === null)
		throw new Error(`record ${record.id} lacks its order, or the log is empty`);
	const otherPartyId = record.holder_id === order.owner_id ? order.repairer_id : order.owner_id;
	const root = rootOf(checkpoint.note);
	return {
		record_id: record.id,
		tree_size: checkpoint.size,
		code: photoCode({ treeSize: checkpoint.size, root, recordId: record.id, otherPartyId }),
		other_party_id: otherPartyId,
		shown_at: shownAt,
	};
}

/** The checkpoints that a code seen in a photo belongs to, in this order; none where it was never shown. @throws bad-input where it is no code */
export async function findPhotoCode(
	deps: Deps,
	caller: Caller,
	orderId: string,
	typed: string,
): Promise<PhotoCodeView[]> {
	mustReadOrder(caller, orderId);
	if ((await orderById(deps.database, orderId)) === null) throw fault("not-found");
	const code = readPhotoCode(typed);
	if (code === null) throw invalid([{ path: "/code", code: "not-a-photo-code" }]);
	return viewsOf(deps, await photoCodesOfOrder(deps.database, orderId, code));
}

/** Each recomputed from the log: a row alone is believed nothing. */
async function viewsOf(deps: Deps, rows: readonly PhotoCodeRow[]): Promise<PhotoCodeView[]> {
	const sizes = rows.map(({ tree_size }) => tree_size);
	const [checkpoints, times] = await Promise.all([
		checkpointsOf(deps.database, sizes),
		timesOfCheckpoints(deps.database, sizes),
	]);
	return rows.flatMap((row) => {
		const checkpoint = checkpoints.find(({ size }) => size === row.tree_size);
		const time = times.get(row.tree_size);
		if (checkpoint === undefined || time === undefined) return [];
		const parts = {
			treeSize: row.tree_size,
			root: rootOf(checkpoint.note),
			recordId: row.record_id,
			otherPartyId: row.other_party_id,
		};
		if (photoCode(parts) !== row.code) return [];
		return [{ code: row.code, ...parts, notBefore: time.toISOString(), shownAt: row.shown_at.toISOString() }];
	});
}
