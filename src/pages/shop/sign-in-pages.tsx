/** Setting the shop up, signing in and out. */
import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { formTokenFor, OPEN_TO_ALL, openTo } from "../../access/callers.ts";
import { cookieNames, cookieOptions } from "../../access/cookies.ts";
import { setUpInput, signInInput } from "../../contract/access.ts";
import { fault } from "../../faults.ts";
import { type OpenedSession, signIn, signOut } from "../../operations/access/sessions.ts";
import { setUpLinkWorks, setUpShop } from "../../operations/access/set-up.ts";
import type { Deps } from "../../operations/deps.ts";
import { validate } from "../../operations/validate.ts";
import { say } from "../../texts/say.ts";
import { ErrorSummary, type FieldErrors, Form, type FormValues, Submit, TextField } from "../components/form.tsx";
import { Layout } from "../layout.tsx";
import { readBody } from "../record-form/read-body.ts";
import { sendPage } from "../render.ts";
import { errorsOfFault, filledIn } from "./form-errors.ts";

export function registerSignIn(app: FastifyInstance, deps: Deps): void {
	const hidden = { schema: { hide: true } };
	const enter = (reply: FastifyReply, session: OpenedSession) => {
		reply.setCookie(
			cookieNames(deps.publicUrl).session,
			session.token,
			cookieOptions(deps.publicUrl, session.expiresAt),
		);
		return reply.redirect("/", 303);
	};

	app.get("/sign-in", { ...OPEN_TO_ALL, ...hidden }, async (request, reply) =>
		sendPage(reply, <NamePage action="/sign-in" title={say("shop.sign-in")} formToken={formTokenFor(request)} />),
	);
	app.post("/sign-in", { ...OPEN_TO_ALL, ...hidden }, async (request, reply) => {
		const { form } = await readBody(request.body);
		try {
			return enter(reply, await signIn(deps, validate(signInInput, nameAndPassphrase(form))));
		} catch (error) {
			const page = { action: "/sign-in", title: say("shop.sign-in") };
			return again(request, reply, page, form, errorsOfFault(error));
		}
	});
	app.post("/sign-out", { ...openTo("account"), ...hidden }, async (request, reply) => {
		const name = cookieNames(deps.publicUrl).session;
		const token = request.cookies[name];
		if (token !== undefined) await signOut(deps, token);
		return reply.clearCookie(name, { path: "/" }).redirect("/sign-in", 303);
	});

	const setUpPage = (token: string) => ({
		action: `/set-up/${encodeURIComponent(token)}`,
		title: say("shop.set-up"),
		isNew: true,
	});
	app.get("/set-up/:token", { ...OPEN_TO_ALL, ...hidden }, async (request, reply) => {
		const { token } = request.params as { token: string };
		if (!(await setUpLinkWorks(deps, token))) throw fault("set-up-used");
		return sendPage(reply, <NamePage {...setUpPage(token)} formToken={formTokenFor(request)} />);
	});
	app.post("/set-up/:token", { ...OPEN_TO_ALL, ...hidden }, async (request, reply) => {
		const { token } = request.params as { token: string };
		const { form } = await readBody(request.body);
		try {
			return enter(reply, await setUpShop(deps, validate(setUpInput, { token, ...nameAndPassphrase(form) })));
		} catch (error) {
			return again(request, reply, setUpPage(token), form, errorsOfFault(error));
		}
	});
}

function nameAndPassphrase(form: Readonly<Record<string, string>>) {
	const { name, passphrase } = filledIn(form);
	return { name, passphrase };
}

function again(
	request: FastifyRequest,
	reply: FastifyReply,
	page: { readonly action: string; readonly title: string; readonly isNew?: boolean },
	form: FormValues,
	errors: FieldErrors,
) {
	// The passphrase is never sent back in a page.
	return sendPage(
		reply,
		<NamePage {...page} formToken={formTokenFor(request)} values={{ name: form.name }} errors={errors} />,
		400,
	);
}

function NamePage(props: {
	readonly action: string;
	readonly title: string;
	readonly isNew?: boolean;
	readonly formToken: string;
	readonly values?: FormValues;
	readonly errors?: FieldErrors;
}) {
	const field = { values: props.values ?? {}, errors: props.errors ?? {} };
	return (
		<Layout title={props.title}>
			<ErrorSummary errors={field.errors} />
			{props.isNew === true && <p>{say("shop.set-up-text")}</p>}
			<Form action={props.action} formToken={props.formToken}>
				<TextField {...field} name="name" label={say("shop.account-name")} autoComplete="username" />
				<TextField
					{...field}
					name="passphrase"
					label={say("shop.passphrase")}
					hint={props.isNew === true ? say("shop.passphrase-hint") : undefined}
					type="password"
					autoComplete={props.isNew === true ? "new-password" : "current-password"}
				/>
				<Submit label={props.title} />
			</Form>
		</Layout>
	);
}
