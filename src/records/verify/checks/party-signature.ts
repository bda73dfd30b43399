/**
 * `party-signature`: what was done through a link is counter-signed by a key that lives on a device which used the link.
 * That it is the device with which it was done cannot be read from it (older services let a device sign what another had
 * done before), so both times are told. Where there is no signature, that is said.
 */
import { p256 } from "@noble/curves/nist.js";
import { hexToBytes, utf8ToBytes } from "@noble/hashes/utils.js";
import { type Finding, type FindingDetails, Unreadable, why } from "../finding.ts";
import type { ReadEntry } from "../read-entry.ts";
import type { ReadReceipt } from "../read-receipt.ts";
import { constantOf, hexOf, membersOf, textOf } from "../shape.ts";

const FORMAT = "handover-risk/party-signature/1";
const MEMBERS = ["$format", "algorithm", "leafSha256", "linkId", "publicKey", "signature"];

export function checkPartySignatures({ entries }: ReadReceipt): Finding[] {
	const signatures = entries.filter(({ kind }) => kind === "party-signed");
	if (signatures.length === 0) {
		return [{ id: "party-signature", outcome: "not-possible", why: why("verify.party-unsigned") }];
	}
	const failed = signatures.flatMap((entry): Finding[] => {
		const details = problemOf(entry, entries);
		return details === null
			? []
			: [{ id: "party-signature", outcome: "failed", where: `${entry.where}/statement`, ...details }];
	});
	if (failed.length > 0) return failed;
	const list = signatures.map((entry) => signedWords(entry, entries)).join("; ");
	const values = { signed: signatures.length, list };
	return [{ id: "party-signature", outcome: "passed", why: why("verify.party-passed", values) }];
}

/** A sound signature's entry by its index, when it was made and when it was signed, to the second in UTC. */
function signedWords({ statement, time }: ReadEntry, entries: readonly ReadEntry[]): string {
	const leaf = statement === null ? null : hexOf(membersOf(statement.node, "", MEMBERS)("leafSha256"), "", 32);
	const signed = entries.find((candidate) => candidate.leaf === leaf);
	const shown = (at: string) => at.slice(0, 19).replace("T", " ");
	return signed === undefined ? "" : `${signed.index} (${shown(signed.time)} / ${shown(time)})`;
}

/** What is wrong with a party's signature; null where nothing is. */
function problemOf(entry: ReadEntry, entries: readonly ReadEntry[]): FindingDetails | null {
	const { statement } = entry;
	if (statement === null) return { why: why("verify.statement-missing") };
	try {
		const member = membersOf(statement.node, "", MEMBERS);
		constantOf(member("$format"), "/$format", FORMAT);
		constantOf(member("algorithm"), "/algorithm", "ecdsa-p256-sha256");
		const leaf = hexOf(member("leafSha256"), "/leafSha256", 32);
		const linkId = textOf(member("linkId"), "/linkId");
		const publicKey = hexOf(member("publicKey"), "/publicKey", 65);
		const signature = hexOf(member("signature"), "/signature", 64);
		if (linkId !== entry.subject)
			return { expected: entry.subject, found: linkId, why: why("verify.party-other-link") };
		const signed = entries.find((candidate) => candidate.leaf === leaf);
		if (signed === undefined || !(signed.index < entry.index))
			return { found: leaf, why: why("verify.party-no-entry") };
		if (signed.by !== linkId) return { expected: linkId, found: signed.by, why: why("verify.party-other-link") };
		return isTrue(signature, `${FORMAT}\n${leaf}\n`, publicKey) ? null : { why: why("verify.party-false") };
	} catch (error) {
		if (!(error instanceof Unreadable)) throw error;
		const { where, ...details } = error.details;
		return { ...details, where: `${entry.where}/statement → ${where}` };
	}
}

function isTrue(signature: string, text: string, publicKey: string): boolean {
	try {
		// WebCrypto leaves s as it falls, so both halves of its range are taken.
		return p256.verify(hexToBytes(signature), utf8ToBytes(text), hexToBytes(publicKey), { lowS: false });
	} catch {
		return false;
	}
}
