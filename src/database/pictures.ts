/** Rows about exhibits as pictures: each use of a file with its taker, what the file claims, copies, choices. */
import type { Queryable } from "./connection.ts";
import { ownerOfOrder } from "./orders.ts";
import { usePlace } from "./records.ts";

/** One file brought to one record. */
export interface PictureUse {
	readonly sha256: string;
	readonly party_id: string;
	readonly stored_sha256: string | null;
	readonly size_bytes: number;
	/** As archives ask for it; null in a row of before, until it was read for it once. */
	readonly crc32: number | null;
	readonly media_type: string;
	readonly file_name: string;
	readonly record_id: string;
	readonly order_id: string;
	readonly brought_at: Date;
	/** `shop`, or the id of the party whose link brought it; of what was read in, the party that a dossier names. */
	readonly taker: string;
	readonly record_state: "draft" | "sealed" | "discarded";
}

const USES = `SELECT u.sha256, u.party_id, e.stored_sha256, e.size_bytes, e.crc32, e.media_type, u.personal, u.record_id, u.order_id,
	u.brought_at, r.state AS record_state,
	CASE WHEN u.brought_by LIKE 'pty\\_%' OR u.brought_by LIKE 'rec\\_%' THEN u.brought_by
	WHEN u.brought_by LIKE 'lnk\\_%' THEN coalesce(l.party_id, u.record_id) ELSE 'shop' END AS taker
	FROM exhibit_use u JOIN exhibit e USING (sha256, party_id) JOIN state_record r ON r.id = u.record_id
	LEFT JOIN link l ON l.id = u.brought_by`;

async function uses(database: Queryable, where: string, values: readonly unknown[]): Promise<PictureUse[]> {
	const rows = await database.query<Omit<PictureUse, "file_name"> & { readonly personal: Buffer }>(
		`${USES} WHERE ${where} ORDER BY u.brought_at, u.record_id COLLATE "C"`,
		[...values],
	);
	return rows.map(({ personal, ...plain }) => ({
		...plain,
		file_name: database.vault.of(plain.party_id).open<string>(usePlace(plain.sha256, plain.record_id), personal),
	}));
}

export function pictureUsesOfRecord(database: Queryable, recordId: string): Promise<PictureUse[]> {
	return uses(database, "u.record_id = $1", [recordId]);
}

/** Every use of files in an order. */
export function pictureUsesOfOrder(
	database: Queryable,
	orderId: string,
	sha256s: readonly string[],
): Promise<PictureUse[]> {
	return uses(database, "u.order_id = $1 AND u.sha256 = ANY ($2)", [orderId, sha256s]);
}

/** Every use of one file, in any order. */
export function pictureUsesOfFile(database: Queryable, sha256: string): Promise<PictureUse[]> {
	return uses(database, "u.sha256 = $1", [sha256]);
}

/** What a file claims of itself. Nothing of it is proved. */
export interface ClaimedFacts {
	/** `2026-05-02T10:11:12`, by the device's clock. */
	readonly time: string | null;
	/** `+02:00` where the file says one. */
	readonly offset: string | null;
	/** Maker and model. */
	readonly device: string | null;
	/** Whether the file says where it was taken. The place itself is not kept. */
	readonly hasPlace: boolean;
}

export type PictureRefusal = "damaged" | "too-many-pixels" | "not-shown" | "too-much-work";

export interface PictureRow {
	readonly sha256: string;
	readonly width: number | null;
	readonly height: number | null;
	readonly refusal: PictureRefusal | null;
	readonly claimed: ClaimedFacts;
}

type OfParty = { readonly sha256: string; readonly party_id: string };
const picturePlace = (sha256: string) => `exhibit_picture/${sha256}`;

/** What was read of these files of a party, as far as it was. */
export async function picturesOf(
	database: Queryable,
	partyId: string,
	sha256s: readonly string[],
): Promise<PictureRow[]> {
	const rows = await database.query<Omit<PictureRow, "claimed"> & { readonly personal: Buffer }>(
		`SELECT sha256, width, height, refusal, personal FROM exhibit_picture WHERE party_id = $1 AND sha256 = ANY ($2)`,
		[partyId, sha256s],
	);
	const party = database.vault.of(partyId);
	return rows.map(({ personal, ...plain }) => ({
		...plain,
		claimed: party.open<ClaimedFacts>(picturePlace(plain.sha256), personal),
	}));
}

