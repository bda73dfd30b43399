/** The report on an order, as a PDF. */
import type { FastifyInstance } from "fastify";
import { callerOf, openTo } from "../access/callers.ts";
import { reportQuery } from "../contract/report.ts";
import type { Deps } from "../operations/deps.ts";
import { composeReport } from "../operations/report/compose-report.ts";
import { readReportFacts } from "../operations/report/report-facts.ts";
import type { ReportWriter } from "../operations/report/report-writer.ts";
import { validate } from "../operations/validate.ts";
import { pathId } from "./parts.ts";

export function registerReport(app: FastifyInstance, deps: Deps, writeReport: ReportWriter): void {
	app.get(
		"/api/v1/orders/:id/report.pdf",
		{
			...openTo("account", "link:settle", "link:reader"),
			schema: {
				summary:
					"The report on an order as a PDF: for the parties, an expert or the carrier (shop alone); in English, German or French.",
				querystring: reportQuery,
			},
		},
		async (request, reply) => {
			const id = pathId(request, "ord");
			const { edition = "parties", at, language = "en" } = validate(reportQuery, request.query);
			const facts = await readReportFacts(deps, callerOf(request), id, { edition, at, language });
			const bytes = await writeReport(composeReport(facts));
			const name = `report-${edition}-${facts.checkpoint.size}-${id}${language === "en" ? "" : `-${language}`}.pdf`;
			return reply
				.type("application/pdf")
				.header("Content-Language", language)
				.header("Content-Disposition", `inline; filename="${name}"`)
				.header("Cache-Control", "private, no-cache")
				.send(bytes);
		},
	);
}
