/** Bringing a file to a record, and fetching it. */
import type { Caller } from "../../access/caller.ts";
import type { ExhibitView } from "../../contract/exhibits.ts";
import { ownerOfOrder } from "../../database/orders.ts";
import { type ExhibitRow, exhibitsOfRecord, insertExhibit, recordById, usesOfExhibit } from "../../database/records.ts";
import { fault, invalid } from "../../faults.ts";
import type { Deps } from "../deps.ts";
import { callerId, mustReadOrder, mustWriteRecord } from "../may.ts";
import { mediaTypeOf, SHOWN_INLINE } from "./media-type.ts";
import { needRoom } from "./room.ts";
import { contentBytes, storeContent, wholeContent } from "./stored-content.ts";

/** The largest file that is taken in one request; larger ones come by upload. Source: the contract page. */
const EXHIBIT_MOST_BYTES = 20 * 1024 * 1024;

/**
 * Stores a file for a record that is still a draft. The bytes are on disk before the row is, so an acknowledged
 * exhibit is never half there.
 */
export async function bringExhibit(
	deps: Deps,
	caller: Caller,
	recordId: string,
	file: { readonly fileName: string; readonly bytes: Uint8Array },
): Promise<ExhibitView> {
	const record = await recordById(deps.database, recordId);
	if (record === null) throw fault("not-found");
	mustWriteRecord(caller, record);
	if (record.state !== "draft") throw fault("already-sealed");
	if (file.bytes.length > EXHIBIT_MOST_BYTES) throw fault("too-large");
	if (file.bytes.length === 0) throw invalid([{ path: "/file", code: "empty-file" }]);
	const mediaType = await mediaTypeOf(file.bytes, file.fileName);
	const partyId = await ownerOfOrder(deps.database, record.order_id);
	await deps.database.transaction((transaction) => needRoom(deps, transaction, record.order_id, file.bytes.length));
	const stored = await storeContent(deps, partyId, file.bytes);
	await deps.database.transaction((transaction) =>
		insertExhibit(transaction, {
			...stored,
			party_id: partyId,
			size_bytes: file.bytes.length,
			media_type: mediaType,
			file_name: file.fileName,
			record_id: record.id,
			order_id: record.order_id,
			broughtBy: callerId(caller),
		}),
	);
	return { sha256: stored.sha256, sizeBytes: file.bytes.length, mediaType, fileName: file.fileName };
}

/** The files brought to a record. */
export async function listExhibits(deps: Deps, caller: Caller, recordId: string): Promise<ExhibitView[]> {
	const record = await recordById(deps.database, recordId);
	if (record === null) throw fault("not-found");
	if (record.state === "draft") mustWriteRecord(caller, record);
	else mustReadOrder(caller, record.order_id);
	return (await exhibitsOfRecord(deps.database, recordId)).map(exhibitViewOf);
}

/** A file whose bytes are read while they are sent. */
export interface OpenedExhibit extends ExhibitView {
	readonly inline: boolean;
	/** Its bytes from `start` up to `end`, which is left out. */
	readonly bytes: (start: number, end: number) => AsyncGenerator<Buffer>;
}

/** A file, for whoever may see a record that it was brought to. */
export async function openExhibit(deps: Deps, caller: Caller, sha256: string): Promise<OpenedExhibit> {
	const use = await visibleUse(deps, caller, sha256);
	return {
		...exhibitViewOf(use),
		inline: SHOWN_INLINE.has(use.media_type),
		bytes: (start, end) => contentBytes(deps, use, start, end),
	};
}

/** The same with all its bytes, for files that are known to be small. */
export async function fetchExhibit(
	deps: Deps,
	caller: Caller,
	sha256: string,
): Promise<ExhibitView & { readonly bytes: Buffer; readonly inline: boolean }> {
	const use = await visibleUse(deps, caller, sha256);
	return { ...exhibitViewOf(use), bytes: await wholeContent(deps, use), inline: SHOWN_INLINE.has(use.media_type) };
}

async function visibleUse(deps: Deps, caller: Caller, sha256: string): Promise<ExhibitRow> {
	for (const use of await usesOfExhibit(deps.database, sha256)) {
		if (!(await maySee(deps, caller, use))) continue;
		if (use.stored_sha256 === null) throw fault("erased");
		return use;
	}
	throw fault("not-found");
}

async function maySee(deps: Deps, caller: Caller, use: ExhibitRow): Promise<boolean> {
	if (caller.kind === "account") return true;
	if (caller.kind === "nobody" || caller.orderId !== use.order_id) return false;
	if (caller.recordId === use.record_id) return true;
	return (await recordById(deps.database, use.record_id))?.state === "sealed";
}

function exhibitViewOf(row: ExhibitRow): ExhibitView {
	return { sha256: row.sha256, sizeBytes: row.size_bytes, mediaType: row.media_type, fileName: row.file_name };
}
