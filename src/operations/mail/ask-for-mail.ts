/** What the shop does with mails: asks for one, looks at what became of them, sends one again, copies a text, chooses. */
import type { Caller } from "../../access/caller.ts";
import type { MailChoice, MailInput, MailList, MailTextView, MailView } from "../../contract/mail.ts";
import type { OrderView } from "../../contract/orders.ts";
import { linkById } from "../../database/access.ts";
import type { Queryable } from "../../database/connection.ts";
import {
	insertMail,
	type MailRow,
	mailById,
	mailChoiceOf,
	mailsOfOrder,
	type NewMail,
	saveMailChoice,
} from "../../database/mail.ts";
import { ownerOfOrder } from "../../database/orders.ts";
import { recordById } from "../../database/records.ts";
import { lockOrder } from "../../database/settling.ts";
import { fault, invalid } from "../../faults.ts";
import { speakerOf } from "../../texts/speaker.ts";
import type { Deps } from "../deps.ts";
import { callerId, mustBeShop } from "../may.ts";
import { orderViewById } from "../orders/order-view.ts";
import { composeMail } from "./compose-mail.ts";
import { type DropReason, factsOf, mailFacts } from "./mail-facts.ts";
import { languageFor, recipientOf } from "./recipient.ts";

type Matter = Omit<NewMail, "id" | "asked_by" | "order_id">;

/**
 * Queues a mail.
 * @throws no-mail-server; bad-input naming what does not belong to the order, or that no address is known
 */
export async function askForMail(deps: Deps, caller: Caller, orderId: string, input: MailInput): Promise<MailView> {
	mustBeShop(caller);
	const order = await orderViewById(deps.database, orderId);
	if (!deps.canMail) throw fault("no-mail-server");
	const matter = await matterOf(deps, order, input);
	if (recipientOf(order, matter.party_id, matter.to) === null) throw invalid([{ path: "/to", code: "no-address" }]);
	return queue(deps, caller, order, matter);
}

/** Queues the same once more, as a mail of its own: the one before keeps its state. */
export async function sendAgain(deps: Deps, caller: Caller, orderId: string, mailId: string): Promise<MailView> {
	mustBeShop(caller);
	if (!deps.canMail) throw fault("no-mail-server");
	const row = await mailOf(deps, orderId, mailId);
	if (row.ended_at === null) throw fault("already-there");
	return queue(deps, caller, await orderViewById(deps.database, orderId), matterOfRow(row));
}

/** A mail's text, to be sent by hand. Of a link it holds a new address or code. @throws bad-input where it is needless */
export async function mailTextOf(deps: Deps, caller: Caller, orderId: string, input: MailInput): Promise<MailTextView> {
	mustBeShop(caller);
	const order = await orderViewById(deps.database, orderId);
	return textOf(deps, caller, order, await matterOf(deps, order, input));
}

/** The same of a mail that was asked for. */
export async function mailTextAgain(
	deps: Deps,
	caller: Caller,
	orderId: string,
	mailId: string,
): Promise<MailTextView> {
	mustBeShop(caller);
	const row = await mailOf(deps, orderId, mailId);
	if (row.state === "queued" || row.state === "sending") throw fault("already-there");
	return textOf(deps, caller, await orderViewById(deps.database, orderId), matterOfRow(row));
}

/** The text that goes with a link's address while it is shown. */
export async function newLinkText(
	deps: Deps,
	link: { readonly id: string; readonly orderId: string; readonly url: string },
): Promise<MailTextView> {
	const [order, row] = await Promise.all([
		orderViewById(deps.database, link.orderId),
		linkById(deps.database, link.id),
	]);
	if (row === null) throw new Error(`link ${link.id} was made and is gone`);
	const record = row.record_id === null ? null : await recordById(deps.database, row.record_id);
	const purpose = record?.stage ?? (row.scope as "settle" | "reader");
	const party_id = row.party_id ?? order.owner.id;
	const about = { kind: "link", for: purpose, url: link.url, until: row.expires_at } as const;
	const { subject, text } = composeMail(
		await factsOf(deps, order, { kind: "link", party_id }, about),
		speakerOf(languageFor(order, party_id, row.scope === "reader")),
		true,
	);
	return { to: row.scope === "reader" ? null : recipientOf(order, party_id, undefined), subject, text };
}

export async function readMails(deps: Deps, caller: Caller, orderId: string): Promise<MailList> {
	mustBeShop(caller);
	const order = await orderViewById(deps.database, orderId);
	const rows = await mailsOfOrder(deps.database, orderId);
	const { to_owner, to_repairer, periods, periods_to_owner } = await mailChoiceOf(deps.database, orderId);
	return {
		canSend: deps.canMail,
		mails: rows.map((row) => mailViewOf(row, order)),
		choice: { toOwner: to_owner, toRepairer: to_repairer, periods, periodsToOwner: periods_to_owner },
	};
}

export async function chooseMails(deps: Deps, caller: Caller, orderId: string, choice: MailChoice): Promise<void> {
	mustBeShop(caller);
	await orderViewById(deps.database, orderId);
	const { toOwner, toRepairer, periods, periodsToOwner } = choice;
	await saveMailChoice(deps.database, orderId, {
		to_owner: toOwner,
		to_repairer: toRepairer,
		periods,
		periods_to_owner: periodsToOwner,
	});
}

