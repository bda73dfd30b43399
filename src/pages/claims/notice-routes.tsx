/** `/orders/{id}/consignments/{id}/notice`: the draft of a notice, and those that were sent, for the two sides. */
import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { callerOf, formTokenFor, openTo } from "../../access/callers.ts";
import { noticeInput, noticeReceipt } from "../../contract/notices.ts";
import { fault } from "../../faults.ts";
import { draftNotice } from "../../operations/claims/notice-draft.ts";
import { noteNotice, noteNoticeReceived } from "../../operations/claims/notices.ts";
import type { Deps } from "../../operations/deps.ts";
import { validate } from "../../operations/validate.ts";
import { LANGUAGES } from "../../texts/language.ts";
import type { FieldErrors, FormValues } from "../components/form.tsx";
import { readBody } from "../record-form/read-body.ts";
import { sendPage } from "../render.ts";
import { errorsOfFault, filledIn } from "../shop/form-errors.ts";
import { NoticePage } from "./notice-page.tsx";

export function registerNotice(app: FastifyInstance, deps: Deps): void {
	const path = "/orders/:id/consignments/:consignment/notice";
	const readers = { ...openTo("account", "link:record", "link:settle"), schema: { hide: true } };
	const sides = { ...openTo("account", "link:settle"), schema: { hide: true } };

	app.get(path, readers, async (request, reply) => send(request, reply, {}, {}, 200));

	app.post(path, sides, async (request, reply) => {
		const { form } = await readBody(request.body);
		const { order, leg } = await draftOf(request);
		try {
			const { sealKey, formToken: _, ...filled } = filledIn(form);
			const input = validate(noticeInput, filled);
			await noteNotice(deps, callerOf(request), leg.id, input, sealKey?.slice(0, 200) ?? null);
			return reply.redirect(`/orders/${order.id}/consignments/${leg.id}/notice#sent`, 303);
		} catch (error) {
			return send(request, reply, form, errorsOfFault(error), 400);
		}
	});

	app.post(`${path}/:notice/receipt`, sides, async (request, reply) => {
		const { form } = await readBody(request.body);
		const { order, leg, notices } = await draftOf(request);
		const id = (request.params as { notice: string }).notice;
		if (!notices.some((notice) => notice.id === id)) throw fault("not-found");
		try {
			const { receivedOn, proofOfReceipt, receiptFile } = filledIn(form);
			const receipt = JSON.parse(JSON.stringify({ receivedOn, proofOfReceipt, receiptFile }));
			await noteNoticeReceived(deps, callerOf(request), id, validate(noticeReceipt, receipt));
			return reply.redirect(`/orders/${order.id}/consignments/${leg.id}/notice#sent`, 303);
		} catch (error) {
			return send(request, reply, form, errorsOfFault(error), 400);
		}
	});

	async function draftOf(request: FastifyRequest) {
		const { id, consignment } = request.params as { id: string; consignment: string };
		const asked = (request.query as { language?: unknown }).language;
		const language = LANGUAGES.find((known) => known === asked) ?? "en";
		const draft = await draftNotice(deps, callerOf(request), consignment, language);
		if (draft.order.id !== id) throw fault("not-found");
		return draft;
	}

	async function send(
		request: FastifyRequest,
		reply: FastifyReply,
		values: FormValues,
		errors: FieldErrors,
		status: number,
	) {
		const caller = callerOf(request);
		const draft = await draftOf(request);
		const mayKeep = caller.kind === "account" || (caller.kind === "link" && caller.scope === "settle");
		const sealKey = deps.randomBytes(16).toString("hex");
		const keeping = mayKeep ? { formToken: formTokenFor(request), sealKey, values, errors } : null;
		return sendPage(reply, <NoticePage draft={draft} keeping={keeping} />, status);
	}
}
