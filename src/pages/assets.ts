/** The stylesheet and the scripts, as built into `dist/pages/browser/`; read once. */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { FastifyInstance } from "fastify";
import { OPEN_TO_ALL } from "../access/callers.ts";

const BUILT = fileURLToPath(new URL("../../dist/pages/browser/", import.meta.url));

export function registerAssets(app: FastifyInstance): void {
	const assets = [
		{ path: "/assets/style.css", file: "style.css", type: "text/css; charset=utf-8" },
		...["device.js", "planner.js", "files.js", "uploads.js", "copy-text.js"].map((file) => ({
			path: `/assets/${file}`,
			file,
			type: "text/javascript; charset=utf-8",
		})),
	];
	for (const asset of assets) {
		const content = readFileSync(`${BUILT}${asset.file}`);
		app.get(asset.path, { ...OPEN_TO_ALL, schema: { hide: true } }, async (_request, reply) =>
			reply.type(asset.type).header("Cache-Control", "public, max-age=300").send(content),
		);
	}
}
