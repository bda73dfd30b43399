/**
 * Searches packs for the shop: each search on a thread of its own, few at once, within a time and a memory, so that the
 * service goes on serving.
 */
import { fileURLToPath } from "node:url";
import type { PackagingSearchAnswer, PackagingSearchRequest } from "../../contract/packaging-search.ts";
import { invalid } from "../../faults.ts";
import { onThread } from "../threads/on-thread.ts";
import { places } from "../threads/places.ts";
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
	const inPlace = places(AT_ONCE, MOST_WAITING);
	const tooLarge = () => invalid([{ path: "/stock", code: "search-too-large" }]);
	return async (request) => {
		// What is wrong with the request is told at once, and not from the thread.
		searchInput(request);
		return inPlace(() => onThread(workerPath, request, { longestMs, mostMemoryMb: MOST_MEMORY_MB }, tooLarge));
	};
}
