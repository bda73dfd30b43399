/** Orders and the legs of their journey. */
import type { FastifyInstance } from "fastify";
import { z } from "zod";
import { callerOf, openTo } from "../access/callers.ts";
import { erasureInput } from "../contract/erasure.ts";
import {
	consignmentFacts,
	consignmentInput,
	consignmentView,
	orderInput,
	orderList,
	orderView,
	partyView,
} from "../contract/orders.ts";
import type { Deps } from "../operations/deps.ts";
import { addConsignment, changeConsignment, readConsignment } from "../operations/orders/consignments.ts";
import { createOrder } from "../operations/orders/create-order.ts";
import { type OrderCursor, readOrder, readOrders } from "../operations/orders/read-orders.ts";
import { readParty } from "../operations/orders/read-party.ts";
import { eraseParty } from "../operations/parties/erase-party.ts";
import { validate } from "../operations/validate.ts";
import { idempotencyKey, ifMatch, pathId, setVersion } from "./parts.ts";

/** Links of every scope read the order that they were made for. */
export const SHOP_AND_LINKS = openTo("account", "link:record", "link:settle", "link:reader");

const listQuery = z.strictObject({
	limit: z.coerce.number().int().min(1).max(100).optional(),
	after: z.string().max(200).optional(),
});

export function registerOrders(app: FastifyInstance, deps: Deps): void {
	app.post(
		"/api/v1/orders",
		{
			...openTo("account"),
			schema: { summary: "Take an order in: parties, item, terms.", body: orderInput, response: { 201: orderView } },
		},
		async (request, reply) => {
			const input = validate(orderInput, request.body);
			const order = await createOrder(deps, callerOf(request), input, idempotencyKey(request));
			return reply.status(201).header("Location", `/api/v1/orders/${order.id}`).send(order);
		},
	);
	app.get(
		"/api/v1/orders",
		{
			...openTo("account"),
			schema: {
				summary: "The shop's orders, newest first; `Link` leads to the next page.",
				querystring: listQuery,
				response: { 200: orderList },
			},
		},
		async (request, reply) => {
			const query = validate(listQuery, request.query);
			const { orders, next } = await readOrders(deps, callerOf(request), query.limit ?? 50, readCursor(query.after));
			if (next !== null) {
				const address = `/api/v1/orders?limit=${query.limit ?? 50}&after=${writeCursor(next)}`;
				reply.header("Link", `<${address}>; rel="next"`);
			}
			return { orders };
		},
	);
	app.get(
		"/api/v1/orders/:id",
		{
			...SHOP_AND_LINKS,
			schema: { summary: "One order with its parties, item and legs.", response: { 200: orderView } },
		},
		async (request) => readOrder(deps, callerOf(request), pathId(request, "ord")),
	);
	app.get(
		"/api/v1/parties/:id",
		{ ...SHOP_AND_LINKS, schema: { summary: "One party.", response: { 200: partyView } } },
		async (request) => readParty(deps, callerOf(request), pathId(request, "pty")),
	);
	app.post(
		"/api/v1/parties/:id/erase",
		{
			...openTo("account"),
			schema: { summary: "Erase what is known of a party; it cannot be taken back.", body: erasureInput },
		},
		async (request, reply) => {
			const { confirm } = validate(erasureInput, request.body);
			await eraseParty(deps, callerOf(request), pathId(request, "pty"), confirm);
			return reply.status(204).send();
		},
	);
	app.post(
		"/api/v1/orders/:id/consignments",
		{
			...openTo("account"),
			schema: {
				summary: "Add the next leg of the journey.",
				body: consignmentInput,
				response: { 201: consignmentView },
			},
		},
		async (request, reply) => {
			const input = validate(consignmentInput, request.body);
			const made = await addConsignment(
				deps,
				callerOf(request),
				pathId(request, "ord"),
				input,
				idempotencyKey(request),
			);
			setVersion(reply, made.version);
			return reply.status(201).header("Location", `/api/v1/consignments/${made.id}`).send(made);
		},
	);
	app.get(
		"/api/v1/consignments/:id",
		{ ...SHOP_AND_LINKS, schema: { summary: "One leg.", response: { 200: consignmentView } } },
		async (request, reply) => {
			const consignment = await readConsignment(deps, callerOf(request), pathId(request, "con"));
			setVersion(reply, consignment.version);
			return consignment;
		},
	);
	app.put(
		"/api/v1/consignments/:id",
		{
			...openTo("account"),
			schema: {
				summary: "Note what became known of a leg; needs If-Match.",
				body: consignmentFacts,
				response: { 200: consignmentView },
			},
		},
		async (request, reply) => {
			const id = pathId(request, "con");
			const facts = validate(consignmentFacts, request.body);
			const changed = await changeConsignment(deps, callerOf(request), id, ifMatch(request), facts);
			setVersion(reply, changed.version);
			return changed;
		},
	);
}

/** A cursor is opaque to callers; one that we did not write starts at the beginning. */
function readCursor(after: string | undefined): OrderCursor | null {
	const [createdAt, id] = Buffer.from(after ?? "", "base64url")
		.toString("utf8")
		.split(" ");
	if (createdAt === undefined || id === undefined || Number.isNaN(Date.parse(createdAt))) return null;
	return { createdAt, id };
}

function writeCursor(cursor: OrderCursor): string {
	return Buffer.from(`${cursor.createdAt} ${cursor.id}`).toString("base64url");
}
