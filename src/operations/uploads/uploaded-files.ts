/** What became of uploads that a form names. */
import type { Caller } from "../../access/caller.ts";
import type { ExhibitView } from "../../contract/exhibits.ts";
import { fault } from "../../faults.ts";
import type { Deps } from "../deps.ts";
import { findUpload, readUpload } from "./find-upload.ts";

/** The exhibit that an upload to this record became. @throws not-found where it is none of the record's, or not whole */
export async function uploadedExhibit(
	deps: Deps,
	caller: Caller,
	recordId: string,
	uploadId: string,
): Promise<ExhibitView> {
	const { record_id } = await findUpload(deps, caller, uploadId);
	const { exhibit } = await readUpload(deps, caller, uploadId);
	if (record_id !== recordId || exhibit === null) throw fault("not-found");
	return exhibit;
}

/** The recording that an upload to this leg became. @throws not-found */
export async function uploadedRecording(
	deps: Deps,
	caller: Caller,
	consignmentId: string,
	uploadId: string,
): Promise<string> {
	const { consignment_id, recording_id } = await findUpload(deps, caller, uploadId);
	if (consignment_id !== consignmentId || recording_id === null) throw fault("not-found");
	return recording_id;
}
