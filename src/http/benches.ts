/** The shop's instruments and benches, and the catalogue of checks. */
import type { FastifyInstance } from "fastify";
import { callerOf, OPEN_TO_ALL, openTo } from "../access/callers.ts";
import {
	benchInput,
	benchList,
	benchView,
	instrumentInput,
	instrumentList,
	instrumentView,
} from "../contract/benches.ts";
import { catalogueView, itemClass } from "../contract/catalogue.ts";
import { fault } from "../faults.ts";
import { addBench, addInstrument, readBenches, readInstruments } from "../operations/benches/benches.ts";
import { readCatalogue } from "../operations/catalogue.ts";
import type { Deps } from "../operations/deps.ts";
import { validate } from "../operations/validate.ts";

export function registerBenches(app: FastifyInstance, deps: Deps): void {
	app.get(
		"/api/v1/catalogue/:class",
		{
			...OPEN_TO_ALL,
			schema: {
				summary: "The checks of an item class, with limits, margins and their sources.",
				response: { 200: catalogueView },
			},
		},
		async (request) => {
			const outcome = itemClass.safeParse((request.params as { class: string }).class);
			if (!outcome.success) throw fault("not-found");
			return readCatalogue(outcome.data);
		},
	);
	app.get(
		"/api/v1/instruments",
		{ ...openTo("account"), schema: { summary: "The shop's instruments.", response: { 200: instrumentList } } },
		async (request) => ({ instruments: await readInstruments(deps, callerOf(request)) }),
	);
	app.post(
		"/api/v1/instruments",
		{
			...openTo("account"),
			schema: {
				summary: "Add an instrument with its accuracy.",
				body: instrumentInput,
				response: { 201: instrumentView },
			},
		},
		async (request, reply) =>
			reply.status(201).send(await addInstrument(deps, callerOf(request), validate(instrumentInput, request.body))),
	);
	app.get(
		"/api/v1/benches",
		{ ...openTo("account"), schema: { summary: "The shop's benches.", response: { 200: benchList } } },
		async (request) => ({ benches: await readBenches(deps, callerOf(request)) }),
	);
	app.post(
		"/api/v1/benches",
		{ ...openTo("account"), schema: { summary: "Add a bench.", body: benchInput, response: { 201: benchView } } },
		async (request, reply) =>
			reply.status(201).send(await addBench(deps, callerOf(request), validate(benchInput, request.body))),
	);
}
