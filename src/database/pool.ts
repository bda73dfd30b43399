/** A pool of PostgreSQL connections as the `Database` that the rest of the program uses. */
import pg from "pg";
import type { Database, Queryable } from "./connection.ts";
import { heldLocks } from "./held-locks.ts";
import { NO_VAULT, type Vault } from "./vault.ts";

/** Key of the advisory lock that every transaction shares and an erasure has alone; unlike the log's and others. */
const ERASURE_LOCK = 4_862_204;

/** Type numbers of PostgreSQL: bigint comes as text; every bigint here is a count, an index or a size below 2^53. */
const BIGINT_TYPE = 20;

/** How values of the database come to us. */
export const TYPE_PARSERS = {
	getTypeParser: (type: number, format?: "text" | "binary") =>
		type === BIGINT_TYPE ? safeInteger : pg.types.getTypeParser(type, format ?? "text"),
} as pg.CustomTypesConfig;

/** Opens a pool. Connections are made when first needed. */
export function openPool(
	connectionString: string,
	options: { readonly maxConnections?: number; readonly vault?: Vault } = {},
): Database {
	const vault = options.vault ?? NO_VAULT;
	const pool = new pg.Pool({ connectionString, max: options.maxConnections ?? 10, types: TYPE_PARSERS });
	// A connection that dies while idle is replaced at the next query; without a listener it would end the process.
	pool.on("error", () => {});
	const locks = heldLocks(connectionString);
	return {
		vault,
		hold: locks.hold,
		query: async <Row>(sql: string, values: readonly unknown[] = []) =>
			(await pool.query(sql, values as unknown[])).rows as Row[],
		transaction: (work) => runTransaction(pool, vault, `SELECT pg_advisory_xact_lock_shared(${ERASURE_LOCK})`, work),
		transactionAlone: (work) => runTransaction(pool, vault, `SELECT pg_advisory_xact_lock(${ERASURE_LOCK})`, work),
		async close() {
			await locks.close();
			await pool.end();
		},
	};
}

async function runTransaction<Result>(
	pool: pg.Pool,
	vault: Vault,
	lock: string,
	work: (transaction: Queryable) => Promise<Result>,
): Promise<Result> {
	const client = await pool.connect();
	let broken: Error | undefined;
	try {
		// One message; the lock comes first, so that nobody waits for it who holds what another needs.
		await client.query(`BEGIN ISOLATION LEVEL READ COMMITTED; ${lock}`);
		const result = await work({
			vault,
			query: async <Row>(sql: string, values: readonly unknown[] = []) =>
				(await client.query(sql, values as unknown[])).rows as Row[],
		});
		await client.query("COMMIT");
		return result;
	} catch (error) {
		await client.query("ROLLBACK").catch((failure: Error) => {
			broken = failure;
		});
		throw error;
	} finally {
		client.release(broken);
	}
}

function safeInteger(text: string): number {
	const value = Number(text);
	if (!Number.isSafeInteger(value)) throw new Error(`bigint ${text} is beyond 2^53`);
	return value;
}
