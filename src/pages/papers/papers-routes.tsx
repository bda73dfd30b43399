/** `/orders/{id}/papers`, for the shop and for whoever reads the whole order through a link. */
import type { FastifyInstance } from "fastify";
import { callerOf, openTo } from "../../access/callers.ts";
import type { Deps } from "../../operations/deps.ts";
import { readCheckpointFacts } from "../../operations/log/read-log.ts";
import { readOrderLine } from "../../operations/orders/order-line.ts";
import { sendPage } from "../render.ts";
import { PapersPage } from "./papers-page.tsx";

export function registerPapers(app: FastifyInstance, deps: Deps): void {
	const routes = { ...openTo("account", "link:settle", "link:reader"), schema: { hide: true } };
	app.get("/orders/:id/papers", routes, async (request, reply) => {
		const caller = callerOf(request);
		const { order, records } = await readOrderLine(deps, caller, (request.params as { id: string }).id);
		const checkpoint = await readCheckpointFacts(deps);
		const page = (
			<PapersPage
				orderId={order.id}
				itemName={`${order.item.maker} ${order.item.model}`}
				size={records.length === 0 ? null : (checkpoint?.size ?? null)}
				isShop={caller.kind === "account"}
			/>
		);
		return sendPage(reply, page);
	});
}
