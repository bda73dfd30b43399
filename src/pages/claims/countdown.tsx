/** What was missed of a claim and the date that comes next, in few words; nothing where none is known, or nothing is in question. */
import type { LegClaimView } from "../../contract/leg-claim.ts";
import { isForCourt, isStillOpen } from "../../operations/claims/is-still-open.ts";
import { watchedPeriods } from "../../operations/claims/watched-periods.ts";
import { say } from "../../texts/say.ts";

export function Countdown({ claim }: { readonly claim: LegClaimView }) {
	if (claim.question === "nothing-seen") return null;
	const watched = watchedPeriods(claim);
	// Of the likelier reading alone: a date of the other that is still open comes next.
	const missed = claim.periods.filter((period) => isMissed(claim, period));
	const next = watched.find(({ ruleId }) => ruleId === claim.nextRuleId);
	// What was missed is told as missed, and not again as the last date that there was.
	const coming = next === undefined || missed.includes(next) ? [] : [countdownWords(next)];
	const told = [...missed.map(missedWords), ...coming].filter((words) => words !== null);
	if (told.length === 0) return null;
	return (
		<p class="note">
			<a href={`/orders/${claim.orderId}/consignments/${claim.consignmentId}/claim`}>{told.join(" ")}</a>
			{claim.regimeBasis === "suggested" && ` ${say("periods.countdown-basis")}`}
		</p>
	);
}

type Period = LegClaimView["periods"][number];

/** A date for a notice or a claim that went by, and neither is kept. */
function isMissed(claim: LegClaimView, period: Period): boolean {
	return period.leftDays !== null && period.leftDays < 0 && !isForCourt(period) && isStillOpen(claim, period);
}

function missedWords({ what, safeDate, article }: Period): string {
	return say("periods.countdown-missed", { what, date: safeDate ?? "", article });
}

function countdownWords({ what, safeDate, leftDays, article, standing }: Period): string | null {
	if (safeDate === null) return null;
	const key = standing === "published" ? "periods.countdown" : "periods.countdown-recalled";
	return say(key, { what, date: safeDate, left: daysLeft(leftDays), article });
}

export function daysLeft(days: number | null): string {
	if (days === null) return "";
	if (days === 1) return say("periods.left-one");
	if (days === 0) return say("periods.left-none");
	return days > 0 ? say("periods.left", { days: String(days) }) : say("periods.passed", { days: String(-days) });
}
