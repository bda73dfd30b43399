/** The shop's first page: orders, those that wait for something first. */
import type { FastifyInstance } from "fastify";
import { callerOf, OPEN_TO_ALL } from "../../access/callers.ts";
import type { OrderView } from "../../contract/orders.ts";
import type { RecordView } from "../../contract/records.ts";
import type { Deps } from "../../operations/deps.ts";
import { readOrders } from "../../operations/orders/read-orders.ts";
import { readRecords } from "../../operations/records/read-record.ts";
import { say } from "../../texts/say.ts";
import { sendPage } from "../render.ts";
import { showDay } from "./days.ts";
import { ShopLayout } from "./shop-layout.tsx";

const SHOWN = 100;

export function registerHome(app: FastifyInstance, deps: Deps): void {
	app.get("/", { ...OPEN_TO_ALL, schema: { hide: true } }, async (request, reply) => {
		const caller = callerOf(request);
		if (caller.kind === "nobody") return reply.redirect("/sign-in", 303);
		if (caller.kind === "link") {
			return reply.redirect(caller.recordId === null ? `/orders/${caller.orderId}` : `/guided/${caller.recordId}`, 303);
		}
		const { orders } = await readOrders(deps, caller, SHOWN, null);
		const rows = await Promise.all(
			orders.map(async (order) => ({ order, waits: waitsFor(order, await readRecords(deps, caller, order.id)) })),
		);
		const sorted = [...rows.filter((row) => row.waits.length > 0), ...rows.filter((row) => row.waits.length === 0)];
		return sendPage(
			reply,
			<ShopLayout request={request} title={say("shop.orders")}>
				<p>
					<a class="button" href="/orders/new">
						{say("shop.new-order")}
					</a>
				</p>
				{sorted.length === 0 ? <p>{say("shop.no-orders")}</p> : <OrderTable rows={sorted} />}
			</ShopLayout>,
		);
	});
}

interface Row {
	readonly order: OrderView;
	readonly waits: readonly string[];
}

function OrderTable({ rows }: { readonly rows: readonly Row[] }) {
	return (
		<div class="scroll">
			<table>
				<thead>
					<tr>
						<th scope="col">{say("shop.item")}</th>
						<th scope="col">{say("shop.owner")}</th>
						<th scope="col">{say("shop.since")}</th>
						<th scope="col">{say("shop.waits-for")}</th>
					</tr>
				</thead>
				<tbody>
					{rows.map(({ order, waits }) => (
						<tr key={order.id}>
							<td>
								<a href={`/orders/${order.id}`}>
									{order.item.maker} {order.item.model}
								</a>
							</td>
							<td>{order.owner.name}</td>
							<td>{showDay(order.createdAt)}</td>
							<td>{waits.length === 0 ? say("shop.waits-nothing") : waits.join("; ")}</td>
						</tr>
					))}
				</tbody>
			</table>
		</div>
	);
}

/** What an order waits for, in words. */
function waitsFor(order: OrderView, records: readonly RecordView[]): string[] {
	const drafts = records.filter((record) => record.state === "draft").length;
	const without = (stage: RecordView["stage"]) =>
		order.consignments.filter(
			(leg) =>
				!records.some(
					(record) => record.consignmentId === leg.id && record.stage === stage && record.state === "sealed",
				),
		);
	const arrived = without("arrival").filter((leg) => leg.facts.deliveredAt !== undefined).length;
	const leaving = without("departure").filter((leg) => leg.facts.dispatchedAt !== undefined).length;
	return [
		...(drafts > 0 ? [say("shop.waits-drafts", { count: drafts })] : []),
		...(arrived > 0 ? [say("shop.waits-arrival")] : []),
		...(leaving > 0 ? [say("shop.waits-departure")] : []),
	];
}
