/** A log entry with small bytes of its own, made the way operations make theirs. */
import type { Queryable } from "../../src/database/connection.ts";
import { insertLogEntry, nextLogSlot } from "../../src/database/log.ts";
import { makeEntry } from "../../src/records/entry.ts";

/** Appends an entry about `subject` and gives its place and bytes. */
export async function appendSmallEntry(transaction: Queryable, subject: string) {
	const slot = await nextLogSlot(transaction);
	const act = {
		kind: "record-sealed",
		subject,
		byId: "acc_1",
		statementBytes: Buffer.from(`{"of":"${subject}"}`),
	} as const;
	const entry = makeEntry({ ...act, ...slot });
	await insertLogEntry(transaction, { ...act, ...slot, ...entry });
	return { ...slot, ...entry };
}
