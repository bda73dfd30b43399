/** Brings a diagnostic output to a draft: kept as an exhibit, read, and its readings taken into the draft. */
import type { Caller } from "../../access/caller.ts";
import { checksOf } from "../../catalogue/checks/checks.ts";
import type { ImportPreview, ImportQuery } from "../../contract/imports.ts";
import type { RecordContentInput, RecordView } from "../../contract/records.ts";
import { updateDraft } from "../../database/records.ts";
import type { Deps } from "../deps.ts";
import { bringExhibit } from "../exhibits/exhibits.ts";
import { previewImport } from "../imports/preview-import.ts";
import { readOrder } from "../orders/read-orders.ts";
import { takeImport } from "./import-readings.ts";
import { readRecord } from "./read-record.ts";
import { lockDraft } from "./save-draft.ts";

/** The largest file whose values are read. Source: the contract page. */
export const IMPORT_MOST_BYTES = 16 * 1024 * 1024;

export interface ImportedIntoDraft {
	readonly record: RecordView;
	readonly preview: ImportPreview;
	readonly taken: readonly string[];
	readonly identityDiffers: readonly string[];
}

/** @throws bad-input with line and reason where the file is not read; then nothing is kept */
export async function importIntoDraft(
	deps: Deps,
	caller: Caller,
	recordId: string,
	version: number,
	file: { readonly fileName: string; readonly bytes: Uint8Array },
	load: ImportQuery["load"],
): Promise<ImportedIntoDraft> {
	const { preview, result } = await previewImport(file.bytes, load === undefined ? {} : { load });
	const before = await readRecord(deps, caller, recordId);
	const order = await readOrder(deps, caller, before.orderId);
	const checkIds = new Set(checksOf(order.item.class).map((check) => check.id));
	const { sha256 } = await bringExhibit(deps, caller, recordId, file);
	const taken = await deps.database.transaction(async (transaction) => {
		const draft = await lockDraft(transaction, caller, recordId, version);
		const merged = takeImport(draft.content as RecordContentInput, result, sha256, checkIds, order.item.class);
		await updateDraft(transaction, draft, merged.content);
		return merged;
	});
	return {
		record: await readRecord(deps, caller, recordId),
		preview,
		taken: taken.taken,
		identityDiffers: taken.identityDiffers,
	};
}
