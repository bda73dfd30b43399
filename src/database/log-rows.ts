/** The log as it is stored, for checking it from end to end. */
import type { Queryable } from "./connection.ts";

export interface StoredEntry {
	readonly index: number;
	readonly entryBytes: Buffer;
	readonly leafSha256: string;
	readonly statementBytes: Buffer | null;
	readonly statementSha256: string | null;
	readonly sealedAt: Date;
	/** What queries read of the entry; null where its row is missing. */
	readonly kind: string | null;
	readonly subject: string | null;
	readonly byId: string | null;
}

/** Entries from an index on, in order, with what belongs to each. */
export async function storedEntries(database: Queryable, from: number, count: number): Promise<StoredEntry[]> {
	return database.query<StoredEntry>(
		`SELECT s.index, s.entry_bytes AS "entryBytes", s.leaf_sha256 AS "leafSha256", s.statement_bytes AS "statementBytes",
			s.statement_sha256 AS "statementSha256", s.sealed_at AS "sealedAt",
			p.kind, p.subject, p.by_id AS "byId"
		 FROM sealed_entry s LEFT JOIN entry_projection p USING (index)
		 WHERE s.index >= $1 ORDER BY s.index LIMIT $2`,
		[from, count],
	);
}

/** How many entries queries read of. */
export async function countProjections(database: Queryable): Promise<number> {
	const [row] = await database.query<{ count: number }>("SELECT count(*) AS count FROM entry_projection");
	return row?.count ?? 0;
}

/** Leaf hashes from an index on, in order. */
export async function storedLeaves(database: Queryable, from: number, count: number): Promise<string[]> {
	const rows = await database.query<{ leaf_sha256: string }>(
		"SELECT leaf_sha256 FROM sealed_entry WHERE index >= $1 ORDER BY index LIMIT $2",
		[from, count],
	);
	return rows.map((row) => row.leaf_sha256);
}
