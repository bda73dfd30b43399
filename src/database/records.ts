/** Rows of state records, the openings of their commitments, and the exhibits brought to them. */
import type { Opening } from "../records/commitment.ts";
import type { RecordHeader } from "../records/record-statement.ts";
import type { Queryable } from "./connection.ts";
import { ownerOfOrder } from "./orders.ts";

export interface RecordRow {
	readonly id: string;
	readonly order_id: string;
	readonly consignment_id: string | null;
	readonly stage: RecordHeader["stage"];
	readonly depth: RecordHeader["depth"];
	readonly provenance: RecordHeader["provenance"];
	readonly holder_id: string;
	readonly amends: string | null;
	readonly state: "draft" | "sealed" | "discarded";
	readonly content: unknown;
	readonly version: number;
	readonly opened_by: string;
	readonly opened_at: Date;
	/** Of the shop's own checks and classes, when it was opened. */
	readonly own_catalogue_version: number | null;
}

/** A record's row as it lies in the database, with the owner of its order, whose key its draft is under. */
type StoredRecord = Omit<RecordRow, "content"> & { readonly personal: Buffer | null; readonly owner_id: string };

const RECORDS = "SELECT r.*, o.owner_id FROM state_record r JOIN repair_order o ON o.id = r.order_id";
const draftPlace = (id: string) => `state_record/${id}`;

function openRecord(database: Queryable, { personal, owner_id, ...plain }: StoredRecord): RecordRow {
	return {
		...plain,
		content: personal === null ? null : database.vault.of(owner_id).open(draftPlace(plain.id), personal),
	};
}

export async function insertRecord(
	database: Queryable,
	row: Omit<RecordRow, "state" | "version" | "opened_at">,
): Promise<void> {
	const ownerId = await ownerOfOrder(database, row.order_id);
	await database.query(
		`INSERT INTO state_record (id, order_id, consignment_id, stage, depth, provenance, holder_id, amends, personal, opened_by,
		 own_catalogue_version)
		 VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11)`,
		[
			row.id,
			row.order_id,
			row.consignment_id,
			row.stage,
			row.depth,
			row.provenance,
			row.holder_id,
			row.amends,
			database.vault.of(ownerId).seal(draftPlace(row.id), row.content),
			row.opened_by,
			row.own_catalogue_version,
		],
	);
}

export async function recordById(database: Queryable, id: string): Promise<RecordRow | null> {
	const [row] = await database.query<StoredRecord>(`${RECORDS} WHERE r.id = $1`, [id]);
	return row === undefined ? null : openRecord(database, row);
}

/** The record, its row locked until the transaction ends, so that a save and a seal cannot cross. */
export async function lockRecord(transaction: Queryable, id: string): Promise<RecordRow | null> {
	const [row] = await transaction.query<StoredRecord>(`${RECORDS} WHERE r.id = $1 FOR UPDATE OF r`, [id]);
	return row === undefined ? null : openRecord(transaction, row);
}

export async function recordsOfOrder(database: Queryable, orderId: string): Promise<RecordRow[]> {
	const rows = await database.query<StoredRecord>(
		`${RECORDS} WHERE r.order_id = $1 ORDER BY r.opened_at, r.id COLLATE "C"`,
		[orderId],
	);
	return rows.map((row) => openRecord(database, row));
}

/** Stores a draft's new content; the caller holds the row's lock and has compared the version. */
export async function updateDraft(
	transaction: Queryable,
	record: Pick<RecordRow, "id" | "order_id">,
	content: unknown,
): Promise<void> {
	const ownerId = await ownerOfOrder(transaction, record.order_id);
	await transaction.query(
		"UPDATE state_record SET personal = $2, version = version + 1 WHERE id = $1 AND state = 'draft'",
		[record.id, transaction.vault.of(ownerId).seal(draftPlace(record.id), content)],
	);
}

/** Marks a draft sealed or discarded and empties it. */
export async function closeDraft(transaction: Queryable, id: string, state: "sealed" | "discarded"): Promise<void> {
	await transaction.query(
		"UPDATE state_record SET state = $2, personal = NULL, version = version + 1 WHERE id = $1 AND state = 'draft'",
		[id, state],
	);
}

const openingPlace = (commitment: string) => `opening/${commitment}`;

/** Keeps the openings of a statement's commitments, under the key of the order's owner. */
export async function insertOpenings(
	transaction: Queryable,
	{ subject, orderId }: { readonly subject: string; readonly orderId: string },
	openings: readonly Opening[],
): Promise<void> {
	const ownerId = await ownerOfOrder(transaction, orderId);
	const owner = transaction.vault.of(ownerId);
	await transaction.query(
		`INSERT INTO opening (commitment, personal, subject, party_id)
		 SELECT commitment, personal, $3, $4 FROM unnest($1::text[], $2::bytea[]) AS o (commitment, personal)`,
		[
			openings.map(({ commitment }) => commitment),
			openings.map(({ commitment, salt, value }) => owner.seal(openingPlace(commitment), { salt, value })),
			subject,
			ownerId,
		],
	);
}

