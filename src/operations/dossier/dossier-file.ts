/** A file of a dossier: its size and hashes are known before it is read, so that the whole can be laid out. */
import { crc32 } from "node:zlib";
import { sha256Hex } from "../../records/canonical.ts";

export interface DossierFile {
	/** From the bag's base folder; letters, digits, `.`, `-`, `_` and `/` alone, so that nothing has to be encoded. */
	readonly path: string;
	readonly sizeBytes: number;
	readonly sha256: string;
	/** CRC-32 as ZIP asks for it. */
	readonly crc32: number;
	/** Its bytes from `start` up to `end`, which is left out; large files are read only while they are sent, in pieces. */
	readonly read: (start: number, end: number) => AsyncIterable<Uint8Array> | Iterable<Uint8Array>;
}

/** A file whose bytes are at hand. */
export function fileOf(path: string, content: Uint8Array | string): DossierFile {
	const bytes = typeof content === "string" ? Buffer.from(content, "utf8") : content;
	return {
		path,
		sizeBytes: bytes.length,
		sha256: sha256Hex(bytes),
		crc32: crc32(bytes),
		read: (start, end) => [bytes.subarray(start, end)],
	};
}
