/**
 * Locks that last longer than a transaction and that all instances respect: PostgreSQL's advisory locks, held by one
 * connection of their own, so that a slow upload takes none of the pool's. Who loses the connection loses the locks.
 */
import pg from "pg";

export interface HeldLocks {
	/**
	 * Takes the lock of this name; null where someone has it. Whoever has it in this process is told through `wanted`, also
	 * when the lock is lost.
	 */
	hold(name: string, wanted: () => void): Promise<(() => Promise<void>) | null>;
	close(): Promise<void>;
}

export function heldLocks(connectionString: string): HeldLocks {
	/** By name, whom to tell. A connection's second request for a lock that it has would be granted. */
	const held = new Map<string, () => void>();
	let session: Promise<pg.Client> | null = null;
	/** A connection takes one question at a time. */
	let asked: Promise<unknown> = Promise.resolve();

	function connected(): Promise<pg.Client> {
		session ??= connect().catch((error) => {
			session = null;
			throw error;
		});
		return session;
	}

	async function connect(): Promise<pg.Client> {
		const client = new pg.Client({ connectionString });
		client.on("error", () => {
			session = null;
			for (const wanted of held.values()) wanted();
		});
		await client.connect();
		return client;
	}

	function ask(client: pg.Client, what: "pg_try_advisory_lock" | "pg_advisory_unlock", name: string) {
		const answer = asked.then(async () => {
			const { rows } = await client.query(`SELECT ${what}(hashtextextended($1, 0)) AS done`, [name]);
			return rows[0].done === true;
		});
		asked = answer.catch(() => {});
		return answer;
	}

	return {
		async hold(name, wanted) {
			const holder = held.get(name);
			if (holder !== undefined) {
				holder();
				return null;
			}
			held.set(name, wanted);
			try {
				const taken = await connected();
				if (!(await ask(taken, "pg_try_advisory_lock", name))) {
					held.delete(name);
					return null;
				}
				return async () => {
					// Where the connection was lost the lock went with it, and there is nothing to let go of.
					if (session !== null && (await session) === taken)
						await ask(taken, "pg_advisory_unlock", name).catch(() => {});
					held.delete(name);
				};
			} catch (error) {
				held.delete(name);
				throw error;
			}
		},
		async close() {
			await (await session)?.end();
		},
	};
}
