/** Every page of the shop on a phone of 320 px and on a desk: nothing too wide, nothing that axe-core finds. */
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { customerScene, type Scene } from "../pages/customer-scene.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";
import { BROWSER_MISSING, enterWith, expectSoundIn, openBrowser } from "./chromium.ts";

const VIEWS = [{ width: 320 }, { width: 1100 }, { width: 1100, colorScheme: "dark" }] as const;

describe.skipIf(BROWSER_MISSING)("the shop's pages", () => {
	let shop: TestApp;
	let browser: Browser;
	let base: string;
	let scene: Scene;
	beforeAll(async () => {
		shop = await testApp();
		base = await shop.listen();
		browser = await openBrowser();
		scene = await customerScene(shop);
	});
	afterAll(async () => {
		await browser?.close();
		await shop?.close();
	});

	it("stand on a phone and on a desk, light and dark", async () => {
		const context = await enterWith(browser, base, shop.sessionCookie, {});
		const page = await context.newPage();
		const order = `/orders/${scene.orderId}`;
		const leg = `/consignments/${scene.legId}`;
		const visited = new Set<string>();
		const pages = [
			"/",
			"/orders/new",
			"/benches",
			"/stock",
			"/catalogue",
			"/catalogue/drive",
			"/foam-drops",
			`${order}/papers`,
			`${order}${leg}/recordings`,
			`${order}${leg}/pack`,
			"/continue",
			"/soak?hours=24&coldStarts=10&shows=3&showedInH=24&priorPercent=30&targetPercent=2&costPerH=2&costOfReturn=300",
			order,
			leg,
			`${leg}/packaging`,
			`${order}${leg}/slip`,
			`${order}${leg}/paper-form`,
			`${order}${leg}/comparison`,
		];
		for (const path of pages) {
			const answer = await page.goto(base + path);
			expect(answer?.status(), path).toBe(200);
			await expectSoundIn(page, VIEWS);
			const records = await page.$$eval("a[href^='/records/']", (links) =>
				links.map((link) => link.getAttribute("href") ?? ""),
			);
			for (const record of records) visited.add(record);
		}
		for (const path of [...visited].filter((record) => !record.endsWith("/link"))) {
			await page.goto(base + path);
			await expectSoundIn(page, VIEWS);
		}
		await context.close();
	}, 120_000);
});
