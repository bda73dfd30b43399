/** The log for anyone who wants to check it: newest checkpoint, keys, proofs. It tells hashes and sizes, no content. */
import type { FastifyInstance } from "fastify";
import { z } from "zod";
import { OPEN_TO_ALL } from "../access/callers.ts";
import { proofQuery, proofView } from "../contract/log.ts";
import type { Deps } from "../operations/deps.ts";
import {
	readCheckpoint,
	readConsistencyProof,
	readInclusionProof,
	readPublicKeysPem,
} from "../operations/log/read-log.ts";
import { validate } from "../operations/validate.ts";

const text = z.string();

export function registerLog(app: FastifyInstance, deps: Deps): void {
	app.get(
		"/api/v1/log/checkpoint",
		{ ...OPEN_TO_ALL, schema: { summary: "The newest checkpoint, a signed note.", response: { 200: text } } },
		async (_request, reply) => {
			const { note } = await readCheckpoint(deps);
			return reply.type("text/plain; charset=utf-8").serializer(String).send(note);
		},
	);
	app.get(
		"/api/v1/log/key",
		{
			...OPEN_TO_ALL,
			schema: { summary: "The public keys of the log, PEM, the one that signs now first.", response: { 200: text } },
		},
		async (_request, reply) =>
			reply
				.type("application/x-pem-file")
				.serializer(String)
				.send(await readPublicKeysPem(deps)),
	);
	app.get(
		"/api/v1/log/proof",
		{
			...OPEN_TO_ALL,
			schema: {
				summary: "An RFC 9162 proof: of inclusion by `index` and `size`, of consistency by `from` and `to`.",
				response: { 200: proofView },
			},
		},
		async (request) => {
			const query = validate(proofQuery, request.query);
			return "index" in query
				? readInclusionProof(deps, query.index, query.size)
				: readConsistencyProof(deps, query.from, query.to);
		},
	);
}
