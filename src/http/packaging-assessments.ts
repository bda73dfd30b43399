/** The packaging assessment of a leg, as shipped and sealed. */
import type { FastifyInstance } from "fastify";
import { callerOf, openTo } from "../access/callers.ts";
import { assessmentList, assessmentView, packagingRequest } from "../contract/packaging.ts";
import type { Deps } from "../operations/deps.ts";
import { readAssessments, sealAssessment } from "../operations/packaging/assessments.ts";
import { validate } from "../operations/validate.ts";
import { SHOP_AND_LINKS } from "./orders.ts";
import { idempotencyKey, pathId } from "./parts.ts";

export function registerPackagingAssessments(app: FastifyInstance, deps: Deps): void {
	const path = "/api/v1/consignments/:id/packaging-assessments";
	app.post(
		path,
		{
			...openTo("account"),
			schema: {
				summary: "Seal the assessment of the pack as shipped.",
				body: packagingRequest,
				response: { 201: assessmentView },
			},
		},
		async (request, reply) => {
			const id = pathId(request, "con");
			const input = validate(packagingRequest, request.body);
			const sealed = await sealAssessment(deps, callerOf(request), id, input, idempotencyKey(request));
			return reply.status(201).send(sealed);
		},
	);
	app.get(
		path,
		{ ...SHOP_AND_LINKS, schema: { summary: "The sealed assessments of a leg.", response: { 200: assessmentList } } },
		async (request) => ({ assessments: await readAssessments(deps, callerOf(request), pathId(request, "con")) }),
	);
}
