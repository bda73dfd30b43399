/** Bringing a file to a record, and fetching it. */
import type { Caller } from "../../access/caller.ts";
import type { ExhibitView } from "../../contract/exhibits.ts";
import { ownerOfOrder } from "../../database/orders.ts";
import { type PictureUse, pictureUsesOfFile } from "../../database/pictures.ts";
import { type ExhibitRow, exhibitsOfRecord, insertExhibit, recordById } from "../../database/records.ts";
import { fault, invalid } from "../../faults.ts";
import type { Deps } from "../deps.ts";
import { callerId, mustReadOrder, mustWriteRecord } from "../may.ts";
import { type FileContent, openAsCaller } from "../pictures/exhibit-file-views.ts";
import { preparePictures } from "../pictures/prepare-picture.ts";
import { mediaTypeOf } from "./media-type.ts";
import { needRoom } from "./room.ts";
import { storeContent } from "./stored-content.ts";

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
	const row = {
		...(await storeContent(deps, partyId, file.bytes)),
		party_id: partyId,
		size_bytes: file.bytes.length,
		media_type: mediaType,
		file_name: file.fileName,
		record_id: record.id,
		order_id: record.order_id,
	};
	await deps.database.transaction((transaction) => insertExhibit(transaction, { ...row, broughtBy: callerId(caller) }));
	await preparePictures(deps, partyId, [row]);
	return { sha256: row.sha256, sizeBytes: file.bytes.length, mediaType, fileName: file.fileName };
}

/** The files brought to a record. */
export async function listExhibits(deps: Deps, caller: Caller, recordId: string): Promise<ExhibitView[]> {
	const record = await recordById(deps.database, recordId);
	if (record === null) throw fault("not-found");
	// What was brought to a discarded draft is as little for others as the draft itself.
	if (record.state === "sealed") mustReadOrder(caller, record.order_id);
	else mustWriteRecord(caller, record);
	return (await exhibitsOfRecord(deps.database, recordId)).map(exhibitViewOf);
}

/**
 * A file, for whoever may see a record that it was brought to: the original, or the copy that others get. A browser opens
 * only pictures that we wrote ourselves.
 */
export async function openExhibit(
	deps: Deps,
	caller: Caller,
	sha256: string,
): Promise<FileContent & { readonly inline: boolean }> {
	const seen = (await pictureUsesOfFile(deps.database, sha256)).filter((use) => maySee(caller, use));
	if (seen.length === 0) throw fault("not-found");
	const file = await openAsCaller(deps, caller, seen);
	return { ...file, inline: file.sha256 !== sha256 };
}

/** The same with all its bytes, for files that are known to be small. */
export async function fetchExhibit(
	deps: Deps,
	caller: Caller,
	sha256: string,
): Promise<ExhibitView & { readonly bytes: Buffer; readonly inline: boolean }> {
	const { bytes, ...file } = await openExhibit(deps, caller, sha256);
	const pieces: Uint8Array[] = [];
	for await (const piece of bytes(0, file.sizeBytes)) pieces.push(piece);
	return { ...file, bytes: Buffer.concat(pieces) };
}

function maySee(caller: Caller, use: PictureUse): boolean {
	if (caller.kind === "account") return true;
	if (caller.kind === "nobody" || caller.orderId !== use.order_id) return false;
	return caller.recordId === use.record_id || use.record_state === "sealed";
}

function exhibitViewOf(row: ExhibitRow): ExhibitView {
	return { sha256: row.sha256, sizeBytes: row.size_bytes, mediaType: row.media_type, fileName: row.file_name };
}
