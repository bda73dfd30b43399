/** The pages of the shop: everything behind its sign-in, and the sign-in itself. */
import type { FastifyInstance } from "fastify";
import type { Deps } from "../../operations/deps.ts";
import type { PackSearcher } from "../../operations/packaging-search/pack-searcher.ts";
import { sendClosed } from "../customer/entry-routes.tsx";
import { registerDropSeriesPages } from "../drop-series/drop-series-routes.tsx";
import { registerLearning } from "../learning/learning-routes.tsx";
import { registerBenchPages } from "./bench-pages.tsx";
import { registerCatalogue } from "./catalogue/catalogue-routes.tsx";
import { registerErasure } from "./erasure-pages.tsx";
import { registerHome } from "./home-pages.tsx";
import { registerMessages } from "./messages/message-routes.tsx";
import { registerNewOrder } from "./new-order-pages.tsx";
import { registerOrderPages } from "./order-pages.tsx";
import { registerPlanner } from "./packing/planner-routes.tsx";
import { registerStockPages } from "./packing/stock-routes.tsx";
import { registerRecordEditor } from "./record-editor-pages.tsx";
import { registerSeal } from "./seal-pages.tsx";
import { registerSignIn } from "./sign-in-pages.tsx";
import { registerSoak } from "./soak/soak-routes.tsx";

export function registerShopPages(app: FastifyInstance, deps: Deps, searchPacks: PackSearcher): void {
	app.register(async (pages) => {
		pages.setErrorHandler((error: Error & { code?: string }, request, reply) => {
			if (error.code === "not-signed-in" && request.method === "GET") return reply.redirect("/sign-in", 303);
			return sendClosed(error, request, reply);
		});
		registerSignIn(pages, deps);
		registerHome(pages, deps);
		registerNewOrder(pages, deps);
		registerOrderPages(pages, deps);
		registerMessages(pages, deps);
		registerErasure(pages, deps);
		registerRecordEditor(pages, deps);
		registerSeal(pages, deps);
		registerBenchPages(pages, deps);
		registerPlanner(pages, deps, searchPacks);
		registerStockPages(pages, deps);
		registerCatalogue(pages, deps);
		registerSoak(pages);
		registerDropSeriesPages(pages, deps);
		registerLearning(pages, deps);
	});
}
