/**
 * Reads a dossier into a service: verifies all of it first, then writes order, parties, legs, records, openings, exhibits
 * and the other log's entries with their proofs in one transaction. Where anything fails, nothing of it is left behind.
 */
import type { Queryable } from "../../database/connection.ts";
import {
	insertConsignment,
	insertItem,
	insertOrder,
	insertParty,
	orderById,
	partyById,
} from "../../database/orders.ts";
import { insertHandOut } from "../../database/pictures.ts";
import { insertReadInLog, insertSealedRecord, isPartyOfLog, noteEarlierTimes } from "../../database/read-in.ts";
import { insertExhibit, insertOpenings } from "../../database/records.ts";
import { insertAssessment } from "../../database/sealed.ts";
import { Fault } from "../../faults.ts";
import { openStatement } from "../../records/open-statement.ts";
import type { OpenedStatement } from "../../records/record-statement.ts";
import type { ByteSource } from "../../records/verify/dossier/byte-source.ts";
import { type Bag, readBag } from "../../records/verify/dossier/read-bag.ts";
import { verifyDossier } from "../../records/verify/dossier/verify-dossier.ts";
import type { Given } from "../../records/verify/given.ts";
import { runningHash } from "../../records/verify/hashes.ts";
import { verifyReceipt } from "../../records/verify/verify-receipt.ts";
import { ERASED, partsOfFacts, partsOfItem, partsOfTerms } from "../orders/personal-parts.ts";
import { checkedBytes, type ReadInDeps } from "./checked-bytes.ts";
import { type DossierContent, dossierContent, type NotedOrder } from "./dossier-content.ts";
import { insertCopies, type ReadInCopy, storedCopies } from "./read-in-copies.ts";
import { type StoredOriginal, storedOriginals } from "./read-in-originals.ts";
import { ReadInRefusal } from "./read-in-refusal.ts";

export interface ReadIn {
	readonly orderId: string;
	readonly origin: string;
	readonly publicKeys: readonly string[];
	readonly size: number;
	readonly records: number;
	/** Files that the records name; of how many the dossier brought the original, and of how many a copy in its place. */
	readonly exhibits: { readonly named: number; readonly originals: number; readonly copies: number };
}

/**
 * One at a time: a second of the same order would take the first one's keys away with its own.
 * @param given keys and printed checkpoints that are known by another way @throws ReadInRefusal before anything is written
 */
export async function readInDossier(deps: ReadInDeps, source: ByteSource, given: Partial<Given> = {}): Promise<ReadIn> {
	const letGo = await deps.database.hold("read-in", () => {});
	if (letGo === null) throw new ReadInRefusal("busy", "");
	try {
		return await readIn(deps, source, given);
	} finally {
		await letGo();
	}
}

async function readIn(deps: ReadInDeps, source: ByteSource, given: Partial<Given>): Promise<ReadIn> {
	const bag = await verifiedBag(source, given);
	const content = dossierContent(
		await checkedBytes(bag, "data/receipt.json", (bytes) => refuseUnverified(verifyReceipt(bytes, given))),
		await checkedBytes(bag, "data/order.json"),
	);
	const { order, receipt, entries, records } = content;
	if ((await orderById(deps.database, order.id)) !== null) throw new ReadInRefusal("already-there", order.id);
	const [origin = "", size = ""] = receipt.checkpoint.split("\n");
	const newParties = await partiesToMake(deps, deps.database, order, origin);
	const dossierSha256 = await hashOf(source);
	const undo: (() => Promise<void>)[] = [];
	try {
		for (const { id } of newParties) {
			undo.push(() => deps.partyKeys.destroy(id));
			await deps.partyKeys.make(id);
		}
		const files = await storedOriginals(deps, bag, order.owner.id, namedExhibits(content), undo);
		const copies = await storedCopies(deps, bag, order.owner.id, undo);
		await deps.database.transaction(async (transaction) => {
			// Reading took a while, and no erasure runs from here on.
			await partiesToMake(deps, transaction, order, origin);
			for (const { id, kind, country, name } of newParties) {
				await insertParty(transaction, { id, kind, country, language: null, name, email: null, address: null });
			}
			await insertNoted(transaction, order);
			await insertRecords(transaction, content, files, copies);
			await insertCopies(transaction, order, copies);
			const { checkpoint, keys, earlier, timeStamps } = receipt;
			const log = { origin, size: Number(size), checkpoint, keys, earlier, timeStamps, dossierSha256 };
			await insertReadInLog(transaction, order.id, log, entries);
			const erased = newParties.flatMap(({ id, erasedAt }) => (erasedAt === undefined ? [] : [{ id, erasedAt }]));
			await noteEarlierTimes(transaction, order.id, order.createdAt, erased);
		});
		const named = namedExhibits(content);
		return {
			orderId: order.id,
			origin,
			publicKeys: receipt.keys.map(({ publicKey }) => publicKey),
			size: Number(size),
			records: records.length,
			exhibits: { originals: files.size, copies: copies.filter(({ file }) => file !== null).length, named: named.size },
		};
	} catch (error) {
		// Where the line broke as it was committed, its rows may be there, and what they name must stay.
		if ((await orderById(deps.database, order.id)) === null) for (const step of undo.reverse()) await step();
		throw error instanceof Fault && error.code === "erased" ? new ReadInRefusal("erased-party", order.owner.id) : error;
	}
}

