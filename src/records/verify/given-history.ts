/** Reads what a reader kept of the log's past: a receipt, a checkpoint (signed note), or an answer to `log/proof`. */
import { shown } from "./canonical-json.ts";
import { type FindingDetails, Unreadable, why } from "./finding.ts";
import type { GivenFile } from "./given.ts";
import type { TreeHead } from "./merkle-proofs.ts";
import { readReceipt } from "./read-receipt.ts";
import { type Note, type NoteKey, readNote } from "./signed-note.ts";

/** That the tree of one checkpoint is the beginning of another's. */
export interface Link {
	readonly from: TreeHead;
	readonly to: TreeHead;
	readonly proof: readonly string[];
}

/** A proof that does not say from which tree it leads. */
export interface LooseProof {
	readonly size: number;
	readonly proof: readonly string[];
}

export interface GivenHistory {
	readonly name: string;
	/** Newest first. */
	readonly notes: readonly Note[];
	/** Printed, so that nobody signed them; they were seen elsewhere. */
	readonly heads: readonly TreeHead[];
	readonly keys: readonly NoteKey[];
	readonly links: readonly Link[];
	readonly proofs: readonly LooseProof[];
	/** Why it cannot be read; null where it can. */
	readonly unreadable: FindingDetails | null;
}

/** A printed checkpoint: `27 4f1e 93c1 …`. */
export function readPrinted(text: string): GivenHistory {
	const [, size = "", root = ""] = /^\s*([0-9]{1,15})\s+([0-9a-fA-F\s]+)$/.exec(text) ?? [];
	const digits = root.replace(/\s/g, "").toLowerCase();
	const nothing = emptyHistory(shown(text.trim()));
	if (digits.length !== 64) return { ...nothing, unreadable: { why: why("verify.earlier-not-printed") } };
	return { ...nothing, heads: [{ size: Number(size), root: digits }] };
}

export function readHistory({ name, bytes }: GivenFile): GivenHistory {
	const nothing = emptyHistory(name);
	try {
		// An em dash is what only a note has, and an opening brace begins what is JSON.
		if (bytes[0] !== 0x7b) return { ...nothing, notes: [readNote(new TextDecoder().decode(bytes), "")] };
		const proof = looseProof(bytes);
		if (proof !== null) return { ...nothing, proofs: [proof] };
		const { log } = readReceipt(bytes);
		if (log === null) return { ...nothing, unreadable: { why: why("verify.earlier-no-checkpoint") } };
		const older = [...log.earlier, ...log.timeStamps];
		return {
			...nothing,
			notes: [log.checkpoint, ...older.map(({ note }) => note)],
			keys: log.keys,
			links: older.map(({ note, proof }) => ({ from: note, to: log.checkpoint, proof })),
		};
	} catch (error) {
		if (!(error instanceof Unreadable)) throw error;
		return { ...nothing, unreadable: error.details };
	}
}

/** An answer to `log/proof`: `{ "size", "rootSha256", "proof": [ hex … ] }` in any order; null for anything else. */
function looseProof(bytes: Uint8Array): LooseProof | null {
	try {
		const { size, proof } = JSON.parse(new TextDecoder().decode(bytes)) as { size?: unknown; proof?: unknown };
		if (typeof size !== "number" || !Array.isArray(proof)) return null;
		const isHash = (hash: unknown): hash is string => typeof hash === "string" && /^[0-9a-f]{64}$/.test(hash);
		return Number.isSafeInteger(size) && proof.every(isHash) ? { size, proof } : null;
	} catch {
		return null;
	}
}

function emptyHistory(name: string): GivenHistory {
	return { name, notes: [], heads: [], keys: [], links: [], proofs: [], unreadable: null };
}
