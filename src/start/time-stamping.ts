/** Looks at the queue of time stamps again and again while the service runs. */
import { setTimeout as sleep } from "node:timers/promises";
import type { Deps } from "../operations/deps.ts";
import { type Authority, stampNewestCheckpoint } from "../operations/time-stamps/stamp-newest-checkpoint.ts";

/** Our choice: a stamp that is due comes within this time. */
const LOOK_EVERY_S = 5;

/** Starts looking and gives the function that ends it: a running try is broken off, and nothing is left running. */
export function startTimeStamping(deps: Deps, authority: Authority, lookEveryS = LOOK_EVERY_S): () => Promise<void> {
	const stopping = new AbortController();
	const { signal } = stopping;
	const ended = (async () => {
		while (!signal.aborted) {
			await stampNewestCheckpoint(deps, authority, signal).catch((error: Error) => {
				if (!signal.aborted) deps.log.error({ err: error }, "time stamping failed");
			});
			await sleep(lookEveryS * 1000, undefined, { signal }).catch(() => {});
		}
	})();
	return async () => {
		stopping.abort();
		await ended;
	};
}
