/**
 * What a dossier holds of its order, once it is verified: the receipt, and the order as it is noted. What is noted is not
 * sealed, so every id and code in it is held against the sealed statements.
 */
import { type OrderFileContent, orderFileContent } from "../../contract/order-file.ts";
import type { ReadInEntry } from "../../database/read-in.ts";
import { Fault } from "../../faults.ts";
import { sha256Hex } from "../../records/canonical.ts";
import type { Receipt } from "../../records/receipt.ts";
import type { SealedStatement } from "../../records/record-statement.ts";
import { leafHash } from "../../records/verify/hashes.ts";
import { validate } from "../validate.ts";
import { ReadInRefusal } from "./read-in-refusal.ts";

export type NotedOrder = OrderFileContent["order"];

export interface DossierContent {
	readonly order: NotedOrder;
	readonly receipt: Receipt;
	/** In log order; the entry at a place is the receipt's at the same place. */
	readonly entries: readonly ReadInEntry[];
	/** Of the entries that seal a record. */
	readonly records: readonly { readonly entry: ReadInEntry; readonly statement: SealedStatement }[];
	/** Of those that seal a pack. */
	readonly packs: readonly { readonly id: string; readonly consignmentId: string }[];
}

/** What an entry's bytes say (records/entry.ts). */
interface SaidByEntry {
	readonly index: number;
	readonly kind: string;
	readonly subject: string;
	readonly by: string;
	readonly time: string;
}

/** @param receiptBytes of a verified receipt @throws ReadInRefusal, naming what is at odds */
export function dossierContent(receiptBytes: Uint8Array, orderBytes: Uint8Array): DossierContent {
	const receipt = JSON.parse(Buffer.from(receiptBytes).toString("utf8")) as Receipt;
	const order = notedOrder(orderBytes);
	if (receipt.about !== order.id) throw new ReadInRefusal("order-file", `/order/id is not ${receipt.about}`);
	refuseOddLegs(order);
	const entries = receipt.entries.map(entryOf);
	const statements = (kind: string) =>
		entries.flatMap((entry) =>
			entry.kind !== kind || entry.statementBytes === null
				? []
				: [{ entry, statement: JSON.parse(Buffer.from(entry.statementBytes).toString("utf8")) }],
		);
	const records = statements("record-sealed") as { entry: ReadInEntry; statement: SealedStatement }[];
	for (const record of records) refuseOddRecord(order, record);
	for (const { entry, statement } of statements("position-sealed"))
		refuseOddStatement(order, entry, statement, "positionId");
	for (const { entry, statement } of statements("settlement-sealed"))
		refuseOddStatement(order, entry, statement, "stepId");
	const packs = statements("assessment-sealed").map(({ entry, statement }) => {
		const { assessmentId: id, orderId, consignmentId } = statement as Readonly<Record<string, string>>;
		const isOfOrder = orderId === order.id && order.consignments.some((leg) => leg.id === consignmentId);
		if (id !== entry.subject || !isOfOrder || consignmentId === undefined) throw odd(entry, "consignmentId");
		return { id, consignmentId };
	});
	return { order, receipt, entries, records, packs };
}

function notedOrder(bytes: Uint8Array): NotedOrder {
	try {
		return validate(orderFileContent, JSON.parse(Buffer.from(bytes).toString("utf8"))).order;
	} catch (error) {
		const where =
			error instanceof Fault ? error.members.map(({ path, code }) => `${path}: ${code}`).join("; ") : "JSON";
		throw new ReadInRefusal("order-file", where);
	}
}

/** Legs are numbered from 1 without a gap, each between the two parties. */
function refuseOddLegs({ consignments, owner, repairer, id }: NotedOrder): void {
	for (const [place, leg] of consignments.entries()) {
		const [from, to] = leg.direction === "to-repairer" ? [owner.id, repairer.id] : [repairer.id, owner.id];
		if (leg.leg !== place + 1 || leg.orderId !== id || leg.consignorId !== from || leg.consigneeId !== to) {
			throw new ReadInRefusal("order-file", `/order/consignments/${place}`);
		}
	}
}

function entryOf({ entry, statement, proof }: Receipt["entries"][number]): ReadInEntry {
	const entryBytes = Buffer.from(entry, "base64");
	const { index, kind, subject, by, time } = JSON.parse(entryBytes.toString("utf8")) as SaidByEntry;
	const statementBytes = statement === undefined ? null : Buffer.from(statement, "base64");
	return {
		index,
		kind,
		subject,
		byId: by,
		time: new Date(time),
		entryBytes,
		leafSha256: leafHash(entryBytes),
		statementBytes,
		statementSha256: statementBytes === null ? null : sha256Hex(statementBytes),
		proof,
	};
}

/** What was sealed is of this order, its item, its parties and its legs. */
function refuseOddRecord(order: NotedOrder, { entry, statement }: DossierContent["records"][number]): void {
	const isLeg = order.consignments.some(({ id }) => id === statement.consignmentId);
	const said: Readonly<Record<string, boolean>> = {
		recordId: statement.recordId === entry.subject,
		orderId: statement.orderId === order.id,
		itemId: statement.itemId === order.item.id,
		itemClass: statement.itemClass === order.item.class,
		holderId: [order.owner.id, order.repairer.id].includes(statement.holderId),
		consignmentId: statement.stage === "bench" ? statement.consignmentId === undefined : isLeg,
	};
	const wrong = Object.keys(said).find((name) => said[name] !== true);
	if (wrong !== undefined) throw odd(entry, wrong);
}

/** What a party stated or settled is of this order and one of its parties. */
function refuseOddStatement(
	{ id, owner, repairer }: NotedOrder,
	entry: ReadInEntry,
	statement: Readonly<Record<string, unknown>>,
	ownId: "positionId" | "stepId",
): void {
	if (statement[ownId] !== entry.subject) throw odd(entry, ownId);
	if (statement.orderId !== id) throw odd(entry, "orderId");
	if (statement.partyId !== owner.id && statement.partyId !== repairer.id) throw odd(entry, "partyId");
}

function odd({ index }: ReadInEntry, member: string): ReadInRefusal {
	return new ReadInRefusal("order-file", `${member}, entry ${index}`);
}
