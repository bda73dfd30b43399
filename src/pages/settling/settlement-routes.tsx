/** `/orders/{id}/settlement`, for the shop and for every link of the order. */
import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { callerOf, formTokenFor, openTo } from "../../access/callers.ts";
import { settlementInput } from "../../contract/settlement.ts";
import type { Deps } from "../../operations/deps.ts";
import { readOrder } from "../../operations/orders/read-orders.ts";
import { readRecords } from "../../operations/records/read-record.ts";
import { readSettlement, takeSettlementStep } from "../../operations/settling/settlement.ts";
import { sideOrNull } from "../../operations/settling/side-of.ts";
import { validate } from "../../operations/validate.ts";
import { say } from "../../texts/say.ts";
import { ErrorSummary, type FieldErrors, type FormValues } from "../components/form.tsx";
import { readBody } from "../record-form/read-body.ts";
import { sendPage } from "../render.ts";
import { errorsOfFault } from "../shop/form-errors.ts";
import { NextLeg } from "./next-leg.tsx";
import { AnswerForm, amountFields, ProposalForm, ReopenForm, stepOfForm } from "./settlement-forms.tsx";
import { ProposalFacts, SettlementStep } from "./settlement-step.tsx";
import { SettlingLayout } from "./settling-layout.tsx";

export function registerSettlement(app: FastifyInstance, deps: Deps): void {
	const readers = { ...openTo("account", "link:record", "link:settle", "link:reader"), schema: { hide: true } };
	app.get("/orders/:id/settlement", readers, async (request, reply) => send(request, reply, {}, {}, 200));

	app.post(
		"/orders/:id/settlement",
		{ ...openTo("account", "link:settle"), schema: { hide: true } },
		async (request, reply) => {
			const { form } = await readBody(request.body);
			const order = await readOrder(deps, callerOf(request), (request.params as { id: string }).id);
			try {
				const input = validate(settlementInput, stepOfForm(form));
				const key = form.sealKey === undefined || form.sealKey === "" ? null : form.sealKey.slice(0, 200);
				await takeSettlementStep(deps, callerOf(request), order.id, input, key);
				return reply.redirect(`/orders/${order.id}/settlement`, 303);
			} catch (error) {
				return send(request, reply, form, errorsOfFault(error, amountFields(form)), 400);
			}
		},
	);

	async function send(
		request: FastifyRequest,
		reply: FastifyReply,
		values: FormValues,
		errors: FieldErrors,
		status: number,
	) {
		const caller = callerOf(request);
		const order = await readOrder(deps, caller, (request.params as { id: string }).id);
		const settlement = await readSettlement(deps, caller, order.id);
		const partyId = sideOrNull(caller, { id: order.id, owner_id: order.owner.id, repairer_id: order.repairer.id });
		const agreed = settlement.steps.find(({ id }) => id === settlement.agreedId);
		const state = {
			action: `/orders/${order.id}/settlement`,
			formToken: formTokenFor(request),
			sealKey: deps.randomBytes(16).toString("hex"),
			values,
			errors,
		};
		return sendPage(
			reply,
			<SettlingLayout order={order} title={say("settling.settlement")} caller={caller}>
				<ErrorSummary errors={errors} />
				<p class="lead">{say(`settling.status.${settlement.status}`)}</p>
				{agreed !== undefined && (
					<section>
						<ProposalFacts step={agreed} />
						<NextLeg
							order={order}
							records={await readRecords(deps, caller, order.id)}
							itemNext={agreed.itemNext}
							formToken={caller.kind === "account" ? state.formToken : null}
						/>
						{agreed.outcome === "claim-against-carrier" && <p>{say("settling.next-carrier")}</p>}
					</section>
				)}
				<p>{say("settling.settlement-lead")}</p>
				<p class="note">{say("settling.advice")}</p>
				{settlement.steps.map((step, place) => (
					<section key={step.id} class="leg" id={`step-${place + 1}`}>
						<SettlementStep order={order} steps={settlement.steps} place={place} />
						{step.state === "open" && partyId !== null && (
							<AnswerForm step={step} isOwn={step.partyId === partyId} state={state} />
						)}
					</section>
				))}
				{partyId === null && <p class="hint">{say("settling.reads-only")}</p>}
				{partyId !== null && settlement.agreedId !== null && (
					<ReopenForm agreedId={settlement.agreedId} state={state} />
				)}
				{partyId !== null && settlement.agreedId === null && <ProposalForm state={state} />}
			</SettlingLayout>,
			status,
		);
	}
}
