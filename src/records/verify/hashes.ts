/** SHA-256 as the log uses it. Hashes are lower-case hex. */
import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, hexToBytes } from "@noble/hashes/utils.js";

const LEAF = Uint8Array.of(0x00);
const INTERIOR = Uint8Array.of(0x01);
const COMMITMENT = Uint8Array.of(0x02);

/** A hash that is fed piece by piece, for files too large to be held. */
export interface RunningHash {
	update(bytes: Uint8Array): void;
	/** The hash of everything so far; ends it. */
	hex(): string;
}

export function runningHash(): RunningHash {
	const hash = sha256.create();
	return {
		update(bytes) {
			hash.update(bytes);
		},
		hex: () => bytesToHex(hash.digest()),
	};
}

/** SHA-256 of the parts, one after the other. */
export function sha256Of(...parts: readonly Uint8Array[]): string {
	const hash = runningHash();
	for (const part of parts) hash.update(part);
	return hash.hex();
}

/** A leaf's hash, RFC 9162 section 2.1.1. */
export function leafHash(entryBytes: Uint8Array): string {
	return sha256Of(LEAF, entryBytes);
}

/** The hash of an interior node, RFC 9162 section 2.1.1. */
export function interiorHash(left: string, right: string): string {
	return sha256Of(INTERIOR, hexToBytes(left), hexToBytes(right));
}

/** The commitment to a value, given its canonical bytes. */
export function commitmentOf(salt: string, valueBytes: Uint8Array): string {
	return sha256Of(COMMITMENT, hexToBytes(salt), valueBytes);
}
