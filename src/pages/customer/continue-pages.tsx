/** Going on at another device: the code that the one shows, and the page where the other takes it. */
import type { FastifyInstance, FastifyRequest } from "fastify";
import { callerOf, formTokenFor, OPEN_TO_ALL, openTo } from "../../access/callers.ts";
import { cookieNames, cookieOptions } from "../../access/cookies.ts";
import { Fault } from "../../faults.ts";
import { continueHere, offerContinuation } from "../../operations/access/links.ts";
import type { Deps } from "../../operations/deps.ts";
import { faultWords } from "../../texts/fault-words.ts";
import { say } from "../../texts/say.ts";
import { groupsOfFour, showTime } from "../../texts/shown-time.ts";
import { ErrorSummary, type FieldErrors, Form, Submit, TextField } from "../components/form.tsx";
import { Layout } from "../layout.tsx";
import { placeOf } from "../place-of.ts";
import { readBody } from "../record-form/read-body.ts";
import { sendPage } from "../render.ts";

export function registerContinue(app: FastifyInstance, deps: Deps): void {
	app.post("/guided/:id/continue", { ...openTo("link:record"), schema: { hide: true } }, async (request, reply) => {
		const { id } = request.params as { id: string };
		const { code, expiresAt } = await offerContinuation(deps, callerOf(request), id);
		return sendPage(
			reply,
			<Layout title={say("arrival.continue-title")}>
				<p class="lead">{say("arrival.continue-offer", { time: showTime(expiresAt.toISOString()) })}</p>
				<dl class="facts">
					<dt>{say("arrival.continue-address")}</dt>
					<dd class="fingerprint">{`${deps.publicUrl}/continue`}</dd>
					<dt>{say("arrival.continue-code")}</dt>
					<dd>
						<code class="code">{groupsOfFour(code)}</code>
					</dd>
				</dl>
				<p>
					<a href={`/guided/${id}`}>{say("arrival.continue-back")}</a>
				</p>
			</Layout>,
		);
	});

	const open = { ...OPEN_TO_ALL, schema: { hide: true } };
	app.get("/continue", open, async (request, reply) =>
		sendPage(reply, <EnterCode request={request} typed="" errors={{}} />),
	);
	app.post("/continue", open, async (request, reply) => {
		const { form } = await readBody(request.body);
		const typed = (form.code ?? "").slice(0, 40);
		try {
			const { sessionToken, link, expiresAt } = await continueHere(deps, typed);
			reply.setCookie(cookieNames(deps.publicUrl).link, sessionToken, cookieOptions(deps.publicUrl, expiresAt));
			return reply.redirect(placeOf(link), 303);
		} catch (error) {
			if (!(error instanceof Fault) || error.code !== "code-gone") throw error;
			const errors = { code: faultWords(error.code) };
			return sendPage(reply, <EnterCode request={request} typed={typed} errors={errors} />, error.status);
		}
	});
}

function EnterCode({
	request,
	typed,
	errors,
}: {
	readonly request: FastifyRequest;
	readonly typed: string;
	readonly errors: FieldErrors;
}) {
	return (
		<Layout title={say("arrival.continue-title")}>
			<ErrorSummary errors={errors} />
			<p class="lead">{say("arrival.continue-lead")}</p>
			<Form action="/continue" formToken={formTokenFor(request)}>
				<TextField
					name="code"
					label={say("arrival.continue-code")}
					values={{ code: typed }}
					errors={errors}
					autoComplete="one-time-code"
					width="short"
				/>
				<Submit label={say("arrival.entry-open")} />
			</Form>
		</Layout>
	);
}