async function verifiedBag(source: ByteSource, given: Partial<Given>): Promise<Bag> {
	refuseUnverified(await verifyDossier(source, given));
	return readBag(source, () => {});
}

function refuseUnverified({ outcome, checks }: Awaited<ReturnType<typeof verifyDossier>>): void {
	if (outcome === "verified") return;
	const failed = checks.find((check) => check.outcome === "failed");
	throw new ReadInRefusal(failed?.id ?? "form", failed?.where ?? "");
}

/** A party of the same log, which came with another order of it, is there already. Whoever was erased here stays so. */
async function partiesToMake(
	{ erasures }: ReadInDeps,
	database: Queryable,
	{ owner, repairer }: NotedOrder,
	origin: string,
) {
	const erased = new Set((await erasures.list()).map(({ partyId }) => partyId));
	const made: NotedOrder["owner"][] = [];
	for (const party of owner.id === repairer.id ? [owner] : [owner, repairer]) {
		const known = await partyById(database, party.id);
		// One that was erased there as well brings no words of anyone.
		const bringsWords = known !== null || party.erasedAt === undefined;
		const isErased = erased.has(party.id) || (known !== null && known.erased_at !== null);
		if (isErased && bringsWords) throw new ReadInRefusal("erased-party", party.id);
		if (known === null) made.push(party);
		else if (!(await isPartyOfLog(database, party.id, origin))) throw new ReadInRefusal("other-party", party.id);
	}
	return made;
}

function namedExhibits({ records }: DossierContent): Set<string> {
	return new Set(records.flatMap(({ statement }) => statement.exhibits.map(({ sha256 }) => sha256)));
}

async function insertNoted(transaction: Queryable, order: NotedOrder): Promise<void> {
	const { id: itemId, ...item } = order.item;
	await insertItem(transaction, { id: itemId, class: item.class, owner_id: order.owner.id, ...partsOfItem(item) });
	await insertOrder(transaction, {
		id: order.id,
		repairer_id: order.repairer.id,
		owner_id: order.owner.id,
		item_id: itemId,
		contract_kind: order.contractKind,
		...partsOfTerms(order.terms),
	});
	for (const { id, consignorId, consigneeId, facts } of order.consignments) {
		const row = { id, order_id: order.id, consignor_id: consignorId, consignee_id: consigneeId };
		await insertConsignment(transaction, { ...row, ...partsOfFacts(facts) });
	}
}

async function insertRecords(
	transaction: Queryable,
	{ order, receipt, entries, records, packs }: DossierContent,
	files: ReadonlyMap<string, StoredOriginal>,
	copies: readonly ReadInCopy[],
): Promise<void> {
	for (const { id, consignmentId } of packs) {
		await insertAssessment(transaction, { id, orderId: order.id, consignmentId });
	}
	for (const { entry, statement } of records) {
		const opened = entries.find(({ kind, subject }) => kind === "record-opened" && subject === entry.subject) ?? entry;
		await insertSealedRecord(transaction, {
			id: entry.subject,
			order_id: order.id,
			consignment_id: statement.consignmentId ?? null,
			stage: statement.stage,
			depth: statement.depth,
			provenance: statement.provenance,
			holder_id: statement.holderId,
			amends: statement.amends ?? null,
			own_catalogue_version: null,
			opened_by: opened.byId,
			opened_at: opened.time,
		});
	}
	for (const [place, entry] of entries.entries()) {
		const openings = receipt.entries[place]?.openings ?? [];
		if (openings.length === 0) continue;
		await insertOpenings(transaction, { subject: entry.subject, orderId: order.id }, openings);
	}
	for (const { entry } of records) {
		const openings = receipt.entries[entries.indexOf(entry)]?.openings ?? [];
		const statement = openStatement(entry.statementBytes ?? new Uint8Array(), openings) as unknown as OpenedStatement;
		for (const { sha256, sizeBytes, mediaType, fileName } of statement.exhibits) {
			await insertExhibit(transaction, {
				sha256,
				party_id: order.owner.id,
				stored_sha256: files.get(sha256)?.name ?? null,
				crc32: files.get(sha256)?.crc32 ?? null,
				size_bytes: sizeBytes,
				media_type: mediaType,
				file_name: fileName ?? ERASED,
				record_id: entry.subject,
				order_id: order.id,
				broughtBy: copies.find(({ original }) => original === sha256)?.taker ?? entry.byId,
			});
			if (!files.has(sha256) || mediaType === "text/plain") continue;
			// It is in the dossier, so its taker had agreed to hand it out.
			await insertHandOut(transaction, order.id, {
				sha256,
				taker: entry.byId.startsWith("lnk_") ? entry.subject : "shop",
				choice: "original",
				copy_sha256: null,
				chosen_by: entry.byId,
			});
		}
	}
}

const SLICE_BYTES = 4 * 1024 * 1024;

async function hashOf(source: ByteSource): Promise<string> {
	const hash = runningHash();
	for (let at = 0; at < source.size; at += SLICE_BYTES) {
		hash.update(await source.read(at, Math.min(SLICE_BYTES, source.size - at)));
	}
	return hash.hex();
}
