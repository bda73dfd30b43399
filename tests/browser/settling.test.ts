/** Both sides settle an order in a real browser: the owner by link and code on a phone, the shop on a desk. Axe-core on every page. */
import type { AddressInfo } from "node:net";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { verifyReceipt } from "../../src/records/verify/verify-receipt.ts";
import { customerScene } from "../pages/customer-scene.ts";
import { entriesIn } from "../setup/receipt-entries.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";
import { BROWSER_MISSING, expectSound, openBrowser } from "./chromium.ts";

describe.skipIf(BROWSER_MISSING)("settling", () => {
	let shop: TestApp;
	let browser: Browser;
	let base: string;
	beforeAll(async () => {
		shop = await testApp();
		await shop.app.listen({ host: "127.0.0.1", port: 0 });
		base = `http://127.0.0.1:${(shop.app.server.address() as AddressInfo).port}`;
		browser = await openBrowser();
	});
	afterAll(async () => {
		await browser?.close();
		await shop?.close();
	});

	it("goes from a statement to a settlement that both sides sealed", async () => {
		const { orderId, legId } = await customerScene(shop);
		const { version } = (await shop.ask("GET", `/api/v1/consignments/${legId}`)).json();
		const facts = { mode: "road", bookedBy: "consignor", parcelMassKg: 2.4, deliveredAt: "2026-03-05T12:00:00+01:00" };
		await shop.ask("PUT", `/api/v1/consignments/${legId}`, facts, { "if-match": `"v${version}"` });
		const link = (await shop.ask("POST", "/api/v1/links", { scope: "settle", orderId })).json();
		const desk = await browser.newContext({ viewport: { width: 1100, height: 900 } });
		const [cookieName = "", value = ""] = shop.sessionCookie.split("=");
		await desk.addCookies([{ name: cookieName, value, url: base }]);
		const bench = await desk.newPage();
		const phone = await (await browser.newContext({ viewport: { width: 320, height: 700 } })).newPage();

		await phone.goto(`${base}/l/${link.url.split("/").at(-1)}`);
		await phone.fill("input[name=code]", link.code);
		await phone.click("button[type=submit]");
		await phone.waitForURL(`**/orders/${orderId}/positions`);
		await expectSound(phone);
		await phone.fill("textarea[name=text]", "It stayed dark on my desk.");
		await phone.click("text=Seal this statement");
		await phone.waitForSelector("#statement-1");
		await expectSound(phone);

		await bench.goto(`${base}/orders/${orderId}/positions`);
		await bench.check("input[value=offers-test]");
		await bench.fill("textarea[name=text]", "I offer ten counted starts on my bench.");
		await bench.selectOption("select[name='answers.positionId']", { label: "statement 1" });
		await bench.selectOption("select[name='answers.stance']", "takes-no-stand");
		await bench.selectOption("select[name='test.id']", "counted-starts");
		await bench.selectOption("select[name='test.doneBy']", "repairer");
		await bench.click("text=Seal this statement");
		await bench.waitForSelector("#statement-2");
		expect(await bench.textContent("#statement-2")).toContain("Answers statement 1: takes no stand.");
		await expectSound(bench);

		await bench.goto(`${base}/orders/${orderId}/settlement`);
		await expectSound(bench);
		await bench.selectOption("select[name=outcome]", "repair-under-warranty");
		await bench.selectOption("select[name=itemNext]", "to-repairer");
		await bench.click("text=Seal this proposal");
		await bench.waitForSelector("#step-1");
		await phone.goto(`${base}/orders/${orderId}/settlement`);
		await expectSound(phone);
		await phone.click("text=Assent: seal this settlement");
		await phone.waitForSelector("text=Both sides have agreed.");
		await expectSound(phone);

		const { steps } = (await shop.ask("GET", `/api/v1/orders/${orderId}/settlement`)).json();
		const receipt = await shop.ask("GET", `/api/v1/orders/${orderId}/sealed/${steps.at(-1).id}/receipt`);
		expect(verifyReceipt(Buffer.from(receipt.rawPayload)).outcome).toBe("verified");
		// The owner's device signed its statement; its assent is signed once the page with it has run.
		expect(entriesIn(receipt.json()).filter(({ kind }) => kind === "party-signed").length).toBeGreaterThan(1);

		for (const path of [
			"warranty?failedOn=2026-04-01",
			`consignments/${legId}/claim`,
			`consignments/${legId}/notice`,
		]) {
			for (const page of [bench, phone]) {
				await page.goto(`${base}/orders/${orderId}/${path}`);
				await expectSound(page);
			}
		}
		await bench.goto(`${base}/orders/${orderId}/consignments/${legId}/claim`);
		await bench.fill("input[name='dates.noticeSent']", "2026-03-06");
		await bench.fill("input[name=currencyPerSdr]", "1,2");
		await bench.click("text=Save");
		await bench.waitForSelector("text=sending in time is enough");
		await bench.goto(`${base}/orders/${orderId}`);
		await expectSound(bench);
	}, 120_000);
});
