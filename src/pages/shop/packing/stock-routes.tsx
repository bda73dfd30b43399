/** The stock's page: what is on the shelf, and the forms that change it. */
import type { FastifyInstance, FastifyRequest } from "fastify";
import { callerOf, openTo } from "../../../access/callers.ts";
import { STOCK_KINDS } from "../../../contract/stock.ts";
import type { Deps } from "../../../operations/deps.ts";
import { keepInStock, readStock, removeFromStock } from "../../../operations/packaging/stock.ts";
import { readBody } from "../../record-form/read-body.ts";
import { sendPage } from "../../render.ts";
import { errorsOfFault } from "../form-errors.ts";
import { readStockThing } from "./read-stock.ts";
import { StockPage } from "./stock-page.tsx";

export function registerStockPages(app: FastifyInstance, deps: Deps): void {
	const shop = { ...openTo("account"), schema: { hide: true } };
	const stockOf = (request: FastifyRequest) => readStock(deps, callerOf(request));
	app.get("/stock", shop, async (request, reply) =>
		sendPage(reply, <StockPage request={request} stock={await stockOf(request)} values={{}} errors={{}} />),
	);
	for (const kind of STOCK_KINDS) {
		app.post(`/stock/${kind}`, shop, async (request, reply) => {
			const { form } = await readBody(request.body);
			if (form.remove !== undefined) {
				await removeFromStock(deps, callerOf(request), kind, form.remove);
				return reply.redirect(`/stock#${kind}`, 303);
			}
			const read = readStockThing(kind, form);
			try {
				const wrong = Object.keys(read.errors).length > 0;
				if (!wrong) await keepInStock(deps, callerOf(request), kind, read);
				if (!wrong) return reply.redirect(`/stock#${kind}`, 303);
				const stock = await stockOf(request);
				return sendPage(reply, <StockPage {...{ request, stock }} values={form} errors={read.errors} />, 400);
			} catch (error) {
				const errors = errorsOfFault(error, read.fieldOf);
				const stock = await stockOf(request);
				return sendPage(reply, <StockPage {...{ request, stock }} values={form} errors={errors} />, 400);
			}
		});
	}
}
