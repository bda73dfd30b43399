/** The upload that a request names, for whoever may write what it is brought to. */
import type { Caller } from "../../access/caller.ts";
import type { ExhibitView, UploadView } from "../../contract/exhibits.ts";
import { deleteLostUpload, type UploadRow, uploadById, uploadSecrets } from "../../database/exhibit-uploads.ts";
import { recordById } from "../../database/records.ts";
import { hasIncoming } from "../../exhibits/incoming.ts";
import { fault } from "../../faults.ts";
import type { Deps } from "../deps.ts";
import { mustBeShop, mustWriteRecord } from "../may.ts";

/** @throws not-found; forbidden; upload-gone where its time is over, or the disk lost its beginning */
export async function findUpload(deps: Deps, caller: Caller, id: string): Promise<UploadRow> {
	const row = await uploadById(deps.database, id);
	if (row === null) throw fault("not-found");
	await mustWriteUpload(deps, caller, row);
	if (row.expires_at <= deps.now()) throw fault("upload-gone");
	// So it is after a restore: a backup holds the row, and only whole files.
	if (row.sha256 === null && row.offset_bytes > 0 && !(await hasIncoming(deps.exhibitFolder, id))) {
		if (await deleteLostUpload(deps.database, id)) throw fault("upload-gone");
		// It was brought to its place at this moment.
		return (await uploadById(deps.database, id)) ?? row;
	}
	return row;
}

/** Who may write the record; for a leg's recordings, the shop. */
export async function mustWriteUpload(
	deps: Deps,
	caller: Caller,
	{ record_id }: Pick<UploadRow, "record_id">,
): Promise<void> {
	if (record_id === null) return mustBeShop(caller);
	const record = await recordById(deps.database, record_id);
	if (record === null) throw fault("not-found");
	mustWriteRecord(caller, record);
}

/** How far an upload is, and what became of it. */
export async function readUpload(deps: Deps, caller: Caller, id: string): Promise<UploadView> {
	const row = await findUpload(deps, caller, id);
	const { fileName } = await uploadSecrets(deps.database, row);
	return {
		id,
		fileName,
		sizeBytes: row.size_bytes,
		offsetBytes: row.offset_bytes,
		expiresAt: row.expires_at.toISOString(),
		exhibit: exhibitOf(row, fileName),
		recordingId: row.recording_id,
	};
}

function exhibitOf(row: UploadRow, fileName: string): ExhibitView | null {
	if (row.finished_at === null || row.sha256 === null || row.media_type === null) return null;
	return { sha256: row.sha256, sizeBytes: row.size_bytes, mediaType: row.media_type, fileName };
}
