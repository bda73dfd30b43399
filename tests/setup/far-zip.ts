/** Archives beyond 4 GiB that take no place: files of zeros that are made as they are read, or left out of a file on disk. */
import { closeSync, ftruncateSync, openSync, writeSync } from "node:fs";
import type { DossierFile } from "../../src/operations/dossier/dossier-file.ts";
import { type StoredZip, zipBytes } from "../../src/operations/dossier/stored-zip.ts";
import type { ByteSource } from "../../src/records/verify/dossier/byte-source.ts";

const PIECE = new Uint8Array(256 * 1024);

/** So many zeros; nobody reads all of them, so the CRC-32 is any. */
export function zeros(path: string, sizeBytes: number): DossierFile {
	return {
		path,
		sizeBytes,
		sha256: "0".repeat(64),
		crc32: 0x01020304,
		*read(start, end) {
			for (let at = start; at < end; at += PIECE.length) yield PIECE.subarray(0, Math.min(PIECE.length, end - at));
		},
	};
}

export function sourceOn(zip: StoredZip): ByteSource {
	return {
		size: zip.sizeBytes,
		async read(start, length) {
			const pieces: Uint8Array[] = [];
			for await (const piece of zipBytes(zip, start, start + length)) pieces.push(piece);
			return Buffer.concat(pieces);
		},
	};
}

/** Writes the archive; parts of more than 1 MiB, which are zeros, become a hole that takes no place on the disk. */
export async function writeWithHoles(zip: StoredZip, path: string): Promise<void> {
	const file = openSync(path, "w");
	try {
		ftruncateSync(file, zip.sizeBytes);
		for (const { start, sizeBytes, read } of zip.parts) {
			if (sizeBytes > 1024 * 1024) continue;
			let at = start;
			for await (const piece of read(0, sizeBytes)) at += writeSync(file, piece, 0, piece.length, at);
		}
	} finally {
		closeSync(file);
	}
}
