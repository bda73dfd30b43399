/** What a mail is about, read when it is written: it may have become needless since it was asked for. */

import type { OrderView } from "../../contract/orders.ts";
import { type LinkRow, linkById } from "../../database/access.ts";
import type { Queryable } from "../../database/connection.ts";
import type { MailRow } from "../../database/mail.ts";
import { recordById } from "../../database/records.ts";
import { entriesOfOrder } from "../../database/sealed.ts";
import { receiptBytes } from "../../records/receipt.ts";
import { itemName } from "../../texts/item-name.ts";
import { speakerOf } from "../../texts/speaker.ts";
import { freshLinkCode, freshLinkUrl } from "../access/fresh-secrets.ts";
import { isStillOpen } from "../claims/is-still-open.ts";
import { watchedPeriods } from "../claims/watched-periods.ts";
import type { Deps } from "../deps.ts";
import { readCheckpointFacts } from "../log/read-log.ts";
import { orderViewById } from "../orders/order-view.ts";
import { readReceipt } from "../records/read-receipt.ts";
import type { LinkFor, MailAbout, MailFacts } from "./compose-mail.ts";
import { claimInQuestion, concernsOwner, isSettled } from "./period-mails.ts";

/** Why a mail is not written; the words are `mail.drop.<reason>`. */
export type DropReason = "no-address" | "link-used" | "link-over" | "answered" | "erased" | "passed" | "not-there";

/** The part of a row that says what the mail is about. */
export type MailMatter = Pick<
	MailRow,
	"kind" | "order_id" | "party_id" | "subject" | "rule_id" | "language" | "asked_by"
>;

export type FoundFacts = { readonly facts: MailFacts } | { readonly drop: DropReason };

/**
 * Reads everything that the mail says; of a link's mail this makes the secret anew, in the transaction that says that the
 * mail is being sent.
 */
export async function mailFacts(deps: Deps, transaction: Queryable, mail: MailMatter): Promise<FoundFacts> {
	const order = await orderViewById(deps.database, mail.order_id);
	if (order.owner.erasedAt !== undefined || order.repairer.erasedAt !== undefined) return { drop: "erased" };
	const about = await aboutOf(deps, transaction, mail, order);
	return typeof about === "string" ? { drop: about } : { facts: await factsOf(deps, order, mail, about) };
}

/** The facts around what a mail is about. */
export async function factsOf(
	deps: Deps,
	order: OrderView,
	mail: Pick<MailMatter, "kind" | "party_id">,
	about: MailAbout,
): Promise<MailFacts> {
	const { owner, repairer, item } = order;
	const isToStranger = (about.kind === "link" || about.kind === "reminder") && about.for === "reader";
	const reader = mail.party_id === repairer.id ? repairer.name : owner.name;
	return {
		orderId: order.id,
		shop: repairer.name,
		item: itemName(item),
		reader: isToStranger ? null : reader,
		now: deps.now(),
		checkpoint: await readCheckpointFacts(deps),
		about,
	};
}

async function aboutOf(
	deps: Deps,
	transaction: Queryable,
	mail: MailMatter,
	order: OrderView,
): Promise<MailAbout | DropReason> {
	switch (mail.kind) {
		case "link":
		case "code":
		case "reminder":
			return aboutLink(deps, transaction, mail.kind, mail.subject);
		case "receipt":
			return aboutReceipt(deps, transaction, mail);
		case "sealed":
			return aboutSealed(deps, transaction, mail, order);
		case "period":
			return aboutPeriod(deps, mail, order);
	}
}

async function aboutLink(
	deps: Deps,
	transaction: Queryable,
	kind: "link" | "code" | "reminder",
	linkId: string,
): Promise<MailAbout | DropReason> {
	const link = await linkById(transaction, linkId);
	if (link === null) return "not-there";
	const isOver = link.revoked_at !== null || !(deps.now() < link.expires_at);
	if (isOver) return "link-over";
	const [record, purpose] = await purposeOf(transaction, link);
	if (record?.state === "sealed" || record?.state === "discarded") return "answered";
	const until = link.expires_at;
	if (kind === "reminder") {
		// A link that is only for reading is answered by opening it.
		if (link.first_used_at !== null && record === null) return "answered";
		const url = link.first_used_at === null ? await freshLinkUrl(deps, transaction, linkId) : null;
		return { kind, for: purpose, url, until };
	}
	if (link.first_used_at !== null) return "link-used";
	if (kind === "code") {
		const code = await freshLinkCode(deps, transaction, linkId);
		return code === null ? "link-used" : { kind, code };
	}
	const url = await freshLinkUrl(deps, transaction, linkId);
	return url === null ? "link-used" : { kind, for: purpose, url, until };
}

