/** `/orders/{id}/positions`: a document of numbered statements, for the shop and for every link of the order. */
import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { callerOf, formTokenFor, openTo } from "../../access/callers.ts";
import { positionInput } from "../../contract/positions.ts";
import type { Deps } from "../../operations/deps.ts";
import { readOrder } from "../../operations/orders/read-orders.ts";
import { readRecords } from "../../operations/records/read-record.ts";
import { readPositions, statePosition } from "../../operations/settling/positions.ts";
import { sideOrNull } from "../../operations/settling/side-of.ts";
import { validate } from "../../operations/validate.ts";
import { say } from "../../texts/say.ts";
import { ErrorSummary, type FieldErrors, type FormValues } from "../components/form.tsx";
import { readBody } from "../record-form/read-body.ts";
import { sendPage } from "../render.ts";
import { errorsOfFault } from "../shop/form-errors.ts";
import { PositionForm, positionOfForm } from "./position-form.tsx";
import { PositionSection } from "./position-section.tsx";
import { SettlingLayout } from "./settling-layout.tsx";

/** Fields of the form by the places of the request that they are called otherwise at. */
const FIELDS = {
	"/test": "test.id",
	...Object.fromEntries(Array.from({ length: 20 }, (_, index) => [`/test/dates/${index}`, "test.dates"])),
};

export function registerPositions(app: FastifyInstance, deps: Deps): void {
	const readers = { ...openTo("account", "link:record", "link:settle", "link:reader"), schema: { hide: true } };
	app.get("/orders/:id/positions", readers, async (request, reply) => send(request, reply, {}, {}, 200));

	app.post(
		"/orders/:id/positions",
		{ ...openTo("account", "link:settle"), schema: { hide: true } },
		async (request, reply) => {
			const { form } = await readBody(request.body);
			const order = await readOrder(deps, callerOf(request), (request.params as { id: string }).id);
			try {
				const input = validate(positionInput, positionOfForm(form));
				const key = form.sealKey === undefined || form.sealKey === "" ? null : form.sealKey.slice(0, 200);
				const sealed = await statePosition(deps, callerOf(request), order.id, input, key);
				return reply.redirect(`/orders/${order.id}/positions#statement-${sealed.number}`, 303);
			} catch (error) {
				return send(request, reply, form, errorsOfFault(error, FIELDS), 400);
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
		const [positions, records] = await Promise.all([
			readPositions(deps, caller, order.id),
			readRecords(deps, caller, order.id),
		]);
		const partyId = sideOrNull(caller, { id: order.id, owner_id: order.owner.id, repairer_id: order.repairer.id });
		const answeredIn = (id: string) =>
			positions.filter(({ answers }) => answers?.positionId === id).map(({ number }) => number);
		return sendPage(
			reply,
			<SettlingLayout order={order} title={say("settling.positions")} caller={caller}>
				<ErrorSummary errors={errors} />
				<p class="lead">{say("settling.positions-lead")}</p>
				{positions.length === 0 && <p>{say("settling.none")}</p>}
				{positions.map((position) => (
					<PositionSection key={position.id} {...{ order, position, records }} answeredIn={answeredIn(position.id)} />
				))}
				{partyId === null ? (
					<p class="hint">{say("settling.reads-only")}</p>
				) : (
					<PositionForm
						order={order}
						positions={positions}
						records={records}
						state={{
							formToken: formTokenFor(request),
							sealKey: deps.randomBytes(16).toString("hex"),
							partyId,
							values,
							errors,
						}}
					/>
				)}
			</SettlingLayout>,
			status,
		);
	}
}
