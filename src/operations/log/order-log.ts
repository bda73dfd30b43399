/**
 * The log as it stands behind an order: this service's own, or the one whose entries were read in from a dossier. Such
 * entries keep their places, proofs and keys, and their log ends for us with the checkpoint that came with them.
 */
import type { Queryable } from "../../database/connection.ts";
import { type ReadInLog, readInEntriesOf, readInLogOf } from "../../database/read-in.ts";
import { entriesOfOrder } from "../../database/sealed.ts";
import { timeStampsFor } from "../../database/time-stamps.ts";
import { checkpointsOf, logKeys, newestCheckpoint } from "../../database/tree.ts";
import { fault, invalid } from "../../faults.ts";
import { type Checkpoint, keyIdOf, type LogKey, signersOf } from "../../records/log/checkpoint.ts";
import { type LoggedEntry, makeReceipt, type Receipt } from "../../records/receipt.ts";
import { readTimeStamp } from "../../records/verify/time-stamp-token.ts";
import { ownReceipt } from "./own-receipt.ts";

export interface OrderLog {
	/** Every entry about the order that the checkpoint covers, in log order. */
	readonly entries: readonly LoggedEntry[];
	readonly checkpoint: Checkpoint;
	/** Those that signed the checkpoint. */
	readonly keys: readonly LogKey[];
	/** The newest time stamp that covers an entry of the order. */
	readonly stamp: { readonly size: number; readonly time: Date } | null;
	/** Null where the order is this service's own. */
	readonly readIn: ReadInLog | null;
	/** About one of the order's records, or the order; older checkpoints of these sizes beside it, where they are at hand. */
	readonly receipt: (about: string, olderSizes: readonly number[]) => Promise<Receipt>;
}

/**
 * @param at size of the log's tree, the newest where none is given
 * @throws not-sealed before anything is logged; bad-input where `at` is beyond the log, or before what was read in
 */
export async function orderLog(database: Queryable, orderId: string, at?: number): Promise<OrderLog> {
	const readIn = await readInLogOf(database, orderId);
	return readIn === null ? ownLog(database, orderId, at) : formerLog(database, orderId, readIn, at);
}

async function ownLog(database: Queryable, orderId: string, at: number | undefined): Promise<OrderLog> {
	const checkpoint = await checkpointAt(database, at);
	const entries = (await entriesOfOrder(database, orderId)).filter(({ index }) => index < checkpoint.size);
	const indexes = entries.map(({ index }) => index);
	const [keys, [stamp]] = await Promise.all([logKeys(database), timeStampsFor(database, checkpoint.size, indexes)]);
	const signers = signersOf(checkpoint.note);
	return {
		entries,
		checkpoint,
		keys: keys.filter(({ id }) => signers.includes(id)),
		stamp: stamp === undefined ? null : { size: stamp.size, time: stamp.genTime },
		readIn: null,
		receipt: (about, olderSizes) => ownReceipt(database, about, entries, checkpoint, olderSizes),
	};
}

async function checkpointAt(database: Queryable, at: number | undefined): Promise<Checkpoint> {
	const newest = await newestCheckpoint(database);
	if (newest === null) throw fault("not-sealed");
	if (at === undefined) return newest;
	if (at > newest.size) throw invalid([{ path: "/at", code: "too-big", facts: { most: newest.size } }]);
	const [checkpoint] = await checkpointsOf(database, [at]);
	if (checkpoint === undefined) throw new Error(`the log has no checkpoint of ${at} entries`);
	return checkpoint;
}

async function formerLog(
	database: Queryable,
	orderId: string,
	readIn: ReadInLog,
	at: number | undefined,
): Promise<OrderLog> {
	const { size, checkpoint: note, keys, earlier, timeStamps } = readIn;
	if (at !== undefined && at > size) throw invalid([{ path: "/at", code: "too-big", facts: { most: size } }]);
	if (at !== undefined && at < size) throw invalid([{ path: "/at", code: "too-small", facts: { least: size } }]);
	const [entries, stored] = await Promise.all([entriesOfOrder(database, orderId), readInEntriesOf(database, orderId)]);
	const proofs = new Map(stored.map(({ index, proof }) => [index, proof]));
	const [stamp] = timeStamps;
	return {
		entries,
		checkpoint: { size, note },
		keys: keys.map((key) => ({ ...key, id: keyIdOf(key.origin, Buffer.from(key.publicKey, "hex")) })),
		stamp:
			stamp === undefined
				? null
				: {
						size: Number(stamp.checkpoint.split("\n")[1]),
						time: new Date(readTimeStamp(Buffer.from(stamp.token, "base64")).time),
					},
		readIn,
		receipt: async (about) =>
			makeReceipt(
				{ about, checkpoint: note, earlier, keys, timeStamps },
				entries.map((entry) => ({ entry, proof: proofs.get(entry.index) ?? [] })),
			),
	};
}
