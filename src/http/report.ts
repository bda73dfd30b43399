/** The report on an order, as a PDF; the carrier's edition also as plain text. */
import type { FastifyInstance } from "fastify";
import { callerOf, openTo } from "../access/callers.ts";
import { carrierTextQuery, reportQuery } from "../contract/report.ts";
import type { Deps } from "../operations/deps.ts";
import { carrierText } from "../operations/report/carrier-text.ts";
import { composeReport } from "../operations/report/compose-report.ts";
import { readReportFacts } from "../operations/report/read-report-facts.ts";
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
			const { edition = "parties", at, leg, language = "en" } = validate(reportQuery, request.query);
			const facts = await readReportFacts(deps, callerOf(request), id, { edition, at, leg, language });
			const bytes = await writeReport(composeReport(facts));
			const of = leg === undefined ? "" : `leg-${leg}-`;
			const inOther = language === "en" ? "" : `-${language}`;
			const name = `report-${edition}-${of}${facts.checkpoint.size}-${id}${inOther}.pdf`;
			return reply
				.type("application/pdf")
				.header("Content-Language", language)
				.header("Content-Disposition", `inline; filename="${name}"`)
				.header("Cache-Control", "private, no-cache")
				.send(bytes);
		},
	);
	app.get(
		"/api/v1/orders/:id/carrier-text",
		{
			...openTo("account"),
			schema: {
				summary: "The carrier's edition as plain text, for a web form: numbered facts in short lines.",
				querystring: carrierTextQuery,
			},
		},
		async (request, reply) => {
			const { at, leg, language = "en" } = validate(carrierTextQuery, request.query);
			const asked = { edition: "carrier", at, leg, language } as const;
			const facts = await readReportFacts(deps, callerOf(request), pathId(request, "ord"), asked);
			const [text = ""] = carrierText(facts);
			return reply.type("text/plain; charset=utf-8").header("Cache-Control", "private, no-cache").send(`${text}\n`);
		},
	);
}
