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
	/** The checkpoint of the tree that ends with this entry; null where there is none. */
	readonly note: string | null;
	readonly noteKeyId: string | null;
}

/** Entries from an index on, in order, with what belongs to each. */
export async function storedEntries(database: Queryable, from: number, count: number): Promise<StoredEntry[]> {
	return database.query<StoredEntry>(
		`SELECT s.index, s.entry_bytes AS "entryBytes", s.leaf_sha256 AS "leafSha256", s.statement_bytes AS "statementBytes",
			s.statement_sha256 AS "statementSha256", s.sealed_at AS "sealedAt",
			p.kind, p.subject, p.by_id AS "byId", c.note, c.key_id AS "noteKeyId"
		 FROM sealed_entry s LEFT JOIN entry_projection p USING (index) LEFT JOIN checkpoint c ON c.size = s.index + 1
		 WHERE s.index >= $1 ORDER BY s.index LIMIT $2`,
		[from, count],
	);
}

export interface StoredKey {
	readonly id: string;
	readonly origin: string;
	/** 32 bytes, hex. */
	readonly publicKey: string;
}

/** Every key that signed checkpoints. */
export async function storedKeys(database: Queryable): Promise<StoredKey[]> {
	return database.query<StoredKey>('SELECT id, origin, public_key AS "publicKey" FROM log_key');
}

/** The stored hashes of complete subtrees above the leaves, in the order asked for; null where one is missing. */
export async function storedSubtrees(
	database: Queryable,
	subtrees: readonly { readonly level: number; readonly index: number }[],
): Promise<(string | null)[]> {
	const rows = await database.query<{ sha256: string | null }>(
		`SELECT t.sha256 FROM unnest($1::smallint[], $2::bigint[]) WITH ORDINALITY AS n (level, index, place)
		 LEFT JOIN tree_node t ON t.level = n.level AND t.index = n.index ORDER BY n.place`,
		[subtrees.map(({ level }) => level), subtrees.map(({ index }) => index)],
	);
	return rows.map(({ sha256 }) => sha256);
}

/** How many rows the log has beside its entries. */
export async function countLogRows(
	database: Queryable,
): Promise<{ projections: number; subtrees: number; checkpoints: number }> {
	const [row] = await database.query<{ projections: number; subtrees: number; checkpoints: number }>(
		`SELECT (SELECT count(*) FROM entry_projection) AS projections, (SELECT count(*) FROM tree_node) AS subtrees,
			(SELECT count(*) FROM checkpoint) AS checkpoints`,
	);
	if (row === undefined) throw new Error("a SELECT without FROM gave no row");
	return row;
}

/** Leaf hashes from an index on, in order. */
export async function storedLeaves(database: Queryable, from: number, count: number): Promise<string[]> {
	const rows = await database.query<{ leaf_sha256: string }>(
		"SELECT leaf_sha256 FROM sealed_entry WHERE index >= $1 ORDER BY index LIMIT $2",
		[from, count],
	);
	return rows.map((row) => row.leaf_sha256);
}
