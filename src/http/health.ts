/** Whether the process lives, and whether it can serve. */
import type { FastifyInstance } from "fastify";
import { z } from "zod";
import { OPEN_TO_ALL } from "../access/callers.ts";

const status = z.strictObject({ status: z.enum(["ok", "unavailable"]) });

export function registerHealth(app: FastifyInstance, isReady: () => Promise<boolean>): void {
	app.get(
		"/healthz",
		{ ...OPEN_TO_ALL, schema: { summary: "The process lives.", response: { 200: status } } },
		async () => ({ status: "ok" }),
	);
	app.get(
		"/readyz",
		{
			...OPEN_TO_ALL,
			schema: { summary: "The database answers and is up to date.", response: { 200: status, 503: status } },
		},
		async (_request, reply) => {
			const ready = await isReady().catch(() => false);
			return ready ? { status: "ok" } : reply.status(503).send({ status: "unavailable" });
		},
	);
}
