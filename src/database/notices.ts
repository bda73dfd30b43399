/** Notices to carriers; what was typed is under the key of the order's owner. */
import type { Queryable } from "./connection.ts";

export interface NoticeRow {
	readonly id: string;
	readonly consignment_id: string;
	readonly order_id: string;
	readonly party_id: string;
	readonly plain: unknown;
	readonly personal: unknown;
	/** `YYYY-MM-DD`. */
	readonly received_on: string | null;
	readonly receipt_personal: unknown;
	readonly receipt_sha256: string | null;
	readonly noted_by: string;
	readonly noted_at: Date;
}
type Stored = Omit<NoticeRow, "personal" | "receipt_personal"> & {
	readonly personal: Buffer;
	readonly receipt_personal: Buffer | null;
};

const noticePlace = (id: string) => `carrier_notice/${id}`;
const receiptPlace = (id: string) => `carrier_notice/${id}/receipt`;
const NOTICES = `SELECT id, consignment_id, order_id, party_id, plain, personal, received_on::text, receipt_personal, receipt_sha256,
	noted_by,
	noted_at FROM carrier_notice`;

export async function insertNotice(
	transaction: Queryable,
	row: Omit<NoticeRow, "received_on" | "receipt_personal" | "receipt_sha256" | "noted_at">,
): Promise<void> {
	await transaction.query(
		`INSERT INTO carrier_notice (id, consignment_id, order_id, party_id, plain, personal, noted_by)
		 VALUES ($1, $2, $3, $4, $5, $6, $7)`,
		[
			row.id,
			row.consignment_id,
			row.order_id,
			row.party_id,
			JSON.stringify(row.plain),
			transaction.vault.of(row.party_id).seal(noticePlace(row.id), row.personal),
			row.noted_by,
		],
	);
}

/** Notes the receipt; false where one is noted. */
export async function noteReceived(
	transaction: Queryable,
	{ id, party_id }: Pick<NoticeRow, "id" | "party_id">,
	receivedOn: string,
	personal: unknown,
	sha256: string | null,
): Promise<boolean> {
	const sealed = personal === null ? null : transaction.vault.of(party_id).seal(receiptPlace(id), personal);
	const rows = await transaction.query(
		`UPDATE carrier_notice SET received_on = $2, receipt_personal = $3, receipt_sha256 = $4
		 WHERE id = $1 AND received_on IS NULL RETURNING id`,
		[id, receivedOn, sealed, sha256],
	);
	return rows.length === 1;
}

/** In the order in which they were noted. */
export async function noticesOf(database: Queryable, consignmentId: string): Promise<NoticeRow[]> {
	const rows = await database.query<Stored>(`${NOTICES} WHERE consignment_id = $1 ORDER BY noted_at, id COLLATE "C"`, [
		consignmentId,
	]);
	return rows.map((row) => opened(database, row));
}

export async function noticeById(database: Queryable, id: string): Promise<NoticeRow | null> {
	const [row] = await database.query<Stored>(`${NOTICES} WHERE id = $1`, [id]);
	return row === undefined ? null : opened(database, row);
}

function opened(database: Queryable, row: Stored): NoticeRow {
	const vault = database.vault.of(row.party_id);
	const { personal, receipt_personal: receipt } = row;
	return {
		...row,
		personal: vault.open(noticePlace(row.id), personal),
		receipt_personal: receipt === null ? null : vault.open(receiptPlace(row.id), receipt),
	};
}
