/** The shop's stock: what it packs with. */
import type { Caller } from "../../access/caller.ts";
import type { FoamInput } from "../../contract/cushion.ts";
import {
	MOST_STOCK,
	STOCK_KINDS,
	STOCK_SHAPES,
	type StockKind,
	type StockThing,
	type StockView,
	stockId,
} from "../../contract/stock.ts";
import { deleteStock, listStock, putStock } from "../../database/stock.ts";
import { fault, invalid } from "../../faults.ts";
import { foamOf } from "../calculations/foam-of.ts";
import type { Deps } from "../deps.ts";
import { mustBeShop } from "../may.ts";
import { validate } from "../validate.ts";

export async function readStock(deps: Deps, caller: Caller): Promise<StockView> {
	mustBeShop(caller);
	const rows = await listStock(deps.database);
	const of = <K extends StockKind>(kind: K) =>
		rows.filter((row) => row.kind === kind).map(({ id, facts }) => ({ id, ...(facts as StockThing<K>) }));
	return { boxes: of("boxes"), foams: of("foams"), bags: of("bags") };
}

/**
 * Adds a thing, or replaces the one of that name.
 * @throws bad-input for what has not the kind's shape, points that no physical foam gives, an id that the catalogue does
 * not have, another currency than the stock's, and one thing more than a search takes
 */
export async function keepInStock(
	deps: Deps,
	caller: Caller,
	kind: StockKind,
	{ id, thing }: { readonly id: unknown; readonly thing: unknown },
): Promise<StockView> {
	mustBeShop(caller);
	const kept: { price?: { currency: string } | undefined; foam?: FoamInput } = validate<object>(
		STOCK_SHAPES[kind],
		thing,
	);
	const name = validate(stockId, id);
	if (kept.foam !== undefined) foamOf(kept.foam, "/foam");
	const stock = await readStock(deps, caller);
	const others = STOCK_KINDS.flatMap((one) => stock[one].filter((other) => one !== kind || other.id !== name));
	const currency = others.find(({ price }) => price !== undefined)?.price?.currency;
	if (kept.price !== undefined && currency !== undefined && kept.price.currency !== currency)
		throw invalid([{ path: "/price/currency", code: "other-currency" }]);
	if (stock[kind].length >= MOST_STOCK[kind] && !stock[kind].some((known) => known.id === name))
		throw invalid([{ path: "/id", code: "stock-full", facts: { most: MOST_STOCK[kind] } }]);
	await putStock(deps.database, { kind, id: name, facts: kept });
	return readStock(deps, caller);
}

export async function removeFromStock(deps: Deps, caller: Caller, kind: StockKind, id: string): Promise<void> {
	mustBeShop(caller);
	if (!(await deleteStock(deps.database, kind, id))) throw fault("not-found");
}
