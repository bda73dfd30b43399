/** The sheet of recordings: for the shop with the way back to the order, for a link without. */
import type { FastifyRequest } from "fastify";
import type { ComponentChildren } from "preact";
import { callerOf } from "../../access/callers.ts";
import type { OrderView } from "../../contract/orders.ts";
import { itemName } from "../../texts/item-name.ts";
import { say } from "../../texts/say.ts";
import { type Crumb, Layout } from "../layout.tsx";
import { ShopLayout } from "../shop/shop-layout.tsx";

export function RecordingLayout(props: {
	readonly request: FastifyRequest;
	readonly order: OrderView;
	readonly title: string;
	/** Pages between the order and this one. */
	readonly crumbs?: readonly Crumb[];
	readonly children: ComponentChildren;
}) {
	const { request, order, title, crumbs = [] } = props;
	const item = itemName(order.item);
	const inside = (
		<>
			<p class="step-of">{item}</p>
			{props.children}
		</>
	);
	if (callerOf(request).kind !== "account")
		return (
			<Layout title={title} crumbs={crumbs}>
				{inside}
			</Layout>
		);
	const way = [{ href: "/", label: say("shop.orders") }, { href: `/orders/${order.id}`, label: item }, ...crumbs];
	return (
		<ShopLayout request={request} title={title} crumbs={way}>
			{inside}
		</ShopLayout>
	);
}
