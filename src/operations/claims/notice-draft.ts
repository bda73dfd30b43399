/**
 * A draft of the notice of damage to the carrier, in the form that the regime asks for, filled from what the order's records
 * hold; and what a claims clerk commonly asks for, with which of it is held here. A draft: nobody sends it but its reader.
 */
import type { Caller } from "../../access/caller.ts";
import type { LegClaimView } from "../../contract/leg-claim.ts";
import type { NoticeView } from "../../contract/notices.ts";
import type { ConsignmentView, OrderView } from "../../contract/orders.ts";
import { recordingsOfConsignment } from "../../database/transit-recordings.ts";
import type { OpenedStatement } from "../../records/record-statement.ts";
import { itemName } from "../../texts/item-name.ts";
import type { Language, ReportKey } from "../../texts/say.ts";
import { speakerOf } from "../../texts/speaker.ts";
import type { Deps } from "../deps.ts";
import { readConsignment } from "../orders/consignments.ts";
import { readOrder } from "../orders/read-orders.ts";
import { readAssessments } from "../packaging/assessments.ts";
import { sealedRecordsOfOrder } from "../records/record-views.ts";
import { type NumberedExhibit, numberedExhibits } from "../report/numbered-exhibits.ts";
import { readLegClaim } from "./leg-claim.ts";
import { readNotices } from "./notices.ts";

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
type Held = "yes" | "in-part" | "no";

/** What the carrier edition of the report tells, where it is held; photos are listed there and handed out apart. */
const IN_CARRIER_EDITION: ReadonlySet<ClaimPaper> = new Set([
	"good-at-origin",
	"handed-over",
	"damage-photos",
	"timing",
	"packing",
	"amount",
]);

export interface NoticeDraft {
	readonly order: OrderView;
	readonly leg: ConsignmentView;
	readonly claim: LegClaimView;
	/** The rule whose form the draft has; null where no notice is asked for by a rule that was read or recalled. */
	readonly period: LegClaimView["periods"][number] | null;
	readonly text: string;
	readonly language: Language;
	/** Files of the order's sealed records, which can show that a notice was sent or received. */
	readonly files: readonly NumberedExhibit[];
	/** Those that were sent. */
	readonly notices: readonly NoticeView[];
	/** Held here, in part or not: what the records of the order hold of it; and what of it the report's carrier edition tells. */
	readonly papers: readonly { readonly id: ClaimPaper; readonly held: Held; readonly inEdition: boolean }[];
}

