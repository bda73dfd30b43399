/** Uploads that a form names in the place of files. */
import type { Caller } from "../../access/caller.ts";
import { Fault } from "../../faults.ts";
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

export interface UploadedFiles {
	readonly found: readonly (BroughtFile & { readonly sha256: string; readonly sizeBytes: number })[];
	/** Why others are not there: their time was over, or they are not whole. */
	readonly lost: readonly Fault[];
}

/** The uploads of a control, which are at the record already. One that is lost takes nothing else of the form with it. */
export async function uploadedFiles(
	deps: Deps,
	caller: Caller,
	recordId: string,
	form: Form,
	control: string,
): Promise<UploadedFiles> {
	const found: UploadedFiles["found"][number][] = [];
	const lost: Fault[] = [];
	for (const id of uploadedIds(form, control)) {
		try {
			const { sha256, fileName, sizeBytes } = await uploadedExhibit(deps, caller, recordId, id);
			found.push({ fileName, sha256, sizeBytes, bring: async () => sha256 });
		} catch (error) {
			if (!(error instanceof Fault) || error.status >= 500) throw error;
			lost.push(error);
		}
	}
	return { found, lost };
}
