/** Sheets to print for a leg: the hand-over slip and the paper form. */
import type { FastifyInstance, FastifyRequest } from "fastify";
import { callerOf, formTokenFor, openTo } from "../../access/callers.ts";
import { fault } from "../../faults.ts";
import { makeLink } from "../../operations/access/links.ts";
import type { Deps } from "../../operations/deps.ts";
import { readOrder } from "../../operations/orders/read-orders.ts";
import { checksWithoutInstruments } from "../../operations/records/guided-record.ts";
import { openRecord } from "../../operations/records/open-record.ts";
import { readRecords } from "../../operations/records/read-record.ts";
import { sendPage } from "../render.ts";
import { PaperForm } from "./paper-form.tsx";
import { SlipPage } from "./slip-page.tsx";

export function registerSheets(app: FastifyInstance, deps: Deps): void {
	const forShop = { ...openTo("account"), schema: { hide: true } };
	const forAll = { ...openTo("account", "link:record", "link:settle", "link:reader"), schema: { hide: true } };

	app.get("/orders/:id/consignments/:consignment/slip", forShop, async (request, reply) => {
		const leg = await legOf(request);
		const page = <SlipPage {...leg} link={null} formToken={formTokenFor(request)} />;
		return sendPage(reply, page);
	});

	app.post("/orders/:id/consignments/:consignment/slip", forShop, async (request, reply) => {
		const { arrivalDraft, ...leg } = await legOf(request);
		if (leg.departure === null)
			return sendPage(reply, <SlipPage {...leg} link={null} formToken={formTokenFor(request)} />);
		const caller = callerOf(request);
		const place = { consignmentId: leg.consignment.id };
		const record = arrivalDraft ?? (await openRecord(deps, caller, place, { stage: "arrival" }, null));
		const link = await makeLink(deps, caller, { scope: "record", orderId: leg.order.id, recordId: record.id });
		return sendPage(reply, <SlipPage {...leg} link={link} formToken={formTokenFor(request)} />);
	});

	app.get("/orders/:id/consignments/:consignment/paper-form", forAll, async (request, reply) => {
		const { order, consignment } = await legOf(request);
		const checks = checksWithoutInstruments(order.item.class);
		return sendPage(reply, <PaperForm order={order} consignment={consignment} checks={checks} />);
	});

	/** The leg with its newest sealed departure record that nothing amends, and the consignee's open draft. */
	async function legOf(request: FastifyRequest) {
		const { id, consignment: legId } = request.params as { id: string; consignment: string };
		const caller = callerOf(request);
		const [order, records] = await Promise.all([readOrder(deps, caller, id), readRecords(deps, caller, id)]);
		const consignment = order.consignments.find((leg) => leg.id === legId);
		if (consignment === undefined) throw fault("not-found");
		const here = records.filter((record) => record.consignmentId === legId);
		const departures = here.filter(
			(record) => record.stage === "departure" && record.sealed !== null && record.supersededBy === null,
		);
		const arrivalDraft = here.find(
			(record) => record.stage === "arrival" && record.state === "draft" && record.provenance === "recorded-by-holder",
		);
		return { order, consignment, departure: departures.at(-1) ?? null, arrivalDraft: arrivalDraft ?? null };
	}
}
