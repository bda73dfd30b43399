/** What anyone may ask of the log: its newest checkpoint, its keys, proofs. */
import type { Queryable } from "../../database/connection.ts";
import { newestStamp } from "../../database/time-stamps.ts";
import { logKeys, newestCheckpoint, subtreeHashes } from "../../database/tree.ts";
import { fault, invalid } from "../../faults.ts";
import { type Checkpoint, publicKeyPem, rootOf, signersOf } from "../../records/log/checkpoint.ts";
import {
	consistencyRanges,
	inclusionRanges,
	type LeafRange,
	proofOf,
	subtreesOfRanges,
} from "../../records/log/proofs.ts";
import type { Subtree } from "../../records/log/tree.ts";
import type { Deps } from "../deps.ts";

/** The newest checkpoint. @throws not-found while nothing was logged */
export async function readCheckpoint(deps: Deps): Promise<Checkpoint> {
	const checkpoint = await newestCheckpoint(deps.database);
	if (checkpoint === null) throw fault("not-found");
	return checkpoint;
}

/** What a page prints of the newest checkpoint. */
export interface CheckpointFacts {
	readonly origin: string;
	readonly size: number;
	readonly rootSha256: string;
	readonly keyIds: readonly string[];
	/** The newest time stamp of an authority, and how many entries it covers; null: the server's clock alone. */
	readonly stamp: { readonly size: number; readonly time: Date } | null;
}

/** The newest checkpoint's facts; null while nothing was logged. */
export async function readCheckpointFacts(deps: Deps): Promise<CheckpointFacts | null> {
	const checkpoint = await newestCheckpoint(deps.database);
	if (checkpoint === null) return null;
	const { size, note } = checkpoint;
	const stamp = await newestStamp(deps.database);
	return { origin: note.split("\n")[0] ?? "", size, rootSha256: rootOf(note), keyIds: signersOf(note), stamp };
}

/** The public keys that have signed, as PEM blocks, the one that signs now first. */
export async function readPublicKeysPem(deps: Deps): Promise<string> {
	return (await logKeys(deps.database)).reverse().map(publicKeyPem).join("");
}

export interface LogProof {
	readonly size: number;
	readonly rootSha256: string | null;
	readonly proof: readonly string[];
}

/** Proof that entry `index` stands in the tree of `size` leaves, the newest where none is given. */
export async function readInclusionProof(deps: Deps, index: number, size?: number): Promise<LogProof> {
	const newest = await readCheckpoint(deps);
	const of = size ?? newest.size;
	if (of > newest.size) throw invalid([{ path: "/size", code: "too-big", facts: { most: newest.size } }]);
	if (index >= of) throw invalid([{ path: "/index", code: "too-big", facts: { most: of - 1 } }]);
	return proofIn(deps.database, newest, of, inclusionRanges(index, of));
}

/** Proof that the tree of `from` leaves is the beginning of the tree of `to`, the newest where none is given. */
export async function readConsistencyProof(deps: Deps, from: number, to?: number): Promise<LogProof> {
	const newest = await readCheckpoint(deps);
	const of = to ?? newest.size;
	if (of > newest.size) throw invalid([{ path: "/to", code: "too-big", facts: { most: newest.size } }]);
	if (from > of) throw invalid([{ path: "/from", code: "too-big", facts: { most: of } }]);
	return proofIn(deps.database, newest, of, consistencyRanges(from, of));
}

async function proofIn(
	database: Queryable,
	newest: Checkpoint,
	size: number,
	ranges: readonly LeafRange[],
): Promise<LogProof> {
	const prove = await proverOf(database, ranges);
	return { size, rootSha256: size === newest.size ? rootOf(newest.note) : null, proof: prove(ranges) };
}

/** Makes any proof over the given ranges, their subtrees read in one go. */
export async function proverOf(
	database: Queryable,
	ranges: readonly LeafRange[],
): Promise<(wanted: readonly LeafRange[]) => string[]> {
	const placeOf = ({ level, index }: Subtree) => `${level}/${index}`;
	const subtrees = [...new Map(subtreesOfRanges(ranges).map((subtree) => [placeOf(subtree), subtree])).values()];
	const hashes = await subtreeHashes(database, subtrees);
	const found = new Map(subtrees.map((subtree, place) => [placeOf(subtree), hashes[place] as string]));
	return (wanted) => proofOf(wanted, (subtree) => found.get(placeOf(subtree)) as string);
}
