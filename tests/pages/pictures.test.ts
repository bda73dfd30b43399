/** The page of a photo, by its forms alone, as without script: consent, blacking out by numbers, the code's page. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { type PictureScene, pictureScene } from "../setup/picture-scene.ts";
import { leaksOf, located, PLANTED_MODEL } from "../setup/pictures.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";

let shop: TestApp;
let scene: PictureScene;
let path: string;
let sha256: string;
beforeAll(async () => {
	shop = await testApp();
	scene = await pictureScene(shop);
	sha256 = await scene.bring("owner", "front.jpg", await located("jpeg"));
	path = `/records/${scene.recordId}/exhibits/${sha256}`;
	await scene.sealBoth();
});
afterAll(async () => shop?.close());

const send = async (where: string, fields: Record<string, string>) => {
	const page = (await scene.get("owner", path)).body;
	const formToken = /name="formToken" value="([^"]+)"/.exec(page)?.[1] ?? "";
	return shop.app.inject({
		method: "POST",
		url: `${path}/${where}`,
		headers: { ...scene.as.owner, "content-type": "application/x-www-form-urlencoded" },
		payload: new URLSearchParams({ formToken, ...fields }).toString(),
	});
};
/** Pictures that a page shows. */
const shown = (page: string) => [...page.matchAll(/<img[^>]* src="([^"]+)"/g)].map((match) => match[1] ?? "");

it("tells the taker what the file claims, that it holds a place, and what others get; shows copies alone", async () => {
	const page = (await scene.get("owner", path)).body;
	expect(page).toContain(PLANTED_MODEL);
	expect(page).toContain("2 May 2026, 10:11 (UTC+02:00)");
	expect(page).toContain("and holds the place where it was taken");
	expect(page).toContain("A copy without metadata");
	expect(shown(page).length).toBeGreaterThan(0);
	for (const address of shown(page)) expect(leaksOf((await scene.get("owner", address)).rawPayload)).toEqual([]);
});

it("gives others the picture without the taker's forms", async () => {
	for (const who of ["shop", "settle", "reader"] as const) {
		const page = (await scene.get(who, path)).body;
		expect(page, who).toContain("Someone else brought it");
		expect(page).not.toContain("/hand-out");
		expect(page).not.toContain("black-out-form");
		for (const address of shown(page)) expect((await scene.get(who, address)).statusCode, address).toBe(200);
	}
});

it("blacks out what four numbers say, and hands the first such copy out at once, with its picture on the page", async () => {
	const wrong = await send("black-out", { x0: "10", y0: "10", w0: "95", h0: "5" });
	expect(wrong.statusCode).toBe(400);
	expect(wrong.body).toContain("Rectangle 1: give four numbers");
	expect(wrong.body).toContain('value="95"');
	expect((await send("black-out", {})).body).toContain("Draw at least one rectangle");
	expect((await scene.get("owner", path)).body).toContain("Make the copy and hand it out");
	const made = await send("black-out", { x0: "0", y0: "0", w0: "50", h0: "99,5" });
	expect(made.statusCode, made.body.slice(0, 300)).toBe(303);
	const copySha256 = /\?made=([0-9a-f]{64})$/.exec(String(made.headers.location))?.[1] ?? "";
	const page = (await scene.get("owner", String(made.headers.location))).body;
	expect(page).toContain("Others now get this copy");
	expect(page).toMatch(new RegExp(`<img class="picture" src="[^"]*/copies/${copySha256}"`));
	expect(page).not.toContain("Without metadata</a> (handed out)");
	expect((await scene.get("shop", path)).body).toContain(`/copies/${copySha256}"`);
	expect((await scene.get("owner", path)).body).toContain(`the blacked-out copy ${copySha256.slice(0, 12)}`);
});

it("leaves others with the blacked-out copy that they have until another is handed out: the new one may show more", async () => {
	const before = (await scene.get("shop", path)).body;
	const made = await send("black-out", { x0: "50", y0: "0", w0: "10", h0: "10" });
	const copySha256 = /\?made=([0-9a-f]{64})$/.exec(String(made.headers.location))?.[1] ?? "";
	const page = (await scene.get("owner", String(made.headers.location))).body;
	expect(page).toContain("Others do not get this copy yet");
	expect(page).toMatch(new RegExp(`<img class="picture" src="[^"]*/copies/${copySha256}"`));
	expect(shown((await scene.get("shop", path)).body)).toEqual(shown(before));
	expect(page).toContain(`name="copySha256" value="${copySha256}"`);
	expect((await send("hand-out", { choice: "blacked-out", copySha256 })).statusCode).toBe(303);
	expect((await scene.get("shop", path)).body).toContain(`/copies/${copySha256}"`);
	expect((await scene.get("shop", `${path}?made=${copySha256}`)).body).not.toContain("The copy that you made");
});

it("hands out the original by a button, and takes that back for what comes", async () => {
	expect((await send("hand-out", { choice: "original" })).statusCode).toBe(303);
	expect((await scene.get("shop", path)).body).toContain(`href="/api/v1/exhibits/${sha256}"`);
	expect((await send("hand-out", { choice: "without-metadata" })).statusCode).toBe(303);
	expect((await scene.get("shop", path)).body).not.toContain(`href="/api/v1/exhibits/${sha256}"`);
});

it("shows a code where a draft's photos are added, and looks it up from what was typed", async () => {
	const draft = (await shop.ask("POST", `/api/v1/orders/${scene.orderId}/records`, { stage: "bench" })).json();
	const page = await shop.app.inject({ url: `/records/${draft.id}`, headers: { cookie: shop.sessionCookie } });
	const code = /class="photo-code">[^<]*<strong>([0-9A-Z]{4} [0-9A-Z]{4})</.exec(page.body)?.[1] ?? "";
	expect(code).not.toBe("");
	const found = await scene.get("reader", `/orders/${scene.orderId}/photo-code?code=${encodeURIComponent(code)}`);
	expect(found.body).toContain("A photo with this code is not older than");
	expect(found.body).toContain(draft.id);
	expect((await scene.get("reader", `/orders/${scene.orderId}/photo-code?code=x`)).statusCode).toBe(400);
});
