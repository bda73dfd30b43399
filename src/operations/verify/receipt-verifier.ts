/**
 * Verifies receipts that anyone sends. A receipt made to be slow must not hold up the service: each is verified on a
 * thread of its own, one at a time, within a time and a memory that every honest receipt keeps far below.
 */
import { fileURLToPath } from "node:url";
import { fault } from "../../faults.ts";
import type { Given } from "../../records/verify/given.ts";
import type { Verification } from "../../records/verify/verify-receipt.ts";
import { onThread } from "../threads/on-thread.ts";
import { places } from "../threads/places.ts";

/** The largest receipt that is taken. */
export const RECEIPT_LIMIT = 16 * 1024 * 1024;

// Our choice: an order of two thousand entries, 2.6 MB, takes about a second.
const LONGEST_MS = 10_000;
const MOST_MEMORY_MB = 1024;
/** Beside the one that is verified. */
const MOST_WAITING = 7;

/** As built: a thread loads no TypeScript. */
const WORKER = fileURLToPath(new URL("../../../dist/operations/verify/verify-worker.js", import.meta.url));

/** What a reader types beside the receipt. */
export type GivenTexts = Pick<Given, "keys" | "printed">;

/** @throws too-many, too-large where the time or memory is used up */
export type ReceiptVerifier = (bytes: Uint8Array, given: GivenTexts) => Promise<Verification>;

export function makeReceiptVerifier(longestMs = LONGEST_MS): ReceiptVerifier {
	const inPlace = places(1, MOST_WAITING);
	const limits = { longestMs, mostMemoryMb: MOST_MEMORY_MB };
	return (bytes, given) => inPlace(() => onThread(WORKER, { bytes, given }, limits, () => fault("too-large")));
}
