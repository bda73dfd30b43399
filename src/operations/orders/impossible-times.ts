/** Times of a leg that cannot be: each was seen, and they lie in their order. One person notes all of them, on one clock. */
import type { ConsignmentFacts } from "../../contract/orders.ts";
import type { BadMember } from "../../faults.ts";
import { isAhead } from "../../records/claimed-times.ts";

export const LEG_TIMES = ["dispatchedAt", "deliveredAt", "inHandAt"] as const;
export type LegTimes = Pick<ConsignmentFacts, (typeof LEG_TIMES)[number]>;

/** All of them at once. A time that has not come yet says nothing about its order with the others. */
export function impossibleTimes(times: LegTimes, now: Date): BadMember[] {
	const isOpen = (name: keyof LegTimes) => {
		const time = times[name];
		return time !== undefined && isAhead(time, now);
	};
	const found: BadMember[] = LEG_TIMES.filter(isOpen).map((name) => ({ path: `/${name}`, code: "in-the-future" }));
	const isBefore = (one: keyof LegTimes, other: keyof LegTimes) =>
		!isOpen(one) && !isOpen(other) && Date.parse(times[one] ?? "") < Date.parse(times[other] ?? "");
	if (isBefore("deliveredAt", "dispatchedAt")) {
		found.push({ path: "/deliveredAt", code: "delivered-before-dispatched" });
	}
	if (isBefore("inHandAt", "deliveredAt")) found.push({ path: "/inHandAt", code: "in-hand-before-delivered" });
	else if (isBefore("inHandAt", "dispatchedAt")) {
		found.push({ path: "/inHandAt", code: "in-hand-before-dispatched" });
	}
	return found;
}
