/** Reads the files that a reader brings to the offline page. Large ones are hashed in slices and never held. */
import type { ByteSource } from "../../../records/verify/dossier/byte-source.ts";
import type { GivenFile, HashedFile } from "../../../records/verify/given.ts";
import { runningHash } from "../../../records/verify/hashes.ts";

const SLICE_BYTES = 4 * 1024 * 1024;
/** What is read whole: receipts, checkpoints, proofs. None comes near it. */
const LARGEST_READ_BYTES = 256 * 1024 * 1024;

/** A file that cannot be read: gone since it was chosen, too large to be a receipt, or (null) not chosen at all. */
export class UnreadableFile extends Error {
	readonly fileName: string | null;
	constructor(fileName: string | null) {
		super(fileName ?? "no file");
		this.fileName = fileName;
	}
}

export async function readWhole(file: File): Promise<GivenFile> {
	if (file.size > LARGEST_READ_BYTES) throw new UnreadableFile(file.name);
	try {
		return { name: file.name, bytes: new Uint8Array(await file.arrayBuffer()) };
	} catch {
		throw new UnreadableFile(file.name);
	}
}

/** A dossier, read in places and never held. @throws UnreadableFile */
export function sourceOn(file: File): ByteSource {
	return {
		size: file.size,
		read: async (start, length) => {
			try {
				return new Uint8Array(await file.slice(start, start + length).arrayBuffer());
			} catch {
				throw new UnreadableFile(file.name);
			}
		},
	};
}

/** @param tell told how much is read, 0 to 100, after each slice */
export async function hashSlices(file: File, tell: (percent: number) => void): Promise<HashedFile> {
	const hash = runningHash();
	try {
		for (let at = 0; at < file.size; at += SLICE_BYTES) {
			hash.update(new Uint8Array(await file.slice(at, at + SLICE_BYTES).arrayBuffer()));
			tell(Math.min(100, Math.round(((at + SLICE_BYTES) / file.size) * 100)));
		}
	} catch {
		throw new UnreadableFile(file.name);
	}
	return { name: file.name, sha256: hash.hex() };
}
