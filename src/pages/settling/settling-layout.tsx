/** The pages on which both sides settle: the same for the shop, the other side and readers. */
import type { ComponentChildren } from "preact";
import type { Caller } from "../../access/caller.ts";
import type { OrderView } from "../../contract/orders.ts";
import { say } from "../../texts/say.ts";
import { Layout } from "../layout.tsx";
import { hasPapers } from "../papers/has-papers.ts";

export function SettlingLayout(props: {
	readonly order: OrderView;
	readonly title: string;
	readonly caller: Caller;
	readonly children: ComponentChildren;
}) {
	const { order, caller } = props;
	const path = `/orders/${order.id}`;
	return (
		<Layout title={props.title} crumbs={caller.kind === "account" ? [{ href: path, label: say("shop.order") }] : []}>
			<nav aria-label={say("settling.pages")}>
				<ul>
					<li>
						<a href={`${path}/comparison`}>{say("comparison-page.title")}</a>
					</li>
					<li>
						<a href={`${path}/positions`}>{say("settling.positions")}</a>
					</li>
					<li>
						<a href={`${path}/settlement`}>{say("settling.settlement")}</a>
					</li>
					<li>
						<a href={`${path}/warranty`}>{say("warranty.title")}</a>
					</li>
					{hasPapers(caller) && (
						<li>
							<a href={`${path}/papers`}>{say("papers.link")}</a>
						</li>
					)}
					{order.consignments.map((leg) => (
						<li key={leg.id}>
							<a href={`${path}/consignments/${leg.id}/claim`}>{say("periods.title", { number: leg.leg })}</a>
						</li>
					))}
				</ul>
			</nav>
			{props.children}
		</Layout>
	);
}

export function nameOf(order: OrderView, partyId: string): string {
	return partyId === order.owner.id ? order.owner.name : order.repairer.name;
}
