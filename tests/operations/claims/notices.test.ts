/** Notices that were sent: kept as they went out, with what shows it; who may; and where they are told. Own regression cases. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type TestApp, testApp } from "../../setup/test-app.ts";
import { type Sides, sidesOf, WHO, type Who } from "../settling/sides.ts";

let shop: TestApp;
let sides: Sides;
beforeAll(async () => {
	shop = await testApp();
	sides = await sidesOf(shop);
	const facts = { mode: "road", bookedBy: "consignor", deliveredAt: "2026-03-05T12:00:00+01:00" };
	const put = await shop.ask("PUT", `/api/v1/consignments/${sides.scene.legId}`, facts, { "if-match": '"v1"' });
	expect(put.statusCode, put.body).toBe(200);
});
afterAll(async () => shop?.close());

const NOTICE = {
	language: "de",
	text: "Schadensanzeige: Die Sendung kam beschädigt an.",
	sentOn: "2026-03-09",
	sentBy: "registered-letter",
	proofOfSending: "RN 0042",
} as const;
const ask = (who: Who, method: "GET" | "POST", path: string, body?: unknown) => sides.asAt(who, method, path, body);
const path = () => `/api/v1/consignments/${sides.scene.legId}/notices`;
const keep = async (body: object = NOTICE) => {
	const kept = await ask("repairer", "POST", path(), body);
	expect(kept.statusCode, kept.body).toBe(201);
	return kept.json();
};

describe("who may keep one and read it", () => {
	const ALLOWED: Readonly<Record<Who, number>> = {
		repairer: 201,
		owner: 201,
		reader: 403,
		"record link": 403,
		"link of another order": 404,
		"withdrawn link": 401,
		nobody: 401,
	};
	it.each(WHO)("%s", async (who) => {
		expect((await ask(who, "POST", path(), NOTICE)).statusCode).toBe(ALLOWED[who]);
		const read = ALLOWED[who] === 201 ? 200 : ALLOWED[who];
		expect((await ask(who, "GET", path())).statusCode).toBe(read);
		const received = await ask(who, "POST", `/api/v1/notices/${(await keep()).id}/receipt`, {
			receivedOn: "2026-03-10",
		});
		expect(received.statusCode).toBe(read);
	});
});

describe("a notice", () => {
	it("is kept to the letter, with what shows its sending, and its receipt once", async () => {
		const { id, ...kept } = await keep();
		expect(kept).toMatchObject({ ...NOTICE, receivedOn: null, proofOfReceipt: null, orderId: sides.scene.orderId });
		const receipt = { receivedOn: "2026-03-11", proofOfReceipt: "Signed on the slip" };
		const early = await ask("owner", "POST", `/api/v1/notices/${id}/receipt`, { receivedOn: "2026-03-08" });
		expect(early.json().errors).toMatchObject([{ path: "/receivedOn", code: "before-sending" }]);
		const noted = await ask("owner", "POST", `/api/v1/notices/${id}/receipt`, receipt);
		expect(noted.json()).toMatchObject({ id, ...NOTICE, ...receipt });
		expect((await ask("owner", "POST", `/api/v1/notices/${id}/receipt`, receipt)).statusCode).toBe(409);
	});
	it("that was sent first gives the day of sending to the dates of the claim", async () => {
		await keep({ ...NOTICE, sentOn: "2026-03-07" });
		const claim = (await shop.ask("GET", `/api/v1/consignments/${sides.scene.legId}/claim`)).json();
		expect(claim.events.noticeSent).toBe("2026-03-07");
		const dated = claim.periods.filter((period: { notice: unknown }) => period.notice !== null);
		expect(dated.length).toBeGreaterThan(0);
	});
	it("stands on the page with its receipt to note, and the form keeps what was typed", async () => {
		const url = `/orders/${sides.scene.orderId}/consignments/${sides.scene.legId}/notice`;
		const page = await shop.app.inject({ url, headers: { cookie: shop.sessionCookie } });
		expect(page.body).toContain("RN 0042");
		expect(page.body).toContain("by registered letter");
		const ids = [...page.body.matchAll(/ id="([^"]+)"/g)].map((match) => match[1]);
		expect(new Set(ids).size).toBe(ids.length);
		const field = (name: string) => new RegExp(`name="${name}" value="([^"]*)"`).exec(page.body)?.[1] ?? "";
		const post = (fields: Record<string, string>) =>
			shop.app.inject({
				method: "POST",
				url,
				headers: { cookie: shop.sessionCookie, "content-type": "application/x-www-form-urlencoded" },
				payload: new URLSearchParams({
					formToken: field("formToken"),
					sealKey: field("sealKey"),
					...fields,
				}).toString(),
			});
		const refused = await post({ ...NOTICE, sentOn: "" });
		expect(refused.statusCode).toBe(400);
		expect(refused.body).toContain(NOTICE.text);
		expect((await post(NOTICE)).statusCode).toBe(303);
	});
	it("goes into the draft with the days of an inspection", async () => {
		const claim = `/api/v1/consignments/${sides.scene.legId}/claim`;
		const days = ["2026-03-12", "2026-03-13"];
		const put = await shop.ask("PUT", claim, { inspectionDates: days }, { "if-match": '"v0"' });
		expect(put.statusCode, put.body).toBe(200);
		const url = `/orders/${sides.scene.orderId}/consignments/${sides.scene.legId}/notice`;
		const page = await shop.app.inject({ url, headers: { cookie: shop.sessionCookie } });
		expect(page.body).toContain("by a neutral person if you wish, on: 2026-03-12, 2026-03-13.");
	});
});
