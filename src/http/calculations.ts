/** The calculations: stateless, open to everyone, limited in rate. */
import type { FastifyInstance } from "fastify";
import { z } from "zod";
import { OPEN_TO_ALL } from "../access/callers.ts";
import { STANDINGS } from "../contract/sources.ts";
import { CALCULATIONS } from "../operations/calculations/list.ts";
import { validate } from "../operations/validate.ts";
import { speak } from "../texts/say.ts";

const support = {
	cautions: z.array(z.string()),
	validity: z.strictObject({ within: z.boolean(), notes: z.array(z.string()) }),
	sources: z.array(
		z.strictObject({ id: z.string(), document: z.string(), locator: z.string(), standing: z.enum(STANDINGS) }),
	),
};

export function registerCalculations(app: FastifyInstance): void {
	for (const operation of CALCULATIONS) {
		const answer = z.discriminatedUnion("status", [
			z.strictObject({ status: z.literal("assessed"), result: operation.result, ...support }),
			z.strictObject({
				status: z.literal("not-assessed"),
				result: z.null(),
				reason: z.strictObject({ code: z.string(), message: z.string() }),
				...support,
			}),
		]);
		app.post(
			`/api/v1/calculations/${operation.name}`,
			{
				...OPEN_TO_ALL,
				schema: {
					summary: operation.summary,
					body: operation.request.meta({ examples: [operation.example.request] }),
					response: { 200: answer },
				},
			},
			async (request) => speak(operation.assess(validate(operation.request, request.body))),
		);
	}
}
