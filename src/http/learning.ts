/** What the shop's own legs show. */
import type { FastifyInstance } from "fastify";
import { callerOf, openTo } from "../access/callers.ts";
import { learningAnswer } from "../contract/learning.ts";
import type { Deps } from "../operations/deps.ts";
import { readLearning } from "../operations/learning/read-learning.ts";
import { speak } from "../texts/say.ts";

export function registerLearningAnswer(app: FastifyInstance, deps: Deps): void {
	app.get(
		"/api/v1/learning",
		{
			...openTo("account"),
			schema: {
				summary:
					"What the shop's legs to owners show by carrier, box, foam and soak: counts, exact intervals, bounds for what is not known.",
				response: { 200: learningAnswer },
			},
		},
		async (request) => speak(await readLearning(deps, callerOf(request))),
	);
}
