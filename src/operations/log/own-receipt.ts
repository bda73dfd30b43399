/** A receipt from this service's own log, against one of its checkpoints. */
import type { Queryable } from "../../database/connection.ts";
import { timeStampsFor } from "../../database/time-stamps.ts";
import { checkpointsOf, logKeys } from "../../database/tree.ts";
import { type Checkpoint, signersOf } from "../../records/log/checkpoint.ts";
import { consistencyRanges, inclusionRanges } from "../../records/log/proofs.ts";
import { type LoggedEntry, makeReceipt, type Receipt } from "../../records/receipt.ts";
import { proverOf } from "./read-log.ts";

/** The receipt about a record or an order from its entries, against a checkpoint; the older ones of `olderSizes` beside it. */
export async function ownReceipt(
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
