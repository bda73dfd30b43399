/**
 * Checkpoints: the log's size and root, signed, in the open signed-note form of the transparency-log community (from
 * memory; checked against an independent verifier in the tests). A note is UTF-8:
 *
 *   handover-risk/<20 characters>      origin: the log's name, minted once
 *   27                                 size: leaves of the tree, decimal
 *   jc5TrlMQ…=                         base64 of the 32-byte root (RFC 9162)
 *                                      an empty line
 *   — handover-risk/<…> 3q2+7…=        one or more: em dash, origin, base64 of key hash (4 bytes) ‖ signature (64 bytes)
 *
 * Every line ends in 0x0A. The signature is Ed25519 (RFC 8032) over the lines before the empty one, their ends included.
 * Key hash: the first four bytes of SHA-256(origin ‖ 0x0A ‖ 0x01 ‖ public key); as eight hex digits it is the key's id.
 * The checkpoint over the entry that brings a new key is signed by the old key and the new one, in this order.
 */
import { sha256Hex } from "../canonical.ts";

export interface Checkpoint {
	readonly size: number;
	readonly note: string;
}

/** A key as the log knows it. */
export interface LogKey {
	readonly id: string;
	readonly origin: string;
	/** 32 bytes, lower-case hex. */
	readonly publicKey: string;
}

/** A signature and the key that made it. */
export interface NoteSignature {
	readonly keyId: string;
	readonly signature: Uint8Array;
}

const ED25519 = Uint8Array.of(0x0a, 0x01);

/** The id of a key in a log's notes: the key hash, eight hex digits. */
export function keyIdOf(origin: string, publicKey: Uint8Array): string {
	return sha256Hex(Buffer.from(origin, "utf8"), ED25519, publicKey).slice(0, 8);
}

/** The bytes that are signed. */
export function checkpointText(origin: string, size: number, rootSha256: string): string {
	return `${origin}\n${size}\n${Buffer.from(rootSha256, "hex").toString("base64")}\n`;
}

/** The note: the text, an empty line, the signatures. */
export function signedNote(origin: string, text: string, signatures: readonly NoteSignature[]): string {
	const lines = signatures.map(
		({ keyId, signature }) =>
			`— ${origin} ${Buffer.concat([Buffer.from(keyId, "hex"), signature]).toString("base64")}\n`,
	);
	return `${text}\n${lines.join("")}`;
}

/** The public key as PEM, as `openssl pkeyutl -pubin` takes it: RFC 8410's fixed prefix, then the 32 bytes. */
export function publicKeyPem({ publicKey }: Pick<LogKey, "publicKey">): string {
	const der = Buffer.concat([Buffer.from("302a300506032b6570032100", "hex"), Buffer.from(publicKey, "hex")]);
	return `-----BEGIN PUBLIC KEY-----\n${der.toString("base64")}\n-----END PUBLIC KEY-----\n`;
}

/** Ids of the keys that signed a note of ours. */
export function signersOf(note: string): string[] {
	return [...note.matchAll(/^— \S+ (\S+)$/gm)].map(([, signature = ""]) =>
		Buffer.from(signature, "base64").subarray(0, 4).toString("hex"),
	);
}

/** The root in a note of ours, hex. */
export function rootOf(note: string): string {
	return Buffer.from(note.split("\n")[2] ?? "", "base64").toString("hex");
}
