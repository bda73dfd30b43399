/** A form that names a file which is no longer there: it is told beside its field, and everything else is kept. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { type TestApp, testApp } from "../setup/test-app.ts";
import { customerScene, type Scene } from "./customer-scene.ts";

let shop: TestApp;
let scene: Scene;
beforeAll(async () => {
	shop = await testApp();
	scene = await customerScene(shop);
});
afterAll(() => shop?.close());

it("the shop's record editor keeps what was typed", async () => {
	const draft = (await shop.ask("POST", `/api/v1/orders/${scene.orderId}/records`, { stage: "bench" })).json();
	const headers = { cookie: shop.sessionCookie };
	const url = `/records/${draft.id}`;
	const formToken = /name="formToken" value="([^"]*)"/.exec((await shop.app.inject({ url, headers })).body)?.[1] ?? "";
	const sent = await shop.app.inject({
		method: "POST",
		url,
		headers: { ...headers, "content-type": "application/x-www-form-urlencoded" },
		payload: new URLSearchParams({
			formToken,
			act: "save",
			version: "1",
			"identity.serialNumber": "OW24-7731-C",
			"photo.item-front.uploaded": `upl_${"0".repeat(20)}`,
			"file.upload.uploaded": `upl_${"0".repeat(20)}`,
		}).toString(),
	});
	expect(sent.statusCode, sent.body.slice(0, 300)).toBeLessThan(500);
	expect(sent.body).toContain("OW24-7731-C");
	expect(sent.body).toContain('class="error"');
	const kept = (await shop.ask("GET", `/api/v1/records/${draft.id}`)).json();
	expect(kept.content.identity).toMatchObject({ serialNumber: "OW24-7731-C" });
});
