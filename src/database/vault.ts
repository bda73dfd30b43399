/**
 * Encryption of personal data: AES-256-GCM (NIST SP 800-38D) with a key per party. Bytes: 01 ‖ nonce (12) ‖ ciphertext ‖
 * tag (16); the place, such as `party/pty_…`, is authenticated with them, so that bytes moved to another row do not open.
 * After an erasure what may stay stands in plain: 00 ‖ JSON.
 */
import { createCipheriv, createDecipheriv } from "node:crypto";
import { fault } from "../faults.ts";

export interface Vault {
	/** A party's part of the vault. Its key is read once, when first needed: use it for one act, and do not keep it. */
	of(partyId: string): PartyVault;
}

export interface PartyVault {
	/** Bytes under the party's key. @throws erased where the party has none */
	sealBytes(place: string, bytes: Uint8Array): Buffer;
	/** @throws erased where the party has no key; Error where the bytes are not those that were sealed here */
	openBytes(place: string, sealed: Uint8Array): Buffer;
	/** A value that JSON can hold, under the party's key. */
	seal(place: string, value: unknown): Buffer;
	open<Value>(place: string, sealed: Uint8Array): Value;
}

/** Gives a party's key, 32 bytes; null where it has none. */
export type KeyOf = (partyId: string) => Buffer | null;

const PLAIN = 0x00;
const SEALED = 0x01;
const NONCE_BYTES = 12;
const TAG_BYTES = 16;

export function makeVault(keyOf: KeyOf, randomBytes: (count: number) => Buffer): Vault {
	return { of: (partyId) => partyVault(partyId, keyOf, randomBytes) };
}

function partyVault(partyId: string, keyOf: KeyOf, randomBytes: (count: number) => Buffer): PartyVault {
	let known: Buffer | null = null;
	const key = (): Buffer => {
		known ??= keyOf(partyId);
		// A start makes sure that no key is merely lost, so one that is missing was deleted.
		if (known === null) throw fault("erased");
		return known;
	};
	const party: PartyVault = {
		sealBytes(place, bytes) {
			const nonce = randomBytes(NONCE_BYTES);
			const cipher = createCipheriv("aes-256-gcm", key(), nonce);
			cipher.setAAD(Buffer.from(place, "utf8"));
			const sealed = Buffer.concat([cipher.update(bytes), cipher.final()]);
			return Buffer.concat([Uint8Array.of(SEALED), nonce, sealed, cipher.getAuthTag()]);
		},
		openBytes(place, sealed) {
			const bytes = Buffer.from(sealed.buffer, sealed.byteOffset, sealed.length);
			if (bytes[0] === PLAIN) return bytes.subarray(1);
			if (bytes[0] !== SEALED) throw new Error(`${place} is not sealed in a known way`);
			const nonceEnd = 1 + NONCE_BYTES;
			const opener = createDecipheriv("aes-256-gcm", key(), bytes.subarray(1, nonceEnd), {
				authTagLength: TAG_BYTES,
			});
			opener.setAAD(Buffer.from(place, "utf8"));
			opener.setAuthTag(bytes.subarray(-TAG_BYTES));
			return Buffer.concat([opener.update(bytes.subarray(nonceEnd, -TAG_BYTES)), opener.final()]);
		},
		seal: (place, value) => party.sealBytes(place, Buffer.from(JSON.stringify(value), "utf8")),
		open: (place, sealed) => JSON.parse(party.openBytes(place, sealed).toString("utf8")),
	};
	return party;
}

/** What is left of erased data, in the form that `open` reads. */
export function plainBytes(value: unknown): Buffer {
	return Buffer.concat([Uint8Array.of(PLAIN), Buffer.from(JSON.stringify(value), "utf8")]);
}

/** The vault of connections that never meet personal data: migrations, backups, checks of the log. */
export const NO_VAULT: Vault = makeVault(
	() => null,
	() => {
		throw new Error("this connection seals nothing");
	},
);
