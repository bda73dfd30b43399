/** Reads a certificate (X.509, RFC 5280) as far as a time stamp needs it: who it is, and what its key signed. */
import { p256, p384 } from "@noble/curves/nist.js";
import { sha256, sha384, sha512 } from "@noble/hashes/sha2.js";
import { bytesToHex } from "@noble/hashes/utils.js";
import { contentOf, type DerNode, inside, objectIdOf, TAG } from "./der.ts";
import { isRsaSignature } from "./rsa.ts";

export type Hash = (bytes: Uint8Array) => Uint8Array;
/** `unknown`: in a way that is not read here. */
export type SignatureOutcome = "valid" | "invalid" | "unknown";

/** Signature algorithms with their hash: ecdsa-with-SHA256 …, sha256WithRSAEncryption …. */
const SIGNATURE_HASHES: Readonly<Record<string, Hash>> = {
	"1.2.840.10045.4.3.2": sha256,
	"1.2.840.10045.4.3.3": sha384,
	"1.2.840.10045.4.3.4": sha512,
	"1.2.840.113549.1.1.11": sha256,
	"1.2.840.113549.1.1.12": sha384,
	"1.2.840.113549.1.1.13": sha512,
};
const RSA = "1.2.840.113549.1.1.1";
const EC = "1.2.840.10045.2.1";
const NONE = "0500";
const CURVES: Readonly<Record<string, typeof p256>> = { "1.2.840.10045.3.1.7": p256, "1.3.132.0.34": p384 };

export interface Certificate {
	readonly bytes: Uint8Array;
	/** Names and serial number as their DER in hex. */
	readonly issuer: string;
	readonly serial: string;
	readonly subject: string;
	readonly publicKey: DerNode | undefined;
	readonly toBeSigned: Uint8Array;
	readonly algorithm: DerNode | undefined;
	readonly signature: Uint8Array;
	/** Whether it names its signature algorithm alike inside and outside of what is signed (RFC 5280, 4.1.1.2). */
	readonly isWhole: boolean;
}

/** @throws Unreadable */
export function readCertificate(node: DerNode): Certificate {
	const [toBeSigned, algorithm, signature, more] = inside(node, TAG.sequence);
	const fields = inside(toBeSigned, TAG.sequence);
	const [serial, innerAlgorithm, issuer, , subject, publicKey] =
		fields[0]?.tag === TAG.context0 ? fields.slice(1) : fields;
	const bits = contentOf(signature, TAG.bits);
	return {
		bytes: node.bytes,
		issuer: hexOf(issuer),
		serial: hexOf(serial),
		subject: hexOf(subject),
		publicKey,
		toBeSigned: toBeSigned?.bytes ?? new Uint8Array(),
		algorithm,
		signature: bits.subarray(1),
		isWhole: hexOf(algorithm) === hexOf(innerAlgorithm) && bits[0] === 0 && more === undefined,
	};
}

/** Whether a certificate's key made a signature. `digestOf` is for algorithms that do not say their hash. */
export function signatureBy(
	{ publicKey }: Certificate,
	algorithm: DerNode | undefined,
	signed: Uint8Array,
	signature: Uint8Array,
	digestOf?: Hash,
): SignatureOutcome {
	const [algorithmNode, algorithmParameters] = inside(algorithm, TAG.sequence);
	const algorithmId = objectIdOf(algorithmNode);
	const hash = algorithmId === RSA ? digestOf : SIGNATURE_HASHES[algorithmId];
	if (hash === undefined || !["", NONE].includes(hexOf(algorithmParameters))) return "unknown";
	const [keyAlgorithm, key] = inside(publicKey, TAG.sequence);
	const [id, parameters] = inside(keyAlgorithm, TAG.sequence);
	const keyBytes = contentOf(key, TAG.bits).subarray(1);
	try {
		if (objectIdOf(id) === RSA) return isRsaSignature(keyBytes, signature, hash(signed)) ? "valid" : "invalid";
		const curve = objectIdOf(id) === EC ? CURVES[objectIdOf(parameters)] : undefined;
		if (curve === undefined) return "unknown";
		const options = { prehash: false, lowS: false, format: "der" } as const;
		return curve.verify(signature, hash(signed), keyBytes, options) ? "valid" : "invalid";
	} catch {
		return "invalid";
	}
}

/**
 * Whether certificates that came together are signed by one another. One alone may have its issuer elsewhere: the last of
 * the chain, which only those can check who hold that issuer's certificate.
 */
export function isOneChain(certificates: readonly Certificate[]): SignatureOutcome {
	const outcomes = certificates.map(({ isWhole, issuer, algorithm, toBeSigned, signature }) => {
		if (!isWhole) return "invalid";
		const issuers = certificates.filter(({ subject }) => subject === issuer);
		if (issuers.length === 0) return "elsewhere";
		const byEach = issuers.map((one) => signatureBy(one, algorithm, toBeSigned, signature));
		return byEach.find((outcome) => outcome !== "invalid") ?? "invalid";
	});
	if (outcomes.includes("invalid")) return "invalid";
	const open = outcomes.filter((outcome) => outcome === "elsewhere").length;
	return outcomes.includes("unknown") || open > 1 ? "unknown" : "valid";
}

function hexOf(node: DerNode | undefined): string {
	return node === undefined ? "" : bytesToHex(node.bytes);
}
