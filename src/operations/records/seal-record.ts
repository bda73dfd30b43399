/** Seals a draft: closes it for good, in the log, in one transaction. */
import type { Caller } from "../../access/caller.ts";
import type { CheckDefinition } from "../../catalogue/checks/check.ts";
import { CATALOGUE_VERSION, checksOf } from "../../catalogue/checks/checks.ts";
import type { ItemClass } from "../../catalogue/codes.ts";
import type { InstrumentFacts } from "../../contract/benches.ts";
import { instrumentsById } from "../../database/benches.ts";
import type { Queryable } from "../../database/connection.ts";
import { type ItemRow, itemById, orderById } from "../../database/orders.ts";
import { closeDraft, exhibitsOfRecord, insertOpenings, type RecordRow, recordById } from "../../database/records.ts";
import { invalid } from "../../faults.ts";
import { canonicalBytes } from "../../records/canonical.ts";
import type { NotedTimes } from "../../records/claimed-times.ts";
import { makeCommitter } from "../../records/commitment.ts";
import type { Receipt } from "../../records/receipt.ts";
import type { ReadingContent, RecordContent } from "../../records/record-content.ts";
import {
	type RecordHeader,
	type ResolvedFacts,
	recordStatement,
	type StatementInstrument,
} from "../../records/record-statement.ts";
import { type SealableContent, shortcomings } from "../../records/seal-conditions.ts";
import type { Shortcoming } from "../../records/shortcoming.ts";
import type { Deps } from "../deps.ts";
import { appendToLog } from "../log/append-to-log.ts";
import { callerId } from "../may.ts";
import { type ItemParts, itemOf } from "../orders/personal-parts.ts";
import { ownCatalogueOf } from "../own-catalogue/own-catalogue.ts";
import { needsNoInstruments, type OfferedCheck, type OwnPart, ownPartOf } from "../own-catalogue/own-checks-of.ts";
import { notedTimes } from "./noted-times.ts";
import { readReceipt } from "./read-receipt.ts";
import { lockDraft } from "./save-draft.ts";

/**
 * Seals the draft and gives the receipt. What is acknowledged is in the log, on disk.
 * @throws bad-input naming everything that is missing; version-stale; already-sealed
 */
export async function sealRecord(deps: Deps, caller: Caller, recordId: string, version: number): Promise<Receipt> {
	await deps.database.transaction(async (transaction) => {
		const record = await lockDraft(transaction, caller, recordId, version);
		const content = record.content as RecordContent;
		const header = await headerOf(transaction, record);
		const checks = checksOf(header.itemClass);
		const resolved = await resolve(transaction, record, content);
		const times = await notedTimes(transaction, header);
		const missing = missingOf(deps, header, content, checks, { ...resolved, times });
		if (missing.length > 0) throw invalid(missing);
		const committer = makeCommitter(deps.randomBytes);
		const own = await ownPartFor(transaction, record, header.itemId);
		const asked = checks.filter((check) => !own.leftOut.includes(check.id));
		const readings = withOwnUntested(content.readings ?? [], own.offered, header.depth);
		const complete = { ...content, readings: withUntested(readings, asked, header.depth) } as SealableContent;
		const statementBytes = canonicalBytes(recordStatement(header, complete, resolved, committer));
		await insertOpenings(transaction, { subject: recordId, orderId: record.order_id }, committer.openings);
		await closeDraft(transaction, recordId, "sealed");
		await appendToLog(deps, transaction, {
			kind: "record-sealed",
			subject: recordId,
			byId: callerId(caller),
			statementBytes,
		});
	});
	return readReceipt(deps, caller, recordId);
}

/** What a draft still lacks before it may be sealed, for the page to say while it is being filled in. */
export async function sealingShortcomingsOf(deps: Deps, recordId: string): Promise<Shortcoming[]> {
	const record = await recordById(deps.database, recordId);
	if (record === null || record.state !== "draft") return [];
	const content = record.content as RecordContent;
	const header = await headerOf(deps.database, record);
	const resolved = await resolve(deps.database, record, content);
	const times = await notedTimes(deps.database, header);
	return missingOf(deps, header, content, checksOf(header.itemClass), { ...resolved, times });
}

