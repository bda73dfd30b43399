/** An order whose both parties have an address, with a sealed departure and an arrival draft, for the tests of mails. All invented. */
import { expect } from "vitest";
import type { MailList, MailView } from "../../../src/contract/mail.ts";
import type { TestApp } from "../../setup/test-app.ts";

export const OWNER_MAIL = "mara@quist.example";
export const SHOP_MAIL = "bench@lindental.example";

export interface MailScene {
	readonly orderId: string;
	readonly ownerId: string;
	readonly legId: string;
	readonly departureId: string;
	readonly recordId: string;
	/** A link to the arrival record, made anew at each call. */
	makeLink(): Promise<{ readonly id: string; readonly url: string; readonly code: string }>;
	queue(input: object): Promise<MailView>;
	/** What became of the order's mails. */
	mails(): Promise<MailList>;
	/** Enters a link; the status and the session's cookie. */
	enter(url: string, code: string): Promise<{ readonly status: number; readonly cookie: string }>;
	seal(recordId: string, cookie?: string): Promise<void>;
}

export async function mailScene(
	shop: TestApp,
	over: { readonly owner?: object; readonly repairer?: object } = {},
): Promise<MailScene> {
	const made = async (path: string, body: object) => {
		const answer = await shop.ask("POST", `/api/v1${path}`, body);
		expect(answer.statusCode, answer.body).toBe(201);
		return answer.json();
	};
	const order = await made("/orders", {
		contractKind: "repair",
		repairer: { kind: "business", country: "AT", name: "Werkbank Lindental", email: SHOP_MAIL, ...over.repairer },
		owner: { kind: "consumer", country: "DE", name: "Mara Quist", email: OWNER_MAIL, ...over.owner },
		item: { class: "graphics-card", maker: "Ostwind", model: "Orca 24", serialNumber: "OW24-7731-C" },
		terms: {
			reportedFault: "Memory errors.",
			agreedWork: "Mend them.",
			carrierContract: { toRepairer: "owner", toOwner: "repairer" },
		},
	});
	const leg = await made(`/orders/${order.id}/consignments`, {
		direction: "to-owner",
		facts: { mode: "road", bookedBy: "consignor" },
	});
	const content = { observedAt: "2026-03-02T10:00:00+01:00", state: "good", identity: { serialNumber: "OW24-7731-C" } };
	const departure = await made(`/consignments/${leg.id}/records`, { stage: "departure", content });
	const arrival = await made(`/consignments/${leg.id}/records`, { stage: "arrival", content });
	const scene: MailScene = {
		orderId: order.id,
		ownerId: order.owner.id,
		legId: leg.id,
		departureId: departure.id,
		recordId: arrival.id,
		makeLink: () => made("/links", { scope: "record", orderId: order.id, recordId: arrival.id }),
		queue: (input) => made(`/orders/${order.id}/mails`, input),
		mails: async () => (await shop.ask("GET", `/api/v1/orders/${order.id}/mails`)).json(),
		async enter(url, code) {
			const payload = { token: url.split("/").at(-1), code };
			const entered = await shop.app.inject({ method: "POST", url: "/api/v1/links/enter", payload });
			return { status: entered.statusCode, cookie: `link=${entered.cookies[0]?.value}` };
		},
		async seal(recordId, cookie) {
			const caller = cookie === undefined ? { authorization: `Bearer ${shop.token}` } : { cookie };
			const url = `/api/v1/records/${recordId}/seal`;
			const sealed = await shop.app.inject({ method: "POST", url, headers: { ...caller, "if-match": '"v1"' } });
			expect(sealed.statusCode, sealed.body).toBe(200);
		},
	};
	await scene.seal(departure.id);
	return scene;
}

/** The address of a link in a mail's text. */
export function urlIn(text: string): string {
	return /^https?:\/\/\S+\/l\/[A-Za-z0-9_-]{43}$/m.exec(text)?.[0] ?? "";
}
