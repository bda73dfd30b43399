/** Adds one entry to the log, inside the transaction of the act that it records. */
import type { EntryKind } from "../catalogue/codes.ts";
import type { Queryable } from "../database/connection.ts";
import { insertLogEntry, nextLogSlot } from "../database/log.ts";
import { makeEntry } from "../records/entry.ts";

export interface LoggedAct {
	readonly kind: EntryKind;
	/** Id of the record, assessment or link that the entry is about. */
	readonly subject: string;
	/** Account or link that acted. */
	readonly byId: string;
	/** The exact sealed bytes, where the act seals a statement. */
	readonly statementBytes: Buffer | null;
}

/**
 * Takes the next place in the log and fills it. The lock is held until the transaction ends, so call this last: what
 * comes before it runs without holding others up, and order and time are those of the log.
 */
export async function appendToLog(transaction: Queryable, act: LoggedAct): Promise<{ index: number; time: Date }> {
	const slot = await nextLogSlot(transaction);
	const entry = makeEntry({ ...act, index: slot.index, time: slot.time });
	await insertLogEntry(transaction, { ...act, ...slot, ...entry });
	return slot;
}
