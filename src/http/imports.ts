/** Reading diagnostic outputs. The body is the file, whatever its media type says. */
import type { FastifyInstance } from "fastify";
import { OPEN_TO_ALL } from "../access/callers.ts";
import { importPreview, importQuery } from "../contract/imports.ts";
import { previewImport } from "../operations/imports/preview-import.ts";
import { validate } from "../operations/validate.ts";
import { rawBody, takeRawBodies } from "./exhibits.ts";

const PREVIEW_LIMIT = 16 * 1024 * 1024;

export function registerImports(app: FastifyInstance): void {
	app.register(async (raw) => {
		takeRawBodies(raw);
		raw.post(
			"/api/v1/imports/preview",
			{
				...OPEN_TO_ALL,
				bodyLimit: PREVIEW_LIMIT,
				schema: {
					summary: "Read a diagnostic output without keeping it.",
					querystring: importQuery,
					response: { 200: importPreview },
				},
			},
			async (request) => {
				const { preview } = await previewImport(rawBody(request.body), validate(importQuery, request.query));
				return preview;
			},
		);
	});
}
