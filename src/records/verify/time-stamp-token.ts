/**
 * Reads an RFC 3161 TimeStampToken: CMS SignedData (RFC 5652) over a TSTInfo. Checked here: the content's digest, the
 * signature by the certificate that the token brings, that the token names this certificate (RFC 5035), and that the
 * certificates in it are signed by one another. Whether the last of them is an authority's whom one trusts is left to
 * tools that hold the authorities' certificates.
 */
import { sha256, sha384, sha512 } from "@noble/hashes/sha2.js";
import { bytesToHex } from "@noble/hashes/utils.js";
import {
	type Certificate,
	type Hash,
	isOneChain,
	readCertificate,
	type SignatureOutcome,
	signatureBy,
} from "./certificate.ts";
import { contentOf, type DerNode, derNodes, inside, objectIdOf, TAG } from "./der.ts";
import { Unreadable, why } from "./finding.ts";

export interface TimeStamp {
	/** The hashed message's digest, hex; null where another hash than SHA-256 was used. */
	readonly imprintSha256: string | null;
	/** As the authority wrote it, in ISO form. */
	readonly time: string;
	/** `unknown`: the token brings no certificate, or is signed in a way that is not read here. */
	readonly signature: SignatureOutcome;
}

const SHA256 = "2.16.840.1.101.3.4.2.1";
const HASHES: Readonly<Record<string, Hash>> = {
	[SHA256]: sha256,
	"2.16.840.1.101.3.4.2.2": sha384,
	"2.16.840.1.101.3.4.2.3": sha512,
};
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
	const [version, digestAlgorithms, encapsulated, ...rest] = inside(signedData, TAG.sequence);
	const [contentType, content] = inside(encapsulated, TAG.sequence);
	// RFC 5652 section 5.1: version 3, as the content is no plain data.
	if (objectIdOf(contentType) !== TST_INFO || numberOf(version) !== 3) refuse();
	const infoBytes = contentOf(inside(content, TAG.context0)[0], TAG.octets);
	const [, , imprint, , time] = inside(derNodes(infoBytes)[0], TAG.sequence);
	const [algorithm, digest] = inside(imprint, TAG.sequence);
	const isSha256 = objectIdOf(inside(algorithm, TAG.sequence)[0]) === SHA256;
	const certificates = rest[0]?.tag === TAG.context0 ? derNodes(rest[0].content).map(readCertificate) : [];
	const signers = inside(rest.at(-1), TAG.set);
	// RFC 3161 section 2.4.2: the authority's signature and no other.
	if (signers.length !== 1) refuse();
	const signer = inside(signers[0], TAG.sequence);
	const [onlyAlgorithm, ...otherAlgorithms] = inside(digestAlgorithms, TAG.set);
	if (otherAlgorithms.length > 0 || onlyAlgorithm === undefined || !isSame(onlyAlgorithm, signer[2])) refuse();
	return {
		imprintSha256: isSha256 ? bytesToHex(contentOf(digest, TAG.octets)) : null,
		time: isoTime(String.fromCharCode(...contentOf(time, TAG.generalizedTime))),
		signature: weaker(isOneChain(certificates), signatureOf(signer, infoBytes, certificates)),
	};
}

function weaker(one: SignatureOutcome, other: SignatureOutcome): SignatureOutcome {
	return (["invalid", "unknown"] as const).find((outcome) => one === outcome || other === outcome) ?? "valid";
}

/** RFC 5652 sections 5.3, 5.4 and 5.6. */
function signatureOf(
	signer: readonly DerNode[],
	infoBytes: Uint8Array,
	certificates: readonly Certificate[],
): SignatureOutcome {
	const [version, named, digestAlgorithm, signedAttributes, signatureAlgorithm, signature, unsigned] = signer;
	const digestOf = HASHES[objectIdOf(inside(digestAlgorithm, TAG.sequence)[0])];
	const certificate = certificates.find((candidate) => isNamed(candidate, named));
	if (digestOf === undefined || certificate === undefined || signedAttributes === undefined) return "unknown";
	if (numberOf(version) !== 1 || unsigned !== undefined) return "unknown";
	const attributes = new Map(
		inside(signedAttributes, TAG.context0).map((attribute) => {
			const [id, values] = inside(attribute, TAG.sequence);
			return [objectIdOf(id), inside(values, TAG.set)[0]] as const;
		}),
	);
	if (objectIdOf(attributes.get(CONTENT_TYPE)) !== TST_INFO) return "invalid";
	const told = contentOf(attributes.get(MESSAGE_DIGEST), TAG.octets);
	if (bytesToHex(told) !== bytesToHex(digestOf(infoBytes))) return "invalid";
	if (!namesCertificate(attributes.get(SIGNING_CERTIFICATE_V2), certificate)) return "invalid";
	// Signed is the SET OF itself, not the context tag under which it stands.
	const signed = Uint8Array.from(signedAttributes.bytes);
	signed[0] = TAG.set;
	return signatureBy(certificate, signatureAlgorithm, signed, contentOf(signature, TAG.octets), digestOf);
}

/** Whether a certificate is that of the issuer and serial number in a SignerInfo. */
function isNamed({ issuer, serial }: Certificate, issuerAndSerial: DerNode | undefined): boolean {
	if (issuerAndSerial?.tag !== TAG.sequence) return false;
	return (
		inside(issuerAndSerial, TAG.sequence)
			.map(({ bytes }) => bytesToHex(bytes))
			.join() === [issuer, serial].join()
	);
}

/** RFC 5035: the first certificate named is the signer's, by its hash. Without the attribute nothing is claimed. */
function namesCertificate(attribute: DerNode | undefined, { bytes }: Certificate): boolean {
	if (attribute === undefined) return true;
	const [named] = inside(inside(attribute, TAG.sequence)[0], TAG.sequence);
	const parts = inside(named, TAG.sequence);
	const saysHash = parts[0]?.tag === TAG.sequence;
	const hash = saysHash ? HASHES[objectIdOf(inside(parts[0], TAG.sequence)[0])] : sha256;
	const told = contentOf(saysHash ? parts[1] : parts[0], TAG.octets);
	return hash !== undefined && bytesToHex(told) === bytesToHex(hash(bytes));
}

/** `20260302090000.5Z` → `2026-03-02T09:00:00.5Z`. */
function isoTime(text: string): string {
	const match = /^(\d{4})(\d\d)(\d\d)(\d\d)(\d\d)(\d\d(?:\.\d{1,9})?)Z$/.exec(text);
	if (match === null) return refuse();
	const [, year, month, day, hour, minute, second] = match;
	return `${year}-${month}-${day}T${hour}:${minute}:${second}Z`;
}

function numberOf(node: DerNode | undefined): number {
	const content = contentOf(node, TAG.integer);
	return content.length === 1 ? (content[0] ?? 0) : refuse();
}

function isSame(one: DerNode, other: DerNode | undefined): boolean {
	return other !== undefined && bytesToHex(one.bytes) === bytesToHex(other.bytes);
}

function refuse(): never {
	throw new Unreadable({ why: why("verify.time-unreadable") });
}
