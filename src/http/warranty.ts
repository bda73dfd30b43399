/** The warranty of an order. */
import type { FastifyInstance } from "fastify";
import { callerOf } from "../access/callers.ts";
import { warrantyQuery, warrantyView } from "../contract/warranty.ts";
import type { Deps } from "../operations/deps.ts";
import { readWarranty } from "../operations/settling/read-warranty.ts";
import { validate } from "../operations/validate.ts";
import { SHOP_AND_LINKS } from "./orders.ts";
import { pathId } from "./parts.ts";

export function registerWarranty(app: FastifyInstance, deps: Deps): void {
	app.get(
		"/api/v1/orders/:id/warranty",
		{
			...SHOP_AND_LINKS,
			schema: {
				summary: "The order's warranty, its clock, and what speaks on either side of a new failure.",
				querystring: warrantyQuery,
				response: { 200: warrantyView },
			},
		},
		async (request) => {
			const asked = validate(warrantyQuery, request.query);
			return readWarranty(deps, callerOf(request), pathId(request, "ord"), asked);
		},
	);
}
