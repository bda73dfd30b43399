/** Adds one entry to the log, inside the transaction of the act that it records. */
import type { EntryKind } from "../../catalogue/codes.ts";
import type { Queryable } from "../../database/connection.ts";
import { insertLogEntry, nextLogSlot } from "../../database/log.ts";
import { insertLogKey } from "../../database/tree.ts";
import { makeEntry } from "../../records/entry.ts";
import { checkpointText, type LogKey, signedNote } from "../../records/log/checkpoint.ts";
import { grow } from "../../records/log/tree.ts";
import type { Deps } from "../deps.ts";

export interface LoggedAct {
	readonly kind: EntryKind;
	/** Id of what the entry is about: a record, an assessment, a link, a party, a key. */
	readonly subject: string;
	/** Account or link that acted. */
	readonly byId: string;
	/** The exact sealed bytes, where the act seals a statement. */
	readonly statementBytes: Buffer | null;
	/** The key that the act brings in; it signs the act's checkpoint beside the key before it, and later ones alone. */
	readonly newKey?: LogKey;
}

/**
 * Takes the next place in the log, fills it, and signs the checkpoint of the tree that ends with it. The lock is held
 * until the transaction ends, so call this last: what comes before it runs without holding others up, and order and time
 * are those of the log.
 */
export async function appendToLog(
	{ logKeys }: Pick<Deps, "logKeys">,
	transaction: Queryable,
	act: LoggedAct,
): Promise<{ index: number; time: Date }> {
	const { key, peaks, ...slot } = await nextLogSlot(transaction);
	if (key === null) throw new Error("the log has no key: it was not opened");
	const entry = makeEntry({ ...act, ...slot });
	const { made, root } = grow(slot.index, peaks, entry.leafSha256);
	const size = slot.index + 1;
	const signers = act.newKey === undefined ? [key] : [key, act.newKey];
	const text = checkpointText(key.origin, size, root);
	const signatures = await Promise.all(
		signers.map(async ({ id }) => ({ keyId: id, signature: await logKeys.sign(id, Buffer.from(text, "utf8")) })),
	);
	if (act.newKey !== undefined) await insertLogKey(transaction, act.newKey, size);
	await insertLogEntry(transaction, { ...act, ...slot, ...entry }, made, {
		size,
		note: signedNote(key.origin, text, signatures),
		keyId: (act.newKey ?? key).id,
	});
	return slot;
}
