/** The dates of a claim about a leg. */
import type { FastifyInstance } from "fastify";
import { callerOf, openTo } from "../access/callers.ts";
import { legClaimInput, legClaimView } from "../contract/leg-claim.ts";
import { readLegClaim, saveLegClaim } from "../operations/claims/leg-claim.ts";
import type { Deps } from "../operations/deps.ts";
import { validate } from "../operations/validate.ts";
import { SHOP_AND_LINKS } from "./orders.ts";
import { ifMatch, pathId, setVersion } from "./parts.ts";

export function registerLegClaim(app: FastifyInstance, deps: Deps): void {
	const path = "/api/v1/consignments/:id/claim";
	app.get(
		path,
		{
			...SHOP_AND_LINKS,
			schema: {
				summary: "Dates of a claim about a leg: the regime suggested or chosen, and what follows a missed date.",
				response: { 200: legClaimView },
			},
		},
		async (request, reply) => {
			const claim = await readLegClaim(deps, callerOf(request), pathId(request, "con"));
			setVersion(reply, claim.version);
			return claim;
		},
	);
	app.put(
		path,
		{
			...openTo("account"),
			schema: {
				summary: "Note the regime, the dates and the holidays that a claim starts from; needs If-Match.",
				body: legClaimInput,
				response: { 200: legClaimView },
			},
		},
		async (request, reply) => {
			const id = pathId(request, "con");
			const noted = validate(legClaimInput, request.body);
			const claim = await saveLegClaim(deps, callerOf(request), id, ifMatch(request), noted);
			setVersion(reply, claim.version);
			return claim;
		},
	);
}
