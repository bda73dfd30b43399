/** Files that are brought piece by piece, by the tus protocol 1.0.0: made at `/exhibits`, gone on with at their own address. */
import type { FastifyInstance } from "fastify";
import { callerOf, openTo } from "../access/callers.ts";
import { uploadView } from "../contract/exhibits.ts";
import type { Deps } from "../operations/deps.ts";
import { readUpload } from "../operations/uploads/find-upload.ts";
import { pathId } from "./parts.ts";
import { answerUpload, UPLOADS_PATH } from "./upload-protocol.ts";

const WRITERS = openTo("account", "link:record");
const COLLECTION = "/api/v1/exhibits";
const ONE = `${UPLOADS_PATH}/:id`;

export function registerUploads(app: FastifyInstance, deps: Deps): void {
	app.register(async (scope) => {
		// What comes is read as a stream, whatever it calls itself.
		scope.removeAllContentTypeParsers();
		scope.addContentTypeParser("*", (_request, _payload, done) => done(null));
		const route = (method: "POST" | "OPTIONS" | "HEAD" | "PATCH" | "DELETE", url: string, summary: string) =>
			scope.route({
				method,
				url,
				...WRITERS,
				schema: { summary },
				handler: async (request, reply) => {
					if (url === ONE) pathId(request, "upl");
					return answerUpload(deps, callerOf(request), request, reply);
				},
			});
		route("OPTIONS", COLLECTION, "What of the tus protocol is spoken here, and the largest file.");
		route(
			"POST",
			COLLECTION,
			"Begin an upload of up to 8 GiB (tus 1.0.0): metadata `filename`, `record` or `consignment`.",
		);
		route("HEAD", ONE, "How far an upload is (tus 1.0.0).");
		route("PATCH", ONE, "Go on with an upload (tus 1.0.0); the last bytes make it an exhibit.");
		route("DELETE", ONE, "Give an upload up (tus 1.0.0).");
		scope.get(
			ONE,
			{
				...WRITERS,
				exposeHeadRoute: false,
				schema: { summary: "An upload, and the exhibit or recording that it became.", response: { 200: uploadView } },
			},
			async (request) => readUpload(deps, callerOf(request), pathId(request, "upl")),
		);
	});
}
