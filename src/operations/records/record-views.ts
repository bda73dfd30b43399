/** Records of an order as views: drafts with their content, sealed ones with their statement opened. */
import type { RecordContentInput, RecordView } from "../../contract/records.ts";
import type { Queryable } from "../../database/connection.ts";
import { type RecordRow, recordsOfOrder } from "../../database/records.ts";
import { entriesOfOrder, isSealed } from "../../database/sealed.ts";
import { openStatement } from "../../records/open-statement.ts";
import { signedAt } from "../../records/party-signature.ts";
import type { LoggedEntry, SealedEntry } from "../../records/receipt.ts";
import type { OpenedStatement } from "../../records/record-statement.ts";

/** A sealed record as the comparison and the pages read it. */
export interface SealedRecord {
	readonly view: RecordView;
	readonly statement: OpenedStatement;
	readonly entry: SealedEntry;
}

/** Every record of an order that was not discarded, in the order of its opening. */
export async function recordViewsOfOrder(database: Queryable, orderId: string): Promise<RecordView[]> {
	const [rows, entries] = await Promise.all([recordsOfOrder(database, orderId), entriesOfOrder(database, orderId)]);
	return rows.filter((row) => row.state !== "discarded").map((row) => viewOf(row, rows, entries));
}

/** The sealed records of an order on its custody line: by observed time, then by place in the log. */
export async function sealedRecordsOfOrder(database: Queryable, orderId: string): Promise<SealedRecord[]> {
	const [rows, entries] = await Promise.all([recordsOfOrder(database, orderId), entriesOfOrder(database, orderId)]);
	return sealedRecordsIn(rows, entries);
}

/** Those among an order's entries that were read already. */
export function sealedRecordsIn(rows: readonly RecordRow[], entries: readonly LoggedEntry[]): SealedRecord[] {
	return entries
		.filter(isSealed)
		.flatMap((entry) => {
			const row = rows.find((candidate) => candidate.id === entry.subject);
			if (row === undefined) return [];
			const view = viewOf(row, rows, entries);
			return [{ view, entry, statement: view.sealed?.statement as unknown as OpenedStatement }];
		})
		.sort((a, b) => a.statement.observed.at.localeCompare(b.statement.observed.at) || a.entry.index - b.entry.index);
}

function viewOf(row: RecordRow, rows: readonly RecordRow[], entries: readonly LoggedEntry[]): RecordView {
	const entry = entries.filter(isSealed).find((candidate) => candidate.subject === row.id);
	const signed = entry === undefined ? null : signedAt(entry.leafSha256, entries);
	const successor = rows.find((candidate) => candidate.amends === row.id && candidate.state === "sealed");
	return {
		id: row.id,
		orderId: row.order_id,
		consignmentId: row.consignment_id,
		stage: row.stage,
		depth: row.depth,
		provenance: row.provenance,
		state: row.state,
		holderId: row.holder_id,
		amends: row.amends,
		supersededBy: successor?.id ?? null,
		openedAt: row.opened_at.toISOString(),
		openedBy: row.opened_by,
		version: row.version,
		ownCatalogueVersion: row.own_catalogue_version,
		content: row.state === "draft" ? (row.content as RecordContentInput) : null,
		sealed:
			entry === undefined
				? null
				: {
						index: entry.index,
						at: entry.time.toISOString(),
						by: entry.byId,
						fingerprint: entry.statementSha256,
						leafSha256: entry.leafSha256,
						partySigned: signed !== null,
						partySignedAt: signed?.toISOString() ?? null,
						statement: openStatement(entry.statementBytes, entry.openings) as NonNullable<
							RecordView["sealed"]
						>["statement"],
					},
	};
}
