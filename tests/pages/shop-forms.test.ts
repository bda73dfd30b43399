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
});
