/**
 * Reads recorded shocks that anyone sends: each on a thread of its own, few at once, within a time and a memory. The request
 * goes there as text, so that no long trace is parsed while others wait.
 */
import { fileURLToPath } from "node:url";
import type { ShockTraceAnswer } from "../../contract/shock-trace.ts";
import { answererOnThread } from "../threads/answer-on-thread.ts";
import { places } from "../threads/places.ts";

/** The largest request that is taken. */
export const TRACE_LIMIT = 8 * 1024 * 1024;

// Our choice: three axes of 200,000 samples at 500 frequencies take about five seconds.
const LONGEST_MS = 20_000;
const MOST_MEMORY_MB = 768;
const AT_ONCE = 2;
const MOST_WAITING = 8;

/** As built: a thread loads no TypeScript. */
const WORKER = fileURLToPath(new URL("../../../dist/operations/shock-trace/trace-worker.js", import.meta.url));

/** @throws malformed-json, bad-input, too-many; too-large where the time or the memory is used up */
export type TraceAssessor = (text: string) => Promise<ShockTraceAnswer>;

export function makeTraceAssessor(
	longestMs = LONGEST_MS,
	workerPath = WORKER,
	mostMemoryMb = MOST_MEMORY_MB,
): TraceAssessor {
	const limits = { longestMs, mostMemoryMb };
	return answererOnThread<ShockTraceAnswer>(workerPath, limits, places(AT_ONCE, MOST_WAITING));
}
