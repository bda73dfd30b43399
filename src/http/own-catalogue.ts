/** The shop's own checks and item classes, beside those of the catalogue. */
import type { FastifyInstance, FastifyRequest } from "fastify";
import { z } from "zod";
import { callerOf, openTo } from "../access/callers.ts";
import { keptCheck, keptClass, ownCatalogue } from "../contract/own-catalogue.ts";
import type { Deps } from "../operations/deps.ts";
import {
	keepOwnCheck,
	keepOwnClass,
	readOwnCatalogue,
	removeOwnCheck,
	removeOwnClass,
} from "../operations/own-catalogue/own-catalogue.ts";
import { validate } from "../operations/validate.ts";
import { pathId } from "./parts.ts";

const query = z.strictObject({ version: z.coerce.number().int().min(0).max(2_147_483_647).optional() });

const KINDS = [
	{
		path: "checks",
		prefix: "chk",
		shape: keptCheck,
		keep: keepOwnCheck,
		remove: removeOwnCheck,
		words: "an own check",
	},
	{
		path: "classes",
		prefix: "cls",
		shape: keptClass,
		keep: keepOwnClass,
		remove: removeOwnClass,
		words: "an own class",
	},
] as const;

export function registerOwnCatalogue(app: FastifyInstance, deps: Deps): void {
	const account = openTo("account");
	const answer = { response: { 200: ownCatalogue } };
	app.get(
		"/api/v1/own-catalogue",
		{
			...account,
			schema: {
				summary: "The shop's own checks and item classes; `version` gives them as a record was opened with.",
				querystring: query,
				...answer,
			},
		},
		async (request) => readOwnCatalogue(deps, callerOf(request), validate(query, request.query).version),
	);
	for (const { path, prefix, shape, keep, remove, words } of KINDS) {
		const idOf = (request: FastifyRequest) => pathId(request, prefix);
		app.post(
			`/api/v1/own-catalogue/${path}`,
			{ ...account, schema: { summary: `Add ${words}.`, body: shape, response: { 201: ownCatalogue } } },
			async (request, reply) => reply.status(201).send(await keep(deps, callerOf(request), null, request.body)),
		);
		app.put(
			`/api/v1/own-catalogue/${path}/:id`,
			{
				...account,
				schema: { summary: `Change ${words}; records that are there keep what they had.`, body: shape, ...answer },
			},
			async (request) => keep(deps, callerOf(request), idOf(request), request.body),
		);
		app.delete(
			`/api/v1/own-catalogue/${path}/:id`,
			{ ...account, schema: { summary: `Take ${words} away; records that are there keep it.`, ...answer } },
			async (request) => remove(deps, callerOf(request), idOf(request)),
		);
	}
}
