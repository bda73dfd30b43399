/** Reading files that lie in segments, from any byte to any byte, one segment in memory at a time and the next one on its way. */
import { closeSync, openSync, readSync } from "node:fs";
import { type FileHandle, open } from "node:fs/promises";
import {
	openSegment,
	type RandomBytes,
	SEALED_KEY_BYTES,
	SEGMENT_BYTES,
	SEGMENTED,
	sealedSegmentBytes,
	sealSegment,
	segmentCount,
	segmentPlace,
	segmentsEnd,
} from "./segments.ts";

/** A file in segments that can be read: where it lies, and its own key. */
export interface SealedFile {
	readonly path: string;
	readonly key: Uint8Array;
	/** Of its content. */
	readonly sizeBytes: number;
}

/** The whole of a small file in segments. */
export function sealWhole(bytes: Uint8Array, key: Uint8Array, sealedKey: Uint8Array, randomBytes: RandomBytes): Buffer {
	const count = segmentCount(bytes.length);
	const segments = Array.from({ length: count }, (_, index) => {
		const plain = bytes.subarray(index * SEGMENT_BYTES, (index + 1) * SEGMENT_BYTES);
		return sealSegment(key, index, index === count - 1, plain, randomBytes);
	});
	return Buffer.concat([Uint8Array.of(SEGMENTED), ...segments, sealedKey]);
}

/**
 * What stands at the end of a stored file, the sealed key; null where the file is not in segments.
 * @throws Error where the file is shorter or longer than its content makes it
 */
export async function readSealedKey(path: string, sizeBytes: number): Promise<Buffer | null> {
	const file = await open(path, "r");
	try {
		const form = await readAt(file, 0, 1);
		if (form[0] !== SEGMENTED) return null;
		const end = segmentsEnd(sizeBytes);
		if ((await file.stat()).size !== end + SEALED_KEY_BYTES) throw new Error(`${path} has changed its size`);
		return await readAt(file, end, SEALED_KEY_BYTES);
	} finally {
		await file.close();
	}
}

/**
 * The content from `start` up to `end`, which is left out.
 * @param seen told of each segment as it lies there @throws Error where a segment has changed on disk
 */
export async function* readSealed(
	{ path, key, sizeBytes }: SealedFile,
	start = 0,
	end = sizeBytes,
	seen: (sealed: Buffer) => void = () => {},
): AsyncGenerator<Buffer> {
	const file = await open(path, "r");
	const segment = (index: number) => readAt(file, segmentPlace(index), sealedSegmentBytes(index, sizeBytes));
	let ahead: Promise<Buffer> | null = null;
	try {
		for (const index of segmentsOf(start, end)) {
			const sealed: Buffer = await (ahead ?? segment(index));
			// The disk works on the next one while this one is opened and taken.
			ahead = (index + 1) * SEGMENT_BYTES < end ? segment(index + 1) : null;
			ahead?.catch(() => {});
			seen(sealed);
			const plain = openSegment(key, index, index === segmentCount(sizeBytes) - 1, sealed);
			yield partOf(plain, index, start, end);
		}
	} finally {
		await ahead?.catch(() => {});
		await file.close();
	}
}

/** The same without waiting, for threads of their own. */
export function* readSealedSync({ path, key, sizeBytes }: SealedFile): Generator<Buffer> {
	const file = openSync(path, "r");
	try {
		for (const index of segmentsOf(0, sizeBytes)) {
			const sealed = Buffer.allocUnsafe(sealedSegmentBytes(index, sizeBytes));
			if (readSync(file, sealed, 0, sealed.length, segmentPlace(index)) !== sealed.length) throw cutShort(path);
			yield openSegment(key, index, index === segmentCount(sizeBytes) - 1, sealed);
		}
	} finally {
		closeSync(file);
	}
}

function* segmentsOf(start: number, end: number): Generator<number> {
	for (let index = Math.floor(start / SEGMENT_BYTES); index * SEGMENT_BYTES < end; index += 1) yield index;
}

function partOf(plain: Buffer, index: number, start: number, end: number): Buffer {
	const at = index * SEGMENT_BYTES;
	return plain.subarray(Math.max(0, start - at), end - at);
}

async function readAt(file: FileHandle, place: number, length: number): Promise<Buffer> {
	const bytes = Buffer.allocUnsafe(length);
	const { bytesRead } = await file.read(bytes, 0, length, place);
	if (bytesRead !== length) throw cutShort("a stored file");
	return bytes;
}

function cutShort(path: string): Error {
	return new Error(`${path} is shorter than its content`);
}
