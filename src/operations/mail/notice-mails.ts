/** Mails that nobody asks for each time: what one side sealed is told to the other, once, as the shop chose for the order. */

import { linkById } from "../../database/access.ts";
import type { Queryable } from "../../database/connection.ts";
import { hasNewSeals, insertMail, mailChoiceOf, type SealedNotice, takeNewSeals } from "../../database/mail.ts";
import { orderOfSealed } from "../../database/sealed.ts";
import type { Deps } from "../deps.ts";
import { orderViewById } from "../orders/order-view.ts";
import { languageFor, recipientOf } from "./recipient.ts";

/** Entries that the other side should hear of. A sealed pack stands in the record's comparison and is not told apart. */
const TOLD = ["record-sealed", "position-sealed", "settlement-sealed"];

/** Looks through what was sealed since the last look, and queues what the other side should hear of. */
export async function queueNotices(deps: Deps): Promise<void> {
	if (!(await hasNewSeals(deps.database))) return;
	await deps.database.transaction(async (transaction) => {
		for (const seal of await takeNewSeals(transaction, TOLD)) await queueNotice(deps, transaction, seal);
	});
}

async function queueNotice(deps: Deps, transaction: Queryable, seal: SealedNotice): Promise<void> {
	const orderId = await orderOfSealed(transaction, seal.subject);
	if (orderId === null) return;
	const order = await orderViewById(deps.database, orderId);
	if (order.owner.erasedAt !== undefined || order.repairer.erasedAt !== undefined) return;
	const choice = await mailChoiceOf(transaction, orderId);
	const link = seal.by_id.startsWith("lnk_") ? await linkById(transaction, seal.by_id) : null;
	const isByRepairer = link === null || link.party_id === order.repairer.id;
	if (!(isByRepairer ? choice.to_owner : choice.to_repairer)) return;
	const reader = isByRepairer ? order.owner : order.repairer;
	if (recipientOf(order, reader.id, undefined) === null) return;
	await insertMail(transaction, {
		id: deps.newId("mal"),
		kind: "sealed",
		order_id: orderId,
		party_id: reader.id,
		subject: seal.subject,
		language: languageFor(order, reader.id),
		asked_by: seal.by_id,
		once_key: `sealed/${seal.index}`,
	});
}
