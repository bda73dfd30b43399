/** Saves or discards a draft. */
import type { Caller } from "../../access/caller.ts";
import type { RecordContentInput, RecordView } from "../../contract/records.ts";
import type { Queryable } from "../../database/connection.ts";
import { closeDraft, lockRecord, type RecordRow, updateDraft } from "../../database/records.ts";
import { fault } from "../../faults.ts";
import type { Deps } from "../deps.ts";
import { appendToLog } from "../log/append-to-log.ts";
import { callerId, mustWriteRecord } from "../may.ts";
import { notedTemperatures } from "./noted-temperatures.ts";
import { readRecord } from "./read-record.ts";

/** Replaces a draft's content. @throws version-stale where it was saved elsewhere since; already-sealed */
export async function saveDraft(
	deps: Deps,
	caller: Caller,
	recordId: string,
	version: number,
	content: RecordContentInput,
): Promise<RecordView> {
	await deps.database.transaction(async (transaction) => {
		const draft = await lockDraft(transaction, caller, recordId, version);
		const before = draft.content as RecordContentInput;
		await updateDraft(transaction, draft, notedTemperatures(before, content, deps.now()));
	});
	return readRecord(deps, caller, recordId);
}

/** Discards a draft: its content goes, the log keeps that it was opened and discarded. */
export async function discardDraft(deps: Deps, caller: Caller, recordId: string, version: number): Promise<void> {
	await deps.database.transaction(async (transaction) => {
		await lockDraft(transaction, caller, recordId, version);
		await closeDraft(transaction, recordId, "discarded");
		await appendToLog(deps, transaction, {
			kind: "record-discarded",
			subject: recordId,
			byId: callerId(caller),
			statementBytes: null,
		});
	});
}

/** The draft, locked, if the caller may write it and no one else saved it since. */
export async function lockDraft(
	transaction: Queryable,
	caller: Caller,
	recordId: string,
	version: number,
): Promise<RecordRow> {
	const record = await lockRecord(transaction, recordId);
	if (record === null) throw fault("not-found");
	mustWriteRecord(caller, record);
	if (record.state !== "draft") throw fault(record.state === "sealed" ? "already-sealed" : "discarded");
	// An expired link may finish what it began; nothing was saved in a draft of the first version.
	if (caller.kind === "link" && caller.expired && record.version === 1) throw fault("link-expired");
	if (record.version !== version) throw fault("version-stale");
	return record;
}
