/**
 * Verifies receipts that anyone sends. A receipt made to be slow must not hold up the service: each is verified on a
 * thread of its own, one at a time, within a time and a memory that every honest receipt keeps far below.
 */
import { fileURLToPath } from "node:url";
import { Worker } from "node:worker_threads";
import { fault } from "../../faults.ts";
import type { Given } from "../../records/verify/given.ts";
import type { Verification } from "../../records/verify/verify-receipt.ts";

/** The largest receipt that is taken. */
export const RECEIPT_LIMIT = 16 * 1024 * 1024;

// Our choice: an order of two thousand entries, 2.6 MB, takes about a second.
const LONGEST_MS = 10_000;
const MOST_MEMORY_MB = 1024;
const MOST_WAITING = 8;

/** As built: a thread loads no TypeScript. */
const WORKER = fileURLToPath(new URL("../../../dist/operations/verify/verify-worker.js", import.meta.url));

/** What a reader types beside the receipt. */
export type GivenTexts = Pick<Given, "keys" | "printed">;

/** @throws too-many, too-large where the time or memory is used up */
export type ReceiptVerifier = (bytes: Uint8Array, given: GivenTexts) => Promise<Verification>;

export function makeReceiptVerifier(longestMs = LONGEST_MS): ReceiptVerifier {
	let waiting = 0;
	let last: Promise<unknown> = Promise.resolve();
	return async (bytes, given) => {
		if (waiting >= MOST_WAITING) throw fault("too-many", { retryAfterS: 10 });
		waiting += 1;
		const verification = last.then(() => verifyInThread(bytes, given, longestMs));
		last = verification.catch(() => undefined);
		try {
			return await verification;
		} finally {
			waiting -= 1;
		}
	};
}

async function verifyInThread(bytes: Uint8Array, given: GivenTexts, longestMs: number): Promise<Verification> {
	const worker = new Worker(WORKER, {
		workerData: { bytes, given },
		resourceLimits: { maxOldGenerationSizeMb: MOST_MEMORY_MB },
	});
	const timer = setTimeout(() => worker.terminate(), longestMs);
	try {
		return await new Promise((resolve, reject) => {
			worker.once("message", resolve);
			worker.once("error", (error: NodeJS.ErrnoException) =>
				reject(error.code === "ERR_WORKER_OUT_OF_MEMORY" ? fault("too-large") : error),
			);
			// Ended before it answered: by the timer.
			worker.once("exit", () => reject(fault("too-large")));
		});
	} finally {
		clearTimeout(timer);
		await worker.terminate();
	}
}
