/** The comparison of a leg's two ends. */
import type { FastifyInstance } from "fastify";
import { callerOf } from "../access/callers.ts";
import { comparisonQuery, comparisonView, idsIn } from "../contract/comparison.ts";
import { comparisonViewOf } from "../operations/comparison/comparison-view.ts";
import { readComparison } from "../operations/comparison/read-comparison.ts";
import type { Deps } from "../operations/deps.ts";
import { validate } from "../operations/validate.ts";
import { ENGLISH } from "../texts/speaker.ts";
import { SHOP_AND_LINKS } from "./orders.ts";
import { pathId } from "./parts.ts";

export function registerComparison(app: FastifyInstance, deps: Deps): void {
	app.get(
		"/api/v1/consignments/:id/comparison",
		{
			...SHOP_AND_LINKS,
			schema: {
				summary: "What changed between the two ends of a leg, and where on the custody line.",
				querystring: comparisonQuery,
				response: { 200: comparisonView },
			},
		},
		async (request) => {
			const id = pathId(request, "con");
			const { from, to, present, absent } = validate(comparisonQuery, request.query);
			const { found, shock, handled } = await readComparison(deps, callerOf(request), id, { from, to });
			return comparisonViewOf(found, shock, { present: idsIn(present), absent: idsIn(absent) }, ENGLISH, handled);
		},
	);
}
