/** Errors as RFC 9457 problem details. Whatever a caller sends, the answer names what is wrong, where, and the mend. */
import { STATUS_CODES } from "node:http";
import type { FastifyError, FastifyReply, FastifyRequest } from "fastify";
import { Fault, fault } from "../faults.ts";
import { badMemberWords, faultWords } from "../texts/fault-words.ts";

export interface ProblemDetails {
	readonly type: string;
	readonly title: string;
	readonly status: number;
	readonly detail: string;
	readonly instance: string;
	readonly errors?: readonly {
		readonly path: string;
		readonly code: string;
		readonly message: string;
		readonly mend: string;
	}[];
}

/** A fault in words. */
export function problemOf(found: Fault, instance: string): ProblemDetails {
	const members = found.members.map((member) => ({
		path: member.path,
		code: member.code,
		...badMemberWords(member.code, member.facts),
	}));
	return {
		type: `urn:handover-risk:fault:${found.code}`,
		title: STATUS_CODES[found.status] ?? "Error",
		status: found.status,
		detail: faultWords(found.code, found.facts),
		instance,
		...(members.length > 0 ? { errors: members } : {}),
	};
}

/** Any error as a fault: ours as it is, the framework's by its status, everything else as `internal` and logged. */
export function faultOf(error: FastifyError | Error, request: FastifyRequest): Fault {
	if (error instanceof Fault) return error;
	const { statusCode, code } = error as FastifyError;
	if (statusCode === 413) return fault("too-large");
	if (statusCode === 415) return fault("unsupported-type");
	if (statusCode === 429) {
		return fault("too-many", { retryAfterS: (error as { retryAfterS?: number }).retryAfterS ?? 60 });
	}
	if (statusCode !== undefined && statusCode >= 400 && statusCode < 500) {
		return fault("bad-input", { members: [{ path: "", code: "refused", facts: { why: error.message } }] });
	}
	if (isLost(code)) return fault("unavailable", { retryAfterS: 5 });
	request.log.error({ err: error }, "a request failed");
	return fault("internal");
}

/** Whether the database went away: class 08 (connection) and 57P (operator intervention), or the socket's own errors. */
function isLost(code: string | undefined): boolean {
	return code !== undefined && (/^(08|57P|53)/.test(code) || ["ECONNREFUSED", "ECONNRESET", "EPIPE"].includes(code));
}

/** Sends a fault as problem details, with a serializer of its own, so that no response schema can hide a member. */
export function sendProblem(reply: FastifyReply, found: Fault, instance: string): FastifyReply {
	if (found.retryAfterS !== null) reply.header("Retry-After", String(found.retryAfterS));
	return reply
		.status(found.status)
		.serializer((payload: unknown) => (typeof payload === "string" ? payload : JSON.stringify(payload)))
		.type("application/problem+json; charset=utf-8")
		.send(problemOf(found, instance));
}
