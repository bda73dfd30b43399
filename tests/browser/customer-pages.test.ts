/**
 * The customer's pages in a real browser: nothing wider than a 320 px phone, and what axe-core finds. Axe runs by
 * `page.evaluate`, as the pages allow no foreign script.
 */
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { ARRIVAL_STEPS } from "../../src/pages/customer/steps.ts";
import { customerScene, type Scene } from "../pages/customer-scene.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";
import { BROWSER_MISSING, expectSound, openBrowser } from "./chromium.ts";

describe.skipIf(BROWSER_MISSING)("on a phone of 320 px", () => {
	let shop: TestApp;
	let browser: Browser;
	let base: string;
	let made: Scene;
	beforeAll(async () => {
		shop = await testApp();
		base = await shop.listen();
		browser = await openBrowser();
		made = await customerScene(shop);
	});
	afterAll(async () => {
		await browser?.close();
		await shop?.close();
	});

	it("leads from the link to the sealed record and the comparison", async () => {
		const page = await browser.newPage({ viewport: { width: 320, height: 640 } });
		await page.goto(base + new URL(made.link.url).pathname);
		await expectSound(page);
		await page.fill("#code", made.link.code);
		await page.click("button:has-text('Open')");
		await page.waitForURL("**/parcel-closed");
		for (const step of ARRIVAL_STEPS) {
			await page.waitForURL(`**/${step.id}`);
			await expectSound(page);
			if (step.id === "parcel-closed") {
				await page.setInputFiles('[name="photos.files"]', {
					name: "side.png",
					mimeType: "image/png",
					buffer: Buffer.from(
						"iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==",
						"base64",
					),
				});
				await page.click("button:has-text('Add them')");
				await page.waitForSelector(".thumbs img");
			}
			if (step.id === "identity") {
				await page.fill('[name="identity.serialNumber"]', "OW24-7731-C");
				// Enter saves and takes no photo out.
				const shown = page.waitForResponse(
					(answer) => answer.request().method() === "GET" && answer.url().endsWith("/identity"),
				);
				await page.press('[name="identity.serialNumber"]', "Enter");
				await shown;
				await page.waitForLoadState();
				expect(await page.inputValue('[name="identity.serialNumber"]')).toBe("OW24-7731-C");
			}
			if (step.id === "result") {
				await page.check('[name="state"][value="does-not-start"]');
				await page.fill('[name="observedAt"]', "2026-03-05T18:00");
				await page.selectOption('[name="clock"]', "+01:00");
			}
			if (step.id !== "review") await page.click("button:has-text('Save and go on')");
		}
		await page.check("#confirm");
		await page.click("button:has-text('Seal the record')");
		await page.waitForURL("**/receipt");
		await expectSound(page);
		await page.click("a:has-text('Compare with the record')");
		await page.waitForURL("**/comparison");
		await expectSound(page);
		expect(await page.textContent("main")).toContain("Did not start on this platform");
	}, 90_000);

	it("prints the slip on one A4 page", async () => {
		const context = await browser.newContext();
		const [name = "", value = ""] = shop.sessionCookie.split("=");
		await context.addCookies([{ name, value, url: base }]);
		const page = await context.newPage();
		await page.goto(`${base}/orders/${made.orderId}/consignments/${made.legId}/slip`);
		await page.click("button:has-text('Make the link')");
		await page.waitForSelector("svg.qr");
		await expectSound(page);
		const pdf = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
		expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
		await page.goto(`${base}/orders/${made.orderId}/consignments/${made.legId}/paper-form`);
		await expectSound(page);
	});
});
