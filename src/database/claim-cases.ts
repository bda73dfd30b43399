/** What was noted for a claim about a leg: codes and dates. */
import type { Queryable } from "./connection.ts";

export interface ClaimCaseRow {
	readonly plain: unknown;
	readonly version: number;
}

export async function claimCaseOf(database: Queryable, consignmentId: string): Promise<ClaimCaseRow | null> {
	const [row] = await database.query<ClaimCaseRow>("SELECT plain, version FROM claim_case WHERE consignment_id = $1", [
		consignmentId,
	]);
	return row ?? null;
}

/** Saves what is noted if what was there has this version, 0 where nothing was; false where it has another. */
export async function saveClaimCase(
	transaction: Queryable,
	consignmentId: string,
	version: number,
	plain: unknown,
): Promise<boolean> {
	const rows = await transaction.query(
		version === 0
			? "INSERT INTO claim_case (consignment_id, plain) VALUES ($1, $2) ON CONFLICT DO NOTHING RETURNING version"
			: "UPDATE claim_case SET plain = $2, version = version + 1 WHERE consignment_id = $1 AND version = $3 RETURNING version",
		version === 0 ? [consignmentId, JSON.stringify(plain)] : [consignmentId, JSON.stringify(plain), version],
	);
	return rows.length === 1;
}

/** Legs about which something was noted for a claim, or whose arrival was sealed, of owners whose data is there. */
export async function legsWithClaims(
	database: Queryable,
): Promise<{ readonly id: string; readonly orderId: string }[]> {
	return database.query(
		`SELECT c.id, c.order_id AS "orderId" FROM consignment c
		 JOIN repair_order o ON o.id = c.order_id JOIN party p ON p.id = o.owner_id
		 WHERE p.erased_at IS NULL AND (
			EXISTS (SELECT FROM claim_case k WHERE k.consignment_id = c.id) OR
			EXISTS (SELECT FROM state_record r WHERE r.consignment_id = c.id AND r.stage = 'arrival' AND r.state = 'sealed'))
		 ORDER BY c.id COLLATE "C"`,
	);
}
