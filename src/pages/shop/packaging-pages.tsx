/** Planning the pack of a leg, and sealing it as shipped. */
import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { callerOf, openTo } from "../../access/callers.ts";
import { type AssessmentView, type PackagingRequest, packagingRequest } from "../../contract/packaging.ts";
import { packaging } from "../../operations/calculations/packaging.ts";
import type { Deps } from "../../operations/deps.ts";
import { readConsignment } from "../../operations/orders/consignments.ts";
import { readOrder } from "../../operations/orders/read-orders.ts";
import { readAssessments, sealAssessment } from "../../operations/packaging/assessments.ts";
import { type PackCurve, packCurves } from "../../operations/packaging/pack-curves.ts";
import { validate } from "../../operations/validate.ts";
import { speak } from "../../texts/say.ts";
import type { FieldErrors } from "../components/form.tsx";
import type { Form } from "../record-form/field.ts";
import { readBody } from "../record-form/read-body.ts";
import { sendPage } from "../render.ts";
import { errorsOfFault } from "./form-errors.ts";
import { FIELD_OF_MEMBER, firstPackForm, packRequest } from "./packaging-form.ts";
import { PackagingPage } from "./packaging-page.tsx";
import type { SpokenPackaging } from "./packaging-result.tsx";

interface Shown {
	readonly form: Form;
	readonly errors?: FieldErrors;
	readonly answer?: SpokenPackaging;
	readonly curves?: readonly PackCurve[];
	readonly sealed?: AssessmentView;
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
		let input: PackagingRequest;
		try {
			input = validate(packagingRequest, packRequest(form, order.item.class));
		} catch (error) {
			return send(request, reply, { form, errors: errorsOfFault(error, FIELD_OF_MEMBER), status: 400 });
		}
		const answer = speak(packaging.assess(input)) as SpokenPackaging;
		const drop = answer.result?.checks.find((check) => check.id === "drop-height")?.limit ?? null;
		const curves = drop === null ? [] : packCurves(input, drop);
		if (form.act !== "seal") return send(request, reply, { form, answer, curves });
		const sealed = await sealAssessment(deps, callerOf(request), leg.id, input);
		return send(request, reply, { form, answer, curves, sealed });
	});

	async function placeOf(request: FastifyRequest) {
		const leg = await readConsignment(deps, callerOf(request), (request.params as { id: string }).id);
		return { leg, order: await readOrder(deps, callerOf(request), leg.orderId) };
	}

	async function send(request: FastifyRequest, reply: FastifyReply, shown: Shown) {
		const { leg, order } = await placeOf(request);
		const assessments = await readAssessments(deps, callerOf(request), leg.id);
		return sendPage(
			reply,
			<PackagingPage
				request={request}
				order={order}
				leg={leg}
				assessments={assessments}
				values={shown.form}
				errors={shown.errors ?? {}}
				answer={shown.answer ?? null}
				curves={shown.curves ?? []}
				sealed={shown.sealed ?? null}
			/>,
			shown.status ?? 200,
		);
	}
}