export async function draftNotice(
	deps: Deps,
	caller: Caller,
	consignmentId: string,
	language: Language = "en",
): Promise<NoticeDraft> {
	const leg = await readConsignment(deps, caller, consignmentId);
	const [order, claim, records, packs, notices, recordings] = await Promise.all([
		readOrder(deps, caller, leg.orderId),
		readLegClaim(deps, caller, consignmentId),
		sealedRecordsOfOrder(deps.database, leg.orderId),
		readAssessments(deps, caller, consignmentId),
		readNotices(deps, caller, consignmentId),
		recordingsOfConsignment(deps.database, consignmentId),
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
		language,
		notices,
		files: numberedExhibits(records),
		text: textOf(order, leg, claim, period, arrival, language),
		papers: CLAIM_PAPERS.map((id) => {
			const held = heldOf(id, order, leg, departure, arrival, {
				packs: packs.length,
				recordings: recordings.length,
				notices,
			});
			return { id, held, inEdition: held !== "no" && IN_CARRIER_EDITION.has(id) };
		}),
	};
}

function textOf(
	order: OrderView,
	leg: ConsignmentView,
	claim: LegClaimView,
	period: NoticeDraft["period"],
	arrival: OpenedStatement | null,
	language: Language,
): string {
	const { say: words, writeDigits, showDay } = speakerOf(language);
	const partyOf = (id: string) => (id === order.owner.id ? order.owner : order.repairer);
	const from = partyOf(claim.contractorId);
	const blank = words("notice.blank");
	const dayOf = (date: string | undefined) => (date === undefined ? blank : showDay(date));
	const { facts } = leg;
	const form = period?.form ?? "none-stated";
	const value = claim.cover.value;
	const found = [
		arrival?.parcel?.outerDamage === "seen" ? words("notice.outer-seen") : null,
		arrival === null ? null : capital(words(`arrival.state.${arrival.state}` as ReportKey), language),
		...[arrival?.statement, arrival?.reported?.words].map((typed) =>
			typed == null ? null : words("notice.said", { words: typed }),
		),
	].filter((part) => part !== null);
	return [
		form === "registered-letter" ? words("notice.by-registered-letter") : null,
		words("notice.from", { name: from.name, address: from.address ?? blank }),
		words("notice.to", { carrier: facts.carrier ?? blank }),
		words("notice.date", { blank }),
		"",
		words(claim.damage === "loss" || claim.damage === "delay" ? `notice.subject-${claim.damage}` : "notice.subject"),
		"",
		words("notice.consignment", {
			tracking: facts.trackingNumber ?? blank,
			sender: partyOf(claim.consignorId).name,
			consignee: partyOf(claim.consigneeId).name,
			dispatched: dayOf(claim.events.takenOver),
			delivered: dayOf(claim.events.delivered),
			mass: claim.cover.massKg === null ? blank : writeDigits(String(claim.cover.massKg)),
		}),
		words("notice.goods", {
			item: itemName(order.item),
			serial: order.item.serialNumber ?? blank,
		}),
		"",
		words(isOuterAndInner(claim) ? "notice.says-both" : `notice.says-${claim.damage}`),
		words("notice.found", { found: found.length === 0 ? blank : found.map(closed).join(" ") }),
		claim.events.discovered === undefined
			? null
			: words("notice.discovered", { date: showDay(claim.events.discovered) }),
		"",
		FORM_WORDS.has(form) ? words(`notice.form-${form}` as ReportKey, { blank }) : null,
		form === "written-claim-with-amount"
			? words("notice.amount", {
					amount: value === null ? blank : `${writeDigits(value.amount.toFixed(2))} ${value.currency}`,
				})
			: words("notice.amount-later"),
		words("notice.kept"),
		words("notice.inspection", { blank: claim.noted.inspectionDates?.map(showDay).join(", ") ?? blank }),
		"",
		words("notice.signed", { name: from.name }),
	]
		.filter((line) => line !== null)
		.join("\n");
}

/** The box was seen to be damaged, and nobody has said yet that the goods' own damage could be seen as well. */
function isOuterAndInner({ damage, damageBasis }: LegClaimView): boolean {
	return damage === "apparent" && damageBasis === "suggested";
}

/** Words of ours that begin a sentence; what people typed begins as they typed it. */
function capital(words: string, language: Language): string {
	const [first = "", ...rest] = words;
	return first.toLocaleUpperCase(language) + rest.join("");
}

/** With a full stop, where it has no end of its own. */
function closed(words: string): string {
	return /[.!?…]\s*[”“»]?$/.test(words.trimEnd()) ? words : `${words}.`;
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
	beside: { readonly packs: number; readonly recordings: number; readonly notices: readonly NoticeView[] },
): Held {
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
			return all(
				facts.deliveredAt !== undefined,
				arrival !== null,
				beside.notices.some(({ proofOfSending }) => proofOfSending !== null),
			);
		case "packing":
			return all(beside.packs > 0, departure?.exhibits.some(({ view }) => view === "pack-open") === true);
		case "amount":
			return order.item.value === undefined ? "no" : "in-part";
		case "cause":
			return beside.recordings > 0 ? "in-part" : "no";
		// Nothing of an order's records tells these.
		case "kept":
		case "report":
			return "no";
	}
}
