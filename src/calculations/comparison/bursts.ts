/** Events that come together are one burst: a test of rates takes events as independent, so bursts are what it may count. */
import type { ReadingEnd } from "./types.ts";

/** Published in no standard; common practice: events more than a second apart are two. */
export const BURST_GAP_S = 1;

/** Bursts among events at these times, in any order, seconds. */
export function burstsIn(timesS: readonly number[]): number {
	const sorted = [...timesS].sort((one, other) => one - other);
	return sorted.filter((time, index) => index === 0 || time - (sorted[index - 1] ?? time) > BURST_GAP_S).length;
}

/** Bursts of an end: as counted, from the events' times, or none where nothing was counted; null where nobody knows. */
export function burstsOf({ bursts, eventTimesS, count }: ReadingEnd): number | null {
	if (bursts !== undefined) return bursts;
	if (eventTimesS !== undefined && eventTimesS.length === count) return burstsIn(eventTimesS);
	return count === 0 ? 0 : null;
}
