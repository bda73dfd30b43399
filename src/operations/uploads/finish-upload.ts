/**
 * Makes an exhibit of an upload whose bytes are all here. What the file is is noted before it gets its place, and its rows
 * come last, so that a crash at any moment leaves either an upload that can be finished or an exhibit that is whole.
 */
import type { Caller } from "../../access/caller.ts";
import type { Queryable } from "../../database/connection.ts";
import {
	deleteUpload,
	finishUpload as noteFinished,
	noteWhole,
	type UploadRow,
	uploadSecrets,
} from "../../database/exhibit-uploads.ts";
import { ownerOfOrder } from "../../database/orders.ts";
import { exhibitPlaceOf, insertExhibit, lockRecord, storedExhibit } from "../../database/records.ts";
import { insertRecording } from "../../database/transit-recordings.ts";
import {
	completeIncoming,
	hasIncoming,
	incomingPlace,
	placeIncoming,
	removeIncoming,
} from "../../exhibits/incoming.ts";
import { readSealed } from "../../exhibits/sealed-file.ts";
import { fullOr, hasExhibit, removeExhibit } from "../../exhibits/store.ts";
import { Fault, fault } from "../../faults.ts";
import { BEGINNING_BYTES } from "../../importers/recorder/recorder-preview.ts";
import type { Deps } from "../deps.ts";
import { typeReader } from "../exhibits/media-type.ts";
import { mustWriteRecord } from "../may.ts";
import { preparePictures } from "../pictures/prepare-picture.ts";
import { previewedFile } from "../transit-recordings/previewed-file.ts";

interface WholeFile {
	readonly sha256: string;
	readonly storedSha256: string;
	readonly crc32: number;
	readonly mediaType: string;
}

/**
 * The caller holds the upload's lock. An upload that is refused here is gone; the record stays as it was.
 * @throws unsupported-type; type-differs; already-sealed; discarded; bad-input where it is no recorder's table
 */
export async function finishUpload(deps: Deps, caller: Caller, row: UploadRow): Promise<void> {
	if (row.finished_at !== null) return;
	let whole: WholeFile | null = null;
	try {
		const { fileName, key } = await uploadSecrets(deps.database, row);
		whole = (await placedBefore(deps, row)) ?? (await complete(deps, row, fileName, Buffer.from(key, "base64")));
		const used = await keepRows(deps, caller, row, whole, fileName);
		if (used !== whole.storedSha256) await removeExhibit(deps.exhibitFolder, whole.storedSha256);
		await removeIncoming(deps.exhibitFolder, row.id);
		if (row.record_id !== null) readPicture(deps, row, whole, used);
	} catch (thrown) {
		const error = fullOr(thrown);
		// What was brought to its place is known to no row yet.
		const brought = whole === null ? row : { ...row, sha256: whole.sha256, stored_sha256: whole.storedSha256 };
		if (error instanceof Fault && error.status < 500) await dropUpload(deps, brought);
		throw error;
	}
}

/** Not waited for, so that the next photo can come; whoever asks for the picture before it is read waits then. */
function readPicture(
	deps: Deps,
	{ party_id, order_id, size_bytes }: UploadRow,
	{ sha256, mediaType }: WholeFile,
	storedSha256: string | null,
): void {
	const file = { sha256, party_id, order_id, size_bytes, stored_sha256: storedSha256, media_type: mediaType };
	preparePictures(deps, party_id, [file]).catch((error: Error) =>
		deps.log.warn({ error: error.message }, "a picture was not read yet"),
	);
}

/** Takes an upload away with all that there is of it. */
export async function dropUpload(deps: Deps, row: UploadRow): Promise<void> {
	await removeIncoming(deps.exhibitFolder, row.id);
	const stored = await storedOf(deps, row);
	if (row.finished_at === null && row.stored_sha256 !== null && stored !== row.stored_sha256)
		await removeExhibit(deps.exhibitFolder, row.stored_sha256);
	await deleteUpload(deps.database, row.id);
}

