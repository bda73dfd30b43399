/** `/orders/{id}/papers` and the text for a carrier's form, for the shop and for whoever reads the whole order through a link. */
import type { FastifyInstance } from "fastify";
import { callerOf, openTo } from "../../access/callers.ts";
import { carrierTextPageQuery } from "../../contract/report.ts";
import type { Deps } from "../../operations/deps.ts";
import { readCheckpointFacts } from "../../operations/log/read-log.ts";
import { readOrderLine } from "../../operations/orders/order-line.ts";
import { carrierText } from "../../operations/report/carrier-text.ts";
import { readReportFacts } from "../../operations/report/read-report-facts.ts";
import { validate } from "../../operations/validate.ts";
import { itemName } from "../../texts/item-name.ts";
import { sendPage } from "../render.ts";
import { CarrierTextPage } from "./carrier-text-page.tsx";
import { legsOf } from "./legs-of.ts";
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
				itemName={itemName(order.item)}
				size={records.length === 0 ? null : (order.readIn?.treeSize ?? checkpoint?.size ?? null)}
				legs={legsOf(order)}
				isShop={caller.kind === "account"}
			/>
		);
		return sendPage(reply, page);
	});
	app.get("/orders/:id/carrier-text", { ...openTo("account"), schema: { hide: true } }, async (request, reply) => {
		const { at, leg, most, language = "en" } = validate(carrierTextPageQuery, request.query);
		const asked = { edition: "carrier", at, leg, language } as const;
		const facts = await readReportFacts(deps, callerOf(request), (request.params as { id: string }).id, asked);
		const page = (
			<CarrierTextPage
				orderId={facts.order.id}
				itemName={itemName(facts.order.item)}
				size={facts.checkpoint.size}
				leg={leg ?? null}
				language={language}
				most={most === undefined || most === "" ? null : Number(most)}
				parts={carrierText(facts, most === undefined || most === "" ? undefined : Number(most))}
			/>
		);
		return sendPage(reply, page);
	});
}
