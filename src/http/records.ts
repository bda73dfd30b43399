/** State records: drafting, sealing, receipts. */
import type { FastifyInstance, FastifyReply } from "fastify";
import { z } from "zod";
import { callerOf, openTo } from "../access/callers.ts";
import {
	type RecordView,
	receiptView,
	recordContent,
	recordInput,
	recordList,
	recordView,
} from "../contract/records.ts";
import type { Deps } from "../operations/deps.ts";
import { openRecord } from "../operations/records/open-record.ts";
import { readReceipt } from "../operations/records/read-receipt.ts";
import { readRecord, readRecords } from "../operations/records/read-record.ts";
import { discardDraft, saveDraft } from "../operations/records/save-draft.ts";
import { sealRecord } from "../operations/records/seal-record.ts";
import { validate } from "../operations/validate.ts";
import { receiptBytes } from "../records/receipt.ts";
import { SHOP_AND_LINKS } from "./orders.ts";
import { idempotencyKey, ifMatch, pathId, setVersion } from "./parts.ts";

const WRITERS = openTo("account", "link:record");

export function registerRecords(app: FastifyInstance, deps: Deps): void {
	const opened = (reply: FastifyReply, record: RecordView) => {
		setVersion(reply, record.version);
		return reply.status(201).header("Location", `/api/v1/records/${record.id}`).send(record);
	};
	const draftSchema = { body: recordInput, response: { 201: recordView } };
	app.post(
		"/api/v1/consignments/:id/records",
		{ ...openTo("account"), schema: { summary: "Open the draft of a departure or arrival record.", ...draftSchema } },
		async (request, reply) => {
			const place = { consignmentId: pathId(request, "con") };
			const input = validate(recordInput, request.body);
			return opened(reply, await openRecord(deps, callerOf(request), place, input, idempotencyKey(request)));
		},
	);
	app.post(
		"/api/v1/orders/:id/records",
		{ ...openTo("account"), schema: { summary: "Open the draft of a bench record.", ...draftSchema } },
		async (request, reply) => {
			const place = { orderId: pathId(request, "ord") };
			const input = validate(recordInput, request.body);
			return opened(reply, await openRecord(deps, callerOf(request), place, input, idempotencyKey(request)));
		},
	);
	app.get(
		"/api/v1/orders/:id/records",
		{
			...SHOP_AND_LINKS,
			schema: {
				summary: "The order's records; drafts only for those who may write them.",
				response: { 200: recordList },
			},
		},
		async (request) => ({ records: await readRecords(deps, callerOf(request), pathId(request, "ord")) }),
	);
	app.get(
		"/api/v1/records/:id",
		{ ...SHOP_AND_LINKS, schema: { summary: "One record.", response: { 200: recordView } } },
		async (request, reply) => {
			const record = await readRecord(deps, callerOf(request), pathId(request, "rec"));
			setVersion(reply, record.version);
			return record;
		},
	);
	app.put(
		"/api/v1/records/:id",
		{
			...WRITERS,
			schema: { summary: "Save a draft; needs If-Match.", body: recordContent, response: { 200: recordView } },
		},
		async (request, reply) => {
			const id = pathId(request, "rec");
			const content = validate(recordContent, request.body);
			const saved = await saveDraft(deps, callerOf(request), id, ifMatch(request), content);
			setVersion(reply, saved.version);
			return saved;
		},
	);
	app.post(
		"/api/v1/records/:id/seal",
		{
			...WRITERS,
			schema: {
				summary: "Seal a draft for good; needs If-Match. Answers the receipt.",
				response: { 200: receiptView },
			},
		},
		async (request, reply) => {
			const id = pathId(request, "rec");
			return sendReceipt(reply, id, receiptBytes(await sealRecord(deps, callerOf(request), id, ifMatch(request))));
		},
	);
	app.get(
		"/api/v1/records/:id/receipt",
		{
			...SHOP_AND_LINKS,
			schema: { summary: "The receipt about a sealed record, any time again.", response: { 200: receiptView } },
		},
		async (request, reply) => {
			const id = pathId(request, "rec");
			return sendReceipt(reply, id, receiptBytes(await readReceipt(deps, callerOf(request), id)));
		},
	);
	app.post(
		"/api/v1/records/:id/discard",
		{ ...WRITERS, schema: { summary: "Discard a draft; needs If-Match.", response: { 204: z.void() } } },
		async (request, reply) => {
			await discardDraft(deps, callerOf(request), pathId(request, "rec"), ifMatch(request));
			return reply.status(204).send();
		},
	);
}

/** A receipt's exact bytes: they re-serialise to themselves, so nothing may write them anew. */
export function sendReceipt(reply: FastifyReply, recordId: string, bytes: Buffer): FastifyReply {
	return reply
		.type("application/json; charset=utf-8")
		.header("Content-Disposition", `attachment; filename="receipt-${recordId}.json"`)
		.send(bytes);
}