/** Under which name the party has this file already; null where it has not. */
async function storedOf(deps: Deps, row: Pick<UploadRow, "sha256" | "party_id">): Promise<string | null> {
	return row.sha256 === null ? null : storedExhibit(deps.database, row.sha256, row.party_id);
}

/** What an attempt that a crash ended had brought to its place. */
async function placedBefore(deps: Deps, row: UploadRow): Promise<WholeFile | null> {
	const { sha256, stored_sha256, crc32, media_type } = row;
	if (sha256 === null || stored_sha256 === null || crc32 === null || media_type === null) return null;
	const isThere =
		(await hasExhibit(deps.exhibitFolder, stored_sha256)) ||
		((await storedOf(deps, row)) !== null && !(await hasIncoming(deps.exhibitFolder, row.id)));
	return isThere ? { sha256, storedSha256: stored_sha256, crc32, mediaType: media_type } : null;
}

async function complete(deps: Deps, row: UploadRow, fileName: string, key: Buffer): Promise<WholeFile> {
	const file = { key, sizeBytes: row.size_bytes };
	const reader = typeReader();
	const party = deps.database.vault.of(row.party_id);
	const facts = await completeIncoming(
		deps.exhibitFolder,
		row.id,
		file,
		(bytes) => reader.take(bytes),
		(sha256) => party.sealBytes(exhibitPlaceOf(sha256), key),
	);
	const whole = { ...facts, mediaType: await reader.end(fileName) };
	if (row.consignment_id !== null) await mustBeRecording(deps, row, whole, key);
	await noteWhole(deps.database, row.id, whole);
	if ((await storedExhibit(deps.database, whole.sha256, row.party_id)) === null)
		await placeIncoming(deps.exhibitFolder, row.id, whole.storedSha256);
	return whole;
}

/** @throws unsupported-type where it is no text; bad-input where its beginning is no recorder's table */
async function mustBeRecording(deps: Deps, row: UploadRow, whole: WholeFile, key: Buffer): Promise<void> {
	if (whole.mediaType !== "text/plain") throw fault("unsupported-type");
	const file = { path: incomingPlace(deps.exhibitFolder, row.id), key, sizeBytes: row.size_bytes };
	const pieces: Buffer[] = [];
	for await (const piece of readSealed(file, 0, Math.min(row.size_bytes, BEGINNING_BYTES))) pieces.push(piece);
	previewedFile(Buffer.concat(pieces));
}

/** The exhibit's rows, and that the upload is done. Gives the name of the file that the party has. */
async function keepRows(
	deps: Deps,
	caller: Caller,
	row: UploadRow,
	whole: WholeFile,
	fileName: string,
): Promise<string | null> {
	const exhibit = {
		sha256: whole.sha256,
		party_id: row.party_id,
		stored_sha256: whole.storedSha256,
		size_bytes: row.size_bytes,
		media_type: whole.mediaType,
		crc32: whole.crc32,
		file_name: fileName,
		order_id: row.order_id,
	};
	return deps.database.transaction(async (transaction) => {
		await ownerOfOrder(transaction, row.order_id);
		let recordingId: string | null = null;
		if (row.record_id !== null) {
			await mustStillBeDraft(transaction, caller, row.record_id);
			await insertExhibit(transaction, { ...exhibit, record_id: row.record_id, broughtBy: row.brought_by });
		} else if (row.consignment_id !== null) {
			recordingId = deps.newId("trc");
			const { consignment_id, brought_by } = row;
			await insertRecording(transaction, { ...exhibit, id: recordingId, consignment_id, brought_by });
		}
		await noteFinished(transaction, row.id, recordingId);
		return storedExhibit(transaction, whole.sha256, row.party_id);
	});
}

async function mustStillBeDraft(transaction: Queryable, caller: Caller, recordId: string): Promise<void> {
	const record = await lockRecord(transaction, recordId);
	if (record === null) throw fault("not-found");
	mustWriteRecord(caller, record);
	if (record.state !== "draft") throw fault(record.state === "sealed" ? "already-sealed" : "discarded");
}
