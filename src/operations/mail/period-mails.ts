/** Mails about dates of a claim that come near: to the shop, once for each date, where a claim is in question. */
import type { LegClaimView } from "../../contract/leg-claim.ts";
import type { OrderView } from "../../contract/orders.ts";
import { legsWithClaims } from "../../database/claim-cases.ts";
import { insertMail, mailChoiceOf } from "../../database/mail.ts";
import { legClaim } from "../claims/leg-claim.ts";
import type { Deps } from "../deps.ts";
import { orderViewById } from "../orders/order-view.ts";
import { sealedRecordsOfOrder } from "../records/record-views.ts";
import { recipientOf } from "./recipient.ts";

/** Days before a safe date at which the shop hears of it. Our choice: over a weekend, and one day to write. */
const NEAR_DAYS = 3;

/** Queues what comes near. */
export async function queuePeriods(deps: Deps): Promise<void> {
	// A leg that cannot be read keeps no other's dates from being told.
	for (const leg of await legsWithClaims(deps.database))
		await queueOfLeg(deps, leg).catch((error: Error) =>
			deps.log.error({ err: error, leg: leg.id }, "the dates of a leg were not looked at"),
		);
}

async function queueOfLeg(deps: Deps, leg: { readonly id: string; readonly orderId: string }): Promise<void> {
	const order = await orderViewById(deps.database, leg.orderId);
	const choice = await mailChoiceOf(deps.database, order.id);
	const { repairer } = order;
	if (!choice.periods || repairer.erasedAt !== undefined || recipientOf(order, repairer.id, undefined) === null) return;
	const claim = await claimInQuestion(deps, order, leg.id);
	if (claim === null) return;
	const near = claim.periods.filter(({ leftDays }) => leftDays !== null && leftDays >= 0 && leftDays <= NEAR_DAYS);
	for (const { ruleId, safeDate } of near.filter((period) => isStillOpen(claim, period))) {
		await deps.database.transaction((transaction) =>
			insertMail(transaction, {
				id: deps.newId("mal"),
				kind: "period",
				order_id: order.id,
				party_id: repairer.id,
				subject: leg.id,
				rule_id: ruleId,
				language: "en",
				asked_by: "service",
				once_key: `period/${leg.id}/${ruleId}/${safeDate}`,
			}),
		);
	}
}

/**
 * The dates of a leg, where something was noted for a claim, or the arrival shows outer damage or an item that is not well;
 * null where nothing is in question.
 */
export async function claimInQuestion(deps: Deps, order: OrderView, legId: string): Promise<LegClaimView | null> {
	const leg = order.consignments.find(({ id }) => id === legId);
	if (leg === undefined) return null;
	const records = await sealedRecordsOfOrder(deps.database, order.id);
	const claim = await legClaim(deps, order, leg, records);
	const arrivals = records.filter(({ view }) => view.consignmentId === legId && view.stage === "arrival");
	const isUnwell = arrivals.some(
		({ view, statement }) => view.supersededBy === null && !["good", "not-tested"].includes(statement.state),
	);
	return claim.version > 0 || claim.outerDamage === "seen" || isUnwell ? claim : null;
}

/** Whether someone still has something to do by it: a notice ends when it is sent, a claim when it is made, an action never by either. */
export function isStillOpen({ events }: LegClaimView, { consequence, form }: LegClaimView["periods"][number]): boolean {
	if (consequence === "carrier-duty" || consequence === "deemed-lost") return false;
	if (form === "court-action" || consequence === "time-bar") return true;
	if (events.claimed !== undefined) return false;
	return form === "written-claim-with-amount" || events.noticeSent === undefined;
}
