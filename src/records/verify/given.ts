/** What the reader of a receipt brings beside it. */
export interface Given {
	/** Keys of the log that the reader had elsewhere: 64 hex digits, or PEM. */
	readonly keys: readonly string[];
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

export const NOTHING_GIVEN: Given = { keys: [], earlier: [], files: [] };
