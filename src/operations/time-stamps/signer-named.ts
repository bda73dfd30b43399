/**
 * The signed attributes that the library leaves to the caller: the content type, and the hash of the signer's
 * certificate (RFC 3161, 2.4.2; RFC 5816), by which nobody can put another certificate in the place of the signer's.
 */
import { ObjectIdentifier, OctetString, Sequence } from "asn1js";
import { AlgorithmIdentifier, type Certificate, getCrypto, type SignedData } from "pkijs";
import { StampRefusal } from "./stamp-refusal.ts";

const CONTENT_TYPE = "1.2.840.113549.1.9.3";
const SIGNING_CERTIFICATE = "1.2.840.113549.1.9.16.2.12";
const SIGNING_CERTIFICATE_V2 = "1.2.840.113549.1.9.16.2.47";
/** Hashes under which a signature still says something: SHA-256, SHA-384, SHA-512, RFC 5754. */
const STRONG = ["2.16.840.1.101.3.4.2.1", "2.16.840.1.101.3.4.2.2", "2.16.840.1.101.3.4.2.3"];

/** @throws StampRefusal where the signature does not name its content's type or its signer's certificate */
export async function requireSignerNamed(signed: SignedData, signer: Certificate, contentType: string): Promise<void> {
	const info = signed.signerInfos[0];
	const attribute = (oid: string) => info?.signedAttrs?.attributes.find(({ type }) => type === oid)?.values[0];
	if (!STRONG.includes(info?.digestAlgorithm.algorithmId ?? "")) throw new StampRefusal("wrong-signer", "a weak hash");
	const named: unknown = attribute(CONTENT_TYPE);
	if (!(named instanceof ObjectIdentifier) || named.valueBlock.toString() !== contentType) {
		throw new StampRefusal("wrong-signer", "the signature is over another type of content");
	}
	const first = firstCertificate(attribute(SIGNING_CERTIFICATE_V2) ?? attribute(SIGNING_CERTIFICATE));
	const hash = first?.find((part) => part instanceof OctetString);
	const algorithm = attribute(SIGNING_CERTIFICATE_V2) === undefined ? "SHA-1" : hashNameIn(first?.[0]);
	if (hash === undefined || algorithm === undefined) {
		throw new StampRefusal("wrong-signer", "the signature does not name its certificate");
	}
	const actual = await getCrypto(true).digest(algorithm, new Uint8Array(signer.toSchema().toBER()));
	if (!Buffer.from(hash.valueBlock.valueHexView).equals(new Uint8Array(actual))) {
		throw new StampRefusal("wrong-signer", "the signature names another certificate");
	}
}

/** The parts of the first ESSCertID or ESSCertIDv2, which is the signer's (RFC 2634, 5.4). */
function firstCertificate(attribute: unknown): readonly unknown[] | undefined {
	const certificates = attribute instanceof Sequence ? attribute.valueBlock.value[0] : undefined;
	const first = certificates instanceof Sequence ? certificates.valueBlock.value[0] : undefined;
	return first instanceof Sequence ? first.valueBlock.value : undefined;
}

/** The hash that an ESSCertIDv2 names in its first part; SHA-256 where it leaves that out. */
function hashNameIn(part: unknown): string | undefined {
	if (!(part instanceof Sequence)) return "SHA-256";
	const { algorithmId } = new AlgorithmIdentifier({ schema: part });
	const found = getCrypto(true).getAlgorithmByOID(algorithmId);
	return "name" in found ? found.name : undefined;
}
