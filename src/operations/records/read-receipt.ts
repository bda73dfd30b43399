/** The receipt about a sealed record, made anew each time against the newest checkpoint. */
import type { Caller } from "../../access/caller.ts";
import type { Queryable } from "../../database/connection.ts";
import { recordById } from "../../database/records.ts";
import { entriesOfOrder } from "../../database/sealed.ts";
import { timeStampsFor } from "../../database/time-stamps.ts";
import { checkpointsOf, logKeys, newestCheckpoint } from "../../database/tree.ts";
import { fault } from "../../faults.ts";
import { type Checkpoint, signersOf } from "../../records/log/checkpoint.ts";
import { consistencyRanges, inclusionRanges } from "../../records/log/proofs.ts";
import { type LoggedEntry, makeReceipt, type Receipt } from "../../records/receipt.ts";
import type { Deps } from "../deps.ts";
import { proverOf } from "../log/read-log.ts";
import { mustReadOrder } from "../may.ts";

/**
 * The receipt about a record: every entry of its order, all shown to both parties, each with its proof in the newest
 * checkpoint's tree; the proof that this tree begins with the one signed when the record was sealed; and for each entry the
 * first time stamp that covers it.
 */
export async function readReceipt(deps: Deps, caller: Caller, recordId: string): Promise<Receipt> {
	const row = await recordById(deps.database, recordId);
	if (row === null) throw fault("not-found");
	mustReadOrder(caller, row.order_id);
	if (row.state !== "sealed") throw fault("not-sealed");
	const checkpoint = await newestCheckpoint(deps.database);
	if (checkpoint === null) throw new Error("a record is sealed and the log has no checkpoint");
	const entries = (await entriesOfOrder(deps.database, row.order_id)).filter((entry) => entry.index < checkpoint.size);
	const sealedAt = entries.find((entry) => entry.subject === recordId && entry.kind === "record-sealed");
	if (sealedAt === undefined) throw new Error(`record ${recordId} is sealed and not in the log`);
	return receiptAt(deps.database, recordId, entries, checkpoint, [sealedAt.index + 1]);
}

/** The receipt about a record or an order from its entries, against a checkpoint; the older ones of `olderSizes` beside it. */
export async function receiptAt(
	database: Queryable,
	about: string,
	entries: readonly LoggedEntry[],
	checkpoint: Checkpoint,
	olderSizes: readonly number[],
): Promise<Receipt> {
	const older = (await checkpointsOf(database, olderSizes)).filter(({ size }) => size < checkpoint.size);
	const indexes = entries.map((entry) => entry.index);
	const stamps = await timeStampsFor(database, checkpoint.size, indexes);
	const sizes = [...older, ...stamps].map(({ size }) => size);
	const prove = await proverOf(database, [
		...indexes.flatMap((index) => inclusionRanges(index, checkpoint.size)),
		...sizes.flatMap((size) => consistencyRanges(size, checkpoint.size)),
	]);
	const before = ({ size, note }: Checkpoint) => ({
		checkpoint: note,
		proof: prove(consistencyRanges(size, checkpoint.size)),
	});
	return makeReceipt(
		{
			about,
			checkpoint: checkpoint.note,
			earlier: older.map(before),
			keys: await keysOf(database, [checkpoint, ...older]),
			timeStamps: stamps.map((stamp) => ({ ...before(stamp), token: stamp.token.toString("base64") })),
		},
		entries.map((entry) => ({ entry, proof: prove(inclusionRanges(entry.index, checkpoint.size)) })),
	);
}

async function keysOf(database: Queryable, checkpoints: readonly Checkpoint[]): Promise<Receipt["keys"]> {
	const signers = new Set(checkpoints.flatMap(({ note }) => signersOf(note)));
	const keys = await logKeys(database);
	return keys.filter(({ id }) => signers.has(id)).map(({ origin, publicKey }) => ({ origin, publicKey }));
}
