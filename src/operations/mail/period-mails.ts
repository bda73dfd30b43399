/**
 * Mails about dates of a claim that come near: to the shop, and to the owner where the date is the owner's too, once for each
 * date, where a claim is in question.
 */
import type { LegClaimView } from "../../contract/leg-claim.ts";
import type { OrderView } from "../../contract/orders.ts";
import { legsWithClaims } from "../../database/claim-cases.ts";
import { insertMail, mailChoiceOf } from "../../database/mail.ts";
import { ENGLISH } from "../../texts/speaker.ts";
import { isForCourt, isStillOpen } from "../claims/is-still-open.ts";
import { legClaim } from "../claims/leg-claim.ts";
import { watchedPeriods } from "../claims/watched-periods.ts";
import type { Deps } from "../deps.ts";
import { markedOrders } from "../orders/marked-orders.ts";
import { orderViewById } from "../orders/order-view.ts";
import { sealedRecordsOfOrder } from "../records/record-views.ts";
import { languageFor, recipientOf } from "./recipient.ts";

/** Days before a safe date at which both hear of it. Our choice: over a weekend, and one day to write. */
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
	const { repairer, owner } = order;
	if (repairer.erasedAt !== undefined || owner.erasedAt !== undefined) return;
	const choice = await mailChoiceOf(deps.database, order.id);
	const hears = (partyId: string, isChosen: boolean) => isChosen && recipientOf(order, partyId, undefined) !== null;
	const shopHears = hears(repairer.id, choice.periods);
	const ownerHears = hears(owner.id, choice.periods_to_owner);
	if (!shopHears && !ownerHears) return;
	const claim = await claimInQuestion(deps, order, leg.id);
	if (claim === null) return;
	const open = watchedPeriods(claim).filter((period) => isNear(period) && isStillOpen(claim, period));
	if (shopHears) for (const period of open) await queuePeriod(deps, order, leg.id, period, repairer.id);
	if (!ownerHears || (await isSettled(deps, order.id))) return;
	const owners = open.filter((period) => concernsOwner(order, claim, period));
	for (const period of owners) await queuePeriod(deps, order, leg.id, period, owner.id);
}

type Period = LegClaimView["periods"][number];

function isNear({ leftDays }: Period): boolean {
	return leftDays !== null && leftDays >= 0 && leftDays <= NEAR_DAYS;
}

async function queuePeriod(
	deps: Deps,
	order: OrderView,
	legId: string,
	{ ruleId, safeDate }: Period,
	partyId: string,
): Promise<void> {
	const once = `period/${legId}/${ruleId}/${safeDate}`;
	await deps.database.transaction((transaction) =>
		insertMail(transaction, {
			id: deps.newId("mal"),
			kind: "period",
			order_id: order.id,
			party_id: partyId,
			subject: legId,
			rule_id: ruleId,
			language: languageFor(order, partyId),
			asked_by: "service",
			once_key: partyId === order.owner.id ? `${once}/owner` : once,
		}),
	);
}

/**
 * Whether a date is the owner's too: who receives gives notice of what is found, and sender and consignee can claim, unless the
 * text that was read gives the claim, or the inquiry, to the sender alone.
 */
export function concernsOwner(order: OrderView, claim: LegClaimView, { form, consequence }: Period): boolean {
	if (claim.consignorId === order.owner.id) return true;
	if (form === "inquiry") return false;
	const isClaim = form === "written-claim-with-amount" || isForCourt({ form, consequence });
	return !isClaim || claim.claimants?.who !== "sender-unless-waived";
}

/**
 * Whether the two sides have agreed, on something else than to claim from the carrier. The shop is told of a date all the same:
 * what they agreed between them ends no claim against the carrier.
 */
export async function isSettled(deps: Deps, orderId: string): Promise<boolean> {
	const [order] = await markedOrders(deps.database, orderId);
	const settled = order?.attention.settled ?? null;
	return settled !== null && settled.outcome !== "claim-against-carrier";
}

/**
 * The dates of a leg, where something was noted for a claim, or the arrival shows outer damage or an item that is worse than it left;
 * null where nothing is in question.
 */
export async function claimInQuestion(
	deps: Deps,
	order: OrderView,
	legId: string,
	speaker = ENGLISH,
): Promise<LegClaimView | null> {
	const leg = order.consignments.find(({ id }) => id === legId);
	if (leg === undefined) return null;
	const records = await sealedRecordsOfOrder(deps.database, order.id);
	const claim = await legClaim(deps, order, leg, records, speaker);
	return claim.question === "in-question" ? claim : null;
}
