/** Holds what routes declare: who calls is found once, before the body is read, and the rest is refused. */
import type { FastifyInstance, FastifyRequest } from "fastify";
import type { Caller } from "../access/caller.ts";
import { callerOf, callersOf, classOf, noteCaller, takesFilesFromNobody } from "../access/callers.ts";
import { cookieNames } from "../access/cookies.ts";
import { callerByApiToken, callerByLinkSession, callerBySession } from "../access/resolve-caller.ts";
import { formTokenMatches, formTokenOf } from "../access/secrets.ts";
import { fault } from "../faults.ts";
import type { Deps } from "../operations/deps.ts";

/** Adds the hooks. Call before any route is registered. */
export function enforceCallers(app: FastifyInstance, deps: Deps): void {
	app.addHook("onRoute", (route) => {
		if (callersOf(route.config) === null) throw new Error(`${route.method} ${route.url} does not say who may call it`);
	});
	app.addHook("onRequest", async (request) => {
		const callers = callersOf(request.routeOptions.config);
		if (callers === null) return;
		const candidates = await candidatesOf(request, deps);
		const allowed = candidates.find((caller) => callers.includes(classOf(caller)));
		const caller = allowed ?? candidates[0] ?? { kind: "nobody" };
		if (allowed === undefined && !callers.includes("nobody")) {
			throw fault(caller.kind === "nobody" ? "not-signed-in" : "forbidden");
		}
		// Files are held in memory while a form is read, so routes without limits of their own take them from known callers.
		if (caller.kind === "nobody" && isMultipart(request) && !takesFilesFromNobody(request.routeOptions.config)) {
			throw fault("unsupported-type");
		}
		if (changesSomething(request) && !isBearer(request)) refuseOtherSites(request);
		const cookie = cookieOf(request, deps.publicUrl, caller);
		noteCaller(request, caller, cookie === null ? "" : formTokenOf(cookie));
	});
	app.addHook("preHandler", async (request) => {
		if (!changesSomething(request) || isBearer(request) || !isForm(request)) return;
		const cookie = cookieOf(request, deps.publicUrl, callerOf(request));
		// Without a cookie there is nothing that another site could borrow.
		if (cookie === null) return;
		if (!formTokenMatches(cookie, formFieldOf(request.body))) throw fault("form-expired");
	});
}

async function candidatesOf(request: FastifyRequest, deps: Deps): Promise<Caller[]> {
	const { authorization } = request.headers;
	if (authorization !== undefined) {
		const token = /^Bearer ([A-Za-z0-9_-]{43})$/.exec(authorization)?.[1];
		const caller = token === undefined ? null : await callerByApiToken(deps.database, token);
		if (caller === null) throw fault("not-signed-in");
		return [caller];
	}
	const names = cookieNames(deps.publicUrl);
	const { [names.session]: session, [names.link]: link } = request.cookies;
	const callers = await Promise.all([
		session === undefined ? null : callerBySession(deps.database, session, deps.now()),
		link === undefined ? null : callerByLinkSession(deps.database, link, deps.now()),
	]);
	return callers.filter((caller) => caller !== null);
}

function cookieOf(request: FastifyRequest, publicUrl: string, caller: Caller): string | null {
	const names = cookieNames(publicUrl);
	if (caller.kind === "nobody") return null;
	return request.cookies[caller.kind === "link" ? names.link : names.session] ?? null;
}

function changesSomething(request: FastifyRequest): boolean {
	return !["GET", "HEAD", "OPTIONS"].includes(request.method);
}

function isBearer(request: FastifyRequest): boolean {
	return request.headers.authorization !== undefined;
}

function isMultipart(request: FastifyRequest): boolean {
	return /^multipart\//i.test(request.headers["content-type"] ?? "");
}

function isForm(request: FastifyRequest): boolean {
	return /^(application\/x-www-form-urlencoded|multipart\/form-data)/i.test(request.headers["content-type"] ?? "");
}

/** A browser says where a request comes from; one that comes with cookies from elsewhere is refused. */
function refuseOtherSites(request: FastifyRequest): void {
	const site = request.headers["sec-fetch-site"];
	if (site !== undefined && site !== "same-origin" && site !== "none") throw fault("cross-site");
	const { origin, host } = request.headers;
	if (origin !== undefined && (!URL.canParse(origin) || new URL(origin).host !== host)) throw fault("cross-site");
}

function formFieldOf(body: unknown): unknown {
	if (body === null || typeof body !== "object") return undefined;
	const field = (body as Record<string, unknown>).formToken;
	// Multipart fields come as objects with their value.
	return field !== null && typeof field === "object" && "value" in field ? field.value : field;
}
