/**
 * Checks the stored log from its first entry to its last: every leaf is the hash of its entry's bytes and every statement's
 * hash stands in them, no index is missing and time never runs back, and the rows that queries read say the same. Like `records/verify/`, from which it takes its hashes, it shares no code with what makes the log.
 */
import type { Queryable } from "../../database/connection.ts";
import { countProjections, type StoredEntry, storedEntries } from "../../database/log-rows.ts";
import { growingTree } from "../../records/verify/growing-tree.ts";
import { leafHash, sha256Of } from "../../records/verify/hashes.ts";

export interface VerifiedLog {
	readonly size: number;
	readonly rootSha256: string;
}

/** Entries per query. Our choice: some megabytes of statements. */
const BATCH = 500;

/**
 * The size and root that were found.
 * @param progress called with the entries checked so far
 * @throws Error naming the first entry that is wrong, and how
 */
export async function verifyLog(
	database: Queryable,
	progress: (checked: number) => void = () => {},
): Promise<VerifiedLog> {
	const tree = growingTree();
	let timeMs = 0;
	for (;;) {
		const entries = await storedEntries(database, tree.size, BATCH);
		for (const entry of entries) {
			if (entry.index !== tree.size) throw new Error(`log entry ${tree.size} is missing`);
			refuseWrongBytes(entry);
			if (!(entry.sealedAt.getTime() >= timeMs)) throw wrong(entry, "it is older than the one before");
			timeMs = entry.sealedAt.getTime();
			tree.add(entry.leafSha256);
		}
		progress(tree.size);
		if (entries.length < BATCH) break;
	}
	const { size } = tree;
	const projections = await countProjections(database);
	if (projections !== size) throw new Error(`queries read of ${projections} entries, the log holds ${size}`);
	return { size, rootSha256: tree.root() };
}

function refuseWrongBytes(entry: StoredEntry): void {
	if (leafHash(entry.entryBytes) !== entry.leafSha256) throw wrong(entry, "its leaf is not its hash");
	const statementSha256 = entry.statementBytes === null ? undefined : sha256Of(entry.statementBytes);
	if ((statementSha256 ?? null) !== entry.statementSha256) throw wrong(entry, "its statement has another hash");
	const said = JSON.parse(entry.entryBytes.toString("utf8")) as Record<string, unknown>;
	const stored = {
		index: entry.index,
		kind: entry.kind,
		subject: entry.subject,
		by: entry.byId,
		time: entry.sealedAt.toISOString(),
		statementSha256,
	};
	for (const [name, value] of Object.entries(stored)) {
		if (said[name] !== value) throw wrong(entry, `its bytes say another ${name} than its row`);
	}
}

function wrong(entry: StoredEntry, how: string): Error {
	return new Error(`log entry ${entry.index}: ${how}`);
}
