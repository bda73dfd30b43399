/** Notices to the carrier of a leg, as they were sent. */
import type { FastifyInstance } from "fastify";
import { callerOf, openTo } from "../access/callers.ts";
import {
	noticeDraft,
	noticeDraftQuery,
	noticeInput,
	noticeList,
	noticeReceipt,
	noticeView,
} from "../contract/notices.ts";
import { draftNotice } from "../operations/claims/notice-draft.ts";
import { noteNotice, noteNoticeReceived, readNotices } from "../operations/claims/notices.ts";
import type { Deps } from "../operations/deps.ts";
import { validate } from "../operations/validate.ts";
import { idempotencyKey, pathId } from "./parts.ts";

export function registerNotices(app: FastifyInstance, deps: Deps): void {
	const sides = openTo("account", "link:settle");
	app.get(
		"/api/v1/consignments/:id/notice-draft",
		{
			...sides,
			schema: {
				summary: "Draft of a notice to the carrier of a leg, and what a claims clerk commonly asks for.",
				querystring: noticeDraftQuery,
				response: { 200: noticeDraft },
			},
		},
		async (request) => {
			const { language = "en" } = validate(noticeDraftQuery, request.query);
			const draft = await draftNotice(deps, callerOf(request), pathId(request, "con"), language);
			const { text, period, papers } = draft;
			const { ruleId = null, safeDate = null, standing = null } = period ?? {};
			const rule = { ruleId, safeDate, standing };
			return { language, text, ...rule, papers: [...papers] };
		},
	);
	const path = "/api/v1/consignments/:id/notices";
	app.get(
		path,
		{
			...sides,
			schema: {
				summary: "Notices to the carrier of a leg, with what shows their sending and receipt.",
				response: { 200: noticeList },
			},
		},
		async (request) => ({ notices: await readNotices(deps, callerOf(request), pathId(request, "con")) }),
	);
	app.post(
		path,
		{
			...sides,
			schema: {
				summary: "Keep a notice to the carrier as it was sent.",
				body: noticeInput,
				response: { 201: noticeView },
			},
		},
		async (request, reply) => {
			const input = validate(noticeInput, request.body);
			const id = pathId(request, "con");
			return reply.status(201).send(await noteNotice(deps, callerOf(request), id, input, idempotencyKey(request)));
		},
	);
	app.post(
		"/api/v1/notices/:id/receipt",
		{
			...sides,
			schema: {
				summary: "Note when the carrier received a notice, once.",
				body: noticeReceipt,
				response: { 200: noticeView },
			},
		},
		async (request) => {
			const receipt = validate(noticeReceipt, request.body);
			return noteNoticeReceived(deps, callerOf(request), pathId(request, "ntc"), receipt);
		},
	);
}
