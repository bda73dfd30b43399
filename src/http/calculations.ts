/** The calculations: stateless, open to everyone, limited in rate. */
import type { FastifyInstance } from "fastify";
import { OPEN_TO_ALL } from "../access/callers.ts";
import { judged } from "../contract/judged.ts";
import { CALCULATIONS } from "../operations/calculations/list.ts";
import { validate } from "../operations/validate.ts";
import { speak } from "../texts/say.ts";

export function registerCalculations(app: FastifyInstance): void {
	for (const operation of CALCULATIONS) {
		const answer = judged(operation.result);
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