function missingOf(
	deps: Deps,
	header: RecordHeader,
	content: RecordContent,
	checks: readonly CheckDefinition[],
	resolved: ResolvedFacts & { readonly times: NotedTimes },
): Shortcoming[] {
	const known = {
		checkIds: new Set(checks.map((check) => check.id)),
		instrumentIds: new Set(resolved.instruments.map((instrument) => instrument.id)),
		exhibitSha256s: new Set(resolved.exhibits.keys()),
		times: resolved.times,
	};
	return shortcomings(header, content, known, deps.now());
}

async function headerOf(database: Queryable, record: RecordRow): Promise<RecordHeader> {
	const order = await orderById(database, record.order_id);
	const item = order === null ? null : await itemById(database, order.item_id);
	if (order === null || item === null) throw new Error(`record ${record.id} lacks its order or item`);
	return {
		recordId: record.id,
		orderId: order.id,
		consignmentId: record.consignment_id,
		itemId: item.id,
		itemClass: item.class as ItemClass,
		holderId: record.holder_id,
		stage: record.stage,
		depth: record.depth,
		provenance: record.provenance,
		catalogueVersion: CATALOGUE_VERSION,
		amends: record.amends,
	};
}

/** The shop's own checks of the record's item, by the version that the record was opened with. */
async function ownPartFor(database: Queryable, record: RecordRow, itemId: string): Promise<OwnPart> {
	const item = await itemById(database, itemId);
	if (record.own_catalogue_version === null || item === null) return { offered: [], leftOut: [] };
	const catalogue = await ownCatalogueOf(database, record.own_catalogue_version);
	return ownPartOf(catalogue, itemOf(item as ItemParts & ItemRow));
}

async function resolve(database: Queryable, record: RecordRow, content: RecordContent): Promise<ResolvedFacts> {
	const named = [...new Set((content.readings ?? []).flatMap((reading) => reading.instrumentId ?? []))];
	const rows = await instrumentsById(database, named);
	const shop = rows.map((row): StatementInstrument<string> => {
		const facts = row.facts as InstrumentFacts;
		return { id: row.id, label: row.label, ...given(facts) };
	});
	const own = (content.ownInstruments ?? []).map(
		({ id, label, ...facts }): StatementInstrument<string> => ({ id, label, ...given(facts) }),
	);
	const exhibits = await exhibitsOfRecord(database, record.id);
	return {
		instruments: [...shop, ...own],
		exhibits: new Map(
			exhibits.map((row) => [
				row.sha256,
				{ sizeBytes: row.size_bytes, mediaType: row.media_type, fileName: row.file_name },
			]),
		),
	};
}

/** Members without the undefined ones. */
function given<T extends object>(facts: T): { [K in keyof T]: Exclude<T[K], undefined> } {
	return Object.fromEntries(Object.entries(facts).filter(([, value]) => value !== undefined)) as never;
}

/** The readings, and for each of the shop's own checks that has none, that nothing was entered; as far as the depth asks. */
function withOwnUntested(
	readings: readonly ReadingContent[],
	offered: readonly OfferedCheck[],
	depth: RecordHeader["depth"],
): ReadingContent[] {
	const missing = offered.filter(
		(check) =>
			(depth === "full" || needsNoInstruments(check)) && !readings.some((reading) => reading.check === check.id),
	);
	return [
		...readings,
		...missing.map(
			({ id, definition }): ReadingContent => ({
				check: id,
				definition: given(definition),
				notTested: { reason: "not-recorded" },
			}),
		),
	];
}

/** The readings, and for each check of the record's depth that has none, that nothing was entered. */
function withUntested(
	readings: readonly ReadingContent[],
	checks: readonly CheckDefinition[],
	depth: RecordHeader["depth"],
): ReadingContent[] {
	const entered = new Set(readings.map((reading) => reading.check));
	const missing = checks.filter((check) => (depth === "full" || check.short) && !entered.has(check.id));
	return [
		...readings,
		...missing.map((check): ReadingContent => ({ check: check.id, notTested: { reason: "not-recorded" } })),
	];
}
