/** Going on at another device: the code works once and for a quarter of an hour, and opens that link's record alone. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { tokenHash } from "../../src/access/secrets.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";
import { customerScene, type Scene } from "./customer-scene.ts";

let shop: TestApp;
let scene: Scene;
let phone: string;
beforeAll(async () => {
	shop = await testApp();
	scene = await customerScene(shop);
	const entered = await shop.app.inject({
		method: "POST",
		url: "/api/v1/links/enter",
		payload: { token: scene.link.url.split("/").at(-1), code: scene.link.code },
	});
	phone = `link=${entered.cookies[0]?.value}`;
});
afterAll(async () => shop?.close());

async function post(url: string, form: Record<string, string>, cookie?: string, from = url) {
	const headers = cookie === undefined ? {} : { cookie };
	const page = await shop.app.inject({ method: "GET", url: from, headers });
	const shown =
		page.statusCode === 303
			? await shop.app.inject({ method: "GET", url: String(page.headers.location), headers })
			: page;
	const formToken = /name="formToken" value="([^"]*)"/.exec(shown.body)?.[1] ?? "";
	return shop.app.inject({
		method: "POST",
		url,
		headers: { ...headers, "content-type": "application/x-www-form-urlencoded" },
		payload: new URLSearchParams({ formToken, ...form }).toString(),
	});
}
async function offer(): Promise<string> {
	const page = await post(`/guided/${scene.recordId}/continue`, {}, phone, `/guided/${scene.recordId}`);
	expect(page.statusCode, page.body.slice(0, 500)).toBe(200);
	return (/<code class="code">([^<]+)</.exec(page.body)?.[1] ?? "").trim();
}

describe("going on at another device", () => {
	it("opens the same record there, once, however the code is typed", async () => {
		const code = await offer();
		expect(code.replaceAll(" ", "")).toMatch(/^[2-9A-HJKMNP-TV-Z]{8}$/);
		const there = await post("/continue", { code: ` ${code.toLowerCase().replaceAll(" ", "-")} ` });
		expect(there.statusCode, there.body.slice(0, 300)).toBe(303);
		expect(there.headers.location).toBe(`/guided/${scene.recordId}`);
		const computer = `link=${there.cookies[0]?.value}`;
		for (const cookie of [computer, phone]) {
			const draft = await shop.app.inject({
				method: "GET",
				url: `/api/v1/records/${scene.recordId}`,
				headers: { cookie },
			});
			expect(draft.statusCode).toBe(200);
		}
		const again = await post("/continue", { code });
		expect(again.statusCode).toBe(401);
		expect(again.body).toContain("opens nothing");
	});

	it("keeps no code, and an older one is gone when a new one is made", async () => {
		const first = await offer();
		const second = await offer();
		const rows = await shop.db.database.query<{ code_sha256: string }>("SELECT * FROM continuation");
		expect(rows.map((row) => row.code_sha256)).toEqual([tokenHash(second.replaceAll(" ", ""))]);
		expect((await post("/continue", { code: first })).statusCode).toBe(401);
		expect((await post("/continue", { code: second })).statusCode).toBe(303);
	});

	it("opens nothing when it is over, when the link is withdrawn, and for what is no code", async () => {
		const over = await offer();
		await shop.db.database.query("UPDATE continuation SET expires_at = now() - interval '1 second'");
		expect((await post("/continue", { code: over })).statusCode).toBe(401);
		for (const code of ["", "2222", "I".repeat(8), "\u0000".repeat(8), "2".repeat(4000)])
			expect((await post("/continue", { code })).statusCode).toBe(401);
		const withdrawn = await offer();
		await shop.ask("DELETE", `/api/v1/links/${scene.link.id}`);
		expect((await post("/continue", { code: withdrawn })).statusCode).toBe(401);
		const none = await post(`/guided/${scene.recordId}/continue`, {}, phone, "/continue");
		expect([401, 403, 404]).toContain(none.statusCode);
	});
});