export async function openingsOf(database: Queryable, subjects: readonly string[]): Promise<Map<string, Opening[]>> {
	const rows = await database.query<{ commitment: string; personal: Buffer; subject: string; party_id: string }>(
		"SELECT commitment, personal, subject, party_id FROM opening WHERE subject = ANY ($1)",
		[subjects],
	);
	const bySubject = new Map<string, Opening[]>(subjects.map((subject) => [subject, []]));
	const owners = new Map(rows.map(({ party_id }) => [party_id, database.vault.of(party_id)]));
	for (const { commitment, personal, subject, party_id } of rows) {
		const opened = owners.get(party_id)?.open<Pick<Opening, "salt" | "value">>(openingPlace(commitment), personal);
		if (opened !== undefined) bySubject.get(subject)?.push({ commitment, ...opened });
	}
	return bySubject;
}

export interface ExhibitRow {
	/** Of the file as it was brought. */
	readonly sha256: string;
	/** Owner of the order, under whose key the file is. */
	readonly party_id: string;
	/** Of the file as it lies in the store; null once the party is erased. */
	readonly stored_sha256: string | null;
	readonly size_bytes: number;
	readonly media_type: string;
	/** As archives ask for it; null in a row of before, until it was read for it once. */
	readonly crc32: number | null;
	readonly file_name: string;
	readonly record_id: string;
	readonly order_id: string;
}

type StoredExhibit = Omit<ExhibitRow, "file_name"> & { readonly personal: Buffer };

/** Where a file's own bytes are sealed. */
export const exhibitPlaceOf = (sha256: string) => `exhibit/${sha256}`;
export const usePlace = (sha256: string, recordId: string) => `exhibit_use/${sha256}/${recordId}`;

/** Under which name the store has a party's copy of a file; null where there is none. */
export async function storedExhibit(database: Queryable, sha256: string, partyId: string): Promise<string | null> {
	const [row] = await database.query<{ stored_sha256: string | null }>(
		"SELECT stored_sha256 FROM exhibit WHERE sha256 = $1 AND party_id = $2",
		[sha256, partyId],
	);
	return row?.stored_sha256 ?? null;
}

/**
 * Notes a stored file and the record it was brought to; a file or use that is there already is left as it is, unless only
 * a copy of the file had been read in from a dossier.
 * @throws erased where the order's owner was erased meanwhile
 */
export async function insertExhibit(
	transaction: Queryable,
	row: ExhibitRow & { readonly broughtBy: string },
): Promise<void> {
	await ownerOfOrder(transaction, row.order_id);
	await transaction.query(
		`INSERT INTO exhibit (sha256, party_id, stored_sha256, size_bytes, media_type, crc32) VALUES ($1, $2, $3, $4, $5, $6)
		 ON CONFLICT (sha256, party_id) DO UPDATE SET stored_sha256 = excluded.stored_sha256, crc32 = excluded.crc32
		 WHERE exhibit.stored_sha256 IS NULL AND excluded.stored_sha256 IS NOT NULL`,
		[row.sha256, row.party_id, row.stored_sha256, row.size_bytes, row.media_type, row.crc32],
	);
	await transaction.query(
		`INSERT INTO exhibit_use (sha256, party_id, record_id, order_id, personal, brought_by) VALUES ($1, $2, $3, $4, $5, $6)
		 ON CONFLICT DO NOTHING`,
		[
			row.sha256,
			row.party_id,
			row.record_id,
			row.order_id,
			transaction.vault.of(row.party_id).seal(usePlace(row.sha256, row.record_id), row.file_name),
			row.broughtBy,
		],
	);
}

const EXHIBITS = `SELECT sha256, party_id, e.stored_sha256, e.size_bytes, e.media_type, e.crc32, u.personal, u.record_id, u.order_id
	FROM exhibit_use u JOIN exhibit e USING (sha256, party_id)`;

function openExhibit(database: Queryable, { personal, ...plain }: StoredExhibit): ExhibitRow {
	const place = usePlace(plain.sha256, plain.record_id);
	return { ...plain, file_name: database.vault.of(plain.party_id).open(place, personal) };
}

export async function exhibitsOfRecord(database: Queryable, recordId: string): Promise<ExhibitRow[]> {
	const rows = await database.query<StoredExhibit>(`${EXHIBITS} WHERE u.record_id = $1 ORDER BY u.brought_at`, [
		recordId,
	]);
	return rows.map((row) => openExhibit(database, row));
}

/** Notes the CRC-32 of a file that was stored before it was kept. */
export async function noteCrc32(
	database: Queryable,
	{ sha256, party_id }: Pick<ExhibitRow, "sha256" | "party_id">,
	crc32: number,
): Promise<void> {
	await database.query("UPDATE exhibit SET crc32 = $3 WHERE sha256 = $1 AND party_id = $2", [sha256, party_id, crc32]);
}

/** Every file in the store, by its name there. */
export async function allExhibits(database: Queryable): Promise<{ sha256: string }[]> {
	return database.query(
		`SELECT stored_sha256 AS sha256 FROM (
			SELECT stored_sha256 FROM exhibit UNION ALL SELECT stored_sha256 FROM exhibit_derivative
		 ) f WHERE stored_sha256 IS NOT NULL ORDER BY stored_sha256 COLLATE "C"`,
	);
}
