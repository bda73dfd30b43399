/** The search of packs: for the shop, since it takes long; stores nothing. */
import type { FastifyInstance } from "fastify";
import { openTo } from "../access/callers.ts";
import { packagingSearchAnswer, packagingSearchRequest } from "../contract/packaging-search.ts";
import type { PackSearcher } from "../operations/packaging-search/pack-searcher.ts";
import { validate } from "../operations/validate.ts";

export function registerPackagingSearch(app: FastifyInstance, searchPacks: PackSearcher): void {
	app.post(
		"/api/v1/calculations/packaging-search",
		{
			...openTo("account"),
			schema: {
				summary: "Packs for an item from a stock of boxes, foam sheets and bags, best first.",
				body: packagingSearchRequest,
				response: { 200: packagingSearchAnswer },
			},
		},
		async (request) => searchPacks(validate(packagingSearchRequest, request.body)),
	);
}
