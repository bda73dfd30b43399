/** The shop's stock of boxes, foam sheets and bags, in the shape that `packaging-search` takes. */
import type { FastifyInstance, FastifyRequest } from "fastify";
import { callerOf, openTo } from "../access/callers.ts";
import { STOCK_KINDS, STOCK_SHAPES, stockId, stockView } from "../contract/stock.ts";
import { fault } from "../faults.ts";
import type { Deps } from "../operations/deps.ts";
import { keepInStock, readStock, removeFromStock } from "../operations/packaging/stock.ts";

const WORDS = { boxes: "a box", foams: "a foam sheet", bags: "a bag" } as const;

export function registerStock(app: FastifyInstance, deps: Deps): void {
	const account = openTo("account");
	app.get(
		"/api/v1/stock",
		{ ...account, schema: { summary: "What the shop packs with.", response: { 200: stockView } } },
		async (request) => readStock(deps, callerOf(request)),
	);
	for (const kind of STOCK_KINDS) {
		const shape = STOCK_SHAPES[kind];
		app.put(
			`/api/v1/stock/${kind}/:id`,
			{
				...account,
				schema: {
					summary: `Add ${WORDS[kind]} to the stock, or replace the one of that name.`,
					body: shape,
					response: { 200: stockView },
				},
			},
			async (request) => keepInStock(deps, callerOf(request), kind, { id: nameOf(request), thing: request.body }),
		);
		app.delete(
			`/api/v1/stock/${kind}/:id`,
			{ ...account, schema: { summary: `Remove ${WORDS[kind]} from the stock.` } },
			async (request, reply) => {
				await removeFromStock(deps, callerOf(request), kind, nameOf(request));
				return reply.status(204).send();
			},
		);
	}
}

/** A name that no stock can hold belongs to nothing. */
function nameOf(request: FastifyRequest): string {
	const outcome = stockId.safeParse((request.params as { id: string }).id);
	if (!outcome.success) throw fault("not-found");
	return outcome.data;
}
