/** What the reader of a receipt brings beside it. */
export interface Given {
	/** Keys of the log that the reader had elsewhere: 64 hex digits, or PEM; the eight digits of a key's id are a hint. */
	readonly keys: readonly string[];
	/** Checkpoints as they are printed: number of entries, then the root in hex; spaces do not matter. */
	readonly printed: readonly string[];
	/** Receipts, signed notes and answers to `log/proof` that the reader kept. */
	readonly earlier: readonly GivenFile[];
	/** Files that may be exhibits; their bytes may be too many to be held. */
	readonly files: readonly HashedFile[];
}

export interface GivenFile {
	readonly name: string;
	readonly bytes: Uint8Array;
}

export interface HashedFile {
	readonly name: string;
	/** Lower-case hex; see `runningHash`. */
	readonly sha256: string;
}

export const NOTHING_GIVEN: Given = { keys: [], printed: [], earlier: [], files: [] };
