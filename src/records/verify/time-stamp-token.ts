/**
 * Reads an RFC 3161 TimeStampToken: CMS SignedData (RFC 5652) over a TSTInfo. Checked here: the content's digest, the
 * signature by the certificate that the token brings, and that the token names this certificate (RFC 5035). Whether
 * that certificate is an authority's whom one trusts is left to tools that hold the authorities' certificates.
 */
import { p256, p384 } from "@noble/curves/nist.js";
import { sha256, sha384, sha512 } from "@noble/hashes/sha2.js";
import { bytesToHex } from "@noble/hashes/utils.js";
import { contentOf, type DerNode, derNodes, inside, objectIdOf, TAG } from "./der.ts";
import { Unreadable, why } from "./finding.ts";
import { isRsaSignature } from "./rsa.ts";

export interface TimeStamp {
	/** The hashed message's digest, hex; null where another hash than SHA-256 was used. */
	readonly imprintSha256: string | null;
	/** As the authority wrote it, in ISO form. */
	readonly time: string;
	/** `unknown`: the token brings no certificate, or is signed in a way that is not read here. */
	readonly signature: "valid" | "invalid" | "unknown";
}

type Hash = (bytes: Uint8Array) => Uint8Array;
const SHA256 = "2.16.840.1.101.3.4.2.1";
const HASHES: Readonly<Record<string, Hash>> = {
	[SHA256]: sha256,
	"2.16.840.1.101.3.4.2.2": sha384,
	"2.16.840.1.101.3.4.2.3": sha512,
};
/** Signature algorithms that fix their hash: ecdsa-with-SHA256 …, sha256WithRSAEncryption …. */
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
const CURVES: Readonly<Record<string, typeof p256>> = { "1.2.840.10045.3.1.7": p256, "1.3.132.0.34": p384 };
const SIGNED_DATA = "1.2.840.113549.1.7.2";
const TST_INFO = "1.2.840.113549.1.9.16.1.4";
const CONTENT_TYPE = "1.2.840.113549.1.9.3";
const MESSAGE_DIGEST = "1.2.840.113549.1.9.4";
const SIGNING_CERTIFICATE_V2 = "1.2.840.113549.1.9.16.2.47";

/** @throws Unreadable */
export function readTimeStamp(token: Uint8Array): TimeStamp {
	const [outer, ...more] = derNodes(token);
	const [type, wrapped] = inside(outer, TAG.sequence);
	if (more.length > 0 || objectIdOf(type) !== SIGNED_DATA) refuse();
	const [signedData] = inside(wrapped, TAG.context0);
	const parts = inside(signedData, TAG.sequence);
	const [contentType, content] = inside(parts[2], TAG.sequence);
	if (objectIdOf(contentType) !== TST_INFO) refuse();
	const infoBytes = contentOf(inside(content, TAG.context0)[0], TAG.octets);
	const [, , imprint, , time] = inside(derNodes(infoBytes)[0], TAG.sequence);
	const [algorithm, digest] = inside(imprint, TAG.sequence);
	const isSha256 = objectIdOf(inside(algorithm, TAG.sequence)[0]) === SHA256;
	const certificates = parts[3]?.tag === TAG.context0 ? derNodes(parts[3].content) : [];
	const [signerInfo] = inside(parts.at(-1), TAG.set);
	return {
		imprintSha256: isSha256 ? bytesToHex(contentOf(digest, TAG.octets)) : null,
		time: isoTime(String.fromCharCode(...contentOf(time, TAG.generalizedTime))),
		signature: signatureOf(inside(signerInfo, TAG.sequence), infoBytes, certificates),
	};
}

