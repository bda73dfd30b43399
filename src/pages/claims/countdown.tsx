/** The date of a claim that comes next, in one line; nothing where none is known. */
import type { LegClaimView } from "../../contract/leg-claim.ts";
import { watchedPeriods } from "../../operations/claims/watched-periods.ts";
import { say } from "../../texts/say.ts";

export function Countdown({ claim }: { readonly claim: LegClaimView }) {
	const next = watchedPeriods(claim).find(({ ruleId }) => ruleId === claim.nextRuleId);
	if (next === undefined || next.safeDate === null) return null;
	const key = next.standing === "published" ? "periods.countdown" : "periods.countdown-recalled";
	const values = { what: next.what, date: next.safeDate, left: daysLeft(next.leftDays), article: next.article };
	return (
		<p class="note">
			<a href={`/orders/${claim.orderId}/consignments/${claim.consignmentId}/claim`}>{say(key, values)}</a>
			{claim.regimeBasis === "suggested" && ` ${say("periods.countdown-basis")}`}
		</p>
	);
}

export function daysLeft(days: number | null): string {
	if (days === null) return "";
	if (days === 1) return say("periods.left-one");
	if (days === 0) return say("periods.left-none");
	return days > 0 ? say("periods.left", { days: String(days) }) : say("periods.passed", { days: String(-days) });
}
