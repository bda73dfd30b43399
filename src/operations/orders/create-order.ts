/** Takes an order in: parties, item, terms. */
import type { Caller } from "../../access/caller.ts";
import type { ItemInput, OrderInput, OrderView, PartyInput } from "../../contract/orders.ts";
import type { Queryable } from "../../database/connection.ts";
import { insertItem, insertOrder, insertParty, partyById } from "../../database/orders.ts";
import { invalid } from "../../faults.ts";
import { createOnce } from "../create-once.ts";
import type { Deps } from "../deps.ts";
import { mustBeShop } from "../may.ts";
import { ownCatalogueOf } from "../own-catalogue/own-catalogue.ts";
import { orderViewById } from "./order-view.ts";
import { partsOfItem, partsOfTerms } from "./personal-parts.ts";

/** Creates the order, or gives the one that the same key created before. */
export async function createOrder(
	deps: Deps,
	caller: Caller,
	input: OrderInput,
	idempotencyKey: string | null,
): Promise<OrderView> {
	mustBeShop(caller);
	await mustBeItsClass(deps, input.item);
	const orderId = await createOnce(deps, caller, idempotencyKey, input, async (transaction) => {
		const repairerId = await partyIdOf(deps, transaction, input.repairer, "/repairer/id");
		const ownerId = await partyIdOf(deps, transaction, input.owner, "/owner/id");
		const itemId = await addItem(deps, transaction, input.item, ownerId);
		const id = deps.newId("ord");
		await insertOrder(transaction, {
			id,
			repairer_id: repairerId,
			owner_id: ownerId,
			item_id: itemId,
			contract_kind: input.contractKind,
			...partsOfTerms(input.terms),
		});
		return id;
	});
	return orderViewById(deps.database, orderId);
}

/** @throws bad-input for a class of the shop's own that is not there, or is treated as another class */
async function mustBeItsClass(deps: Deps, { class: itemClass, ownClassId }: ItemInput): Promise<void> {
	if (ownClassId === undefined) return;
	const own = (await ownCatalogueOf(deps.database, null)).classes.find(({ id }) => id === ownClassId);
	if (own === undefined) throw invalid([{ path: "/item/ownClassId", code: "unknown-id" }]);
	if (own.treatedAs !== itemClass) throw invalid([{ path: "/item/class", code: "other-class" }]);
}

async function addItem(deps: Deps, transaction: Queryable, item: ItemInput, ownerId: string): Promise<string> {
	const id = deps.newId("itm");
	await insertItem(transaction, {
		id,
		class: item.class,
		owner_id: ownerId,
		...partsOfItem(item),
	});
	return id;
}

async function partyIdOf(
	deps: Deps,
	transaction: Queryable,
	party: PartyInput | { readonly id: string },
	path: string,
): Promise<string> {
	if ("id" in party) {
		const known = await partyById(transaction, party.id);
		if (known === null || known.erased_at !== null) throw invalid([{ path, code: "unknown-id" }]);
		return party.id;
	}
	const id = deps.newId("pty");
	await deps.partyKeys.make(id);
	await insertParty(transaction, {
		id,
		kind: party.kind,
		country: party.country,
		language: party.language ?? null,
		name: party.name,
		email: party.email ?? null,
		address: party.address ?? null,
	});
	return id;
}
