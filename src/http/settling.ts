/** What the parties of an order state, and their settlement. */
import type { FastifyInstance } from "fastify";
import { z } from "zod";
import { callerOf, openTo } from "../access/callers.ts";
import { id } from "../contract/common.ts";
import { positionInput, positionList, positionView } from "../contract/positions.ts";
import { receiptView } from "../contract/records.ts";
import { settlementInput, settlementView } from "../contract/settlement.ts";
import { fault } from "../faults.ts";
import type { Deps } from "../operations/deps.ts";
import { readSettlingReceipt } from "../operations/records/read-receipt.ts";
import { readPositions, statePosition } from "../operations/settling/positions.ts";
import { readSettlement, takeSettlementStep } from "../operations/settling/settlement.ts";
import { validate } from "../operations/validate.ts";
import { receiptBytes } from "../records/receipt.ts";
import { SHOP_AND_LINKS } from "./orders.ts";
import { idempotencyKey, pathId } from "./parts.ts";
import { sendReceipt } from "./records.ts";

/** The shop speaks for the repairer, a `settle` link for the party that it was made for. */
const SIDES = openTo("account", "link:settle");
const subjectId = z.union([id("pos"), id("stl")]);

export function registerSettling(app: FastifyInstance, deps: Deps): void {
	app.post(
		"/api/v1/orders/:id/positions",
		{
			...SIDES,
			schema: {
				summary: "State a position, answer one, ask for a test or offer one; sealed at once.",
				body: positionInput,
				response: { 201: positionView },
			},
		},
		async (request, reply) => {
			const orderId = pathId(request, "ord");
			const input = validate(positionInput, request.body);
			const sealed = await statePosition(deps, callerOf(request), orderId, input, idempotencyKey(request));
			return reply.status(201).send(sealed);
		},
	);
	app.get(
		"/api/v1/orders/:id/positions",
		{ ...SHOP_AND_LINKS, schema: { summary: "What both sides state, numbered.", response: { 200: positionList } } },
		async (request) => ({ positions: await readPositions(deps, callerOf(request), pathId(request, "ord")) }),
	);
	app.post(
		"/api/v1/orders/:id/settlement",
		{
			...SIDES,
			schema: {
				summary: "Propose a settlement, assent to one, decline, retract or reopen it; sealed at once.",
				body: settlementInput,
				response: { 201: settlementView },
			},
		},
		async (request, reply) => {
			const orderId = pathId(request, "ord");
			const input = validate(settlementInput, request.body);
			const settlement = await takeSettlementStep(deps, callerOf(request), orderId, input, idempotencyKey(request));
			return reply.status(201).send(settlement);
		},
	);
	app.get(
		"/api/v1/orders/:id/settlement",
		{
			...SHOP_AND_LINKS,
			schema: { summary: "The steps towards a settlement, and what holds.", response: { 200: settlementView } },
		},
		async (request) => readSettlement(deps, callerOf(request), pathId(request, "ord")),
	);
	app.get(
		"/api/v1/orders/:id/sealed/:subject/receipt",
		{
			...SHOP_AND_LINKS,
			schema: { summary: "The receipt about a position or a step of the settlement.", response: { 200: receiptView } },
		},
		async (request, reply) => {
			const orderId = pathId(request, "ord");
			const subject = subjectId.safeParse((request.params as { subject: string }).subject);
			if (!subject.success) throw fault("not-found");
			const receipt = await readSettlingReceipt(deps, callerOf(request), orderId, subject.data);
			return sendReceipt(reply, subject.data, receiptBytes(receipt));
		},
	);
}
