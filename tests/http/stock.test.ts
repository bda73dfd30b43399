/** The shop's stock over the API: what it holds, what it refuses, and that a search takes it as it stands. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { STOCK_REQUEST } from "../operations/packaging-search/stock-request.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";

let shop: TestApp;
beforeAll(async () => {
	shop = await testApp();
});
afterAll(async () => shop?.close());

const put = (kind: string, id: string, thing: unknown) =>
	shop.ask("PUT", `/api/v1/stock/${kind}/${encodeURIComponent(id)}`, thing);
const BOX = { innerLengthM: 0.4, innerWidthM: 0.3, innerHeightM: 0.2, reused: false };
const euro = (amount: number) => ({ amount, currency: "EUR" });

describe("the stock", () => {
	it("keeps a thing under the shop's own name, replaces it by the same name, and gives it up", async () => {
		expect((await put("boxes", "Größe 3/a", { ...BOX, price: euro(1.5) })).statusCode).toBe(200);
		const replaced = await put("boxes", "Größe 3/a", { ...BOX, price: euro(1.7) });
		expect(replaced.json().boxes).toEqual([{ id: "Größe 3/a", ...BOX, price: euro(1.7) }]);
		expect((await shop.ask("GET", "/api/v1/stock")).json()).toEqual(replaced.json());
		const gone = `/api/v1/stock/boxes/${encodeURIComponent("Größe 3/a")}`;
		expect((await shop.ask("DELETE", gone)).statusCode).toBe(204);
		expect((await shop.ask("DELETE", gone)).statusCode).toBe(404);
	});

	const points = (...peaks: number[]) =>
		peaks.map((peakGn, index) => ({ staticStressKPa: 1 + index, dropHeightM: 0.5, thicknessM: 0.05, peakGn }));
	it.each([
		["boxes", { ...BOX, colour: "brown" }, "/colour", "unknown-member"],
		["boxes", { ...BOX, innerLengthM: 0 }, "/innerLengthM", "too-small"],
		["foams", { foam: { id: "no-such-foam" }, thicknessM: 0.05 }, "/foam/id", "unknown-id"],
		// 5 gₙ from 0.5 m on 50 mm: less than the floor h/t = 10 that holds for anything of that thickness.
		["foams", { foam: { points: points(5, 12) }, thicknessM: 0.05 }, "/foam/points", "points-refused"],
		["bags", { layers: [], price: { amount: 1.005, currency: "EUR" } }, "/price/amount", "refused"],
	])("refuses %s that cannot be: %j", async (kind, thing, path, code) => {
		const answer = await put(kind, "x", thing);
		expect(answer.statusCode, answer.body).toBe(400);
		expect(answer.json().errors).toContainEqual(expect.objectContaining({ path, code }));
	});

	it("holds prices in one currency, and no more of a kind than a search takes", async () => {
		await put("bags", "first", { layers: [], price: euro(1) });
		const other = await put("bags", "second", { layers: [], price: { amount: 1, currency: "CHF" } });
		expect(other.json().errors[0]).toMatchObject({ path: "/price/currency", code: "other-currency" });
		// The only price there is may change its currency.
		expect((await put("bags", "first", { layers: [], price: { amount: 1, currency: "CHF" } })).statusCode).toBe(200);
		for (let index = 2; index <= 10; index += 1) await put("bags", `bag ${index}`, { layers: [] });
		expect((await put("bags", "one more", { layers: [] })).json().errors[0]).toMatchObject({ code: "stock-full" });
		expect((await put("bags", "first", { layers: [] })).statusCode).toBe(200);
		for (const { id } of (await shop.ask("GET", "/api/v1/stock")).json().bags)
			await shop.ask("DELETE", `/api/v1/stock/bags/${encodeURIComponent(id)}`);
	});

	it("goes into a search as it stands", async () => {
		const { stock } = STOCK_REQUEST;
		for (const kind of ["boxes", "foams", "bags"] as const)
			for (const { id, ...thing } of stock[kind]) expect((await put(kind, id, thing)).statusCode).toBe(200);
		const kept = (await shop.ask("GET", "/api/v1/stock")).json();
		const search = (from: unknown) =>
			shop.ask("POST", "/api/v1/calculations/packaging-search", { ...STOCK_REQUEST, stock: from });
		const answer = await search(kept);
		expect(answer.statusCode, answer.body).toBe(200);
		expect(answer.json().result.considered).toBe((await search(stock)).json().result.considered);
	});
});
