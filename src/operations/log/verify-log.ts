/**
 * Checks the stored log from its first entry to its last: every leaf is the hash of its entry's bytes and every statement's
 * hash stands in them, no index is missing and time never runs back, the rows that queries read say the same, every
 * complete subtree is the hash of what is below it, every checkpoint holds the root that the leaves give and is signed by
 * its key. Like `records/verify/`, from which it takes its hashes, it shares no code with what makes the log.
 */
import type { Queryable } from "../../database/connection.ts";
import {
	countLogRows,
	type StoredEntry,
	type StoredKey,
	storedEntries,
	storedKeys,
	storedSubtrees,
} from "../../database/log-rows.ts";
import { isNativelySigned } from "../../records/native-signature.ts";
import { Unreadable } from "../../records/verify/finding.ts";
import { type CompleteSubtree, growingTree } from "../../records/verify/growing-tree.ts";
import { leafHash, sha256Of } from "../../records/verify/hashes.ts";
import { type Note, readNote } from "../../records/verify/signed-note.ts";

export interface VerifiedLog {
	readonly size: number;
	readonly rootSha256: string;
	readonly checkpoints: number;
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
	const keys = new Map((await storedKeys(database)).map((key) => [key.id, key]));
	const tree = growingTree();
	let timeMs = 0;
	let subtrees = 0;
	let checkpoints = 0;
	let newestNoted = 0;
	for (;;) {
		const entries = await storedEntries(database, tree.size, BATCH);
		const made: CompleteSubtree[] = [];
		for (const entry of entries) {
			if (entry.index !== tree.size) throw new Error(`log entry ${tree.size} is missing`);
			refuseWrongBytes(entry);
			if (!(entry.sealedAt.getTime() >= timeMs)) throw wrong(entry, "it is older than the one before");
			timeMs = entry.sealedAt.getTime();
			made.push(...tree.add(entry.leafSha256));
			if (entry.note === null) continue;
			refuseWrongNote(entry, tree.root(), keys.get(entry.noteKeyId ?? ""));
			checkpoints += 1;
			newestNoted = tree.size;
		}
		await refuseWrongSubtrees(database, made);
		subtrees += made.length;
		progress(tree.size);
		if (entries.length < BATCH) break;
	}
	const { size } = tree;
	const rows = await countLogRows(database);
	if (newestNoted !== size) throw new Error(`the log holds ${size} entries and its newest checkpoint ${newestNoted}`);
	if (rows.projections !== size) throw new Error(`queries read of ${rows.projections} entries, the log holds ${size}`);
	if (rows.subtrees !== subtrees || rows.checkpoints !== checkpoints) {
		throw new Error("the log holds subtrees or checkpoints of entries that it does not hold");
	}
	return { size, rootSha256: tree.root(), checkpoints };
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

function refuseWrongNote(entry: StoredEntry, rootSha256: string, key: StoredKey | undefined): void {
	if (key === undefined) throw wrong(entry, "its checkpoint's key is missing");
	const note = noteOf(entry);
	if (note.size !== entry.index + 1 || note.root !== rootSha256 || note.origin !== key.origin) {
		throw wrong(entry, "its checkpoint holds another size, root or name");
	}
	const own = note.signatures.find(({ keyId }) => keyId === key.id);
	if (own === undefined || !isNativelySigned(note.text, own.signature, key.publicKey)) {
		throw wrong(entry, "its checkpoint is not signed by its key");
	}
}

function noteOf(entry: StoredEntry): Note {
	try {
		return readNote(entry.note ?? "", "");
	} catch (error) {
		if (!(error instanceof Unreadable)) throw error;
		throw wrong(entry, "its checkpoint cannot be read");
	}
}

async function refuseWrongSubtrees(database: Queryable, made: readonly CompleteSubtree[]): Promise<void> {
	const stored = await storedSubtrees(database, made);
	for (const [place, { level, index, sha256 }] of made.entries()) {
		if (stored[place] === sha256) continue;
		throw new Error(`the log's subtree ${index} of level ${level} is not the hash of its leaves`);
	}
}

function wrong(entry: StoredEntry, how: string): Error {
	return new Error(`log entry ${entry.index}: ${how}`);
}