async function queue(deps: Deps, caller: Caller, order: OrderView, matter: Matter): Promise<MailView> {
	const id = deps.newId("mal");
	const isNew = await deps.database.transaction(async (transaction) => {
		await ownerOfOrder(transaction, order.id);
		// Two who ask at once would each look before the other's mail is there.
		await lockOrder(transaction, order.id);
		const mails = await mailsOfOrder(transaction, order.id);
		await refuseOneWay(transaction, order, matter, mails);
		// A second mail about a link makes the address in the first one useless.
		if (mails.some((row) => isUnderWay(row, matter, deps.now()))) return false;
		return insertMail(transaction, {
			...matter,
			id,
			order_id: order.id,
			asked_by: callerId(caller),
		});
	});
	if (!isNew) throw fault("already-there");
	return mailViewOf(await mailOf(deps, order.id, id), order);
}

async function textOf(deps: Deps, caller: Caller, order: OrderView, matter: Matter): Promise<MailTextView> {
	const found = await deps.database.transaction(async (transaction) => {
		await refuseOneWay(transaction, order, matter, await mailsOfOrder(transaction, order.id));
		return mailFacts(deps, transaction, {
			...matter,
			rule_id: matter.rule_id ?? null,
			order_id: order.id,
			asked_by: callerId(caller),
		});
	});
	if ("drop" in found && found.drop === "erased") throw fault("erased");
	if ("drop" in found) throw invalid([{ path: `/${pathOf(matter.kind)}`, code: codeOf(found.drop) }]);
	const { subject, text } = composeMail(found.facts, speakerOf(matter.language), true);
	return { to: recipientOf(order, matter.party_id, matter.to), subject, text };
}

/** What a mail was about, to be written once more. */
function matterOfRow({ kind, party_id, subject, rule_id, language, personal }: MailRow): Matter {
	return {
		kind,
		language,
		party_id,
		subject,
		once_key: null,
		...(rule_id === null ? {} : { rule_id }),
		...(personal.to === undefined ? {} : { to: personal.to }),
	};
}

async function matterOf(deps: Deps, order: OrderView, input: MailInput): Promise<Matter> {
	const to = input.to === undefined ? {} : { to: input.to };
	if (input.kind === "receipt") {
		const record = await recordById(deps.database, input.recordId);
		if (record?.order_id !== order.id || record.state !== "sealed") {
			throw invalid([{ path: "/recordId", code: "no-such-record" }]);
		}
		const party_id = order.owner.id;
		return {
			kind: "receipt",
			party_id,
			language: languageFor(order, party_id),
			subject: record.id,
			once_key: null,
			...to,
		};
	}
	const link = await linkById(deps.database, input.linkId);
	if (link?.order_id !== order.id) throw invalid([{ path: "/linkId", code: "unknown-id" }]);
	// A reading link is for someone who is no party of the order: what is typed about it belongs to the order.
	const party_id = link.party_id ?? order.owner.id;
	if (link.scope === "reader" && input.to === undefined) throw invalid([{ path: "/to", code: "no-address" }]);
	const afterDays = input.kind === "reminder" ? input.afterDays : undefined;
	return {
		kind: input.kind,
		party_id,
		language: languageFor(order, party_id, link.scope === "reader"),
		subject: link.id,
		once_key: afterDays === undefined ? null : `reminder/${link.id}`,
		...to,
		...(afterDays === undefined ? {} : { after_days: afterDays }),
	};
}

/** Address and code of a link never go to the same address: whoever reads one there would have both. */
async function refuseOneWay(
	transaction: Queryable,
	order: OrderView,
	{ kind, subject, party_id, to }: Matter,
	mails: readonly MailRow[],
): Promise<void> {
	if (kind !== "link" && kind !== "code" && kind !== "reminder") return;
	const isCode = kind === "code";
	const link = await linkById(transaction, subject);
	const others = mails.filter((mail) => mail.subject === subject && (mail.kind === "code") !== isCode);
	// The address that was shown when the link was made is taken to have gone to the party's own.
	const typed = [
		...others.map(({ personal }) => personal.to),
		...(isCode && link?.scope !== "reader" ? [undefined] : []),
	];
	const taken = typed.map((address) => recipientOf(order, party_id, address)?.toLowerCase());
	const wanted = recipientOf(order, party_id, to)?.toLowerCase();
	if (wanted !== undefined && taken.includes(wanted)) throw invalid([{ path: "/to", code: "same-address" }]);
}

/** Whether a mail about the same to the same address is being sent or about to be. One that is due later is for its day. */
function isUnderWay(row: MailRow, matter: Matter, now: Date): boolean {
	if (row.kind !== matter.kind || row.subject !== matter.subject || row.personal.to !== matter.to) return false;
	return row.state === "sending" || (row.state === "queued" && (row.attempts > 0 || row.next_try_at <= now));
}

/** A mail of the order. @throws not-found */
async function mailOf(deps: Deps, orderId: string, mailId: string): Promise<MailRow> {
	const row = await mailById(deps.database, mailId);
	if (row?.order_id !== orderId) throw fault("not-found");
	return row;
}

function pathOf(kind: MailRow["kind"]): string {
	return kind === "receipt" ? "recordId" : "linkId";
}

function codeOf(reason: DropReason): string {
	return `mail-${reason}`;
}

function mailViewOf(row: MailRow, order: OrderView): MailView {
	return {
		id: row.id,
		kind: row.kind,
		orderId: row.order_id,
		partyId: row.party_id,
		subject: row.subject,
		to: recipientOf(order, row.party_id, row.personal.to),
		state: row.state,
		reason: row.reason,
		answer: row.personal.answer ?? null,
		attempts: row.attempts,
		askedAt: row.asked_at.toISOString(),
		nextTryAt: row.state === "queued" ? row.next_try_at.toISOString() : null,
		endedAt: row.ended_at?.toISOString() ?? null,
	};
}