async function purposeOf(database: Queryable, link: LinkRow) {
	if (link.scope !== "record" || link.record_id === null) return [null, link.scope as LinkFor] as const;
	const record = await recordById(database, link.record_id);
	if (record === null) throw new Error(`link ${link.id} names no record`);
	return [record, record.stage as LinkFor] as const;
}

async function aboutReceipt(deps: Deps, database: Queryable, mail: MailMatter): Promise<MailAbout | DropReason> {
	const record = await recordById(database, mail.subject);
	if (record === null || record.state !== "sealed") return "not-there";
	const shop = { kind: "account", accountId: mail.asked_by, via: "token" } as const;
	const receipt = await readReceipt(deps, shop, record.id);
	const entry = await sealOf(database, mail.order_id, record.id);
	return {
		kind: "receipt",
		sealedAt: entry.time,
		fingerprint: entry.statementSha256 ?? "",
		verifyPage: `${deps.publicUrl}/verify`,
		file: {
			fileName: `handover-receipt-${record.id}.json`,
			mediaType: "application/json",
			bytes: receiptBytes(receipt),
		},
	};
}

async function aboutSealed(
	deps: Deps,
	database: Queryable,
	mail: MailMatter,
	order: OrderView,
): Promise<MailAbout | DropReason> {
	const byLink = mail.party_id === order.owner.id;
	const orderPage = `${deps.publicUrl}/orders/${order.id}`;
	const sealed = await sealedThing(database, mail.subject, orderPage);
	if (sealed === null) return "not-there";
	const entry = await sealOf(database, order.id, mail.subject);
	return { kind: "sealed", ...sealed, sealedAt: entry.time, fingerprint: entry.statementSha256 ?? "", byLink };
}

/** What was sealed, and the page that shows it to both sides. */
async function sealedThing(database: Queryable, subject: string, orderPage: string) {
	if (subject.startsWith("pos_")) return { what: "position", page: `${orderPage}/positions` } as const;
	if (subject.startsWith("stl_")) return { what: "settlement", page: `${orderPage}/settlement` } as const;
	const record = await recordById(database, subject);
	if (record === null) return null;
	const leg = record.consignment_id;
	const page = leg === null ? orderPage : `${orderPage}/consignments/${leg}/comparison`;
	return { what: `record-${record.stage}`, page } as const;
}

async function aboutPeriod(deps: Deps, mail: MailMatter, order: OrderView): Promise<MailAbout | DropReason> {
	const leg = order.consignments.find(({ id }) => id === mail.subject);
	const claim = await claimInQuestion(deps, order, mail.subject, speakerOf(mail.language));
	const period = claim === null ? undefined : watchedPeriods(claim).find(({ ruleId }) => ruleId === mail.rule_id);
	if (leg === undefined || claim === null || period?.safeDate == null || !((period.leftDays ?? -1) >= 0))
		return "passed";
	if (!isStillOpen(claim, period)) return "passed";
	const byLink = mail.party_id === order.owner.id;
	if (byLink && (!concernsOwner(order, claim, period) || (await isSettled(deps, order.id)))) return "passed";
	return {
		kind: "period",
		leg: leg.leg,
		what: period.what,
		date: period.safeDate,
		leftDays: period.leftDays ?? 0,
		article: period.article,
		isRead: period.standing === "published",
		isSuggested: claim.regimeBasis === "suggested",
		form: period.form,
		claimants: claim.claimants,
		role: claim.consignorId === mail.party_id ? "sender" : "consignee",
		byLink,
		page: `${deps.publicUrl}/orders/${order.id}/consignments/${leg.id}/claim`,
	};
}

async function sealOf(database: Queryable, orderId: string, subject: string) {
	const entries = await entriesOfOrder(database, orderId);
	const entry = entries.find((one) => one.subject === subject && one.statementSha256 !== null);
	if (entry === undefined) throw new Error(`${subject} is sealed and not in the log`);
	return entry;
}
