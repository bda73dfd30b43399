/**
 * Reads a checkpoint in the open signed-note form: three lines (origin, size, base64 of the root), an empty line, and
 * signature lines `— name base64(key hash ‖ signature)`.
 */
import { ed25519 } from "@noble/curves/ed25519.js";
import { bytesToHex, hexToBytes, utf8ToBytes } from "@noble/hashes/utils.js";
import { bytesOfBase64 } from "./base64.ts";
import { why } from "./finding.ts";
import { sha256Of } from "./hashes.ts";
import { refuse } from "./shape.ts";

export interface NoteSignature {
	readonly name: string;
	/** Key hash, eight hex digits. */
	readonly keyId: string;
	readonly signature: Uint8Array;
}

export interface Note {
	/** Where it stands in what was read. */
	readonly where: string;
	/** The whole note as it was given. */
	readonly note: string;
	/** What is signed: the lines before the empty one. */
	readonly text: string;
	readonly origin: string;
	readonly size: number;
	readonly root: string;
	readonly signatures: readonly NoteSignature[];
}

/** A key that signs notes. */
export interface NoteKey {
	readonly origin: string;
	/** 32 bytes, hex. */
	readonly publicKey: string;
	readonly keyId: string;
}

const NAME = /^[^\s+]+$/u;
const SIZE = /^(0|[1-9][0-9]{0,15})$/;

/** @throws Unreadable */
export function readNote(note: string, where: string): Note {
	const refused = (line: number) => refuse(where, why("verify.note-line", { line }));
	const lines = note.split("\n");
	const [origin = "", size = "", root = "", empty, ...rest] = lines;
	if (!NAME.test(origin)) refused(1);
	if (!SIZE.test(size) || !Number.isSafeInteger(Number(size))) refused(2);
	const rootBytes = bytesOfBase64(root);
	if (rootBytes?.length !== 32) return refused(3);
	if (empty !== "") refused(4);
	if (rest.length < 2 || rest.at(-1) !== "") refused(lines.length);
	const signatures = rest.slice(0, -1).map((line, index): NoteSignature => {
		const [dash, name = "", encoded = "", more] = line.split(" ");
		const bytes = bytesOfBase64(encoded);
		if (dash !== "—" || !NAME.test(name) || bytes?.length !== 68 || more !== undefined) return refused(index + 5);
		return { name, keyId: bytesToHex(bytes.subarray(0, 4)), signature: bytes.subarray(4) };
	});
	return {
		where,
		note,
		text: `${origin}\n${size}\n${root}\n`,
		origin,
		size: Number(size),
		root: bytesToHex(rootBytes),
		signatures,
	};
}

/** A key with its id: the first four bytes of SHA-256(origin ‖ 0x0A ‖ 0x01 ‖ public key). */
export function noteKey(origin: string, publicKey: string): NoteKey {
	const hash = sha256Of(utf8ToBytes(origin), Uint8Array.of(0x0a, 0x01), hexToBytes(publicKey));
	return { origin, publicKey, keyId: hash.slice(0, 8) };
}

/** Whether a signature of a note is by a key: name, key hash, and Ed25519 (RFC 8032) over the note's text. */
export function isSignedBy(note: Note, signature: NoteSignature, key: NoteKey): boolean {
	if (signature.name !== key.origin || signature.keyId !== key.keyId) return false;
	try {
		return ed25519.verify(signature.signature, utf8ToBytes(note.text), hexToBytes(key.publicKey), { zip215: false });
	} catch {
		return false;
	}
}
