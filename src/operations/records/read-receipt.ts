/** The receipt about something sealed, made anew each time against the newest checkpoint. */
import type { Caller } from "../../access/caller.ts";
import type { Queryable } from "../../database/connection.ts";
import { recordById } from "../../database/records.ts";
import { entriesOfOrder, sealedOfKind } from "../../database/sealed.ts";
import { timeStampsFor } from "../../database/time-stamps.ts";
import { checkpointsOf, logKeys, newestCheckpoint } from "../../database/tree.ts";
import { fault } from "../../faults.ts";
import { type Checkpoint, signersOf } from "../../records/log/checkpoint.ts";
import { consistencyRanges, inclusionRanges } from "../../records/log/proofs.ts";
import { type LoggedEntry, makeReceipt, type Receipt } from "../../records/receipt.ts";
import type { Deps } from "../deps.ts";
import { proverOf } from "../log/read-log.ts";
import { mustReadOrder } from "../may.ts";

/** Kinds of entries that a receipt can be about. */
const SEALS: ReadonlySet<string> = new Set(["record-sealed", "position-sealed", "settlement-sealed"]);

/** The receipt about a sealed record. */
export async function readReceipt(deps: Deps, caller: Caller, recordId: string): Promise<Receipt> {
	const row = await recordById(deps.database, recordId);
	if (row === null) throw fault("not-found");
	mustReadOrder(caller, row.order_id);
	if (row.state !== "sealed") throw fault("not-sealed");
	return receiptAbout(deps, row.order_id, recordId);
}

/** The receipt about a position or a step of a settlement, sealed for this order. */
export async function readSettlingReceipt(
	deps: Deps,
	caller: Caller,
	orderId: string,
	subject: string,
): Promise<Receipt> {
	mustReadOrder(caller, orderId);
	const sealed = await Promise.all([
		sealedOfKind(deps.database, orderId, "position-sealed"),
		sealedOfKind(deps.database, orderId, "settlement-sealed"),
	]);
	if (!sealed.flat().some((entry) => entry.subject === subject)) throw fault("not-found");
	return receiptAbout(deps, orderId, subject);
}

/**
 * The receipt about what was sealed: every entry of its order, all shown to both parties, each with its proof in the newest
 * checkpoint's tree; the proof that this tree begins with the one signed when it was sealed; and for each entry the
 * first time stamp that covers it.
 */
async function receiptAbout(deps: Deps, orderId: string, about: string): Promise<Receipt> {
	const checkpoint = await newestCheckpoint(deps.database);
	if (checkpoint === null) throw new Error(`${about} is sealed and the log has no checkpoint`);
	const entries = (await entriesOfOrder(deps.database, orderId)).filter((entry) => entry.index < checkpoint.size);
	const sealedAt = entries.find((entry) => entry.subject === about && SEALS.has(entry.kind));
	if (sealedAt === undefined) throw new Error(`${about} is sealed and not in the log`);
	return receiptAt(deps.database, about, entries, checkpoint, [sealedAt.index + 1]);
}

/** The receipt about what was sealed or about an order, from its entries, against a checkpoint; the older ones of `olderSizes` beside it. */
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
