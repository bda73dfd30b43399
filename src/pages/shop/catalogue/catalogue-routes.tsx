/** The pages of the catalogue, and the forms that change the shop's own part of it. */
import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { callerOf, openTo } from "../../../access/callers.ts";
import { ITEM_CLASSES } from "../../../catalogue/codes.ts";
import { Fault, fault } from "../../../faults.ts";
import type { Deps } from "../../../operations/deps.ts";
import {
	keepOwnCheck,
	keepOwnClass,
	readOwnCatalogue,
	removeOwnCheck,
	removeOwnClass,
} from "../../../operations/own-catalogue/own-catalogue.ts";
import type { FieldErrors } from "../../components/form.tsx";
import type { Form } from "../../record-form/field.ts";
import { readBody } from "../../record-form/read-body.ts";
import { sendPage } from "../../render.ts";
import { errorsOfFault } from "../form-errors.ts";
import { CataloguePage } from "./catalogue-page.tsx";
import { ClassPage } from "./class-page.tsx";
import { fieldOfMember, fillCatalogueForms, readCheckForm, readClassForm } from "./read-catalogue-form.ts";

export function registerCatalogue(app: FastifyInstance, deps: Deps): void {
	const shop = { ...openTo("account"), schema: { hide: true } };
	app.get("/catalogue", shop, async (request, reply) => {
		const catalogue = await readOwnCatalogue(deps, callerOf(request));
		const changed = (request.query as { change?: unknown }).change;
		const id = typeof changed === "string" ? changed : null;
		return send(request, reply, { changed: id, values: fillCatalogueForms(catalogue, id), errors: {} });
	});
	app.get("/catalogue/:class", shop, async (request, reply) => {
		const { class: named } = request.params as { class: string };
		const itemClass = ITEM_CLASSES.find((one) => one === named);
		if (itemClass === undefined) throw fault("not-found");
		return sendPage(reply, <ClassPage request={request} itemClass={itemClass} />);
	});
	app.post("/catalogue/checks", shop, async (request, reply) =>
		keep(request, reply, "checks", async (form, id) => keepOwnCheck(deps, callerOf(request), id, readCheckForm(form))),
	);
	app.post("/catalogue/classes", shop, async (request, reply) =>
		keep(request, reply, "classes", async (form, id) => {
			const own = await readOwnCatalogue(deps, callerOf(request));
			return keepOwnClass(deps, callerOf(request), id, readClassForm(form, own));
		}),
	);

	async function keep(
		request: FastifyRequest,
		reply: FastifyReply,
		kind: "checks" | "classes",
		act: (form: Form, id: string | null) => Promise<unknown>,
	): Promise<FastifyReply> {
		const { form } = await readBody(request.body);
		if (form.remove !== undefined) {
			const remove = kind === "checks" ? removeOwnCheck : removeOwnClass;
			await remove(deps, callerOf(request), form.remove);
			return reply.redirect(`/catalogue#${kind}`, 303);
		}
		const id = form.id ?? null;
		try {
			await act(form, id);
			return reply.redirect(`/catalogue#${kind}`, 303);
		} catch (error) {
			const names =
				error instanceof Fault
					? Object.fromEntries(error.members.map(({ path }) => [path, fieldOfMember(kind, path)]))
					: {};
			return send(request, reply, { changed: id, values: form, errors: errorsOfFault(error, names) }, 400);
		}
	}

	async function send(
		request: FastifyRequest,
		reply: FastifyReply,
		shown: { readonly changed: string | null; readonly values: Form; readonly errors: FieldErrors },
		status = 200,
	): Promise<FastifyReply> {
		const catalogue = await readOwnCatalogue(deps, callerOf(request));
		return sendPage(reply, <CataloguePage request={request} catalogue={catalogue} {...shown} />, status);
	}
}
