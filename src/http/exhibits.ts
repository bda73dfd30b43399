/** Files kept as evidence: brought as raw bytes of any media type, fetched by their SHA-256. */
import type { FastifyInstance } from "fastify";
import { z } from "zod";
import { callerOf, openTo } from "../access/callers.ts";
import { text } from "../contract/common.ts";
import { exhibitList, exhibitView } from "../contract/exhibits.ts";
import { importIntoView, importQuery } from "../contract/imports.ts";
import { fault } from "../faults.ts";
import type { Deps } from "../operations/deps.ts";
import { bringExhibit, listExhibits, openExhibit } from "../operations/exhibits/exhibits.ts";
import { IMPORT_MOST_BYTES, importIntoDraft } from "../operations/records/import-into-draft.ts";
import { validate } from "../operations/validate.ts";
import { SHOP_AND_LINKS } from "./orders.ts";
import { ifMatch, pathId, setVersion } from "./parts.ts";
import { sendBytes } from "./send-bytes.ts";

const EXHIBIT_LIMIT = 20 * 1024 * 1024;
const importIntoQuery = importQuery.omit({ kind: true }).extend({ fileName: text(200) });
const bringQuery = z.strictObject({ fileName: text(200) });

export function registerExhibits(app: FastifyInstance, deps: Deps): void {
	app.register(async (raw) => {
		takeRawBodies(raw);
		raw.post(
			"/api/v1/records/:id/exhibits",
			{
				...openTo("account", "link:record"),
				bodyLimit: EXHIBIT_LIMIT,
				schema: {
					summary: "Bring a file to a draft, up to 20 MiB.",
					querystring: bringQuery,
					response: { 201: exhibitView },
				},
			},
			async (request, reply) => {
				const { fileName } = validate(bringQuery, request.query);
				const id = pathId(request, "rec");
				const brought = await bringExhibit(deps, callerOf(request), id, { fileName, bytes: rawBody(request.body) });
				return reply.status(201).header("Location", `/api/v1/exhibits/${brought.sha256}`).send(brought);
			},
		);
		raw.post(
			"/api/v1/records/:id/import",
			{
				...openTo("account", "link:record"),
				bodyLimit: IMPORT_MOST_BYTES,
				schema: {
					summary: "Bring a diagnostic output to a draft and take its readings; needs If-Match.",
					querystring: importIntoQuery,
					response: { 200: importIntoView },
				},
			},
			async (request, reply) => {
				const { fileName, load } = validate(importIntoQuery, request.query);
				const id = pathId(request, "rec");
				const file = { fileName, bytes: rawBody(request.body) };
				const imported = await importIntoDraft(deps, callerOf(request), id, ifMatch(request), file, load);
				setVersion(reply, imported.record.version);
				return imported;
			},
		);
	});
	app.get(
		"/api/v1/records/:id/exhibits",
		{ ...SHOP_AND_LINKS, schema: { summary: "The files brought to a record.", response: { 200: exhibitList } } },
		async (request) => ({ exhibits: await listExhibits(deps, callerOf(request), pathId(request, "rec")) }),
	);
	app.get(
		"/api/v1/exhibits/:sha256",
		{
			...SHOP_AND_LINKS,
			schema: {
				summary:
					"A file's bytes, or one range of them: the original for its taker, for others what the taker hands out.",
			},
		},
		async (request, reply) => {
			const { sha256 } = request.params as { sha256: string };
			if (!/^[0-9a-f]{64}$/.test(sha256)) throw fault("not-found");
			const exhibit = await openExhibit(deps, callerOf(request), sha256);
			const name = encodeURIComponent(exhibit.fileName);
			reply
				.type(exhibit.mediaType === "text/plain" ? "text/plain; charset=utf-8" : exhibit.mediaType)
				.header("Content-Disposition", `${exhibit.inline ? "inline" : "attachment"}; filename*=UTF-8''${name}`)
				.header("Cache-Control", "private, no-cache");
			return sendBytes(request, reply, exhibit, `"${exhibit.sha256}"`);
		},
	);
}

/** Takes any body as bytes, also one that calls itself JSON or a form. */
export function takeRawBodies(scope: FastifyInstance): void {
	scope.removeAllContentTypeParsers();
	scope.addContentTypeParser("*", { parseAs: "buffer" }, (_request, body, done) => done(null, body));
}

/** The bytes of a raw body; none where nothing was sent. */
export function rawBody(body: unknown): Buffer {
	return Buffer.isBuffer(body) ? body : Buffer.alloc(0);
}
