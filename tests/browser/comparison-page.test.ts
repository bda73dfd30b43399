/** The comparison's page in a real browser, for scenarios that show all of it: axe-core, and nothing wider than a phone. */
import { readFileSync } from "node:fs";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { playScenario } from "../scenarios/play-scenario.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";
import { BROWSER_MISSING, enterWith, expectSoundIn, openBrowser } from "./chromium.ts";

const VIEWS = [{ width: 320 }, { width: 1100 }];

describe.skipIf(BROWSER_MISSING)("the comparison's page", () => {
	let shop: TestApp;
	let browser: Browser;
	let base: string;
	beforeAll(async () => {
		shop = await testApp();
		base = await shop.listen();
		browser = await openBrowser();
	});
	afterAll(async () => {
		await browser?.close();
		await shop?.close();
	});

	it.each(["s01", "s05", "s06b", "s08a", "s10a"])(
		"%s is sound on a phone and on a desk",
		async (name) => {
			const file = new URL(`../../demo-data/scenarios/${name}.json`, import.meta.url);
			const { orderId, legIds, query } = await playScenario(shop, JSON.parse(readFileSync(file, "utf8")));
			const context = await enterWith(browser, base, shop.sessionCookie, {});
			const page = await context.newPage();
			await page.goto(`${base}/orders/${orderId}/consignments/${legIds[0]}/comparison?${query}`);
			await expectSoundIn(page, VIEWS);
			expect(await page.locator("#origin").count()).toBe(1);
			await page.click("text=changed or outside limits");
			await expectSoundIn(page, VIEWS);
			await context.close();
		},
		120_000,
	);
});
