/** Judges series of drops that anyone sends: each on a thread of its own, few at once, within a time and a memory. */
import { fileURLToPath } from "node:url";
import type { DropSeriesAnswer } from "../../contract/drop-series.ts";
import { answererOnThread } from "../threads/answer-on-thread.ts";
import { places } from "../threads/places.ts";

// Our choice: sixty drops of 20,000 samples take about two seconds.
const LIMITS = { longestMs: 20_000, mostMemoryMb: 512 };
const AT_ONCE = 1;
const MOST_WAITING = 8;

/** As built: a thread loads no TypeScript. */
const WORKER = fileURLToPath(new URL("../../../dist/operations/drop-series/drop-series-worker.js", import.meta.url));

/** @throws malformed-json, bad-input, too-many; too-large where the time or the memory is used up */
export type DropSeriesAssessor = (text: string) => Promise<DropSeriesAnswer>;

export function makeDropSeriesAssessor(): DropSeriesAssessor {
	return answererOnThread<DropSeriesAnswer>(WORKER, LIMITS, places(AT_ONCE, MOST_WAITING));
}
