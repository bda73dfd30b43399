/** Replaces what is encrypted with a party's key by what may stay. The key itself is deleted by whoever holds it. */
import type { Queryable } from "./connection.ts";
import type { ItemRow, PartyRow } from "./orders.ts";
import { plainBytes } from "./vault.ts";

export async function eraseParty(
	transaction: Queryable,
	id: string,
	left: Pick<PartyRow, "name" | "email" | "address">,
): Promise<void> {
	await transaction.query("UPDATE party SET personal = $2, erased_at = clock_timestamp() WHERE id = $1", [
		id,
		plainBytes(left),
	]);
}

export async function eraseItem(
	transaction: Queryable,
	id: string,
	left: Pick<ItemRow, "maker" | "model" | "serial_number" | "details">,
): Promise<void> {
	await transaction.query("UPDATE item SET personal = $2 WHERE id = $1", [id, plainBytes(left)]);
}

export async function eraseOrder(transaction: Queryable, id: string, terms: unknown): Promise<void> {
	await transaction.query("UPDATE repair_order SET personal = $2 WHERE id = $1", [id, plainBytes(terms)]);
}

export async function eraseConsignment(transaction: Queryable, id: string, facts: unknown): Promise<void> {
	await transaction.query("UPDATE consignment SET personal = $2 WHERE id = $1", [id, plainBytes(facts)]);
}

/** Drafts of an owner's orders, locked so that no one saves or seals one meanwhile. */
export async function draftsOfOwner(transaction: Queryable, ownerId: string): Promise<string[]> {
	const rows = await transaction.query<{ id: string }>(
		`SELECT r.id FROM state_record r JOIN repair_order o ON o.id = r.order_id
		 WHERE o.owner_id = $1 AND r.state = 'draft' ORDER BY r.id COLLATE "C" FOR UPDATE OF r`,
		[ownerId],
	);
	return rows.map(({ id }) => id);
}

export async function deleteOpeningsOf(transaction: Queryable, partyId: string): Promise<void> {
	await transaction.query("DELETE FROM opening WHERE party_id = $1", [partyId]);
}

/** Takes names and store places out of a party's files; gives the places, whose files are to be removed. */
export async function eraseExhibitsOf(transaction: Queryable, partyId: string, fileName: string): Promise<string[]> {
	await transaction.query("UPDATE exhibit_use SET personal = $2 WHERE party_id = $1", [partyId, plainBytes(fileName)]);
	const rows = await transaction.query<{ stored_sha256: string }>(
		"SELECT stored_sha256 FROM exhibit WHERE party_id = $1 AND stored_sha256 IS NOT NULL FOR UPDATE",
		[partyId],
	);
	await transaction.query("UPDATE exhibit SET stored_sha256 = NULL WHERE party_id = $1", [partyId]);
	return rows.map((row) => row.stored_sha256);
}

export async function revokeLinksOf(transaction: Queryable, partyId: string): Promise<void> {
	await transaction.query("UPDATE link SET revoked_at = clock_timestamp() WHERE party_id = $1 AND revoked_at IS NULL", [
		partyId,
	]);
}
