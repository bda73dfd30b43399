/**
 * Erases what is known of a person. What the person's key encrypted cannot be read again once the key is deleted; the
 * commitments in the log stay, and go on proving that something was said, without saying what. Codes, numbers, times and
 * hashes stay too: they are not about the person.
 */
import type { Caller } from "../../access/caller.ts";
import type { ConsignmentFacts, ItemInput, OrderTerms } from "../../contract/orders.ts";
import type { Queryable } from "../../database/connection.ts";
import {
	deleteOpeningsOf,
	draftsOfOwner,
	eraseConsignment,
	eraseExhibitsOf,
	eraseItem,
	eraseOrder,
	eraseParty as erasePartyRow,
	revokeLinksOf,
} from "../../database/erasure.ts";
import { consignmentsOfOrder, itemById, ordersOfOwner, partyById } from "../../database/orders.ts";
import { closeDraft } from "../../database/records.ts";
import { removeExhibit } from "../../exhibits/store.ts";
import { fault, invalid } from "../../faults.ts";
import type { Deps } from "../deps.ts";
import { appendToLog } from "../log/append-to-log.ts";
import { callerId, mustBeShop } from "../may.ts";

/** Stands where an erased text stood. */
const ERASED = "[erased]";

/**
 * Erases a party. Asked again, it changes nothing.
 * @throws bad-input where `confirm` is not the party's id
 */
export async function eraseParty(deps: Deps, caller: Caller, partyId: string, confirm: string): Promise<void> {
	mustBeShop(caller);
	const party = await partyById(deps.database, partyId);
	if (party === null) throw fault("not-found");
	if (confirm !== partyId) throw invalid([{ path: "/confirm", code: "not-confirmed" }]);
	if (party.erased_at !== null) return;
	const byId = callerId(caller);
	// Noted first: whatever stops us from here on, the next start goes on with it.
	await deps.erasures.note({ partyId, byId });
	await carryOut(deps, partyId, byId);
}

/** At a start: erases what was erased before, where the database is one from an earlier time or the act was cut short. */
export async function replayErasures(deps: Deps): Promise<void> {
	for (const { partyId, byId } of await deps.erasures.list()) await carryOut(deps, partyId, byId);
}

async function carryOut(deps: Deps, partyId: string, byId: string): Promise<void> {
	const files = await deps.database.transaction(async (transaction) => {
		const party = await partyById(transaction, partyId);
		// An empty or another database beside this key folder knows no such party.
		if (party === null || party.erased_at !== null) return [];
		const drafts = await draftsOfOwner(transaction, partyId);
		for (const order of await ordersOfOwner(transaction, partyId)) {
			await eraseOrder(transaction, order.id, leftOfTerms(order.terms as OrderTerms));
			for (const leg of await consignmentsOfOrder(transaction, order.id)) {
				await eraseConsignment(transaction, leg.id, leftOfFacts(leg.facts as ConsignmentFacts));
			}
			await eraseOwnedItem(transaction, order.item_id);
		}
		await deleteOpeningsOf(transaction, partyId);
		const stored = await eraseExhibitsOf(transaction, partyId, ERASED);
		await revokeLinksOf(transaction, partyId);
		await erasePartyRow(transaction, partyId, { name: ERASED, email: null, address: null });
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
		return stored;
	});
	await deps.partyKeys.destroy(partyId);
	for (const sha256 of files) await removeExhibit(deps.exhibitFolder, sha256);
}

async function eraseOwnedItem(transaction: Queryable, itemId: string): Promise<void> {
	const item = await itemById(transaction, itemId);
	if (item === null) throw new Error(`there is no item ${itemId}`);
	const { serialNumber: _gone, ...details } = item.details as ItemInput;
	await eraseItem(transaction, itemId, {
		maker: ERASED,
		model: ERASED,
		serial_number: null,
		details: { ...details, maker: ERASED, model: ERASED } satisfies ItemInput,
	});
}

function leftOfTerms({ warranty, ...terms }: OrderTerms): OrderTerms {
	return {
		...terms,
		reportedFault: ERASED,
		agreedWork: ERASED,
		...(warranty === undefined ? {} : { warranty: { ...warranty, covers: ERASED } }),
	};
}

/** Names and numbers that were typed go; the carrier's name too, since a person may carry. */
function leftOfFacts({ carrier: _c, service: _s, trackingNumber: _t, ...facts }: ConsignmentFacts): ConsignmentFacts {
	return facts;
}
