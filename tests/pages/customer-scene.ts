/** An order with a sealed departure and an arrival draft with its link, for the tests of the customer's pages. */
import { expect } from "vitest";
import type { TestApp } from "../setup/test-app.ts";

export const order = {
	contractKind: "repair",
	repairer: { kind: "business", country: "AT", name: "Werkbank Lindental" },
	owner: { kind: "consumer", country: "DE", name: "Mara <Quist>" },
	item: { class: "graphics-card", maker: "Ostwind", model: "Orca 24", serialNumber: "OW24-7731-C" },
	terms: {
		reportedFault: "Memory errors.",
		agreedWork: "Mend them.",
		carrierContract: { toRepairer: "owner", toOwner: "repairer" },
	},
};
export interface Scene {
	readonly orderId: string;
	readonly legId: string;
	readonly departureId: string;
	readonly recordId: string;
	readonly link: { readonly url: string; readonly code: string; readonly id: string };
}

export async function customerScene(shop: TestApp): Promise<Scene> {
	const orderId = (await shop.ask("POST", "/api/v1/orders", order)).json().id;
	const leg = await shop.ask("POST", `/api/v1/orders/${orderId}/consignments`, {
		direction: "to-owner",
		facts: { mode: "road", bookedBy: "consignor" },
	});
	const legId = leg.json().id;
	const draft = await shop.ask("POST", `/api/v1/consignments/${legId}/records`, {
		stage: "departure",
		content: {
			observedAt: "2026-03-02T10:00:00+01:00",
			state: "good",
			identity: { serialNumber: "OW24-7731-C" },
			readings: [{ check: "starts-cold", condition: "cold", trials: 10, successes: 10 }],
		},
	});
	const departureId = draft.json().id;
	const sealed = await shop.ask("POST", `/api/v1/records/${departureId}/seal`, undefined, { "if-match": '"v1"' });
	expect(sealed.statusCode, sealed.body).toBe(200);
	const arrival = await shop.ask("POST", `/api/v1/consignments/${legId}/records`, { stage: "arrival" });
	const recordId = arrival.json().id;
	const link = (await shop.ask("POST", "/api/v1/links", { scope: "record", orderId, recordId })).json();
	return { orderId, legId, departureId, recordId, link };
}
