/** Parts of requests that several routes read: path ids, versions, keys. */
import type { FastifyReply, FastifyRequest } from "fastify";
import { z } from "zod";
import { id } from "../contract/common.ts";
import { fault } from "../faults.ts";
import { validate } from "../operations/validate.ts";

/** The id in the path, of the given kind. An id of another form belongs to nothing. */
export function pathId(request: FastifyRequest, prefix: string): string {
	const outcome = z.object({ id: id(prefix) }).safeParse(request.params);
	if (!outcome.success) throw fault("not-found");
	return outcome.data.id;
}

/** The Idempotency-Key, if one was sent. */
export function idempotencyKey(request: FastifyRequest): string | null {
	const key = request.headers["idempotency-key"];
	if (key === undefined) return null;
	return validate(z.strictObject({ idempotencyKey: z.string().min(1).max(200) }), { idempotencyKey: key })
		.idempotencyKey;
}

/** The version that a change is made to. @throws version-missing; version-stale where it is no version of ours */
export function ifMatch(request: FastifyRequest): number {
	const header = request.headers["if-match"];
	if (header === undefined) throw fault("version-missing");
	const version = /^"v(\d{1,9})"$/.exec(header)?.[1];
	if (version === undefined) throw fault("version-stale");
	return Number(version);
}

/** Says which version an answer is. */
export function setVersion(reply: FastifyReply, version: number): void {
	reply.header("ETag", `"v${version}"`);
}
