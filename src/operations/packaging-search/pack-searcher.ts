/**
 * Searches packs for the shop: each search on a thread of its own, few at once, within a time and a memory, so that the
 * service goes on serving.
 */
import { fileURLToPath } from "node:url";
import { Worker } from "node:worker_threads";
import type { PackagingSearchAnswer, PackagingSearchRequest } from "../../contract/packaging-search.ts";
import { fault, invalid } from "../../faults.ts";
import { searchInput } from "./search-input.ts";

// Our choice: a stock of ten boxes and five foams takes about a second.
const LONGEST_MS = 20_000;
const MOST_MEMORY_MB = 512;
const AT_ONCE = 2;
const MOST_WAITING = 8;

/** As built: a thread loads no TypeScript. */
const WORKER = fileURLToPath(new URL("../../../dist/operations/packaging-search/search-worker.js", import.meta.url));

/** @throws bad-input, too-many */
export type PackSearcher = (request: PackagingSearchRequest) => Promise<PackagingSearchAnswer>;

export function makePackSearcher(longestMs = LONGEST_MS, workerPath = WORKER): PackSearcher {
	let running = 0;
	const waiting: (() => void)[] = [];
	return async (request) => {
		// What is wrong with the request is told at once, and not from the thread.
		searchInput(request);
		if (running >= AT_ONCE) {
			if (waiting.length >= MOST_WAITING) throw fault("too-many", { retryAfterS: 10 });
			await new Promise<void>((resolve) => waiting.push(resolve));
		} else running += 1;
		try {
			return await searchInThread(request, longestMs, workerPath);
		} finally {
			// The place goes to the next that waits.
			const next = waiting.shift();
			if (next === undefined) running -= 1;
			else next();
		}
	};
}

async function searchInThread(
	request: PackagingSearchRequest,
	longestMs: number,
	workerPath: string,
): Promise<PackagingSearchAnswer> {
	const worker = new Worker(workerPath, {
		workerData: request,
		resourceLimits: { maxOldGenerationSizeMb: MOST_MEMORY_MB },
	});
	const tooLarge = () => invalid([{ path: "/stock", code: "search-too-large" }]);
	const timer = setTimeout(() => worker.terminate(), longestMs);
	try {
		return await new Promise((resolve, reject) => {
			worker.once("message", resolve);
			worker.once("error", (error: NodeJS.ErrnoException) =>
				reject(error.code === "ERR_WORKER_OUT_OF_MEMORY" ? tooLarge() : error),
			);
			// Ended before it answered: by the timer.
			worker.once("exit", () => reject(tooLarge()));
		});
	} finally {
		clearTimeout(timer);
		await worker.terminate();
	}
}
