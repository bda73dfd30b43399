/** The comparison of a leg's two ends. */
import type { FastifyInstance } from "fastify";
import { callerOf } from "../access/callers.ts";
import { comparisonView } from "../contract/comparison.ts";
import { compareConsignment } from "../operations/comparison/compare-consignment.ts";
import { comparisonViewOf } from "../operations/comparison/comparison-view.ts";
import type { Deps } from "../operations/deps.ts";
import { SHOP_AND_LINKS } from "./orders.ts";
import { pathId } from "./parts.ts";

export function registerComparison(app: FastifyInstance, deps: Deps): void {
	app.get(
		"/api/v1/consignments/:id/comparison",
		{
			...SHOP_AND_LINKS,
			schema: {
				summary: "What changed between the two ends of a leg, and where on the custody line.",
				response: { 200: comparisonView },
			},
		},
		async (request) => comparisonViewOf(await compareConsignment(deps, callerOf(request), pathId(request, "con"))),
	);
}
