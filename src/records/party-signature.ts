/**
 * A signature of a log entry by a key that lives on a device which used a link, and cannot leave it. Sealed by the
 * entry `party-signed`, whose subject is the link, as `handover-risk/party-signature/1`:
 *
 *   { "$format", "algorithm": "ecdsa-p256-sha256", "leafSha256": of the signed entry, "linkId",
 *     "publicKey": uncompressed point 04 ‖ x ‖ y, hex, "signature": r ‖ s, hex, over `signedText` }
 *
 * It shows that a device which used the link signed, at the time of the entry `party-signed`; not that the signed entry was
 * made with that device, and nothing about who held it.
 */
import { createPublicKey, verify } from "node:crypto";
import { canonicalBytes } from "./canonical.ts";
import type { LoggedEntry } from "./receipt.ts";
import { PARTY_SIGNATURE_FORMAT, signedText } from "./signed-text.ts";

export interface PartySignature {
	readonly linkId: string;
	/** Leaf of the entry that is signed. */
	readonly leafSha256: string;
	/** 65 bytes, hex, the first of them 04. */
	readonly publicKey: string;
	/** 64 bytes, hex. */
	readonly signature: string;
}

/** Whether the signature is by the key; false also where the key is no point of the curve. ECDSA P-256, FIPS 186-5. */
export function isByItsKey({ leafSha256, publicKey, signature }: PartySignature): boolean {
	try {
		const point = Buffer.from(publicKey, "hex");
		const x = point.subarray(1, 33).toString("base64url");
		const y = point.subarray(33).toString("base64url");
		const key = createPublicKey({ format: "jwk", key: { kty: "EC", crv: "P-256", x, y } });
		const text = Buffer.from(signedText(leafSha256), "utf8");
		return verify("sha256", text, { key, dsaEncoding: "ieee-p1363" }, Buffer.from(signature, "hex"));
	} catch {
		return false;
	}
}

/** The exact bytes to seal. */
export function partySignatureBytes({ linkId, leafSha256, publicKey, signature }: PartySignature): Buffer {
	return canonicalBytes({
		$format: PARTY_SIGNATURE_FORMAT,
		algorithm: "ecdsa-p256-sha256",
		leafSha256,
		linkId,
		publicKey,
		signature,
	});
}

/** When a device signed an entry, by the log's clock; null where none did. */
export function signedAt(leafSha256: string, entries: readonly LoggedEntry[]): Date | null {
	const signature = entries.find(
		({ kind, statementBytes }) =>
			kind === "party-signed" && statementBytes !== null && signedLeafOf(statementBytes) === leafSha256,
	);
	return signature?.time ?? null;
}

/** The leaf that a sealed signature is of. */
export function signedLeafOf(statementBytes: Uint8Array): string {
	return (JSON.parse(Buffer.from(statementBytes).toString("utf8")) as { leafSha256: string }).leafSha256;
}
