/** The dossier of an order, as a bag in a ZIP archive that is streamed; ranges of it can be asked for. */
import type { FastifyInstance } from "fastify";
import { callerOf, openTo } from "../access/callers.ts";
import { dossierQuery } from "../contract/report.ts";
import type { Deps } from "../operations/deps.ts";
import { buildDossier } from "../operations/dossier/build-dossier.ts";
import type { ReportWriter } from "../operations/report/report-writer.ts";
import { validate } from "../operations/validate.ts";
import { pathId } from "./parts.ts";
import { sendBytes } from "./send-bytes.ts";

export function registerDossier(app: FastifyInstance, deps: Deps, writeReport: ReportWriter): void {
	app.get(
		"/api/v1/orders/:id/dossier.zip",
		{
			...openTo("account", "link:settle", "link:reader"),
			schema: {
				summary:
					"The dossier of an order: sealed statements, proofs, exhibits, report, in a bag that anyone can verify.",
				querystring: dossierQuery,
			},
		},
		async (request, reply) => {
			const id = pathId(request, "ord");
			const { edition = "parties", at, language = "en" } = validate(dossierQuery, request.query);
			const dossier = await buildDossier({ ...deps, writeReport }, callerOf(request), id, { edition, at, language });
			reply
				.type("application/zip")
				.header("Content-Disposition", `attachment; filename="${dossier.name}"`)
				.header("Cache-Control", "private, no-cache");
			return sendBytes(request, reply, dossier, `"${dossier.tag}"`);
		},
	);
}
