/** `/l/{token}`: the link that someone was sent, opened with its six-digit code. */
import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { formTokenFor, OPEN_TO_ALL } from "../../access/callers.ts";
import { cookieNames, cookieOptions } from "../../access/cookies.ts";
import { Fault } from "../../faults.ts";
import { enterLink, findLink } from "../../operations/access/links.ts";
import type { Deps } from "../../operations/deps.ts";
import { faultWords } from "../../texts/fault-words.ts";
import { say } from "../../texts/say.ts";
import { placeOf } from "../place-of.ts";
import { readBody } from "../record-form/read-body.ts";
import { sendPage } from "../render.ts";
import { ClosedPage, EntryPage, type EntryScope } from "./entry-page.tsx";

const CODE = /^[0-9]{6}$/;

export function registerLinkEntry(app: FastifyInstance, deps: Deps): void {
	const routes = { ...OPEN_TO_ALL, schema: { hide: true } };
	app.get("/l/:token", routes, async (request, reply) => {
		const { scope } = await findLink(deps, tokenOf(request));
		return sendEntry(request, reply, scope, "", {}, 200);
	});
	app.post("/l/:token", routes, async (request, reply) => {
		const { form } = await readBody(request.body);
		const code = (form.code ?? "").replaceAll(/[\s-]/g, "");
		if (!CODE.test(code)) {
			const { scope } = await findLink(deps, tokenOf(request));
			return sendEntry(request, reply, scope, code, { code: say("arrival.entry-no-code") }, 400);
		}
		try {
			const { sessionToken, link, expiresAt } = await enterLink(deps, { token: tokenOf(request), code });
			reply.setCookie(cookieNames(deps.publicUrl).link, sessionToken, cookieOptions(deps.publicUrl, expiresAt));
			return reply.redirect(placeOf(link), 303);
		} catch (error) {
			if (!(error instanceof Fault) || !["code-wrong", "code-locked"].includes(error.code)) throw error;
			if (error.retryAfterS !== null) reply.header("Retry-After", String(error.retryAfterS));
			const { scope } = await findLink(deps, tokenOf(request));
			return sendEntry(request, reply, scope, "", { code: faultWords(error.code, error.facts) }, error.status);
		}
	});
}

function tokenOf(request: FastifyRequest): string {
	return (request.params as { token: string }).token;
}

function sendEntry(
	request: FastifyRequest,
	reply: FastifyReply,
	scope: EntryScope,
	code: string,
	errors: Readonly<Record<string, string>>,
	status: number,
) {
	const path = `/l/${encodeURIComponent(tokenOf(request))}`;
	const page = <EntryPage scope={scope} path={path} formToken={formTokenFor(request)} code={code} errors={errors} />;
	return sendPage(reply, page, status);
}

/** A link that does not open says why, as a page. */
export function sendClosed(error: Error, request: FastifyRequest, reply: FastifyReply): void {
	const found = error instanceof Fault ? error : null;
	const status = found?.status ?? (error as { statusCode?: number }).statusCode ?? 500;
	if (found === null && status >= 500) request.log.error({ err: error }, "a page failed");
	if ((error as { code?: string }).code === "FST_FILES_LIMIT") {
		sendPage(reply, <ClosedPage title={say("arrival.too-many-title")} words={say("arrival.too-many")} />, 413);
		return;
	}
	const code = found?.code ?? (status === 413 ? "too-large" : status < 500 ? "bad-input" : "internal");
	sendPage(reply, <ClosedPage words={faultWords(code, found?.facts)} />, status);
}
