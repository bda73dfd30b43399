/** Rows of the log's tree: complete subtrees, checkpoints, public keys. */
import type { Checkpoint, LogKey } from "../records/log/checkpoint.ts";
import type { HashedSubtree, Subtree } from "../records/log/tree.ts";
import type { Queryable } from "./connection.ts";

/** Hashes of complete subtrees, in the order asked for. @throws Error where the log does not hold one */
export async function subtreeHashes(database: Queryable, subtrees: readonly Subtree[]): Promise<string[]> {
	const rows = await database.query<{ sha256: string | null }>(
		`SELECT coalesce(t.sha256, s.leaf_sha256) AS sha256
		 FROM unnest($1::smallint[], $2::bigint[]) WITH ORDINALITY AS n (level, index, place)
		 LEFT JOIN tree_node t ON t.level = n.level AND t.index = n.index
		 LEFT JOIN sealed_entry s ON n.level = 0 AND s.index = n.index
		 ORDER BY n.place`,
		[subtrees.map((subtree) => subtree.level), subtrees.map((subtree) => subtree.index)],
	);
	return rows.map(({ sha256 }, place) => {
		if (sha256 === null) throw new Error(`the log lacks the subtree ${JSON.stringify(subtrees[place])}`);
		return sha256;
	});
}

/** Adds subtrees; leaves among them stand in their entries already. */
export async function insertSubtrees(transaction: Queryable, made: readonly HashedSubtree[]): Promise<void> {
	const interior = made.filter((subtree) => subtree.level > 0);
	if (interior.length === 0) return;
	await transaction.query(
		"INSERT INTO tree_node (level, index, sha256) SELECT * FROM unnest($1::smallint[], $2::bigint[], $3::text[])",
		[interior.map(({ level }) => level), interior.map(({ index }) => index), interior.map(({ sha256 }) => sha256)],
	);
}

/** Adds the checkpoint of a size; `keyId` is the key that signs from this size on. */
export async function insertCheckpoint(transaction: Queryable, checkpoint: Checkpoint, keyId: string): Promise<void> {
	await transaction.query("INSERT INTO checkpoint (size, note, key_id) VALUES ($1, $2, $3)", [
		checkpoint.size,
		checkpoint.note,
		keyId,
	]);
}

/** The newest checkpoint; null while nothing was logged. */
export async function newestCheckpoint(database: Queryable): Promise<Checkpoint | null> {
	const [row] = await database.query<Checkpoint>("SELECT size, note FROM checkpoint ORDER BY size DESC LIMIT 1");
	return row ?? null;
}

/** The checkpoints of the given sizes, as far as they were made, smallest first. */
export async function checkpointsOf(database: Queryable, sizes: readonly number[]): Promise<Checkpoint[]> {
	return database.query<Checkpoint>("SELECT size, note FROM checkpoint WHERE size = ANY ($1) ORDER BY size", [sizes]);
}

/** The keys that have signed, oldest first; the last one signs now. */
export async function logKeys(database: Queryable): Promise<LogKey[]> {
	return database.query<LogKey>('SELECT id, origin, public_key AS "publicKey" FROM log_key ORDER BY from_size');
}

/** The key that signs now; null in a new log. */
export async function signingKey(database: Queryable): Promise<LogKey | null> {
	const [row] = await database.query<LogKey>(
		'SELECT id, origin, public_key AS "publicKey" FROM log_key ORDER BY from_size DESC LIMIT 1',
	);
	return row ?? null;
}

/** Adds a key that signs checkpoints of `fromSize` and larger ones. */
export async function insertLogKey(transaction: Queryable, key: LogKey, fromSize: number): Promise<void> {
	await transaction.query("INSERT INTO log_key (id, origin, public_key, from_size) VALUES ($1, $2, $3, $4)", [
		key.id,
		key.origin,
		key.publicKey,
		fromSize,
	]);
}
