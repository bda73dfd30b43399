/** Checks RSASSA-PKCS1-v1_5 signatures, RFC 8017 section 8.2.2: time-stamp authorities mostly use them. */
import { bytesToHex } from "@noble/hashes/utils.js";
import { contentOf, derNodes, inside, TAG } from "./der.ts";

/** DER before the digest, by its length: DigestInfo of SHA-256, SHA-384, SHA-512 (RFC 8017 section 9.2, note 1). */
const DIGEST_INFO: Readonly<Record<number, string>> = {
	32: "3031300d060960864801650304020105000420",
	48: "3041300d060960864801650304020205000430",
	64: "3051300d060960864801650304020305000440",
};
/** More would only cost time. */
const MOST_BYTES = 1024;

/** @param key DER of an RSAPublicKey. */
export function isRsaSignature(key: Uint8Array, signature: Uint8Array, digest: Uint8Array): boolean {
	const [modulusNode, exponentNode] = inside(derNodes(key)[0], TAG.sequence);
	const modulusBytes = contentOf(modulusNode, TAG.integer);
	const length = modulusBytes[0] === 0 ? modulusBytes.length - 1 : modulusBytes.length;
	const prefix = DIGEST_INFO[digest.length];
	if (length > MOST_BYTES || signature.length !== length || prefix === undefined) return false;
	const modulus = BigInt(`0x${bytesToHex(modulusBytes)}`);
	const exponent = BigInt(`0x${bytesToHex(contentOf(exponentNode, TAG.integer))}`);
	const signed = BigInt(`0x${bytesToHex(signature)}`);
	if (modulus <= 0n || signed >= modulus || exponent < 3n || exponent > 0xffffffffn) return false;
	const tail = `00${prefix}${bytesToHex(digest)}`;
	const expected = `0001${"ff".repeat(Math.max(length - 2 - tail.length / 2, 0))}${tail}`;
	const opened = power(signed, exponent, modulus)
		.toString(16)
		.padStart(length * 2, "0");
	return opened === expected;
}

function power(base: bigint, exponent: bigint, modulus: bigint): bigint {
	let result = 1n;
	let square = base % modulus;
	for (let left = exponent; left > 0n; left >>= 1n) {
		if ((left & 1n) === 1n) result = (result * square) % modulus;
		square = (square * square) % modulus;
	}
	return result;
}
