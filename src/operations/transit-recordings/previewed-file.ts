/** The beginning of a recorder's file, or the fault that says why it is none. */
import { ImportRefusal } from "../../importers/import-result.ts";
import { previewRecorderFile, type RecorderPreview } from "../../importers/recorder/recorder-preview.ts";
import { refusedFile } from "./refused-file.ts";

/** @throws bad-input with line and reason */
export function previewedFile(bytes: Uint8Array): RecorderPreview {
	try {
		return previewRecorderFile(bytes);
	} catch (error) {
		if (!(error instanceof ImportRefusal)) throw error;
		throw refusedFile(error.line, error.reason);
	}
}
