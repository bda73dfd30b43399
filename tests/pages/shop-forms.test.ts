/** What the shop's forms say when something is missing. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type TestApp, testApp } from "../setup/test-app.ts";
import { customerScene, type Scene } from "./customer-scene.ts";

let shop: TestApp;
let scene: Scene;
beforeAll(async () => {
	shop = await testApp();
	scene = await customerScene(shop);
});
afterAll(async () => shop?.close());

const get = (url: string) => shop.app.inject({ method: "GET", url, headers: { cookie: shop.sessionCookie } });
async function post(url: string, form: Record<string, string>) {
	const page = (await get(url)).body;
	const hidden = (name: string) => new RegExp(`name="${name}" value="([^"]*)"`).exec(page)?.[1] ?? "";
	return shop.app.inject({
		method: "POST",
		url,
		headers: { cookie: shop.sessionCookie, "content-type": "application/x-www-form-urlencoded" },
		payload: new URLSearchParams({ formToken: hidden("formToken"), version: hidden("version"), ...form }).toString(),
	});
}
/** The links of the list of errors: where each leads and what it says. */
function summaryOf(html: string): Record<string, string> {
	const list = /<div class="error-summary".*?<\/div>/s.exec(html)?.[0] ?? "";
	return Object.fromEntries([...list.matchAll(/<a href="#([^"]+)">([^<]*)<\/a>/g)].map(([, to, words]) => [to, words]));
}

describe("the list of errors", () => {
	it("names each field as its label does, and the group where several share a label", async () => {
		const page = await post("/orders/new", { "repairer.kind": "business", "owner.kind": "consumer" });
		expect(page.statusCode).toBe(400);
		expect(summaryOf(page.body)).toMatchObject({
			"item.maker": "Maker: This is missing. Fill it in.",
			"owner.name": "Owner, Name: This is missing. Fill it in.",
			"repairer.name": "Repairer, Name: This is missing. Fill it in.",
		});
	});
});

describe("a new order", () => {
	const typed = {
		...{ contractKind: "repair", "item.class": "drive", "item.maker": "Testwerk", "item.model": "T 1" },
		...{ "owner.kind": "consumer", "owner.name": "Bruno Beispiel", "owner.country": "de" },
		...{ "repairer.kind": "business", "repairer.name": "Neue Werkstatt", "repairer.country": "at" },
		...{ "repairer.address": "Gasse 2", "terms.reportedFault": "a", "terms.agreedWork": "b" },
		...{ "terms.carrierContract.toRepairer": "owner", "terms.carrierContract.toOwner": "repairer" },
	};
	it("asks what a warranty covers, and for how long, where one of the two is given", async () => {
		const months = await post("/orders/new", { ...typed, "terms.warranty.months": "12" });
		expect(months.statusCode).toBe(400);
		expect(summaryOf(months.body)).toEqual({
			"terms.warranty.covers":
				"It covers: Say what the warranty covers, for example the work done and the parts fitted.",
		});
		const covers = await post("/orders/new", { ...typed, "terms.warranty.covers": "work" });
		expect(summaryOf(covers.body)).toEqual({ "terms.warranty.months": "Warranty, months: Say for how many months." });
	});
	it("says beside the field of an amount what to enter", async () => {
		const page = await post("/orders/new", { ...typed, "item.value": "1.200,00" });
		expect(Object.keys(summaryOf(page.body))).toEqual(["item.value"]);
		expect(/id="item.value-error">([^<]*)/.exec(page.body)?.[1]).toContain(
			"Enter an amount, for example 1200 or 1200,50.",
		);
	});
	it("has the shop filled in as it stood in the newest one, and nothing of the owner", async () => {
		expect((await post("/orders/new", typed)).statusCode).toBe(303);
		const { body } = await get("/orders/new");
		const shown = (name: string) => new RegExp(`<input id="${name}"[^>]* value="([^"]*)"`).exec(body)?.[1];
		expect([shown("repairer.name"), shown("repairer.country"), shown("repairer.address")]).toEqual([
			"Neue Werkstatt",
			"AT",
			"Gasse 2",
		]);
		expect(shown("owner.name") ?? "").toBe("");
	});
});

describe("a settlement's amounts", () => {
	const proposal = { act: "proposes", outcome: "refund", itemNext: "stays", sealKey: "one" };
	it("are named by their own row, and a row half filled in is never dropped", async () => {
		const path = `/orders/${scene.orderId}/settlement`;
		const second = { "amounts.1.amount": "abc", "amounts.1.currency": "EUR", "amounts.1.from": "owner" };
		const page = await post(path, { ...proposal, ...second, "amounts.1.to": "repairer" });
		expect(page.statusCode).toBe(400);
		expect(Object.keys(summaryOf(page.body))).toEqual(["amounts.1.amount"]);
		const half = await post(path, { ...proposal, "amounts.0.from": "owner", "amounts.0.to": "repairer" });
		expect(Object.keys(summaryOf(half.body))).toEqual(["amounts.0.amount", "amounts.0.currency"]);
	});
});

describe("the facts of a leg", () => {
	it("take no time without its difference from universal time, and keep what was typed", async () => {
		const path = `/consignments/${scene.legId}`;
		const typed = { carrier: "Eilbote Süd", mode: "road", bookedBy: "consignor", deliveredAt: "2026-10-08T11:20" };
		const page = await post(path, { ...typed, offset: "" });
		expect(page.statusCode).toBe(400);
		expect(Object.keys(summaryOf(page.body))).toEqual(["offset"]);
		expect(page.body).toContain('value="2026-10-08T11:20"');
		expect((await post(path, { ...typed, offset: "+02:00" })).statusCode).toBe(303);
		expect((await get(path)).body).toContain('value="2026-10-08T11:20"');
	});

	it("says all that is wrong at once: what no number is, what has not come, what is out of order", async () => {
		const times = { dispatchedAt: "2026-03-09T10:00", deliveredAt: "2026-03-08T09:20", inHandAt: "2099-03-08T09:20" };
		const typed = { mode: "road", bookedBy: "consignor", offset: "+02:00", ...times };
		const page = await post(`/consignments/${scene.legId}`, { ...typed, parcelMassKg: "heavy" });
		expect(page.statusCode).toBe(400);
		expect(summaryOf(page.body)).toMatchObject({
			parcelMassKg: expect.stringContaining("Mass of the parcel"),
			deliveredAt: expect.stringContaining("delivered before it was dispatched"),
			inHandAt: expect.stringContaining("has not come yet"),
		});
	});
});

describe("an order's pages", () => {
	it("name each link by its record and leg, the leg of the carrier's photos, and the account that sealed", async () => {
		expect((await get(`/orders/${scene.orderId}`)).body).toContain('<th scope="row">State on arrival, leg 1</th>');
		expect((await get(`/orders/${scene.orderId}/carrier-photos`)).body).toContain("Leg 1, Werkbank Lindental to Mara");
		expect((await get(`/records/${scene.departureId}/receipt`)).body).toMatch(
			/by the shop(&#39;|')s account \w+ \(acc_/,
		);
	});

	it("lead back from the rules to the leg's dates they were opened from, and to no other place", async () => {
		const from = (referer: string) =>
			shop.app.inject({ method: "GET", url: "/claim-rules", headers: { cookie: shop.sessionCookie, referer } });
		const claim = `/orders/${scene.orderId}/consignments/${scene.legId}/claim`;
		expect((await from(`http://localhost${claim}`)).body).toContain(`<a href="${claim}">Dates of a claim</a>`);
		expect((await from("http://elsewhere.example/page")).body).not.toContain("elsewhere");
	});
});

describe("a record", () => {
	it("says what stands between thousands where a number is none, and puts no colon after a question", async () => {
		const form = { act: "save", "setUp.ambient": "1.904,5", "setUp.ambient.unit": "degC", observedAt: "x" };
		const page = await post(`/records/${scene.recordId}`, form);
		const said = summaryOf(page.body);
		expect(said["setUp.ambient"]).toContain("Nothing stands between thousands");
		expect(said.observedAt).toMatch(/\? \S/);
		expect(said.observedAt).not.toContain("?:");
	});
});
