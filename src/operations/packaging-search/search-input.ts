/** A search as it was asked for, its foams and tables resolved. */
import type { SearchInput } from "../../calculations/packaging/search/search-types.ts";
import { FOAMS } from "../../catalogue/foams.ts";
import { FRAGILITY_LEVELS } from "../../catalogue/fragility-levels.ts";
import type { PackagingSearchRequest } from "../../contract/packaging-search.ts";
import { invalid } from "../../faults.ts";
import { foamOf } from "../calculations/foam-of.ts";
import { routeInput } from "../calculations/packaging.ts";

/** Designs that are given where nothing is said. */
const MOST = 10;

/** @throws bad-input for an id that the catalogue does not have, names that stand twice, prices in several currencies */
export function searchInput({ item, route, stock, objective, most }: PackagingSearchRequest): SearchInput {
	const currency = currencyOf({ stock });
	const bad = (["boxes", "foams", "bags"] as const).flatMap((kind) =>
		stock[kind].flatMap(({ id, price }, index) => [
			...(stock[kind].findIndex((other) => other.id === id) < index
				? [{ path: `/stock/${kind}/${index}/id`, code: "name-twice" }]
				: []),
			...(price !== undefined && price.currency !== currency
				? [{ path: `/stock/${kind}/${index}/price/currency`, code: "other-currency" }]
				: []),
		]),
	);
	if (bad.length > 0) throw invalid(bad);
	return {
		item,
		route: routeInput(route),
		catalogue: FOAMS,
		classLevel: FRAGILITY_LEVELS[item.class] ?? null,
		stock: {
			boxes: stock.boxes.map((box) => ({ ...box, price: box.price?.amount })),
			sheets: stock.foams.map(({ id, foam, thicknessM, price }, index) => ({
				id,
				foam: foamOf(foam, `/stock/foams/${index}/foam`),
				thicknessM,
				price: price?.amount,
			})),
			bags: stock.bags.map((bag) => ({ ...bag, price: bag.price?.amount })),
		},
		objective,
		most: most ?? MOST,
	};
}

/** The currency of all prices; null where there is none. */
export function currencyOf({ stock }: Pick<PackagingSearchRequest, "stock">): string | null {
	const prices = [...stock.boxes, ...stock.foams, ...stock.bags].flatMap(({ price }) =>
		price === undefined ? [] : [price],
	);
	return prices[0]?.currency ?? null;
}
