/** Times for people: a day, or a moment with its difference from UTC. */
import { offsetOf, showTime } from "../../texts/shown-time.ts";

/** `2026-03-02`. */
export function showDay(time: string): string {
	return time.slice(0, 10);
}

/** A claimed time as its holder's clock showed it. */
export function showClaimed(time: { readonly at: string; readonly offsetMinutes: number }): string {
	return showTime(time.at, offsetOf(time.offsetMinutes));
}
