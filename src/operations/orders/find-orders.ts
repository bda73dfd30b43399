/** The shop's orders as a list to work from: what needs attention first, searched and filtered, page by page. */
import type { Caller } from "../../access/caller.ts";
import type { OrderView } from "../../contract/orders.ts";
import type { Queryable } from "../../database/connection.ts";
import { itemById, orderById, partyById } from "../../database/orders.ts";
import type { Deps } from "../deps.ts";
import { mustBeShop } from "../may.ts";
import { type MarkedOrder, markedOrders } from "./marked-orders.ts";
import { needsAttention, type OrderAttention } from "./order-attention.ts";
import { orderViewById } from "./order-view.ts";
import { type ItemParts, itemOf } from "./personal-parts.ts";

export interface OrderQuery {
	/** Each must stand in the order's id, the item's maker, model or serial number, or the owner's name. */
	readonly words: readonly string[];
	/** Of the catalogue, or the shop's own. */
	readonly itemClass: string | null;
	readonly standing: "attention" | "settled" | "other" | null;
	/** Id of the last order of the page before. */
	readonly after: string | null;
}

export interface FoundOrders {
	readonly orders: readonly { readonly order: OrderView; readonly attention: OrderAttention }[];
	/** Of all orders, and of those that the query asks for. */
	readonly all: number;
	readonly found: number;
	readonly needAttention: number;
	/** For the next page. */
	readonly next: string | null;
}

/** Orders read at once, so that other requests are served between them. Our choice. */
const AT_ONCE = 8;

export async function findOrders(deps: Deps, caller: Caller, query: OrderQuery, limit: number): Promise<FoundOrders> {
	mustBeShop(caller);
	const { database } = deps;
	const all = await markedOrders(database, null);
	const asked = all.filter((one) => isAskedFor(one, query));
	const found = query.words.length === 0 ? asked : await holding(database, asked, query.words);
	const sorted = [...found.filter(isWaiting), ...found.filter((one) => !isWaiting(one))];
	const start = sorted.findIndex(({ mark }) => mark.id === query.after) + 1;
	const shown = sorted.slice(start, start + limit);
	return {
		orders: await Promise.all(
			shown.map(async ({ mark, attention }) => ({ order: await orderViewById(database, mark.id), attention })),
		),
		all: all.length,
		found: found.length,
		needAttention: all.filter(isWaiting).length,
		next: start + limit < sorted.length ? (shown.at(-1)?.mark.id ?? null) : null,
	};
}

const isWaiting = ({ attention }: MarkedOrder) => needsAttention(attention);

function isAskedFor(one: MarkedOrder, { itemClass, standing }: OrderQuery): boolean {
	const { mark, attention } = one;
	if (itemClass !== null && (mark.ownClassId ?? mark.class) !== itemClass) return false;
	if (standing === null) return true;
	const is = isWaiting(one) ? "attention" : attention.settled === null ? "other" : "settled";
	return standing === "settled" ? attention.settled !== null : is === standing;
}

/** What people typed is encrypted, so a search opens it here: no index of words lies anywhere. */
async function holding(
	database: Queryable,
	marked: readonly MarkedOrder[],
	words: readonly string[],
): Promise<MarkedOrder[]> {
	const sought = words.map(plain);
	const found: MarkedOrder[] = [];
	for (let at = 0; at < marked.length; at += AT_ONCE) {
		const some = await Promise.all(
			marked.slice(at, at + AT_ONCE).map(async (one) => ({ one, text: plain(await textOf(database, one.mark.id)) })),
		);
		found.push(...some.filter(({ text }) => sought.every((word) => text.includes(word))).map(({ one }) => one));
	}
	return found;
}

async function textOf(database: Queryable, orderId: string): Promise<string> {
	const order = await orderById(database, orderId);
	if (order === null) return "";
	const [row, owner] = await Promise.all([itemById(database, order.item_id), partyById(database, order.owner_id)]);
	const item = row === null ? null : itemOf(row as unknown as ItemParts);
	return [orderId, item?.maker, item?.model, item?.serialNumber, owner?.name].join(" ");
}

/** Letters of either case, accents left out. */
function plain(text: string): string {
	return text.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();
}
