/** Times that a record claims, held against the clock, against each other, and against what was noted of its leg. */
import type { RecordContent } from "./record-content.ts";
import type { Shortcoming } from "./shortcoming.ts";

/** Claimed times may run ahead of the server's clock by this much; our choice, for clocks that are a little off. */
const CLOCK_TOLERANCE_MINUTES = 10;
/** Two claimed times may lie this much the wrong way round; our choice: other people's clocks, and time zones mistaken. */
const ORDER_TOLERANCE_HOURS = 24;

/** What is known of the leg of an arrival record beside the record itself. */
export interface NotedTimes {
	/** As the shop noted it. */
	readonly deliveredAt?: string | undefined;
	/** When the newest sealed departure record of the leg says that the item was seen. */
	readonly departureSeenAt?: string | undefined;
}

/** Whether a time has not come yet. */
export function isAhead(time: string, now: Date): boolean {
	return !(new Date(time).getTime() <= now.getTime() + CLOCK_TOLERANCE_MINUTES * 60_000);
}

/**
 * Claimed times that cannot be true: in the future, or in no possible order. A delivery that the record tells itself goes
 * before what was noted: where the two sides differ, nobody is kept from sealing by what the other side noted, and the
 * comparison says that the times contradict each other.
 */
export function timeShortcomings(content: RecordContent, noted: NotedTimes, now: Date): Shortcoming[] {
	const told = [
		["/observedAt", content.observedAt],
		["/reported/receivedAt", content.reported?.receivedAt],
		["/parcel/deliveredAt", content.parcel?.deliveredAt],
		["/parcel/inHandAt", content.parcel?.inHandAt],
	] as const;
	const ahead = told.filter(([, time]) => time !== undefined && isAhead(time, now));
	const found: Shortcoming[] = ahead.map(([path]) => ({ path, code: "in-the-future" }));
	// A time that has not come yet says nothing about its order with the others.
	const past = (time: string | undefined) => (time !== undefined && isAhead(time, now) ? undefined : time);
	const [observedAt, deliveredAt, inHandAt] = [
		content.observedAt,
		content.parcel?.deliveredAt,
		content.parcel?.inHandAt,
	].map(past);
	if (isBefore(inHandAt, deliveredAt)) found.push({ path: "/parcel/inHandAt", code: "in-hand-before-delivered" });
	if (content.parcel?.deliveredAt !== undefined) {
		if (isBefore(observedAt, deliveredAt)) found.push({ path: "/observedAt", code: "seen-before-delivered" });
	} else if (isBefore(observedAt, noted.deliveredAt)) {
		found.push({ path: "/observedAt", code: "seen-before-noted-delivery" });
	} else if (isBefore(observedAt, noted.departureSeenAt)) {
		found.push({ path: "/observedAt", code: "seen-before-departure" });
	}
	const isOpen = !found.some(({ path }) => path === "/observedAt");
	if (isOpen && isBefore(observedAt, inHandAt)) found.push({ path: "/observedAt", code: "seen-before-in-hand" });
	return found;
}

/** Whether one lies before the other by more than may be a matter of clocks. */
function isBefore(one: string | undefined, other: string | undefined): boolean {
	if (one === undefined || other === undefined) return false;
	return Date.parse(other) - Date.parse(one) > ORDER_TOLERANCE_HOURS * 3_600_000;
}
