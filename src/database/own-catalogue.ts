/** Versions of the shop's own checks and classes; a version is written once. */
import type { Queryable } from "./connection.ts";

export interface OwnCatalogueRow {
	readonly version: number;
	readonly facts: unknown;
}

/** A version, or the newest; null where there is none. */
export async function ownCatalogueAt(database: Queryable, version: number | null): Promise<OwnCatalogueRow | null> {
	const [row] = await database.query<OwnCatalogueRow>(
		"SELECT version, facts FROM own_catalogue WHERE $1::int IS NULL OR version = $1 ORDER BY version DESC LIMIT 1",
		[version],
	);
	return row ?? null;
}

/** False where that version is there already. */
export async function insertOwnCatalogue(database: Queryable, row: OwnCatalogueRow): Promise<boolean> {
	const rows = await database.query(
		"INSERT INTO own_catalogue (version, facts) VALUES ($1, $2) ON CONFLICT DO NOTHING RETURNING version",
		[row.version, JSON.stringify(row.facts)],
	);
	return rows.length === 1;
}

/** The version that the order's records go by: that of the first that was opened with one. */
export async function ownCatalogueVersionOfOrder(database: Queryable, orderId: string): Promise<number | null> {
	const [row] = await database.query<{ version: number }>(
		`SELECT own_catalogue_version AS version FROM state_record
		 WHERE order_id = $1 AND state <> 'discarded' AND own_catalogue_version IS NOT NULL
		 ORDER BY opened_at, id COLLATE "C" LIMIT 1`,
		[orderId],
	);
	return row?.version ?? null;
}

/** What the shop called a class, by the newest version that has it. */
export async function ownClassNameOf(database: Queryable, id: string): Promise<string | null> {
	const [row] = await database.query<{ name: string }>(
		`SELECT c ->> 'name' AS name FROM own_catalogue, jsonb_array_elements(facts -> 'classes') c
		 WHERE c ->> 'id' = $1 ORDER BY version DESC LIMIT 1`,
		[id],
	);
	return row?.name ?? null;
}
