/** Setting up, signing in, tokens for programs, links for the other side. */
import type { FastifyInstance, FastifyReply } from "fastify";
import { z } from "zod";
import { callerOf, OPEN_TO_ALL, openTo } from "../access/callers.ts";
import { cookieNames, cookieOptions } from "../access/cookies.ts";
import {
	linkEntryInput,
	linkEntryView,
	linkInput,
	linkList,
	newLinkView,
	newTokenView,
	sessionView,
	setUpInput,
	signInInput,
	tokenInput,
	tokenList,
} from "../contract/access.ts";
import { id } from "../contract/common.ts";
import { partySignatureInput } from "../contract/party-signature.ts";
import { enterLink, makeLink, readLinks, withdrawLink } from "../operations/access/links.ts";
import { keepPartySignature } from "../operations/access/party-signatures.ts";
import {
	makeApiToken,
	type OpenedSession,
	readApiTokens,
	signIn,
	signOut,
	withdrawApiToken,
} from "../operations/access/sessions.ts";
import { setUpShop } from "../operations/access/set-up.ts";
import type { Deps } from "../operations/deps.ts";
import { validate } from "../operations/validate.ts";

export function registerAccess(app: FastifyInstance, deps: Deps): void {
	const begun = (reply: FastifyReply, session: OpenedSession) => {
		reply.setCookie(
			cookieNames(deps.publicUrl).session,
			session.token,
			cookieOptions(deps.publicUrl, session.expiresAt),
		);
		reply.status(201);
		return { accountId: session.accountId, name: session.name, expiresAt: session.expiresAt.toISOString() };
	};
	app.post(
		"/api/v1/set-up",
		{
			...OPEN_TO_ALL,
			schema: {
				summary: "Make the first account with the link printed at first start.",
				body: setUpInput,
				response: { 201: sessionView },
			},
		},
		async (request, reply) => begun(reply, await setUpShop(deps, validate(setUpInput, request.body))),
	);
	app.post(
		"/api/v1/session",
		{
			...OPEN_TO_ALL,
			schema: { summary: "Sign in; sets the session's cookie.", body: signInInput, response: { 201: sessionView } },
		},
		async (request, reply) => begun(reply, await signIn(deps, validate(signInInput, request.body))),
	);
	app.delete("/api/v1/session", { ...openTo("account"), schema: { summary: "Sign out." } }, async (request, reply) => {
		const name = cookieNames(deps.publicUrl).session;
		const token = request.cookies[name];
		if (token !== undefined) await signOut(deps, token);
		return reply.clearCookie(name, { path: "/" }).status(204).send();
	});
	app.get(
		"/api/v1/tokens",
		{ ...openTo("account"), schema: { summary: "The account's tokens for programs.", response: { 200: tokenList } } },
		async (request) => ({ tokens: await readApiTokens(deps, callerOf(request)) }),
	);
	app.post(
		"/api/v1/tokens",
		{
			...openTo("account"),
			schema: { summary: "Make a token; it is given this once.", body: tokenInput, response: { 201: newTokenView } },
		},
		async (request, reply) => {
			const made = await makeApiToken(deps, callerOf(request), validate(tokenInput, request.body).label);
			return reply.status(201).send(made);
		},
	);
	app.delete(
		"/api/v1/tokens/:id",
		{ ...openTo("account"), schema: { summary: "Withdraw a token." } },
		async (request, reply) => {
			await withdrawApiToken(deps, callerOf(request), validate(z.strictObject({ id: id("tok") }), request.params).id);
			return reply.status(204).send();
		},
	);
	app.post(
		"/api/v1/links",
		{
			...openTo("account"),
			schema: {
				summary: "Make a link; address and code are given this once.",
				body: linkInput,
				response: { 201: newLinkView },
			},
		},
		async (request, reply) =>
			reply.status(201).send(await makeLink(deps, callerOf(request), validate(linkInput, request.body))),
	);
	app.get(
		"/api/v1/links",
		{
			...openTo("account"),
			schema: {
				summary: "The links of an order.",
				querystring: z.strictObject({ orderId: id("ord") }),
				response: { 200: linkList },
			},
		},
		async (request) => {
			const { orderId } = validate(z.strictObject({ orderId: id("ord") }), request.query);
			return { links: await readLinks(deps, callerOf(request), orderId) };
		},
	);
	app.delete(
		"/api/v1/links/:id",
		{ ...openTo("account"), schema: { summary: "Withdraw a link." } },
		async (request, reply) => {
			await withdrawLink(deps, callerOf(request), validate(z.strictObject({ id: id("lnk") }), request.params).id);
			return reply.status(204).send();
		},
	);
	app.post(
		"/api/v1/links/enter",
		{
			...OPEN_TO_ALL,
			schema: {
				summary: "Enter a link with its code; sets the link session's cookie.",
				body: linkEntryInput,
				response: { 200: linkEntryView },
			},
		},
		async (request, reply) => {
			const { sessionToken, link, expiresAt } = await enterLink(deps, validate(linkEntryInput, request.body));
			reply.setCookie(cookieNames(deps.publicUrl).link, sessionToken, cookieOptions(deps.publicUrl, expiresAt));
			return { scope: link.scope, orderId: link.orderId, recordId: link.recordId, expiresAt: link.expiresAt };
		},
	);
	app.post(
		"/api/v1/links/:id/signatures",
		{
			...openTo("link:record", "link:settle", "link:reader"),
			schema: {
				summary: "Keep what the device that uses the link has signed of the link's acts.",
				body: partySignatureInput,
			},
		},
		async (request, reply) => {
			const { id: linkId } = validate(z.strictObject({ id: id("lnk") }), request.params);
			await keepPartySignature(deps, callerOf(request), linkId, validate(partySignatureInput, request.body));
			return reply.status(204).send();
		},
	);
}
