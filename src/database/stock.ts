/** Rows of the shop's stock. */
import type { Queryable } from "./connection.ts";

export interface StockRow {
	readonly kind: "boxes" | "foams" | "bags";
	readonly id: string;
	readonly facts: unknown;
}

export async function listStock(database: Queryable): Promise<StockRow[]> {
	return database.query<StockRow>('SELECT kind, id, facts FROM stock ORDER BY kind, id COLLATE "C"');
}

/** Adds a thing, or replaces the one of that name. */
export async function putStock(database: Queryable, row: StockRow): Promise<void> {
	await database.query(
		"INSERT INTO stock (kind, id, facts) VALUES ($1, $2, $3) ON CONFLICT (kind, id) DO UPDATE SET facts = excluded.facts",
		[row.kind, row.id, JSON.stringify(row.facts)],
	);
}

/** False where there is none. */
export async function deleteStock(database: Queryable, kind: StockRow["kind"], id: string): Promise<boolean> {
	return (await database.query("DELETE FROM stock WHERE kind = $1 AND id = $2 RETURNING id", [kind, id])).length > 0;
}
