/** The tables that a backup holds, as the database's own catalogue has them, so that a table added later is in it by itself. */
import pg from "pg";
import type { Queryable } from "../connection.ts";

export interface TableShape {
	readonly name: string;
	/** Stored columns, in the table's order. */
	readonly columns: readonly string[];
	/** Columns of the primary key; rows are copied in its order. */
	readonly key: readonly string[];
}

/** Written by running the migrations again, not by copying rows. */
const MIGRATIONS_TABLE = "migration";

/**
 * Every table, each after those that its foreign keys refer to.
 * @throws Error where a table has no primary key, or tables refer to each other in a circle
 */
export async function listTables(database: Queryable): Promise<TableShape[]> {
	const rows = await database.query<TableShape & { readonly refers: readonly string[] }>(
		`SELECT t.relname AS name,
			ARRAY(SELECT a.attname::text FROM pg_attribute a
			      WHERE a.attrelid = t.oid AND a.attnum > 0 AND NOT a.attisdropped AND a.attgenerated = ''
			      ORDER BY a.attnum) AS columns,
			ARRAY(SELECT a.attname::text FROM pg_index i, unnest(i.indkey) WITH ORDINALITY AS k (attnum, place), pg_attribute a
			      WHERE i.indrelid = t.oid AND i.indisprimary AND a.attrelid = t.oid AND a.attnum = k.attnum
			      ORDER BY k.place) AS key,
			ARRAY(SELECT DISTINCT r.relname::text FROM pg_constraint c JOIN pg_class r ON r.oid = c.confrelid
			      WHERE c.conrelid = t.oid AND c.contype = 'f' AND c.confrelid <> t.oid) AS refers
		 FROM pg_class t JOIN pg_namespace n ON n.oid = t.relnamespace
		 WHERE n.nspname = 'public' AND t.relkind IN ('r', 'p') AND t.relname <> $1
		 ORDER BY t.relname COLLATE "C"`,
		[MIGRATIONS_TABLE],
	);
	const keyless = rows.find((row) => row.key.length === 0);
	if (keyless !== undefined) throw new Error(`table ${keyless.name} has no primary key, by which a backup orders rows`);
	const ordered: TableShape[] = [];
	const waiting = new Map(rows.map((row) => [row.name, row]));
	while (waiting.size > 0) {
		const next = [...waiting.values()].find((row) => !row.refers.some((name) => waiting.has(name)));
		if (next === undefined)
			throw new Error(`tables refer to each other in a circle: ${[...waiting.keys()].join(", ")}`);
		waiting.delete(next.name);
		ordered.push({ name: next.name, columns: next.columns, key: next.key });
	}
	return ordered;
}

/** How many rows a table has. */
export async function countRows(database: Queryable, name: string): Promise<number> {
	const [row] = await database.query<{ count: number }>(`SELECT count(*) AS count FROM ${pg.escapeIdentifier(name)}`);
	return row?.count ?? 0;
}
