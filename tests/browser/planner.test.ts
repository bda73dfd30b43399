/** The planner in a browser: it computes anew by itself, takes a pack from the stock, and stands on phone and desk. */
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { STOCK_REQUEST } from "../operations/packaging-search/stock-request.ts";
import { customerScene, type Scene } from "../pages/customer-scene.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";
import { BROWSER_MISSING, enterWith, expectSoundIn, openBrowser } from "./chromium.ts";

describe.skipIf(BROWSER_MISSING)("the planner", () => {
	let shop: TestApp;
	let browser: Browser;
	let base: string;
	let scene: Scene;
	beforeAll(async () => {
		shop = await testApp();
		base = await shop.listen();
		browser = await openBrowser();
		scene = await customerScene(shop);
		for (const kind of ["boxes", "foams", "bags"] as const)
			for (const { id, ...thing } of STOCK_REQUEST.stock[kind])
				await shop.ask("PUT", `/api/v1/stock/${kind}/${encodeURIComponent(id)}`, thing);
	});
	afterAll(async () => {
		await browser?.close();
		await shop?.close();
	});

	async function openPlanner(width: number): Promise<Page> {
		const context = await enterWith(browser, base, shop.sessionCookie, { viewport: { width, height: 900 } });
		const page = await context.newPage();
		await page.goto(`${base}/consignments/${scene.legId}/packaging`);
		for (const [field, typed] of Object.entries({
			"item.massKg": "1.9",
			"item.lengthMm": "290",
			"item.widthMm": "140",
			"item.heightMm": "60",
			"item.gn": "80",
			"cushion.thicknessMm": "50",
		}))
			await page.fill(`[name="${field}"]`, typed);
		await page.selectOption('[name="item.basis"]', "maker");
		await page.selectOption('[name="bag.take"]', "shielding");
		return page;
	}

	it("fills in what is chosen from the stock and shows what moves, without the button", async () => {
		const page = await openPlanner(1300);
		await page.selectOption('[name="box.take"]', "small");
		await page.waitForSelector("#outcome .result");
		expect(await page.inputValue('[name="box.lengthMm"]')).toBe("390");
		expect(await page.isChecked('[name="bag.1.closed"]')).toBe(true);
		expect(await page.locator(".was").count()).toBe(0);
		await page.selectOption('[name="cushion.foam"]', "pu-ester-64-mean-2-to-5");
		await page.waitForSelector(".was");
		expect(await page.locator("#outcome [role=status]").textContent()).toMatch(/falls short|marginal|provisional/);
		// A number that is none: what was shown stays, and the page says so.
		await page.fill('[name="item.massKg"]', "heavy");
		await page.locator('[name="item.massKg"]').blur();
		await page.waitForSelector("#not-anew:not([hidden])");
		expect(await page.locator("#outcome .result").count()).toBe(1);
		await page.context().close();
	});

	it("stands on a phone and on a desk with a pack from the stock, and so do search, sheet and stock", async () => {
		const views = [{ width: 320 }, { width: 1300 }];
		const page = await openPlanner(320);
		await page.locator('#plan-form button[value="search"]').click();
		await page.waitForSelector(".designs li");
		await expectSoundIn(page, views);
		await page.locator('button[name="take"]').first().click();
		await page.waitForSelector("#outcome .result");
		await expectSoundIn(page, views);
		await page.locator('#plan-form button[value="sheet"]').click();
		await page.waitForSelector(".packing");
		await expectSoundIn(page, views);
		await page.goto(`${base}/stock`);
		for (const summary of await page.locator("summary").all()) await summary.click();
		await expectSoundIn(page, views);
		await page.context().close();
	}, 60_000);
});
