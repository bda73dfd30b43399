/** Reads keys as people hand them on: 64 hex digits, or PEM of Ed25519 keys (RFC 8410), one or more. */
import { bytesToHex } from "@noble/hashes/utils.js";
import { bytesOfBase64 } from "./base64.ts";
import { shown } from "./canonical-json.ts";

/** DER before the 32 bytes of an Ed25519 public key. */
const SPKI_PREFIX = "302a300506032b6570032100";
const PEM = /-----BEGINPUBLICKEY-----([A-Za-z0-9+/=]*)-----ENDPUBLICKEY-----/g;

/** The public keys, 64 hex digits each; and the first text that is none. */
export function expectedKeys(texts: readonly string[]): {
	readonly keys: readonly string[];
	readonly unreadable: string | null;
} {
	const read = texts.map(publicKeysOf);
	const bad = read.findIndex((keys) => keys.length === 0);
	return { keys: read.flat(), unreadable: bad < 0 ? null : shown(texts[bad] ?? "") };
}

/** None where any part of the text is no key. */
function publicKeysOf(text: string): string[] {
	const plain = text.replace(/\s/g, "");
	if (/^[0-9a-f]{64}$/i.test(plain)) return [plain.toLowerCase()];
	if (plain.replace(PEM, "") !== "") return [];
	const keys = [...plain.matchAll(PEM)].map(([, encoded = ""]) =>
		bytesToHex(bytesOfBase64(encoded) ?? new Uint8Array()),
	);
	const isEd25519 = (der: string) => der.length === 88 && der.startsWith(SPKI_PREFIX);
	return keys.every(isEd25519) ? keys.map((der) => der.slice(SPKI_PREFIX.length)) : [];
}
