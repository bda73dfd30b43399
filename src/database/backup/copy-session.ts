/** One connection in one transaction that also streams whole tables, in the text form of PostgreSQL's COPY. */
import type { Readable } from "node:stream";
import { pipeline } from "node:stream/promises";
import pg from "pg";
import { from as copyFrom, to as copyTo } from "pg-copy-streams";
import type { Queryable } from "../connection.ts";
import { TYPE_PARSERS } from "../pool.ts";
import { NO_VAULT } from "../vault.ts";
import type { TableShape } from "./tables.ts";

export interface CopySession extends Queryable {
	/** The rows of a table in the order of its key, one line each. */
	copyOut(table: TableShape): Readable;
	/** Adds rows to a table; its triggers and constraints judge them. Gives how many. */
	copyIn(table: Pick<TableShape, "name" | "columns">, rows: Readable): Promise<number>;
}

/** What the text of a value depends on, the same for every server; and no limit of the server's cuts a long copy short. */
const SETTINGS = [
	"SET LOCAL bytea_output = 'hex'",
	"SET LOCAL DateStyle = 'ISO, YMD'",
	"SET LOCAL IntervalStyle = 'iso_8601'",
	"SET LOCAL TimeZone = 'UTC'",
	"SET LOCAL extra_float_digits = 1",
	"SET LOCAL statement_timeout = 0",
	"SET LOCAL idle_in_transaction_session_timeout = 0",
].join("; ");

/** Runs `work` on one moment of the database: everything it reads was committed before it began, nothing later is seen. */
export async function readOneMoment<Result>(
	url: string,
	work: (session: CopySession) => Promise<Result>,
): Promise<Result> {
	return inTransaction(url, "BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY", work);
}

/** Runs `work` so that all it writes is there when it returns, and nothing of it when it throws. */
export async function writeAllOrNothing<Result>(
	url: string,
	work: (session: CopySession) => Promise<Result>,
): Promise<Result> {
	return inTransaction(url, "BEGIN ISOLATION LEVEL READ COMMITTED", work);
}

async function inTransaction<Result>(
	url: string,
	begin: string,
	work: (session: CopySession) => Promise<Result>,
): Promise<Result> {
	const client = new pg.Client({ connectionString: url, types: TYPE_PARSERS });
	// A connection that breaks fails the query that waits on it; without a listener it would end the process.
	client.on("error", () => {});
	await client.connect();
	try {
		await client.query(begin);
		await client.query(SETTINGS);
		const result = await work({
			vault: NO_VAULT,
			query: async <Row>(sql: string, values: readonly unknown[] = []) =>
				(await client.query(sql, values as unknown[])).rows as Row[],
			copyOut: ({ name, columns, key }) =>
				client.query(copyTo(`COPY (SELECT ${list(columns)} FROM ${quoted(name)} ORDER BY ${list(key)}) TO STDOUT`)),
			async copyIn({ name, columns }, rows) {
				const sink = client.query(copyFrom(`COPY ${quoted(name)} (${list(columns)}) FROM STDIN`));
				await pipeline(rows, sink);
				return sink.rowCount;
			},
		});
		// PostgreSQL answers COMMIT with ROLLBACK, and no error, where a statement failed before.
		const { command } = await client.query("COMMIT");
		if (command !== "COMMIT") throw new Error("the transaction was rolled back: a statement in it had failed");
		return result;
	} finally {
		// Ending the connection rolls back what was not committed.
		await client.end();
	}
}

const quoted = (name: string) => pg.escapeIdentifier(name);
const list = (names: readonly string[]) => names.map(quoted).join(", ");
