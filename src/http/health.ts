/** Whether the process lives, and whether it can serve. */
import type { FastifyInstance } from "fastify";
import { z } from "zod";
import { OPEN_TO_ALL } from "../access/callers.ts";
import type { Deps } from "../operations/deps.ts";

const status = z.strictObject({ status: z.enum(["ok", "unavailable"]) });

export function registerHealth(app: FastifyInstance, deps: Deps): void {
	app.get(
		"/healthz",
		{ ...OPEN_TO_ALL, schema: { summary: "The process lives.", response: { 200: status } } },
		async () => ({ status: "ok" }),
	);
	app.get(
		"/readyz",
		{
			...OPEN_TO_ALL,
			schema: { summary: "The database answers.", response: { 200: status, 503: status } },
		},
		async (_request, reply) => {
			try {
				await deps.database.query("SELECT FROM sealed_entry LIMIT 1");
				return { status: "ok" };
			} catch {
				return reply.status(503).send({ status: "unavailable" });
			}
		},
	);
}
