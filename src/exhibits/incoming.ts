/**
 * Uploads that are not whole yet, in the store's folder `.incoming`, each in segments under a key of its own, so that
 * nothing lies there in plain. What was acknowledged is synced; what lies behind it is written over.
 */
import { createHash } from "node:crypto";
import { constants } from "node:fs";
import { type FileHandle, mkdir, open, readdir, rename, rm, stat } from "node:fs/promises";
import { dirname, join } from "node:path";
import { crc32 } from "node:zlib";
import { readSealed, type SealedFile } from "./sealed-file.ts";
import {
	type RandomBytes,
	SEGMENT_BYTES,
	SEGMENTED,
	sealSegment,
	segmentCount,
	segmentPlace,
	segmentsEnd,
} from "./segments.ts";
import { exhibitPlace, fullOr, syncFolder } from "./store.ts";

const FOLDER = ".incoming";

/** Where an upload lies until it is whole. */
export function incomingPlace(folder: string, id: string): string {
	if (!/^upl_[0-9a-z]+$/.test(id)) throw new Error("not the id of an upload");
	return join(folder, FOLDER, id);
}

/** Takes bytes of an upload in order. */
export interface IncomingFile {
	/** Writes every segment that became whole. */
	take(bytes: Uint8Array): Promise<void>;
	/** Puts on disk what was written; gives how far the content has come, and what stands behind the last whole segment. */
	sync(): Promise<{ readonly offsetBytes: number; readonly tail: Buffer }>;
	close(): Promise<void>;
}

/** Opens an upload to go on at `offsetBytes`, of which `tail` stands behind the last whole segment. @throws Error where its beginning is gone */
export async function openIncoming(
	folder: string,
	id: string,
	{ key, sizeBytes }: Pick<SealedFile, "key" | "sizeBytes">,
	{ offsetBytes, tail }: { readonly offsetBytes: number; readonly tail: Uint8Array },
	randomBytes: RandomBytes,
): Promise<IncomingFile> {
	const path = incomingPlace(folder, id);
	await mkdir(dirname(path), { recursive: true, mode: 0o700 });
	const isNew = offsetBytes === 0;
	const file = await open(path, isNew ? constants.O_RDWR | constants.O_CREAT : constants.O_RDWR, 0o600);
	const last = segmentCount(sizeBytes) - 1;
	const held = Buffer.allocUnsafe(SEGMENT_BYTES);
	held.set(tail);
	let length = tail.length;
	let offset = offsetBytes;
	if (isNew) {
		await writeAll(file, Uint8Array.of(SEGMENTED), 0).catch(async (error) => {
			await file.close();
			throw error;
		});
	}
	/** A disk tells of a failed write once: what is asked again after it would be told that all is well. */
	let unsynced: { readonly error: unknown } | null = null;

	async function writeSegment(): Promise<void> {
		const index = Math.ceil(offset / SEGMENT_BYTES) - 1;
		const sealed = sealSegment(key, index, index === last, held.subarray(0, length), randomBytes);
		await writeAll(file, sealed, segmentPlace(index));
		length = 0;
	}

	return {
		async take(bytes) {
			for (let at = 0; at < bytes.length; ) {
				const part = bytes.subarray(at, at + SEGMENT_BYTES - length);
				held.set(part, length);
				length += part.length;
				offset += part.length;
				at += part.length;
				if (length < SEGMENT_BYTES && offset < sizeBytes) continue;
				await writeSegment().catch((error) => {
					// What could not be written has not come.
					length -= part.length;
					offset -= part.length;
					throw error;
				});
			}
		},
		async sync() {
			if (unsynced !== null) throw unsynced.error;
			try {
				await file.sync();
				if (isNew) await syncFolder(dirname(path));
			} catch (error) {
				unsynced = { error: fullOr(error) };
				throw unsynced.error;
			}
			return { offsetBytes: offset, tail: Buffer.from(held.subarray(0, length)) };
		},
		close: () => file.close(),
	};
}

/** Near a full disk a write may take a part and tell of no error. @throws disk-full */
async function writeAll(file: FileHandle, bytes: Uint8Array, place: number): Promise<void> {
	try {
		for (let at = 0; at < bytes.length; )
			at += (await file.write(bytes, at, bytes.length - at, place + at)).bytesWritten;
	} catch (error) {
		throw fullOr(error);
	}
}

/** What is said of a file by reading it. */
export interface FileFacts {
	/** Of the content. */
	readonly sha256: string;
	readonly crc32: number;
	/** Of the file as it lies in the store. */
	readonly storedSha256: string;
}

/**
 * Closes an upload whose bytes are all there: reads it once, adds its sealed key, and syncs it.
 * @param seen told of the content as it is read @param sealKey gives the file's key sealed for a content of this SHA-256
 */
export async function completeIncoming(
	folder: string,
	id: string,
	{ key, sizeBytes }: Pick<SealedFile, "key" | "sizeBytes">,
	seen: (bytes: Uint8Array) => void,
	sealKey: (sha256: string) => Buffer,
): Promise<FileFacts> {
	const path = incomingPlace(folder, id);
	const content = createHash("sha256");
	const stored = createHash("sha256").update(Uint8Array.of(SEGMENTED));
	let crc = 0;
	for await (const bytes of readSealed({ path, key, sizeBytes }, 0, sizeBytes, (sealed) => stored.update(sealed))) {
		content.update(bytes);
		crc = crc32(bytes, crc);
		seen(bytes);
	}
	const sha256 = content.digest("hex");
	const sealedKey = sealKey(sha256);
	const file = await open(path, "r+");
	try {
		// A start after a crash may find the key of an earlier attempt behind the segments.
		await file.truncate(segmentsEnd(sizeBytes));
		await writeAll(file, sealedKey, segmentsEnd(sizeBytes));
		await file.sync();
	} finally {
		await file.close();
	}
	return { sha256, crc32: crc, storedSha256: stored.update(sealedKey).digest("hex") };
}

/** Gives a completed upload its place in the store. */
export async function placeIncoming(folder: string, id: string, storedSha256: string): Promise<void> {
	const place = exhibitPlace(folder, storedSha256);
	await mkdir(dirname(place), { recursive: true });
	await rename(incomingPlace(folder, id), place);
	await syncFolder(dirname(place));
	await syncFolder(folder);
}

/** Whether an upload's bytes are still there. */
export async function hasIncoming(folder: string, id: string): Promise<boolean> {
	return stat(incomingPlace(folder, id)).then(
		() => true,
		() => false,
	);
}

/** Removes what there is of an upload; one that is not there is no fault. */
export async function removeIncoming(folder: string, id: string): Promise<void> {
	await rm(incomingPlace(folder, id), { force: true });
}

/** Ids of all uploads that lie there. */
export async function listIncoming(folder: string): Promise<string[]> {
	return readdir(join(folder, FOLDER)).catch((error: NodeJS.ErrnoException) => {
		if (error.code === "ENOENT") return [];
		throw error;
	});
}
