/** The shop's list of orders: attention first, searched, filtered, paged. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { findOrders } from "../../src/operations/orders/find-orders.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";

import { customerScene, order } from "./customer-scene.ts";

let shop: TestApp;
/** Of the 60 plain orders, the oldest first. */
const ids: string[] = [];
let waiting: string;
beforeAll(async () => {
	shop = await testApp();
	waiting = (await customerScene(shop)).orderId;
	for (let number = 0; number < 60; number += 1) {
		const item = { class: "module", maker: "Prüfwerk", model: `Modul ${number}`, serialNumber: `PW-${1000 + number}` };
		const owner = { ...order.owner, name: number === 7 ? "Jördis Beispiel" : "Otto Beispiel" };
		ids.push((await shop.ask("POST", "/api/v1/orders", { ...order, item, owner })).json().id);
	}
});
afterAll(async () => shop?.close());

async function list(query = "") {
	const { body, statusCode } = await shop.app.inject({ url: `/${query}`, headers: { cookie: shop.sessionCookie } });
	expect(statusCode).toBe(200);
	return {
		body,
		shown: [...body.matchAll(/<th scope="row"><a href="\/orders\/(ord_[0-9a-z]+)"/g)].map(([, id]) => id),
		next: /href="([^"]*after=[^"]*)"[^>]*rel="next"/.exec(body)?.[1]?.replaceAll("&amp;", "&").slice(1),
	};
}

describe("the list of orders", () => {
	it("counts all, and shows what needs attention first, however old; then the newest, each once", async () => {
		const first = await list();
		expect(first.body).toContain("Orders: 61. Need attention: 1.");
		const second = await list(first.next);
		expect(second.next).toBeUndefined();
		expect([...first.shown, ...second.shown]).toEqual([waiting, ...ids.toReversed()]);
	});
	it.each([
		["?q=pw-1042", [42]],
		["?q=PRUFWERK+1007", [7]],
		["?q=j%C3%B6rdis", [7]],
		["?q=modul+1042", [42]],
		["?q=nothing-like-it", []],
		["?q=pw-1042&class=drive", []],
		["?q=pw-1042&class=module&standing=other", [42]],
		["?q=pw-1042&standing=attention", []],
	])("%s", async (query, expected) => {
		expect((await list(query)).shown).toEqual(expected.map((number) => ids[number]));
	});
	it("finds an order by its id, filters by standing, and keeps what was asked on the next page", async () => {
		expect((await list(`?q=${ids[3]}`)).shown).toEqual([ids[3]]);
		expect((await list("?standing=attention")).shown).toEqual([waiting]);
		const first = await list("?class=module&q=pr%C3%BCfwerk");
		expect(first.body).toContain("Found: 60 of 61.");
		expect((await list(first.next)).shown).toEqual(ids.slice(0, 10).toReversed());
	});
	it("has no next page where the last one is full, and counts what waits whatever is asked for", async () => {
		const caller = { kind: "account", accountId: shop.accountId, via: "session" } as const;
		const query = { words: ["pw-1042"], itemClass: null, standing: null, after: null };
		expect(await findOrders(shop.deps, caller, query, 1)).toMatchObject({ found: 1, next: null, needAttention: 1 });
		const all = await findOrders(shop.deps, caller, { ...query, words: [] }, 60);
		expect([all.orders.length, all.next]).toEqual([60, ids[1]]);
	});
});
