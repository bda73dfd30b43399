/**
 * Replaces what is encrypted with a party's key by what may stay. Nothing is read, so no key is needed; the key itself is
 * deleted by whoever holds it.
 */
import type { Queryable } from "./connection.ts";
import { deleteUploadsOf } from "./exhibit-uploads.ts";
import { plainBytes } from "./vault.ts";

/** What stands in the place of each kind of personal part. */
export interface Placeholders {
	readonly party: unknown;
	readonly item: unknown;
	readonly terms: unknown;
	readonly facts: unknown;
	readonly fileName: unknown;
	readonly mail: unknown;
	readonly notice: unknown;
	/** What a picture claims of itself. */
	readonly claimed: unknown;
}

/** Whether a party is there and not erased. */
export async function isThere(transaction: Queryable, partyId: string): Promise<boolean> {
	return (await transaction.query("SELECT FROM party WHERE id = $1 AND erased_at IS NULL", [partyId])).length === 1;
}

/** Drafts of an owner's orders. */
export async function draftsOfOwner(transaction: Queryable, ownerId: string): Promise<string[]> {
	const rows = await transaction.query<{ id: string }>(
		`SELECT r.id FROM state_record r JOIN repair_order o ON o.id = r.order_id
		 WHERE o.owner_id = $1 AND r.state = 'draft' ORDER BY r.id COLLATE "C"`,
		[ownerId],
	);
	return rows.map(({ id }) => id);
}

/** Marks the party erased, takes away what is known of it and of its orders, and withdraws its links. */
export async function erasePersonal(transaction: Queryable, partyId: string, left: Placeholders): Promise<void> {
	const replace = (sql: string, placeholder: unknown) => transaction.query(sql, [partyId, plainBytes(placeholder)]);
	await replace("UPDATE party SET personal = $2, erased_at = clock_timestamp() WHERE id = $1", left.party);
	await replace("UPDATE item SET personal = $2 WHERE owner_id = $1", left.item);
	await replace("UPDATE repair_order SET personal = $2 WHERE owner_id = $1", left.terms);
	await replace(
		"UPDATE consignment c SET personal = $2 FROM repair_order o WHERE o.id = c.order_id AND o.owner_id = $1",
		left.facts,
	);
	await replace("UPDATE exhibit_use SET personal = $2 WHERE party_id = $1", left.fileName);
	await replace("UPDATE transit_recording SET personal = $2 WHERE party_id = $1", left.fileName);
	await replace("UPDATE mail SET personal = $2 WHERE party_id = $1", left.mail);
	await transaction.query(
		`UPDATE mail SET state = 'dropped', reason = 'erased', ended_at = clock_timestamp()
		 WHERE state = 'queued' AND (party_id = $1 OR order_id IN (SELECT id FROM repair_order WHERE owner_id = $1))`,
		[partyId],
	);
	// Their files are removed after the key.
	await deleteUploadsOf(transaction, partyId);
	await replace("UPDATE carrier_notice SET personal = $2, receipt_personal = NULL WHERE party_id = $1", left.notice);
	await replace("UPDATE exhibit_picture SET personal = $2 WHERE party_id = $1", left.claimed);
	await transaction.query("DELETE FROM opening WHERE party_id = $1", [partyId]);
	await transaction.query("UPDATE link SET revoked_at = clock_timestamp() WHERE party_id = $1 AND revoked_at IS NULL", [
		partyId,
	]);
}

/** Names in the store of an erased party's files, which are still to be removed. */
export async function filesOfErased(database: Queryable, partyId: string): Promise<string[]> {
	const rows = await database.query<{ stored_sha256: string }>(
		`SELECT stored_sha256 FROM (
			SELECT party_id, stored_sha256 FROM exhibit UNION ALL SELECT party_id, stored_sha256 FROM exhibit_derivative
		 ) f JOIN party p ON p.id = f.party_id
		 WHERE f.party_id = $1 AND p.erased_at IS NOT NULL AND stored_sha256 IS NOT NULL`,
		[partyId],
	);
	return rows.map((row) => row.stored_sha256);
}

/** Notes that the store no longer has a party's files. */
export async function forgetFiles(database: Queryable, partyId: string): Promise<void> {
	await database.query("UPDATE exhibit SET stored_sha256 = NULL WHERE party_id = $1", [partyId]);
	await database.query("UPDATE exhibit_derivative SET stored_sha256 = NULL WHERE party_id = $1", [partyId]);
}