/** Adds what was read of a picture; read again, the first stays. @throws erased */
export async function insertPicture(
	transaction: Queryable,
	use: OfParty & { readonly order_id: string },
	row: Omit<PictureRow, "sha256">,
): Promise<void> {
	await ownerOfOrder(transaction, use.order_id);
	await transaction.query(
		`INSERT INTO exhibit_picture (sha256, party_id, width, height, refusal, personal) VALUES ($1, $2, $3, $4, $5, $6)
		 ON CONFLICT DO NOTHING`,
		[
			use.sha256,
			use.party_id,
			row.width,
			row.height,
			row.refusal,
			transaction.vault.of(use.party_id).seal(picturePlace(use.sha256), row.claimed),
		],
	);
}

export type DerivativeKind = "without-metadata" | "blacked-out" | "thumbnail" | "carrier";

export interface DerivativeRow {
	readonly original_sha256: string;
	readonly party_id: string;
	readonly kind: DerivativeKind;
	readonly of_sha256: string;
	readonly sha256: string;
	/** Null once the party is erased. */
	readonly stored_sha256: string | null;
	readonly size_bytes: number;
	/** As archives ask for it. */
	readonly crc32: number;
	readonly made_at: Date;
}

/** Where a copy's own bytes are sealed. */
export const derivativePlaceOf = (sha256: string) => `exhibit_derivative/${sha256}`;

/** All copies of these files of a party, oldest first. */
export function derivativesOf(
	database: Queryable,
	partyId: string,
	sha256s: readonly string[],
): Promise<DerivativeRow[]> {
	return database.query<DerivativeRow>(
		`SELECT original_sha256, party_id, kind, of_sha256, sha256, stored_sha256, size_bytes, crc32, made_at
		 FROM exhibit_derivative WHERE party_id = $1 AND original_sha256 = ANY ($2) ORDER BY made_at, sha256 COLLATE "C"`,
		[partyId, sha256s],
	);
}

/** Notes a copy; one that is there already is left as it is. Gives whether it is new. @throws erased */
export async function insertDerivative(
	transaction: Queryable,
	orderId: string,
	row: Omit<DerivativeRow, "made_at">,
): Promise<boolean> {
	await ownerOfOrder(transaction, orderId);
	const rows = await transaction.query(
		`INSERT INTO exhibit_derivative (original_sha256, party_id, kind, of_sha256, sha256, stored_sha256, size_bytes, crc32)
		 VALUES ($1, $2, $3, $4, $5, $6, $7, $8) ON CONFLICT DO NOTHING RETURNING sha256`,
		[
			row.original_sha256,
			row.party_id,
			row.kind,
			row.of_sha256,
			row.sha256,
			row.stored_sha256,
			row.size_bytes,
			row.crc32,
		],
	);
	return rows.length > 0;
}

export interface HandOutRow {
	readonly sha256: string;
	readonly taker: string;
	readonly choice: "without-metadata" | "blacked-out" | "original";
	readonly copy_sha256: string | null;
	readonly chosen_by: string;
	readonly chosen_at: Date;
}

/** What takers chose for files of an order, oldest first. */
export function handOutsOf(database: Queryable, orderId: string, sha256s: readonly string[]): Promise<HandOutRow[]> {
	return database.query<HandOutRow>(
		`SELECT sha256, taker, choice, copy_sha256, chosen_by, chosen_at FROM exhibit_hand_out
		 WHERE order_id = $1 AND sha256 = ANY ($2) ORDER BY sha256, taker, number`,
		[orderId, sha256s],
	);
}

/** Adds a choice, which counts from now on. @throws erased */
export async function insertHandOut(
	transaction: Queryable,
	orderId: string,
	row: Omit<HandOutRow, "chosen_at">,
): Promise<void> {
	await ownerOfOrder(transaction, orderId);
	// The order's row is locked so that two choices made at once get two numbers.
	await transaction.query("SELECT FROM repair_order WHERE id = $1 FOR UPDATE", [orderId]);
	await transaction.query(
		`INSERT INTO exhibit_hand_out (order_id, sha256, taker, number, choice, copy_sha256, chosen_by)
		 SELECT $1, $2, $3, coalesce(max(number), 0) + 1, $4, $5, $6 FROM exhibit_hand_out
		 WHERE order_id = $1 AND sha256 = $2 AND taker = $3`,
		[orderId, row.sha256, row.taker, row.choice, row.copy_sha256, row.chosen_by],
	);
}
