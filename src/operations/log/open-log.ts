/** What a start does to the log: a first key where there is none, the tree over entries that are older than the tree. */
import type { Queryable } from "../../database/connection.ts";
import { lockLog } from "../../database/log.ts";
import { storedLeaves } from "../../database/log-rows.ts";
import { insertCheckpoint, insertLogKey, insertSubtrees, newestCheckpoint, signingKey } from "../../database/tree.ts";
import { checkpointText, type LogKey, signedNote } from "../../records/log/checkpoint.ts";
import { grow, type HashedSubtree } from "../../records/log/tree.ts";
import type { Deps } from "../deps.ts";

const BATCH = 10_000;

/**
 * Makes the log ready to be added to.
 * @throws Error naming the file, where the private key that signs is not in the key folder
 */
export async function openLog(deps: Deps): Promise<void> {
	await deps.database.transaction(async (transaction) => {
		await lockLog(transaction);
		const key = (await signingKey(transaction)) ?? (await firstKey(deps, transaction));
		await deps.logKeys.require(key.id);
		if ((await newestCheckpoint(transaction)) === null) await adoptEntries(deps, transaction, key);
	});
}

async function firstKey(deps: Deps, transaction: Queryable): Promise<LogKey> {
	const key = await deps.logKeys.make(`handover-risk/${deps.newId("log").replace(/^log_/, "")}`);
	await insertLogKey(transaction, key, 0);
	return key;
}

/** Entries that were logged before there was a tree get theirs, and one checkpoint over all of them. */
async function adoptEntries(deps: Deps, transaction: Queryable, key: LogKey): Promise<void> {
	let size = 0;
	let root = "";
	let peaks: HashedSubtree[] = [];
	for (;;) {
		const leaves = await storedLeaves(transaction, size, BATCH);
		const made: HashedSubtree[] = [];
		for (const leaf of leaves) {
			const grown = grow(
				size,
				peaks.map((peak) => peak.sha256),
				leaf,
			);
			const newest = grown.made.at(-1) as HashedSubtree;
			peaks = [...peaks.slice(0, peaks.length - grown.made.length + 1), newest];
			made.push(...grown.made);
			root = grown.root;
			size += 1;
		}
		await insertSubtrees(transaction, made);
		if (leaves.length < BATCH) break;
	}
	if (size === 0) return;
	const text = checkpointText(key.origin, size, root);
	const signature = await deps.logKeys.sign(key.id, Buffer.from(text, "utf8"));
	const note = signedNote(key.origin, text, [{ keyId: key.id, signature }]);
	await insertCheckpoint(transaction, { size, note }, key.id);
}
