/** `/orders/{id}/consignments/{id}/claim`, for the shop and for every link of the order, and its calendar file. */
import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { callerOf, formTokenFor, openTo } from "../../access/callers.ts";
import { legClaimInput } from "../../contract/leg-claim.ts";
import { fault } from "../../faults.ts";
import { claimCalendar } from "../../operations/claims/claim-calendar.ts";
import { readLegClaim, saveLegClaim } from "../../operations/claims/leg-claim.ts";
import { watchedPeriods } from "../../operations/claims/watched-periods.ts";
import type { Deps } from "../../operations/deps.ts";
import { readConsignment } from "../../operations/orders/consignments.ts";
import { readOrder } from "../../operations/orders/read-orders.ts";
import { validate } from "../../operations/validate.ts";
import type { FieldErrors, FormValues } from "../components/form.tsx";
import { readBody } from "../record-form/read-body.ts";
import { sendPage } from "../render.ts";
import { errorsOfFault } from "../shop/form-errors.ts";
import { claimForm, claimOfForm } from "./claim-fields.tsx";
import { PeriodsPage } from "./periods-page.tsx";

/** The list of days is one field. */
const FIELDS = Object.fromEntries(
	Array.from({ length: 11 }, (_, index) => [`/inspectionDates/${index}`, "inspectionDates"]),
);

export function registerPeriods(app: FastifyInstance, deps: Deps): void {
	const readers = { ...openTo("account", "link:record", "link:settle", "link:reader"), schema: { hide: true } };
	const path = "/orders/:id/consignments/:consignment/claim";

	app.get(path, readers, async (request, reply) => {
		const claim = await claimOf(request);
		return send(request, reply, claimForm(claim.noted), {}, 200);
	});

	app.get(`${path}.ics`, readers, async (request, reply) => {
		const claim = await claimOf(request);
		// A calendar holds one event at least (RFC 5545, section 3.6).
		if (watchedPeriods(claim).every(({ safeDate }) => safeDate === null)) throw fault("not-found");
		return reply
			.type("text/calendar; charset=utf-8")
			.header("Content-Disposition", 'attachment; filename="claim-dates.ics"')
			.send(claimCalendar(claim, deps.now()));
	});

	app.post(path, { ...openTo("account"), schema: { hide: true } }, async (request, reply) => {
		const { form } = await readBody(request.body);
		const claim = await claimOf(request);
		try {
			const noted = validate(legClaimInput, claimOfForm(form, claim.noted));
			await saveLegClaim(deps, callerOf(request), claim.consignmentId, versionOf(form.version), noted);
			return reply.redirect(`/orders/${claim.orderId}/consignments/${claim.consignmentId}/claim`, 303);
		} catch (error) {
			return send(request, reply, form, errorsOfFault(error, FIELDS), 400);
		}
	});

	async function claimOf(request: FastifyRequest) {
		const { id, consignment } = request.params as { id: string; consignment: string };
		const claim = await readLegClaim(deps, callerOf(request), consignment);
		if (claim.orderId !== id) throw fault("not-found");
		return claim;
	}

	async function send(
		request: FastifyRequest,
		reply: FastifyReply,
		values: FormValues,
		errors: FieldErrors,
		status: number,
	) {
		const claim = await claimOf(request);
		const caller = callerOf(request);
		const [order, leg] = await Promise.all([
			readOrder(deps, caller, claim.orderId),
			readConsignment(deps, caller, claim.consignmentId),
		]);
		const editing = caller.kind === "account" ? { formToken: formTokenFor(request), values, errors } : null;
		const mayDraft = caller.kind === "account" || (caller.kind === "link" && caller.scope !== "reader");
		return sendPage(reply, <PeriodsPage {...{ order, leg, claim, editing, mayDraft }} />, status);
	}
}

/** A version that is none of ours is stale. */
function versionOf(sent: string | undefined): number {
	return /^\d{1,9}$/.test(sent ?? "") ? Number(sent) : -1;
}
