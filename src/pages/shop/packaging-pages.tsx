/** Planning the pack of a leg, and sealing it as shipped. */
import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { callerOf, openTo } from "../../access/callers.ts";
import { packagingRequest } from "../../contract/packaging.ts";
import type { Deps } from "../../operations/deps.ts";
import { readConsignment } from "../../operations/orders/consignments.ts";
import { readOrder } from "../../operations/orders/read-orders.ts";
import { readAssessments, sealAssessment } from "../../operations/packaging/assessments.ts";
import { type PackPlan, planPack } from "../../operations/packaging/plan-pack.ts";
import { validate } from "../../operations/validate.ts";
import { say } from "../../texts/say.ts";
import type { FieldErrors } from "../components/form.tsx";
import type { Form } from "../record-form/field.ts";
import { readBody } from "../record-form/read-body.ts";
import { sendPage } from "../render.ts";
import { errorsOfFault } from "./form-errors.ts";
import { firstPackForm, readPack } from "./packaging-form.ts";
import { PackagingPage } from "./packaging-page.tsx";

interface Shown {
	readonly form: Form;
	readonly errors?: FieldErrors;
	readonly plan?: PackPlan;
	readonly status?: number;
}

export function registerPackagingPages(app: FastifyInstance, deps: Deps): void {
	const shop = { ...openTo("account"), schema: { hide: true } };
	app.get("/consignments/:id/packaging", shop, async (request, reply) => {
		const { order } = await placeOf(request);
		return send(request, reply, { form: firstPackForm(order.item) });
	});

	app.post("/consignments/:id/packaging", shop, async (request, reply) => {
		const { order, leg } = await placeOf(request);
		const { form } = await readBody(request.body);
		const read = readPack(form, order.item.class);
		try {
			const input = validate(packagingRequest, read.request);
			if (Object.keys(read.errors).length > 0) return send(request, reply, { form, errors: read.errors, status: 400 });
			const plan = planPack(input);
			if (form.act !== "seal") return send(request, reply, { form, plan });
			// Only what was looked at is sealed: a number changed since then shows its outcome first.
			if (form.seen !== plan.requestSha256) {
				return send(request, reply, { form, plan, errors: { form: say("pack.changed") }, status: 409 });
			}
			const key = form.sealKey === undefined || form.sealKey === "" ? null : form.sealKey.slice(0, 200);
			const sealed = await sealAssessment(deps, callerOf(request), leg.id, input, key);
			return reply.redirect(`/consignments/${leg.id}/packaging?sealed=${sealed.id}`, 303);
		} catch (error) {
			const errors = { ...errorsOfFault(error, read.fieldOf), ...read.errors };
			return send(request, reply, { form, errors, status: 400 });
		}
	});

	async function placeOf(request: FastifyRequest) {
		const leg = await readConsignment(deps, callerOf(request), (request.params as { id: string }).id);
		return { leg, order: await readOrder(deps, callerOf(request), leg.orderId) };
	}

	async function send(request: FastifyRequest, reply: FastifyReply, { form, errors, plan, status }: Shown) {
		const { leg, order } = await placeOf(request);
		const assessments = await readAssessments(deps, callerOf(request), leg.id);
		const { sealed } = request.query as { sealed?: string };
		return sendPage(
			reply,
			<PackagingPage
				request={request}
				order={order}
				leg={leg}
				assessments={assessments}
				values={form}
				errors={errors ?? {}}
				plan={plan ?? null}
				sealKey={deps.randomBytes(16).toString("hex")}
				sealed={assessments.find((assessment) => assessment.id === sealed) ?? null}
			/>,
			status ?? 200,
		);
	}
}
