/** The question to a time-stamping authority: RFC 3161, 2.4.1. */
import { Integer, Null, OctetString } from "asn1js";
import { AlgorithmIdentifier, MessageImprint, TimeStampReq } from "pkijs";

/** SHA-256, RFC 5754. */
export const SHA_256 = "2.16.840.1.101.3.4.2.1";

export interface StampRequest {
	/** SHA-256 of what is to be stamped, 32 bytes. */
	readonly imprint: Uint8Array;
	/** Tells the answer to this question from any other. */
	readonly nonce: Uint8Array;
	/** The question as DER. */
	readonly der: Uint8Array;
}

/**
 * The question for a stamp over `imprint`, with the authority's certificate asked for.
 * @param random 8 random bytes; two bits are fixed so that the nonce is a positive number in its shortest form
 */
export function stampRequest(imprint: Uint8Array, random: Uint8Array): StampRequest {
	const nonce = Uint8Array.from(random);
	nonce[0] = ((nonce[0] ?? 0) & 0x7f) | 0x40;
	const request = new TimeStampReq({
		version: 1,
		messageImprint: new MessageImprint({
			hashAlgorithm: new AlgorithmIdentifier({ algorithmId: SHA_256, algorithmParams: new Null() }),
			hashedMessage: new OctetString({ valueHex: imprint }),
		}),
		nonce: new Integer({ valueHex: nonce }),
		certReq: true,
	});
	return { imprint, nonce, der: new Uint8Array(request.toSchema().toBER()) };
}
