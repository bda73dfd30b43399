/**
 * Counter-signatures: a device that uses a link signs what was done through it, just now and after it entered. What another
 * device did before is not its own to sign. Two devices that are inside at once are not told apart, so nothing here or in
 * what is shown says more than that a device which used the link signed, and when.
 */
import type { Caller } from "../../access/caller.ts";
import type { PartySignatureInput } from "../../contract/party-signature.ts";
import type { Queryable } from "../../database/connection.ts";
import { lockLog } from "../../database/log.ts";
import { actsOfLink, signaturesOfLink } from "../../database/party-signatures.ts";
import { fault, invalid } from "../../faults.ts";
import { isByItsKey, partySignatureBytes, signedLeafOf } from "../../records/party-signature.ts";
import type { Deps } from "../deps.ts";
import { appendToLog } from "../log/append-to-log.ts";

type LinkCaller = Extract<Caller, { kind: "link" }>;

/** Leaves that the calling device may still sign. */
export async function leavesToSign(deps: Deps, caller: LinkCaller): Promise<readonly string[]> {
	return (await signaturesOf(deps.database, caller)).open;
}

/**
 * Seals a device's signature of an act of its link. A second one of the same act changes nothing: the first stands.
 * @throws forbidden for another link; bad-input where the leaf is no act of the link, was done too long ago or before the
 * device entered, or the signature is not by the key
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
		const { signed, open, past } = await signaturesOf(transaction, caller);
		if (signed.includes(input.leafSha256)) return;
		if (past.includes(input.leafSha256)) throw invalid([{ path: "/leafSha256", code: "not-done-just-now" }]);
		if (!open.includes(input.leafSha256)) throw invalid([{ path: "/leafSha256", code: "unknown-id" }]);
		await appendToLog(deps, transaction, {
			kind: "party-signed",
			subject: linkId,
			byId: linkId,
			statementBytes: partySignatureBytes({ linkId, ...input }),
		});
	});
}

/** Leaves of a link's acts: signed, still open to the calling device, and past signing by it. */
async function signaturesOf(database: Queryable, { linkId, enteredAt }: LinkCaller) {
	const acts = await actsOfLink(database, linkId, enteredAt);
	const signed = (await signaturesOfLink(database, linkId)).map(signedLeafOf);
	const unsigned = acts.filter(({ leafSha256 }) => !signed.includes(leafSha256));
	const leaves = (isFresh: boolean) => unsigned.filter((act) => act.isFresh === isFresh).map((act) => act.leafSha256);
	return { signed, open: leaves(true), past: leaves(false) };
}
