import type { LegClaimView } from "../../contract/leg-claim.ts";

type Period = LegClaimView["periods"][number];

/** Whether a date is for going to a court: neither a notice nor a claim ends it. */
export function isForCourt({ consequence, form }: Pick<Period, "consequence" | "form">): boolean {
	return form === "court-action" || consequence === "time-bar";
}

/** Whether someone still has something to do by a date: a notice ends when it is sent, a claim when it is made. */
export function isStillOpen({ events }: Pick<LegClaimView, "events">, period: Period): boolean {
	const { consequence, form } = period;
	if (consequence === "carrier-duty" || consequence === "deemed-lost") return false;
	if (isForCourt(period)) return true;
	if (events.claimed !== undefined) return false;
	return form === "written-claim-with-amount" || events.noticeSent === undefined;
}
