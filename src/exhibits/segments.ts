/**
 * How a file lies encrypted in the store: 02 ‖ segments ‖ the file's own key, which the vault sealed. A segment is
 * nonce (12) ‖ ciphertext ‖ tag (16), AES-256-GCM (NIST SP 800-38D), of 256 KiB, the last of what is left. Its number and
 * whether it is the last are authenticated with it, so that segments cannot be moved, left out or cut off at the end: the
 * idea of STREAM (Hoang, Reyhanitabar, Rogaway, Vizár: Online Authenticated-Encryption and its Nonce-Reuse
 * Misuse-Resistance, CRYPTO 2015; from memory). There number and flag are part of the nonce; here the nonce is random,
 * because an upload that was cut may send a segment a second time, and a nonce must not be used twice.
 */
import { createCipheriv, createDecipheriv } from "node:crypto";

export const SEGMENT_BYTES = 256 * 1024;
/** First byte of a file in segments. */
export const SEGMENTED = 0x02;
export const FILE_KEY_BYTES = 32;
/** 01, nonce, key, tag: as the vault seals a few bytes. */
export const SEALED_KEY_BYTES = 1 + 12 + FILE_KEY_BYTES + 16;
const NONCE_BYTES = 12;
const TAG_BYTES = 16;
const FORM_BYTES = 1;

export type RandomBytes = (count: number) => Buffer;

/** How many segments a file of `sizeBytes` has. */
export function segmentCount(sizeBytes: number): number {
	return Math.ceil(sizeBytes / SEGMENT_BYTES);
}

/** Where a segment begins in the stored file. */
export function segmentPlace(index: number): number {
	return FORM_BYTES + index * (SEGMENT_BYTES + NONCE_BYTES + TAG_BYTES);
}

/** Where the segments of a file of `sizeBytes` end in the stored file, and its sealed key begins. */
export function segmentsEnd(sizeBytes: number): number {
	return FORM_BYTES + sizeBytes + segmentCount(sizeBytes) * (NONCE_BYTES + TAG_BYTES);
}

/** Stored bytes of one segment of a file of `sizeBytes`. */
export function sealedSegmentBytes(index: number, sizeBytes: number): number {
	return Math.min(SEGMENT_BYTES, sizeBytes - index * SEGMENT_BYTES) + NONCE_BYTES + TAG_BYTES;
}

export function sealSegment(
	key: Uint8Array,
	index: number,
	isLast: boolean,
	plain: Uint8Array,
	randomBytes: RandomBytes,
): Buffer {
	const nonce = randomBytes(NONCE_BYTES);
	const cipher = createCipheriv("aes-256-gcm", key, nonce);
	cipher.setAAD(placeOf(index, isLast));
	const sealed = cipher.update(plain);
	cipher.final();
	return Buffer.concat([nonce, sealed, cipher.getAuthTag()]);
}

/** @throws Error where the bytes are not this segment of the file */
export function openSegment(key: Uint8Array, index: number, isLast: boolean, sealed: Uint8Array): Buffer {
	const opener = createDecipheriv("aes-256-gcm", key, sealed.subarray(0, NONCE_BYTES), { authTagLength: TAG_BYTES });
	opener.setAAD(placeOf(index, isLast));
	opener.setAuthTag(sealed.subarray(-TAG_BYTES));
	const plain = opener.update(sealed.subarray(NONCE_BYTES, -TAG_BYTES));
	opener.final();
	return plain;
}

function placeOf(index: number, isLast: boolean): Buffer {
	const place = Buffer.alloc(9);
	place.writeBigUInt64BE(BigInt(index));
	place.writeUInt8(isLast ? 1 : 0, 8);
	return place;
}
