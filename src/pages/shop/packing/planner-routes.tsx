/** Planning the pack of a leg, searching the stock for one, printing how it is packed, and sealing it as shipped. */
import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { callerOf, openTo } from "../../../access/callers.ts";
import { packagingRequest } from "../../../contract/packaging.ts";
import { packagingSearchRequest } from "../../../contract/packaging-search.ts";
import { fault } from "../../../faults.ts";
import { readLegClaim } from "../../../operations/claims/leg-claim.ts";
import type { Deps } from "../../../operations/deps.ts";
import { readConsignment } from "../../../operations/orders/consignments.ts";
import { readOrder } from "../../../operations/orders/read-orders.ts";
import { readAssessments, sealAssessment } from "../../../operations/packaging/assessments.ts";
import { planPack } from "../../../operations/packaging/plan-pack.ts";
import { requestOfSealed } from "../../../operations/packaging/sealed-curves.ts";
import { readStock } from "../../../operations/packaging/stock.ts";
import type { PackSearcher } from "../../../operations/packaging-search/pack-searcher.ts";
import { validate } from "../../../operations/validate.ts";
import { say } from "../../../texts/say.ts";
import type { FieldErrors } from "../../components/form.tsx";
import type { Form } from "../../record-form/field.ts";
import { readBody } from "../../record-form/read-body.ts";
import { sendPage } from "../../render.ts";
import { errorsOfFault } from "../form-errors.ts";
import { type Before, readBefore } from "./before.ts";
import { firstPackForm } from "./first-pack-form.ts";
import { PackingSheet } from "./packing-sheet.tsx";
import { PlannerPage, type PlannerPageProps } from "./planner-page.tsx";
import { type ReadPack, readPack } from "./read-pack.ts";
import { SearchPage } from "./search-page.tsx";
import { takeDesign } from "./take-design.ts";

interface Shown {
	readonly form: Form;
	readonly errors?: FieldErrors;
	readonly outcome?: PlannerPageProps["outcome"];
	readonly before?: Before | null;
	readonly status?: number;
}

export function registerPlanner(app: FastifyInstance, deps: Deps, searchPacks: PackSearcher): void {
	const shop = { ...openTo("account"), schema: { hide: true } };
	app.get("/consignments/:id/packaging", shop, async (request, reply) => {
		const { order, leg } = await placeOf(request);
		const { cover } = await readLegClaim(deps, callerOf(request), leg.id);
		return send(request, reply, { form: firstPackForm(order.item, leg, cover) });
	});

	app.post("/consignments/:id/packaging", shop, async (request, reply) => {
		const { order } = await placeOf(request);
		const sent = takeDesign((await readBody(request.body)).form);
		const read = readPack(sent, order.item.class, await readStock(deps, callerOf(request)));
		try {
			return await (sent.act === "search" ? search(request, reply, read) : plan(request, reply, read));
		} catch (error) {
			const errors = { ...errorsOfFault(error, read.fieldOf), ...read.errors };
			return send(request, reply, { form: read.form, errors, status: 400 });
		}
	});

	app.get("/consignments/:id/packaging/:assessment/sheet", shop, async (request, reply) => {
		const { order, leg } = await placeOf(request);
		const { assessment: id } = request.params as { assessment: string };
		const assessment = (await readAssessments(deps, callerOf(request), leg.id)).find((one) => one.id === id);
		const input = assessment === undefined ? null : requestOfSealed(assessment);
		if (input === null) throw fault("not-found");
		return sendPage(reply, <PackingSheet order={order} input={input} plan={planPack(input)} stock={null} />);
	});

	/** Computes what was asked; then prints or seals it, where that was asked too. */
	async function plan(request: FastifyRequest, reply: FastifyReply, { form, ...read }: ReadPack) {
		const { order, leg } = await placeOf(request);
		const input = validate(packagingRequest, read.request);
		if (Object.keys(read.errors).length > 0) return send(request, reply, { form, errors: read.errors, status: 400 });
		const found = planPack(input);
		const outcome = { plan: found, item: input.item };
		if (form.act === "sheet") {
			const stock = await readStock(deps, callerOf(request));
			return sendPage(reply, <PackingSheet order={order} input={input} plan={found} stock={stock} />);
		}
		if (form.act !== "seal") return send(request, reply, { form, outcome, before: readBefore(form.before) });
		// Only what was looked at is sealed: a number changed since then shows its outcome first.
		if (form.seen !== found.requestSha256) {
			return send(request, reply, { form, outcome, errors: { form: say("pack.changed") }, status: 409 });
		}
		const key = form.sealKey === undefined || form.sealKey === "" ? null : form.sealKey.slice(0, 200);
		const sealed = await sealAssessment(deps, callerOf(request), leg.id, input, key);
		return reply.redirect(`/consignments/${leg.id}/packaging?sealed=${sealed.id}`, 303);
	}

	/** Item and trip as they stand in the form, over the stock; box and cushions of the form do not matter. */
	async function search(request: FastifyRequest, reply: FastifyReply, { form, ...read }: ReadPack) {
		const { order, leg } = await placeOf(request);
		const stock = await readStock(deps, callerOf(request));
		if (stock.boxes.length * stock.foams.length * stock.bags.length === 0)
			return send(request, reply, { form, errors: { form: say("pack.search-empty") }, status: 400 });
		const { item, route } = read.request;
		const input = validate(packagingSearchRequest, { item, route, stock, objective: form["search.objective"] });
		if (Object.keys(read.errors).length > 0) return send(request, reply, { form, errors: read.errors, status: 400 });
		const answer = await searchPacks(input);
		return sendPage(
			reply,
			<SearchPage {...{ request, order, leg, stock, form, answer }} objective={input.objective} />,
		);
	}

	async function placeOf(request: FastifyRequest) {
		const leg = await readConsignment(deps, callerOf(request), (request.params as { id: string }).id);
		return { leg, order: await readOrder(deps, callerOf(request), leg.orderId) };
	}

	async function send(request: FastifyRequest, reply: FastifyReply, shown: Shown) {
		const { leg, order } = await placeOf(request);
		const assessments = await readAssessments(deps, callerOf(request), leg.id);
		const { sealed } = request.query as { sealed?: string };
		return sendPage(
			reply,
			<PlannerPage
				request={request}
				order={order}
				leg={leg}
				stock={await readStock(deps, callerOf(request))}
				assessments={assessments}
				values={shown.form}
				errors={shown.errors ?? {}}
				outcome={shown.outcome ?? null}
				before={shown.before ?? null}
				sealKey={deps.randomBytes(16).toString("hex")}
				sealed={assessments.find((assessment) => assessment.id === sealed) ?? null}
			/>,
			shown.status ?? 200,
		);
	}
}
