/**
 * One look at the queue of mails: writes and sends the one that is due longest. Each is claimed by one instance, and that it
 * is being sent is on disk before a connection is opened. So a process that ends in the middle leaves a mail of which nobody
 * knows whether it was taken; that one is shown as not clear and never sent again by itself. The other choice, to send it
 * again, would bring some mails twice, and the older of two addresses in them opens nothing.
 */
import type { Queryable } from "../../database/connection.ts";
import {
	beginSending,
	dropMail,
	lockDueMail,
	type MailRow,
	markUnclear,
	noteMailOutcome,
} from "../../database/mail.ts";
import { speakerOf } from "../../texts/speaker.ts";
import type { Deps } from "../deps.ts";
import { orderViewById } from "../orders/order-view.ts";
import { composeMail } from "./compose-mail.ts";
import { mailBytes, type Sender } from "./mail-bytes.ts";
import { mailFacts } from "./mail-facts.ts";
import { recipientOf } from "./recipient.ts";
import type { Envelope, SendOutcome } from "./smtp-sender.ts";

/** Gives a mail to the shop's mail server. */
export type GiveToServer = (envelope: Envelope, bytes: Uint8Array, stop: AbortSignal) => Promise<SendOutcome>;

export interface Mailing {
	readonly from: Sender;
	readonly give: GiveToServer;
}

/** Pauses between tries, which double up to the most; together about two days. Our choice. */
export const PAUSE_S = { first: 60, most: 2 * 3600 };
export const MOST_TRIES = 30;
/** After this nobody sends a mail any more that was begun: five times what one try may take. Our choice. */
const LEASE_S = 300;

export type MailOutcome = "nothing-due" | "dropped" | SendOutcome["state"];

/** @param stop breaks a running try off */
export async function sendDueMail(
	deps: Deps,
	{ from, give }: Mailing,
	stop: AbortSignal,
	leaseS = LEASE_S,
): Promise<MailOutcome> {
	const lost = await markUnclear(deps.database);
	if (lost > 0) deps.log.warn({ mails: lost }, "not clear whether mails were sent");
	const due = await deps.database.transaction((transaction) => claim(deps, transaction, from, leaseS));
	if (due === null) return "nothing-due";
	if (due === "dropped") return "dropped";
	const outcome = await give({ from: from.address, to: due.to }, due.bytes, stop);
	const isLast = outcome.state === "again" && due.attempt >= MOST_TRIES;
	const state = isLast ? "given-up" : outcome.state === "again" ? "queued" : outcome.state;
	const pauseS = Math.min(PAUSE_S.most, PAUSE_S.first * 2 ** Math.min(due.attempt - 1, 30));
	await deps.database.transaction((transaction) =>
		noteMailOutcome(transaction, due.row, due.attempt, { state, pauseS, answer: outcome.answer }),
	);
	// The answer may name the address, so it is not logged.
	const facts = { mail: due.row.id, kind: due.row.kind, attempt: due.attempt, state };
	if (outcome.state === "sent") deps.log.info(facts, "mail sent");
	else deps.log.warn(facts, "mail not sent");
	return outcome.state;
}

interface DueMail {
	readonly row: MailRow;
	readonly attempt: number;
	readonly to: string;
	readonly bytes: Buffer;
}

/** The mail that is due, written, and marked as being sent. */
async function claim(
	deps: Deps,
	transaction: Queryable,
	from: Sender,
	leaseS: number,
): Promise<DueMail | "dropped" | null> {
	const row = await lockDueMail(transaction);
	if (row === null) return null;
	const drop = async (reason: string) => {
		await dropMail(transaction, row.id, reason);
		return "dropped" as const;
	};
	const to = recipientOf(await orderViewById(deps.database, row.order_id), row.party_id, row.personal.to);
	if (to === null) return drop("no-address");
	const found = await mailFacts(deps, transaction, row);
	if ("drop" in found) return drop(found.drop);
	const mail = composeMail(found.facts, speakerOf(row.language));
	const bytes = await mailBytes(mail, { id: row.id, from, to, date: deps.now() });
	return { row, attempt: await beginSending(transaction, row.id, leaseS), to, bytes };
}
