/** Keeping a notice to the carrier as it was sent, and what shows its sending and receipt. Kept, not sealed: it is no statement to the other side. */
import type { Caller } from "../../access/caller.ts";
import type { CivilDate } from "../../calculations/civil-date.ts";
import type { NoticeInput, NoticeReceipt, NoticeView } from "../../contract/notices.ts";
import { insertNotice, type NoticeRow, noteReceived, noticeById, noticesOf } from "../../database/notices.ts";
import { orderById, ownerOfOrder } from "../../database/orders.ts";
import { pictureUsesOfOrder } from "../../database/pictures.ts";
import { fault, invalid } from "../../faults.ts";
import { createOnce } from "../create-once.ts";
import type { Deps } from "../deps.ts";
import { callerId } from "../may.ts";
import { readConsignment } from "../orders/consignments.ts";
import { sideOf } from "../settling/side-of.ts";
import { localDate } from "./local-date.ts";

interface Typed {
	readonly text: string;
	readonly proofOfSending?: string;
}
type Plain = Pick<NoticeInput, "language" | "sentOn" | "sentBy" | "sendingFile">;

/** @throws forbidden for a caller that speaks for no side; bad-input for a day that has not come, or a file that no sealed record of the order names */
export async function noteNotice(
	deps: Deps,
	caller: Caller,
	consignmentId: string,
	input: NoticeInput,
	idempotencyKey: string | null,
): Promise<NoticeView> {
	const leg = await readConsignment(deps, caller, consignmentId);
	await mustBeSide(deps, caller, leg.orderId);
	mustHaveCome(deps, input.sentOn, "/sentOn");
	await mustBeSealed(deps, leg.orderId, input.sendingFile, "/sendingFile");
	const { text, proofOfSending, ...plain } = input;
	const id = await createOnce(deps, caller, idempotencyKey, { consignmentId, ...input }, async (transaction) => {
		const partyId = await ownerOfOrder(transaction, leg.orderId);
		const noticeId = deps.newId("ntc");
		const personal: Typed = { text, ...(proofOfSending === undefined ? {} : { proofOfSending }) };
		await insertNotice(transaction, {
			id: noticeId,
			consignment_id: consignmentId,
			order_id: leg.orderId,
			party_id: partyId,
			plain,
			personal,
			noted_by: callerId(caller),
		});
		return noticeId;
	});
	return viewOf((await noticeById(deps.database, id)) as NoticeRow);
}

/** @throws not-found; bad-input before the day of sending, or for one that has not come; already-noted a second time */
export async function noteNoticeReceived(
	deps: Deps,
	caller: Caller,
	noticeId: string,
	{ receivedOn, proofOfReceipt, receiptFile }: NoticeReceipt,
): Promise<NoticeView> {
	const row = await noticeById(deps.database, noticeId);
	if (row === null) throw fault("not-found");
	await mustBeSide(deps, caller, row.order_id);
	if (receivedOn < (row.plain as Plain).sentOn) throw invalid([{ path: "/receivedOn", code: "before-sending" }]);
	mustHaveCome(deps, receivedOn, "/receivedOn");
	await mustBeSealed(deps, row.order_id, receiptFile, "/receiptFile");
	const isFirst = await deps.database.transaction(async (transaction) => {
		await ownerOfOrder(transaction, row.order_id);
		return noteReceived(transaction, row, receivedOn, proofOfReceipt ?? null, receiptFile ?? null);
	});
	if (!isFirst) throw fault("already-noted");
	return viewOf((await noticeById(deps.database, noticeId)) as NoticeRow);
}

/** In the order in which they were noted. */
export async function readNotices(deps: Deps, caller: Caller, consignmentId: string): Promise<NoticeView[]> {
	const leg = await readConsignment(deps, caller, consignmentId);
	return (await noticesOf(deps.database, leg.id)).map(viewOf);
}

/** The day has begun wherever on earth it begins first, 14 hours before UTC. */
function mustHaveCome(deps: Deps, day: CivilDate, path: string): void {
	if (day > localDate(deps.now(), 14 * 60)) throw invalid([{ path, code: "day-to-come" }]);
}

async function mustBeSide(deps: Deps, caller: Caller, orderId: string): Promise<void> {
	const order = await orderById(deps.database, orderId);
	if (order === null) throw fault("not-found");
	sideOf(caller, order);
}

/** A file can be handed on with a notice only where it is in the order, and so in its dossier: by a record that was sealed. */
async function mustBeSealed(deps: Deps, orderId: string, sha256: string | undefined, path: string): Promise<void> {
	if (sha256 === undefined) return;
	const uses = await pictureUsesOfOrder(deps.database, orderId, [sha256]);
	if (!uses.some(({ record_state }) => record_state === "sealed")) throw invalid([{ path, code: "no-sealed-file" }]);
}

function viewOf(row: NoticeRow): NoticeView {
	const { language, sentOn, sentBy, sendingFile } = row.plain as Plain;
	const { text, proofOfSending } = row.personal as Typed;
	return {
		id: row.id,
		consignmentId: row.consignment_id,
		orderId: row.order_id,
		language,
		text,
		sentOn,
		sentBy,
		proofOfSending: proofOfSending ?? null,
		sendingFile: sendingFile ?? null,
		receivedOn: row.received_on,
		proofOfReceipt: row.receipt_personal as string | null,
		receiptFile: row.receipt_sha256,
		notedBy: row.noted_by,
		notedAt: row.noted_at.toISOString(),
	};
}
