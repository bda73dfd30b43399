/**
 * Erases what is known of a person. What the person's key encrypted cannot be read again once the key is deleted; the
 * commitments in the log stay, and go on proving that something was said, without saying what. Codes, numbers, times and
 * hashes stay too: they are not about the person.
 */
import type { Caller } from "../../access/caller.ts";
import { draftsOfOwner, erasePersonal, filesOfErased, forgetFiles, isThere } from "../../database/erasure.ts";
import { partyById } from "../../database/orders.ts";
import { closeDraft } from "../../database/records.ts";
import { removeExhibit } from "../../exhibits/store.ts";
import { fault, invalid } from "../../faults.ts";
import type { Deps, Erasure } from "../deps.ts";
import { appendToLog } from "../log/append-to-log.ts";
import { callerId, mustBeShop } from "../may.ts";
import { ERASED, ERASED_FACTS, ERASED_ITEM, ERASED_TERMS } from "../orders/personal-parts.ts";
import { cleanUploads } from "../uploads/clean-uploads.ts";

const PLACEHOLDERS = {
	party: { name: ERASED, email: null, address: null },
	item: ERASED_ITEM,
	terms: ERASED_TERMS,
	facts: ERASED_FACTS,
	fileName: ERASED,
	mail: {},
	notice: { text: ERASED },
	claimed: { time: null, offset: null, device: null, hasPlace: false },
};

/**
 * Erases a party. Asked again, it ends what was cut short, and changes nothing more.
 * @throws bad-input where `confirm` is not the party's id
 */
export async function eraseParty(deps: Deps, caller: Caller, partyId: string, confirm: string): Promise<void> {
	mustBeShop(caller);
	const party = await partyById(deps.database, partyId);
	if (party === null) throw fault("not-found");
	if (confirm !== partyId) throw invalid([{ path: "/confirm", code: "not-confirmed" }]);
	const erasure = { partyId, byId: callerId(caller) };
	// Noted first: whatever stops us from here on, the next start goes on with it.
	if (party.erased_at === null) await deps.erasures.note(erasure);
	await carryOut(deps, erasure);
}

/** At a start: erases what was erased before, where the database is one from an earlier time or the act was cut short. */
export async function replayErasures(deps: Deps): Promise<void> {
	for (const erasure of await deps.erasures.list()) await carryOut(deps, erasure);
}

/** Each step may have been done before: rows, then the key, then files, those of uploads too. None needs the key. */
async function carryOut(deps: Deps, { partyId, byId }: Erasure): Promise<void> {
	await deps.database.transactionAlone(async (transaction) => {
		// Another database beside this key folder knows no such party.
		if (!(await isThere(transaction, partyId))) return;
		const drafts = await draftsOfOwner(transaction, partyId);
		await erasePersonal(transaction, partyId, PLACEHOLDERS);
		for (const recordId of drafts) {
			await closeDraft(transaction, recordId, "discarded");
			await appendToLog(deps, transaction, {
				kind: "record-discarded",
				subject: recordId,
				byId,
				statementBytes: null,
			});
		}
		await appendToLog(deps, transaction, { kind: "party-erased", subject: partyId, byId, statementBytes: null });
	});
	await deps.partyKeys.destroy(partyId);
	for (const sha256 of await filesOfErased(deps.database, partyId)) await removeExhibit(deps.exhibitFolder, sha256);
	await forgetFiles(deps.database, partyId);
	await cleanUploads(deps);
}
