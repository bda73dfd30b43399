/**
 * Checks an authority's answer before anything of it is kept: RFC 3161, 2.4.2 and 2.3, with RFC 5816 for the signer's
 * certificate hash. A token that passes is also accepted by `openssl ts -verify`.
 */
import { fromBER, type Sequence } from "asn1js";
import {
	Certificate,
	ContentInfo,
	ExtKeyUsage,
	SignedData,
	SignedDataVerifyError,
	type SignedDataVerifyResult,
	TimeStampResp,
	TSTInfo,
} from "pkijs";
import { requireSignerNamed } from "./signer-named.ts";
import { StampRefusal } from "./stamp-refusal.ts";
import { SHA_256, type StampRequest } from "./stamp-request.ts";

const SIGNED_DATA = "1.2.840.113549.1.7.2";
const TST_INFO = "1.2.840.113549.1.9.16.1.4";
const EXTENDED_KEY_USAGE = "2.5.29.37";
const TIME_STAMPING = "1.3.6.1.5.5.7.3.8";
/** granted, grantedWithMods: in both a token comes, and it is checked below against what was asked. */
const GRANTED = [0, 1];

export interface VerifiedStamp {
	/** The TimeStampToken, DER, exactly as it came. */
	readonly token: Uint8Array;
	/** The time that the authority states. */
	readonly genTime: Date;
	/** OID of the policy under which it states it. */
	readonly policy: string;
}

/**
 * The stamp in an answer.
 * @param stamped the bytes whose SHA-256 was sent
 * @throws StampRefusal with what is wrong first
 */
export async function verifyReply(
	reply: Uint8Array,
	request: StampRequest,
	stamped: Uint8Array,
	anchors: readonly Certificate[],
): Promise<VerifiedStamp> {
	const token = tokenIn(reply);
	const signed = readAs("malformed", () => {
		const content = ContentInfo.fromBER(token);
		if (content.contentType !== SIGNED_DATA) throw new Error("the token is not signed data");
		return new SignedData({ schema: content.content });
	});
	const info = readAs("malformed", () => {
		const { eContentType, eContent } = signed.encapContentInfo;
		if (eContentType !== TST_INFO || eContent === undefined) throw new Error("the token holds no time stamp");
		return TSTInfo.fromBER(eContent.getValue());
	});
	const { hashAlgorithm, hashedMessage } = info.messageImprint;
	if (hashAlgorithm.algorithmId !== SHA_256 || !equal(hashedMessage.valueBlock.valueHexView, request.imprint)) {
		throw new StampRefusal("wrong-imprint");
	}
	if (info.nonce === undefined || !equal(info.nonce.valueBlock.valueHexView, request.nonce)) {
		throw new StampRefusal("wrong-nonce");
	}
	if (!/^[0-9]+(\.[0-9]+)+$/.test(info.policy)) throw new StampRefusal("no-policy");
	if (!(info.genTime.getTime() > 0)) throw new StampRefusal("malformed", "the time cannot be read");
	const signer = await verifySignature(signed, stamped, anchors);
	requireTimeStampingOnly(signer);
	await requireSignerNamed(signed, signer, TST_INFO);
	return { token, genTime: info.genTime, policy: info.policy };
}

/** The token's bytes, cut from the reply as they are. */
function tokenIn(reply: Uint8Array): Uint8Array<ArrayBuffer> {
	const { result, offset } = fromBER(reply);
	if (offset !== reply.length) throw new StampRefusal("malformed", "not one whole structure");
	const { status } = readAs("malformed", () => new TimeStampResp({ schema: result }));
	if (!GRANTED.includes(status.status)) {
		const said = status.statusStrings?.map((text) => text.valueBlock.value).join(" ") ?? "";
		throw new StampRefusal("rejected", `status ${status.status} ${said}`.trim());
	}
	const token = (result as Sequence).valueBlock.value[1];
	if (token === undefined) throw new StampRefusal("malformed", "granted and no token");
	return Uint8Array.from(token.valueBeforeDecodeView);
}

/** Signature and chain, both at the time that the token states. Gives the signer's certificate. */
async function verifySignature(
	signed: SignedData,
	stamped: Uint8Array,
	anchors: readonly Certificate[],
): Promise<Certificate> {
	// RFC 3161, 2.4.2: a token holds the authority's signature and no other.
	if (signed.signerInfos.length !== 1) throw new StampRefusal("wrong-signer", "not one signature");
	let outcome: SignedDataVerifyResult;
	try {
		outcome = await signed.verify({
			signer: 0,
			data: Uint8Array.from(stamped).buffer,
			trustedCerts: [...anchors],
			checkChain: true,
			passedWhenNotRevValues: true,
			extendedMode: true,
		});
	} catch (error) {
		if (!(error instanceof SignedDataVerifyError)) throw error;
		if (error.signerCertificateVerified === false) throw new StampRefusal("untrusted", error.message);
		throw new StampRefusal(error.signerCertificate === null ? "wrong-signer" : "wrong-signature", error.message);
	}
	if (outcome.signatureVerified !== true) throw new StampRefusal("wrong-signature");
	if (!(outcome.signerCertificate instanceof Certificate)) throw new StampRefusal("wrong-signer");
	return outcome.signerCertificate;
}

/** RFC 3161, 2.3: extended key usage, critical, with time stamping as its only purpose. */
function requireTimeStampingOnly(signer: Certificate): void {
	const usage = signer.extensions?.find((extension) => extension.extnID === EXTENDED_KEY_USAGE);
	const purposes: unknown = usage?.parsedValue;
	const alone =
		purposes instanceof ExtKeyUsage && purposes.keyPurposes.length === 1 && purposes.keyPurposes[0] === TIME_STAMPING;
	if (usage?.critical !== true || !alone) throw new StampRefusal("wrong-usage");
}

/** What the library cannot read is the authority's answer, not a fault of ours. */
function readAs<Result>(code: "malformed", read: () => Result): Result {
	try {
		return read();
	} catch (error) {
		throw new StampRefusal(code, (error as Error).message);
	}
}

function equal(a: Uint8Array, b: Uint8Array): boolean {
	return Buffer.from(a).equals(b);
}
