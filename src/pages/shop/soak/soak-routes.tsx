/** `/soak`: how long to go on testing under load. Everything stands in the address; nothing is kept. */
import type { FastifyInstance } from "fastify";
import { openTo } from "../../../access/callers.ts";
import { soakRequest } from "../../../contract/soak.ts";
import { planSoak } from "../../../operations/screening/plan-soak.ts";
import { validate } from "../../../operations/validate.ts";
import type { Form } from "../../record-form/field.ts";
import { formReader, given } from "../../record-form/form-reader.ts";
import { sendPage } from "../../render.ts";
import { errorsOfFault } from "../form-errors.ts";
import { SoakPage } from "./soak-page.tsx";

/** Of every bound on the page. Source: our choice, the usual 95 %. */
const CONFIDENCE = 0.95;
const FROM_PERCENT = 0.01;

export function registerSoak(app: FastifyInstance): void {
	app.get("/soak", { ...openTo("account"), schema: { hide: true } }, async (request, reply) => {
		const query = Object.entries(request.query as Record<string, string | string[]>);
		// A field that stands twice in an address counts as it was given last.
		const values: Form = Object.fromEntries(query.map(([name, value]) => [name, [value].flat().at(-1) ?? ""]));
		const page = (rest: Omit<Parameters<typeof SoakPage>[0], "request" | "values">, status = 200) =>
			sendPage(reply, <SoakPage request={request} values={values} {...rest} />, status);
		if (query.length === 0) return page({ errors: {}, outcome: null });
		const read = readSoak(values);
		try {
			const asked = validate(soakRequest, read.request);
			if (Object.keys(read.errors).length > 0) return page({ errors: read.errors, outcome: null }, 400);
			return page({ errors: {}, outcome: { asked, plan: planSoak(asked) } });
		} catch (error) {
			return page({ errors: { ...errorsOfFault(error, read.fieldOf), ...read.errors }, outcome: null }, 400);
		}
	});
}

function readSoak(form: Form) {
	const reader = formReader(form);
	const number = (field: string, factor = 1) => reader.number(field, `/${field}`, factor);
	const percent = (field: string, pointer: string) => reader.number(field, pointer, FROM_PERCENT);
	const reproduced = given({
		shows: reader.number("shows", "/reproduced/shows"),
		hours: reader.number("showedInH", "/reproduced/hours"),
	});
	const request = given({
		hours: number("hours") ?? 0,
		failures: number("failures") ?? 0,
		coldStarts: number("coldStarts") ?? 0,
		coldStartFailures: number("coldStartFailures") ?? 0,
		confidence: CONFIDENCE,
		reproduced: Object.keys(reproduced).length === 0 ? undefined : reproduced,
		startFaultProbability: percent("startFaultPercent", "/startFaultProbability"),
		priorProbability: percent("priorPercent", "/priorProbability"),
		targetProbability: percent("targetPercent", "/targetProbability"),
		costPerH: number("costPerH"),
		costOfReturn: number("costOfReturn"),
	});
	return { request, errors: reader.errors, fieldOf: reader.fieldOf };
}
