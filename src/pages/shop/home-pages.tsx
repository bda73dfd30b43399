/** The shop's first page: orders, those that need attention first; searched, filtered and paged. */
import type { FastifyInstance, FastifyRequest } from "fastify";
import { callerOf, OPEN_TO_ALL } from "../../access/callers.ts";
import { ITEM_CLASSES } from "../../catalogue/codes.ts";
import type { OwnCatalogue } from "../../contract/own-catalogue.ts";
import type { Deps } from "../../operations/deps.ts";
import { type FoundOrders, findOrders, type OrderQuery } from "../../operations/orders/find-orders.ts";
import { readOwnCatalogue } from "../../operations/own-catalogue/own-catalogue.ts";
import { say } from "../../texts/say.ts";
import { SelectField, TextField } from "../components/form.tsx";
import { placeOf } from "../place-of.ts";
import { sendPage } from "../render.ts";
import { showDay } from "./days.ts";
import { standingWords } from "./order-standing.tsx";
import { ShopLayout } from "./shop-layout.tsx";

/** Orders on a page. */
const SHOWN = 50;
const STANDINGS = ["attention", "settled", "other"] as const;
const MOST_WORDS = 8;

export function registerHome(app: FastifyInstance, deps: Deps): void {
	app.get("/", { ...OPEN_TO_ALL, schema: { hide: true } }, async (request, reply) => {
		const caller = callerOf(request);
		if (caller.kind === "nobody") return reply.redirect("/sign-in", 303);
		if (caller.kind === "link") {
			return reply.redirect(placeOf(caller), 303);
		}
		const query = queryOf(request);
		const found = await findOrders(deps, caller, query, SHOWN);
		const { classes } = await readOwnCatalogue(deps, caller);
		return sendPage(
			reply,
			<ShopLayout request={request} title={say("shop.orders")}>
				<p>
					<a class="button" href="/orders/new">
						{say("shop.new-order")}
					</a>
				</p>
				{found.all === 0 ? <p>{say("shop.no-orders")}</p> : <OrderList {...{ query, found, classes }} />}
			</ShopLayout>,
		);
	});
}

/** What cannot be meant is left out. */
function queryOf(request: FastifyRequest): OrderQuery {
	const { q, class: itemClass, standing, after } = request.query as Readonly<Record<string, unknown>>;
	const text = (value: unknown) => (typeof value === "string" ? value.slice(0, 200).trim() : "");
	return {
		words: text(q).split(/\s+/).filter(Boolean).slice(0, MOST_WORDS),
		itemClass: text(itemClass) || null,
		standing: STANDINGS.find((one) => one === standing) ?? null,
		after: text(after) || null,
	};
}

function OrderList({
	query,
	found,
	classes,
}: {
	readonly query: OrderQuery;
	readonly found: FoundOrders;
	readonly classes: OwnCatalogue["classes"];
}) {
	const isAsked = query.words.length > 0 || query.itemClass !== null || query.standing !== null;
	return (
		<>
			<p>
				{say("shop.count", { all: found.all, attention: found.needAttention })}{" "}
				{isAsked && say("shop.count-found", { found: found.found, all: found.all })}
			</p>
			<Search query={query} classes={classes} />
			{isAsked && (
				<p>
					<a href="/">{say("shop.search-all")}</a>
				</p>
			)}
			{found.orders.length === 0 ? <p>{say("shop.none-found")}</p> : <OrderTable orders={found.orders} />}
			<p>
				{found.next !== null && (
					<a class="button quiet" href={addressOf(query, found.next)} rel="next">
						{say("shop.next-page", { count: SHOWN })}
					</a>
				)}
				{query.after !== null && <a href={addressOf(query, null)}>{say("shop.first-page")}</a>}
			</p>
		</>
	);
}

function addressOf({ words, itemClass, standing }: OrderQuery, after: string | null): string {
	const asked = { q: words.join(" ") || null, class: itemClass, standing, after };
	const given = Object.entries(asked).flatMap(([name, value]) => (value === null ? [] : [[name, value]]));
	return given.length === 0 ? "/" : `/?${new URLSearchParams(given)}`;
}

function Search({ query, classes }: { readonly query: OrderQuery; readonly classes: OwnCatalogue["classes"] }) {
	const values = {
		q: query.words.join(" "),
		class: query.itemClass ?? undefined,
		standing: query.standing ?? undefined,
	};
	const field = { values, errors: {} };
	const any = say("shop.search-any");
	return (
		<form method="get" action="/">
			<TextField {...field} name="q" label={say("shop.search")} hint={say("shop.search-hint")} />
			<div class="row">
				<SelectField
					{...field}
					name="class"
					label={say("shop.search-class")}
					empty={any}
					choices={[
						...ITEM_CLASSES.map((value) => ({ value, label: say(`shop.class.${value}`) })),
						...classes.map(({ id, name }) => ({ value: id, label: name })),
					]}
				/>
				<SelectField
					{...field}
					name="standing"
					label={say("shop.search-standing")}
					empty={any}
					choices={STANDINGS.map((value) => ({ value, label: say(`shop.standing.${value}`) }))}
				/>
			</div>
			<button type="submit" class="quiet">
				{say("shop.search-act")}
			</button>
		</form>
	);
}

function OrderTable({ orders }: { readonly orders: FoundOrders["orders"] }) {
	return (
		<div class="scroll">
			<table class="stacked orders">
				<thead>
					<tr>
						<th scope="col">{say("shop.item")}</th>
						<th scope="col">{say("shop.owner")}</th>
						<th scope="col">{say("shop.since")}</th>
						<th scope="col">{say("shop.waits-for")}</th>
					</tr>
				</thead>
				<tbody>
					{orders.map(({ order, attention }) => (
						<tr key={order.id}>
							<th scope="row">
								<a href={`/orders/${order.id}`}>
									{order.item.maker} {order.item.model}
								</a>
							</th>
							<td data-label={say("shop.owner")}>{order.owner.name}</td>
							<td class="day" data-label={say("shop.since")}>
								{showDay(order.createdAt)}
							</td>
							<td data-label={say("shop.waits-for")}>
								{standingWords(attention).join("; ") || say("shop.waits-nothing")}
							</td>
						</tr>
					))}
				</tbody>
			</table>
		</div>
	);
}