/** RFC 5652 section 5.4 and 5.6. */
function signatureOf(
	signer: readonly DerNode[],
	infoBytes: Uint8Array,
	certificates: readonly DerNode[],
): TimeStamp["signature"] {
	const [, issuerAndSerial, digestAlgorithm, signedAttributes, signatureAlgorithm, signature] = signer;
	const digestOf = HASHES[objectIdOf(inside(digestAlgorithm, TAG.sequence)[0])];
	const certificate = certificates.find((candidate) => isNamed(candidate, issuerAndSerial));
	if (digestOf === undefined || certificate === undefined || signedAttributes === undefined) return "unknown";
	const attributes = new Map(
		inside(signedAttributes, TAG.context0).map((attribute) => {
			const [id, values] = inside(attribute, TAG.sequence);
			return [objectIdOf(id), inside(values, TAG.set)[0]] as const;
		}),
	);
	if (objectIdOf(attributes.get(CONTENT_TYPE)) !== TST_INFO) return "invalid";
	if (!equalBytes(contentOf(attributes.get(MESSAGE_DIGEST), TAG.octets), digestOf(infoBytes))) return "invalid";
	if (!namesCertificate(attributes.get(SIGNING_CERTIFICATE_V2), certificate)) return "invalid";
	// Signed is the SET OF itself, not the context tag under which it stands.
	const signed = Uint8Array.from(signedAttributes.bytes);
	signed[0] = TAG.set;
	const algorithm = objectIdOf(inside(signatureAlgorithm, TAG.sequence)[0]);
	const hash = algorithm === RSA ? digestOf : SIGNATURE_HASHES[algorithm];
	if (hash === undefined) return "unknown";
	return signatureHolds(certificate, contentOf(signature, TAG.octets), hash(signed));
}

function signatureHolds(certificate: DerNode, signature: Uint8Array, digest: Uint8Array): TimeStamp["signature"] {
	const [algorithm, key] = inside(fieldsOf(certificate)[5], TAG.sequence);
	const [id, parameters] = inside(algorithm, TAG.sequence);
	const keyBytes = contentOf(key, TAG.bits).subarray(1);
	try {
		if (objectIdOf(id) === RSA) return isRsaSignature(keyBytes, signature, digest) ? "valid" : "invalid";
		const curve = objectIdOf(id) === EC ? CURVES[objectIdOf(parameters)] : undefined;
		if (curve === undefined) return "unknown";
		const options = { prehash: false, lowS: false, format: "der" } as const;
		return curve.verify(signature, digest, keyBytes, options) ? "valid" : "invalid";
	} catch {
		return "invalid";
	}
}

/** Whether a certificate is that of the issuer and serial number in a SignerInfo. */
function isNamed(certificate: DerNode, issuerAndSerial: DerNode | undefined): boolean {
	if (certificate.tag !== TAG.sequence || issuerAndSerial?.tag !== TAG.sequence) return false;
	const [issuer, serial] = inside(issuerAndSerial, TAG.sequence);
	const [serialOf, , issuerOf] = fieldsOf(certificate);
	if (issuer === undefined || serial === undefined || serialOf === undefined || issuerOf === undefined) return false;
	return equalBytes(issuer.bytes, issuerOf.bytes) && equalBytes(serial.bytes, serialOf.bytes);
}

/** Fields of a certificate from its serial number on: serial, signature, issuer, validity, subject, public key. */
function fieldsOf(certificate: DerNode): DerNode[] {
	const [toBeSigned] = inside(certificate, TAG.sequence);
	const fields = inside(toBeSigned, TAG.sequence);
	return fields[0]?.tag === TAG.context0 ? fields.slice(1) : fields;
}

/** RFC 5035: the first certificate named is the signer's, by its hash. Without the attribute nothing is claimed. */
function namesCertificate(attribute: DerNode | undefined, certificate: DerNode): boolean {
	if (attribute === undefined) return true;
	const [named] = inside(inside(attribute, TAG.sequence)[0], TAG.sequence);
	const parts = inside(named, TAG.sequence);
	const isAlgorithm = parts[0]?.tag === TAG.sequence;
	const hash = isAlgorithm ? HASHES[objectIdOf(inside(parts[0], TAG.sequence)[0])] : sha256;
	const told = contentOf(isAlgorithm ? parts[1] : parts[0], TAG.octets);
	return hash !== undefined && equalBytes(told, hash(certificate.bytes));
}

/** `20260302090000.5Z` → `2026-03-02T09:00:00.5Z`. */
function isoTime(text: string): string {
	const match = /^(\d{4})(\d\d)(\d\d)(\d\d)(\d\d)(\d\d(?:\.\d{1,9})?)Z$/.exec(text);
	if (match === null) return refuse();
	const [, year, month, day, hour, minute, second] = match;
	return `${year}-${month}-${day}T${hour}:${minute}:${second}Z`;
}

function refuse(): never {
	throw new Unreadable({ why: why("verify.time-unreadable") });
}

function equalBytes(one: Uint8Array, other: Uint8Array): boolean {
	return bytesToHex(one) === bytesToHex(other);
}
