/** Recorded shocks, and series of drops on a foam: stateless, open to everyone, limited in rate. Bodies are checked and judged on a thread. */
import type { FastifyInstance } from "fastify";
import { OPEN_TO_ALL } from "../access/callers.ts";
import { dropSeriesAnswer, dropSeriesRequest } from "../contract/drop-series.ts";
import { shockTraceAnswer, shockTraceRequest } from "../contract/shock-trace.ts";
import type { DropSeriesAssessor } from "../operations/drop-series/drop-series-assessor.ts";
import { TRACE_LIMIT, type TraceAssessor } from "../operations/shock-trace/trace-assessor.ts";

/** A short trace, for the OpenAPI document: a half sine of 4 ms. */
const EXAMPLE = {
	sampleRateHz: 2000,
	accelerationGn: [0, 0, 7.654, 14.142, 18.478, 20, 18.478, 14.142, 7.654, 0, 0],
	pretriggerSamples: 2,
	fullScaleGn: 200,
	q: 10,
	frequenciesHz: [50, 100, 200],
};

export function registerShockTrace(
	app: FastifyInstance,
	assessTrace: TraceAssessor,
	assessDropSeries: DropSeriesAssessor,
): void {
	app.register(async (scope) => {
		scope.removeAllContentTypeParsers();
		scope.addContentTypeParser("application/json", { parseAs: "string" }, (_request, body, done) => done(null, body));
		scope.post(
			"/api/v1/calculations/shock-trace",
			{
				...OPEN_TO_ALL,
				bodyLimit: TRACE_LIMIT,
				// The thread validates.
				validatorCompiler: () => (value) => ({ value }),
				schema: {
					summary: "What a recorded shock says: peak, duration, velocity change, equivalent drops, response spectrum.",
					body: shockTraceRequest.meta({ examples: [EXAMPLE] }),
					response: { 200: shockTraceAnswer },
				},
			},
			async (request) => assessTrace(typeof request.body === "string" ? request.body : ""),
		);
		scope.post(
			"/api/v1/calculations/drop-series",
			{
				...OPEN_TO_ALL,
				bodyLimit: TRACE_LIMIT,
				// The thread validates.
				validatorCompiler: () => (value) => ({ value }),
				schema: {
					summary:
						"Instrumented drops of a dummy on a foam as points of its curve; what cannot be taken, with the reason.",
					body: dropSeriesRequest,
					response: { 200: dropSeriesAnswer },
				},
			},
			async (request) => assessDropSeries(typeof request.body === "string" ? request.body : ""),
		);
	});
}
