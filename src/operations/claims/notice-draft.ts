/**
 * A draft of the notice of damage to the carrier, in the form that the regime asks for, filled from what the order's records
 * hold; and what a claims clerk commonly asks for, with which of it is held here. A draft: nobody sends it but its reader.
 */
import type { Caller } from "../../access/caller.ts";
import type { LegClaimView } from "../../contract/leg-claim.ts";
import type { ConsignmentView, OrderView } from "../../contract/orders.ts";
import type { OpenedStatement } from "../../records/record-statement.ts";
import { say, type TextKey } from "../../texts/say.ts";
import type { Deps } from "../deps.ts";
import { readConsignment } from "../orders/consignments.ts";
import { readOrder } from "../orders/read-orders.ts";
import { readAssessments } from "../packaging/assessments.ts";
import { sealedRecordsOfOrder } from "../records/record-views.ts";
import { readLegClaim } from "./leg-claim.ts";

/** What claims clerks commonly ask for. Common practice, no source; in the order of the reference page. */
export const CLAIM_PAPERS = [
	"good-at-origin",
	"handed-over",
	"damage-photos",
	"timing",
	"cause",
	"packing",
	"amount",
	"kept",
	"report",
] as const;
export type ClaimPaper = (typeof CLAIM_PAPERS)[number];

export interface NoticeDraft {
	readonly order: OrderView;
	readonly leg: ConsignmentView;
	readonly claim: LegClaimView;
	/** The rule whose form the draft has; null where no notice is asked for by a rule that was read or recalled. */
	readonly period: LegClaimView["periods"][number] | null;
	readonly text: string;
	/** Held here, in part or not: what the records of the order hold of it. */
	readonly papers: readonly { readonly id: ClaimPaper; readonly held: "yes" | "in-part" | "no" }[];
}

export async function draftNotice(deps: Deps, caller: Caller, consignmentId: string): Promise<NoticeDraft> {
	const leg = await readConsignment(deps, caller, consignmentId);
	const [order, claim, records, packs] = await Promise.all([
		readOrder(deps, caller, leg.orderId),
		readLegClaim(deps, caller, consignmentId),
		sealedRecordsOfOrder(deps.database, leg.orderId),
		readAssessments(deps, caller, consignmentId),
	]);
	const ofLeg = records.filter(({ view }) => view.consignmentId === leg.id && view.supersededBy === null);
	const departure = ofLeg.find(({ view }) => view.stage === "departure")?.statement ?? null;
	const arrival = ofLeg.find(({ view }) => view.stage === "arrival")?.statement ?? null;
	const period =
		claim.periods
			.filter(({ form, consequence }) => form !== "court-action" && form !== "none" && consequence !== "carrier-duty")
			.sort((a, b) => String(a.safeDate ?? "9").localeCompare(String(b.safeDate ?? "9")))[0] ?? null;
	return {
		order,
		leg,
		claim,
		period,
		text: textOf(order, leg, claim, period, arrival),
		papers: CLAIM_PAPERS.map((id) => ({ id, held: heldOf(id, order, leg, departure, arrival, packs.length > 0) })),
	};
}

function textOf(
	order: OrderView,
	leg: ConsignmentView,
	claim: LegClaimView,
	period: NoticeDraft["period"],
	arrival: OpenedStatement | null,
): string {
	const partyOf = (id: string) => (id === order.owner.id ? order.owner : order.repairer);
	const from = partyOf(claim.contractorId);
	const blank = say("notice.blank");
	const { facts } = leg;
	const form = period?.form ?? "none-stated";
	const value = claim.cover.value;
	const found = [
		arrival?.parcel?.outerDamage === "seen" ? say("notice.outer-seen") : null,
		arrival === null ? null : say(`arrival.state.${arrival.state}` as TextKey),
		arrival?.statement ?? null,
		arrival?.reported?.words ?? null,
	].filter((part) => part !== null);
	return [
		form === "registered-letter" ? say("notice.by-registered-letter") : null,
		say("notice.from", { name: from.name, address: from.address ?? blank }),
		say("notice.to", { carrier: facts.carrier ?? blank }),
		say("notice.date", { blank }),
		"",
		say(claim.damage === "loss" || claim.damage === "delay" ? `notice.subject-${claim.damage}` : "notice.subject"),
		"",
		say("notice.consignment", {
			tracking: facts.trackingNumber ?? blank,
			sender: partyOf(claim.consignorId).name,
			consignee: partyOf(claim.consigneeId).name,
			dispatched: claim.events.takenOver ?? blank,
			delivered: claim.events.delivered ?? blank,
			mass: facts.parcelMassKg === undefined ? blank : String(facts.parcelMassKg),
		}),
		say("notice.goods", {
			item: `${order.item.maker} ${order.item.model}`,
			serial: order.item.serialNumber ?? blank,
		}),
		"",
		say(`notice.says-${claim.damage}`),
		say("notice.found", { found: found.length === 0 ? blank : found.join(" ") }),
		claim.events.discovered === undefined ? null : say("notice.discovered", { date: claim.events.discovered }),
		"",
		FORM_WORDS.has(form) ? say(`notice.form-${form}` as TextKey, { blank }) : null,
		form === "written-claim-with-amount"
			? say("notice.amount", { amount: value === null ? blank : `${value.amount.toFixed(2)} ${value.currency}` })
			: say("notice.amount-later"),
		say("notice.kept"),
		say("notice.inspection", { blank }),
		"",
		say("notice.signed", { name: from.name }),
	]
		.filter((line) => line !== null)
		.join("\n");
}

/** Forms of which the draft must say something more. */
const FORM_WORDS: ReadonlySet<string> = new Set([
	"carrier-report",
	"request-for-report",
	"confirmed-in-writing",
	"written-claim-with-amount",
]);

function heldOf(
	paper: ClaimPaper,
	order: OrderView,
	{ facts }: ConsignmentView,
	departure: OpenedStatement | null,
	arrival: OpenedStatement | null,
	hasPack: boolean,
): "yes" | "in-part" | "no" {
	const all = (...parts: readonly boolean[]) => (parts.every(Boolean) ? "yes" : parts.some(Boolean) ? "in-part" : "no");
	const views = new Set(arrival?.exhibits.map(({ view }) => view));
	switch (paper) {
		case "good-at-origin":
			return all(departure?.state === "good", (departure?.exhibits.length ?? 0) > 0);
		case "handed-over":
			return all(
				facts.trackingNumber !== undefined,
				facts.parcelMassKg !== undefined,
				facts.dispatchedAt !== undefined,
			);
		case "damage-photos":
			return all(views.has("parcel-closed") || views.has("parcel-damage"), views.has("pack-open"), views.has("damage"));
		case "timing":
			return all(facts.deliveredAt !== undefined, arrival !== null);
		case "packing":
			return all(hasPack, departure?.exhibits.some(({ view }) => view === "pack-open") === true);
		case "amount":
			return order.item.value === undefined ? "no" : "in-part";
		// Nothing of an order's records tells these.
		case "cause":
		case "kept":
		case "report":
			return "no";
	}
}
