/** `/orders/{id}/consignments/{id}/comparison`, for the shop and for every link of the order. */
import type { FastifyInstance } from "fastify";
import { z } from "zod";
import type { Caller } from "../../access/caller.ts";
import { callerOf, openTo } from "../../access/callers.ts";
import { comparisonQuery, idsIn } from "../../contract/comparison.ts";
import { fault } from "../../faults.ts";
import { comparisonViewOf } from "../../operations/comparison/comparison-view.ts";
import { readComparison } from "../../operations/comparison/read-comparison.ts";
import type { Deps } from "../../operations/deps.ts";
import { readOrder } from "../../operations/orders/read-orders.ts";
import { readExhibitFiles } from "../../operations/pictures/exhibit-file-views.ts";
import type { SealedRecord } from "../../operations/records/record-views.ts";
import { validate } from "../../operations/validate.ts";
import { say } from "../../texts/say.ts";
import { type Crumb, Layout } from "../layout.tsx";
import { hasPapers } from "../papers/has-papers.ts";
import type { RecordFiles } from "../pictures/own-files.tsx";
import { placeOf } from "../place-of.ts";
import { sendPage } from "../render.ts";
import { SHOWN } from "./check-table.tsx";
import { ComparisonPage } from "./comparison-page.tsx";

const pageQuery = comparisonQuery.extend({ show: z.enum(SHOWN).optional() });

export function registerComparison(app: FastifyInstance, deps: Deps): void {
	const routes = { ...openTo("account", "link:record", "link:settle", "link:reader"), schema: { hide: true } };
	const path = (orderId: string, consignmentId: string) =>
		`/orders/${orderId}/consignments/${consignmentId}/comparison`;

	app.get("/orders/:id/consignments/:consignment/comparison", routes, async (request, reply) => {
		const { id, consignment } = request.params as { id: string; consignment: string };
		const { show = "all", from, to, present, absent } = validate(pageQuery, request.query);
		const { found, shock, handled } = await readComparison(deps, callerOf(request), consignment, { from, to });
		if (found.order.id !== id) throw fault("not-found");
		const view = comparisonViewOf(found, shock, { present: idsIn(present), absent: idsIn(absent) });
		const href = (shown: string) => {
			const query = new URLSearchParams({ ...(request.query as Record<string, string>), show: shown });
			return `${path(id, consignment)}?${query}#checks`;
		};
		const caller = callerOf(request);
		const files = caller.kind === "link" && caller.scope !== "reader" ? await filesOf(caller, found.records) : [];
		return sendPage(
			reply,
			<ComparisonPage
				{...{ found, view, shown: show, href, handled, files }}
				isShop={caller.kind === "account"}
				hasPapers={hasPapers(caller)}
			/>,
		);
	});

	function filesOf(caller: Caller, records: readonly SealedRecord[]): Promise<RecordFiles[]> {
		return Promise.all(
			records.map(async ({ view, statement }) => ({
				exhibits: statement.exhibits,
				files: statement.exhibits.length === 0 ? [] : await readExhibitFiles(deps, caller, view.id),
			})),
		);
	}

	// Where links lead that are not for one record: the only leg there is, or a choice.
	app.get("/orders/:id/comparison", routes, async (request, reply) => {
		const order = await readOrder(deps, callerOf(request), (request.params as { id: string }).id);
		const [only] = order.consignments;
		if (order.consignments.length === 1 && only !== undefined) return reply.redirect(path(order.id, only.id), 303);
		const names = (id: string) => (id === order.owner.id ? order.owner.name : order.repairer.name);
		return sendPage(
			reply,
			<Layout title={say("comparison-page.choose")} crumbs={crumbsFor(callerOf(request), order.id)}>
				<ul>
					{order.consignments.map((leg) => (
						<li key={leg.id}>
							<a href={path(order.id, leg.id)}>
								{say("comparison-page.leg", {
									leg: leg.leg,
									from: names(leg.consignorId),
									to: names(leg.consigneeId),
								})}
							</a>
						</li>
					))}
				</ul>
			</Layout>,
		);
	});
}

/** Back to the order or to where its link leads; a reader's leads here. */
function crumbsFor(caller: Caller, orderId: string): Crumb[] {
	if (caller.kind === "account") return [{ href: `/orders/${orderId}`, label: say("shop.order") }];
	if (caller.kind !== "link" || caller.scope === "reader") return [];
	const label = say(caller.scope === "settle" ? "settling.positions" : "comparison-page.back-to-record");
	return [{ href: placeOf(caller), label }];
}
