/** Reads keys as people hand them on: 64 hex digits, PEM of Ed25519 keys (RFC 8410), one or more, or a key's id. */
import { bytesToHex } from "@noble/hashes/utils.js";
import { bytesOfBase64 } from "./base64.ts";
import { shown } from "./canonical-json.ts";

/** DER before the 32 bytes of an Ed25519 public key. */
const SPKI_PREFIX = "302a300506032b6570032100";
const PEM = /-----BEGINPUBLICKEY-----([A-Za-z0-9+/=]*)-----ENDPUBLICKEY-----/g;

interface ExpectedKeys {
	/** Public keys, 64 hex digits each. */
	readonly keys: readonly string[];
	/** Ids of keys, eight hex digits: too short to prove a key. */
	readonly ids: readonly string[];
}

/** The keys in texts, and the first text that is none. */
export function expectedKeys(texts: readonly string[]): ExpectedKeys & { readonly unreadable: string | null } {
	const read = texts.map(keysIn);
	const bad = texts.find((_, place) => read[place] === null);
	return {
		keys: read.flatMap((one) => one?.keys ?? []),
		ids: read.flatMap((one) => one?.ids ?? []),
		unreadable: bad === undefined ? null : shown(bad),
	};
}

/** Null where any part of the text is no key. */
function keysIn(text: string): ExpectedKeys | null {
	const plain = text.replace(/\s/g, "");
	if (/^[0-9a-f]{64}$/i.test(plain)) return { keys: [plain.toLowerCase()], ids: [] };
	if (/^[0-9a-f]{8}$/i.test(plain)) return { keys: [], ids: [plain.toLowerCase()] };
	const encoded = [...plain.matchAll(PEM)].map(([, base64 = ""]) => bytesOfBase64(base64));
	const ders = encoded.map((der) => (der === null ? "" : bytesToHex(der)));
	const areKeys = ders.length > 0 && ders.every((der) => der.length === 88 && der.startsWith(SPKI_PREFIX));
	if (!areKeys || plain.replace(PEM, "") !== "") return null;
	return { keys: ders.map((der) => der.slice(SPKI_PREFIX.length)), ids: [] };
}
