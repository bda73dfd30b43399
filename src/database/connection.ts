/** What the rest of the program sees of the database: queries and transactions. */

import type { Vault } from "./vault.ts";

/** Runs SQL, on a connection of the pool or inside a transaction. */
export interface Queryable {
	/** Runs one statement and gives its rows. Values are passed as `$1`, `$2`, …; never written into the text. */
	query<Row>(sql: string, values?: readonly unknown[]): Promise<Row[]>;
	/** Encrypts what rows hold of persons. */
	readonly vault: Vault;
}

export interface Database extends Queryable {
	/** Runs `work` in one READ COMMITTED transaction; commits when it returns, rolls back when it throws. */
	transaction<Result>(work: (transaction: Queryable) => Promise<Result>): Promise<Result>;
	/** The same, while no other transaction of any instance runs: for an erasure, which nothing may write past. */
	transactionAlone<Result>(work: (transaction: Queryable) => Promise<Result>): Promise<Result>;
	/**
	 * Takes a lock that all instances respect and that lasts until it is let go of; null where someone has it. Whoever has
	 * it in this process is told through `wanted`, also when the lock is lost.
	 */
	hold(name: string, wanted: () => void): Promise<(() => Promise<void>) | null>;
	close(): Promise<void>;
}
