/** Uploads that a form names in the place of files. */
import type { Caller } from "../../access/caller.ts";
import type { Deps } from "../../operations/deps.ts";
import { uploadedExhibit } from "../../operations/uploads/uploaded-files.ts";
import { uploadedName } from "../components/uploading-field.tsx";
import type { Form } from "./field.ts";

/** Ids of the uploads of a control. */
export function uploadedIds(form: Form, control: string): string[] {
	return (form[uploadedName(control)] ?? "").split(" ").filter((id) => id !== "");
}

/** A file that a form brings: sent with it, or before it by an upload. */
export interface BroughtFile {
	readonly fileName: string;
	/** Brings it to the record, where it is not there yet; gives its SHA-256. */
	readonly bring: () => Promise<string>;
}

/** The uploads of a control, which are at the record already. @throws not-found */
export async function uploadedFiles(
	deps: Deps,
	caller: Caller,
	recordId: string,
	form: Form,
	control: string,
): Promise<(BroughtFile & { readonly sha256: string; readonly sizeBytes: number })[]> {
	const exhibits = [];
	for (const id of uploadedIds(form, control)) exhibits.push(await uploadedExhibit(deps, caller, recordId, id));
	return exhibits.map(({ sha256, fileName, sizeBytes }) => ({
		fileName,
		sha256,
		sizeBytes,
		bring: async () => sha256,
	}));
}
