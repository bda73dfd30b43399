/** Notices that were sent: kept as they went out, with what shows it; who may; and where they are told. Own regression cases. */
import { readFileSync } from "node:fs";
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

const PHOTO = readFileSync(new URL("../../../demo-data/pictures/parcel-closed.png", import.meta.url));
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
		const sameDay = await ask("owner", "POST", `/api/v1/notices/${(await keep()).id}/receipt`, {
			receivedOn: NOTICE.sentOn,
		});
		expect(sameDay.json()).toMatchObject({ receivedOn: NOTICE.sentOn });
		const noted = await ask("owner", "POST", `/api/v1/notices/${id}/receipt`, receipt);
		expect(noted.json()).toMatchObject({ id, ...NOTICE, ...receipt });
		expect((await ask("owner", "POST", `/api/v1/notices/${id}/receipt`, receipt)).statusCode).toBe(409);
	});
	it("cannot have been sent, or received, on a day that has not come anywhere", async () => {
		const day = (hours: number) => new Date(Date.now() + hours * 3_600_000).toISOString().slice(0, 10);
		const [sentOn, receivedOn] = [day(72), day(72)];
		const refused = await ask("repairer", "POST", path(), { ...NOTICE, sentOn });
		expect(refused.json().errors).toMatchObject([{ path: "/sentOn", code: "day-to-come" }]);
		const { id } = await keep({ ...NOTICE, sentOn: day(0) });
		const receipt = await ask("repairer", "POST", `/api/v1/notices/${id}/receipt`, { receivedOn });
		expect(receipt.json().errors).toMatchObject([{ path: "/receivedOn", code: "day-to-come" }]);
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
	it("names files that show its sending and receipt: of a sealed record of the order, and of no other", async () => {
		const { orderId } = sides.scene;
		const draft = await shop.ask("POST", `/api/v1/orders/${orderId}/records`, { stage: "bench" });
		const { id } = draft.json();
		const brought = await shop.app.inject({
			method: "POST",
			url: `/api/v1/records/${id}/exhibits?fileName=slip.png`,
			headers: { authorization: `Bearer ${shop.token}`, "content-type": "image/png" },
			payload: Buffer.concat([PHOTO, Buffer.from("slip")]),
		});
		const { sha256 } = brought.json();
		for (const sendingFile of [sha256, "0".repeat(64)]) {
			const refused = await ask("repairer", "POST", path(), { ...NOTICE, sendingFile });
			expect(refused.json().errors).toMatchObject([{ path: "/sendingFile", code: "no-sealed-file" }]);
		}
		const unsealed = { receivedOn: "2026-03-11", receiptFile: sha256 };
		const notReceipt = await ask("owner", "POST", `/api/v1/notices/${(await keep()).id}/receipt`, unsealed);
		expect(notReceipt.json().errors).toMatchObject([{ path: "/receiptFile", code: "no-sealed-file" }]);
		const content = {
			observedAt: "2026-03-10T10:00:00+01:00",
			state: "good",
			identity: { serialNumber: "OW24-7731-C" },
			exhibits: [{ sha256, view: "other" }],
		};
		const saved = await shop.ask("PUT", `/api/v1/records/${id}`, content, { "if-match": '"v1"' });
		expect(saved.statusCode, saved.body).toBe(200);
		const edition = `/api/v1/orders/${orderId}/carrier-photos`;
		await shop.ask("POST", `/api/v1/records/${id}/seal`, undefined, { "if-match": String(saved.headers.etag) });
		const before = (await shop.ask("GET", edition)).json();
		expect(JSON.stringify(before)).not.toContain(sha256);
		const kept = await keep({ ...NOTICE, sendingFile: sha256 });
		expect(kept).toMatchObject({ sendingFile: sha256, receiptFile: null });
		const receipt = { receivedOn: "2026-03-11", receiptFile: sha256 };
		expect((await ask("owner", "POST", `/api/v1/notices/${kept.id}/receipt`, receipt)).json()).toMatchObject(receipt);
		// A record of the bench is of no leg; the carrier gets the file since the notice of its leg names it: a copy.
		const { photos } = (await shop.ask("GET", edition)).json();
		const photo = photos.find((one: { sha256: string }) => one.sha256 === sha256) ?? expect.fail("the file");
		expect(photo.file.sha256).not.toBe(sha256);
		const lines = (await shop.ask("GET", `/api/v1/orders/${orderId}/carrier-text`)).body;
		const text = lines.replace(/\s+/g, " ");
		expect(text).toContain("File that shows the sending");
		expect(text).toContain(`[${photo.number}] SHA-256 ${sha256}`);
		const url = `/orders/${orderId}/consignments/${sides.scene.legId}/notice`;
		const page = await shop.app.inject({ url, headers: { cookie: shop.sessionCookie } });
		expect(page.body).toContain(`href="/api/v1/exhibits/${sha256}"`);
		expect(page.body).toContain(`>${photo.number}: slip.png</option>`);
	});
	it("goes into the draft with the days of an inspection", async () => {
		const claim = `/api/v1/consignments/${sides.scene.legId}/claim`;
		const days = ["2026-03-12", "2026-03-13"];
		const put = await shop.ask("PUT", claim, { inspectionDates: days }, { "if-match": '"v0"' });
		expect(put.statusCode, put.body).toBe(200);
		const url = `/orders/${sides.scene.orderId}/consignments/${sides.scene.legId}/notice`;
		const page = await shop.app.inject({ url, headers: { cookie: shop.sessionCookie } });
		expect(page.body).toContain("by a neutral person if you wish, on: 12 Mar 2026, 13 Mar 2026.");
	});
});
