/** `/orders/{id}/consignments/{id}/pack`: the pack as shipped, for the shop and for every link of the order. */
import type { FastifyInstance } from "fastify";
import { callerOf, openTo } from "../../access/callers.ts";
import { fault } from "../../faults.ts";
import type { Deps } from "../../operations/deps.ts";
import { readOrder } from "../../operations/orders/read-orders.ts";
import { readAssessments } from "../../operations/packaging/assessments.ts";
import { say } from "../../texts/say.ts";
import { Layout } from "../layout.tsx";
import { sendPage } from "../render.ts";
import { SealedPacks } from "./sealed-packs.tsx";

export function registerSealedPacks(app: FastifyInstance, deps: Deps): void {
	const routes = { ...openTo("account", "link:record", "link:settle", "link:reader"), schema: { hide: true } };
	app.get("/orders/:id/consignments/:consignment/pack", routes, async (request, reply) => {
		const { id, consignment } = request.params as { id: string; consignment: string };
		const order = await readOrder(deps, callerOf(request), id);
		if (!order.consignments.some((leg) => leg.id === consignment)) throw fault("not-found");
		const assessments = await readAssessments(deps, callerOf(request), consignment);
		return sendPage(
			reply,
			<Layout title={say("pack.shipped-title")}>
				<p class="step-of">
					{order.item.maker} {order.item.model}
				</p>
				<p>{say(assessments.length === 0 ? "pack.none-sealed" : "pack.shipped-text")}</p>
				<SealedPacks assessments={assessments} />
				<p>
					<a href={`/orders/${id}/consignments/${consignment}/recordings`}>{say("recording.title")}</a>
				</p>
			</Layout>,
		);
	});
}
