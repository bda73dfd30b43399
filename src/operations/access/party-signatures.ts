/** Counter-signatures: the device that uses a link signs what was done through it. */
import type { Caller } from "../../access/caller.ts";
import type { PartySignatureInput } from "../../contract/party-signature.ts";
import type { Queryable } from "../../database/connection.ts";
import { lockLog } from "../../database/log.ts";
import { leavesOfLink, signaturesOfLink } from "../../database/party-signatures.ts";
import { fault, invalid } from "../../faults.ts";
import { isByItsKey, partySignatureBytes, signedLeafOf } from "../../records/party-signature.ts";
import type { Deps } from "../deps.ts";
import { appendToLog } from "../log/append-to-log.ts";

export interface LinkSignatures {
	readonly signed: readonly string[];
	/** Leaves that the device may still sign. */
	readonly unsigned: readonly string[];
}

/** What of a link's acts is signed, by leaf. */
export async function readLinkSignatures(deps: Deps, linkId: string): Promise<LinkSignatures> {
	return signaturesOf(deps.database, linkId);
}

/**
 * Seals a device's signature of an act of its link. A second one of the same act changes nothing: the first stands.
 * @throws forbidden for another link; bad-input where the leaf is no act of the link, or the signature is not by the key
 */
export async function keepPartySignature(
	deps: Deps,
	caller: Caller,
	linkId: string,
	input: PartySignatureInput,
): Promise<void> {
	if (caller.kind !== "link" || caller.linkId !== linkId) throw fault("forbidden");
	if (!isByItsKey({ linkId, ...input })) throw invalid([{ path: "/signature", code: "not-by-key" }]);
	await deps.database.transaction(async (transaction) => {
		// Before the look, or two devices at once could sign the same act twice.
		await lockLog(transaction);
		const { signed, unsigned } = await signaturesOf(transaction, linkId);
		if (signed.includes(input.leafSha256)) return;
		if (!unsigned.includes(input.leafSha256)) throw invalid([{ path: "/leafSha256", code: "unknown-id" }]);
		await appendToLog(deps, transaction, {
			kind: "party-signed",
			subject: linkId,
			byId: linkId,
			statementBytes: partySignatureBytes({ linkId, ...input }),
		});
	});
}

async function signaturesOf(database: Queryable, linkId: string): Promise<LinkSignatures> {
	const leaves = await leavesOfLink(database, linkId);
	const signed = (await signaturesOfLink(database, linkId)).map(signedLeafOf);
	return { signed, unsigned: leaves.filter((leaf) => !signed.includes(leaf)) };
}
