/** A dossier from the page that offers it to the page inside it, which verifies it from a disk without a network. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Played, playScenario } from "../scenarios/play-scenario.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";
import { BROWSER_MISSING, expectSound, openBrowser } from "./chromium.ts";

const scenario = JSON.parse(readFileSync(new URL("../../demo-data/scenarios/s10a.json", import.meta.url), "utf8"));
const OFFLINE = new URL("../../dist/pages/browser/verify-offline.html", import.meta.url).pathname;

describe.skipIf(BROWSER_MISSING)("a dossier in a browser", () => {
	let browser: Browser;
	let shop: TestApp;
	let played: Played;
	let base: string;
	let folder: string;
	beforeAll(async () => {
		browser = await openBrowser();
		shop = await testApp();
		base = await shop.listen();
		played = await playScenario(shop, scenario);
		folder = mkdtempSync(join(tmpdir(), "handover-risk-dossier-"));
	}, 60_000);
	afterAll(async () => {
		await browser?.close();
		await shop?.close();
		if (folder !== undefined) rmSync(folder, { recursive: true });
	});

	it("is offered with who sees what, and verifies in the page inside it; altered, it does not", async () => {
		const context = await browser.newContext({
			viewport: { width: 320, height: 640 },
			extraHTTPHeaders: { cookie: shop.sessionCookie },
		});
		const page = await context.newPage();
		await page.goto(`${base}/orders/${played.orderId}/papers`);
		await expectSound(page);
		expect(await page.locator("tbody tr").count()).toBe(3);
		expect(await page.locator('a[hreflang="en"][href*="dossier.zip"]').count()).toBe(2);
		// The carrier's, one for each of the order's two legs.
		for (const language of ["en", "fr"])
			expect(await page.locator(`a[hreflang="${language}"][href*="report.pdf"]`).count()).toBe(4);
		const href = await page.locator('a[href*="dossier.zip"]').first().getAttribute("href");
		const zip = await (await context.request.get(base + href)).body();
		writeFileSync(join(folder, "dossier.zip"), zip);
		const altered = Buffer.from(zip);
		const place = altered.indexOf("/data/receipt.json") + 500;
		altered[place] = (altered[place] ?? 0) ^ 1;
		writeFileSync(join(folder, "altered.zip"), altered);
		await context.close();

		const offline = await browser.newContext({ viewport: { width: 320, height: 640 }, offline: true });
		const verifier = await offline.newPage();
		await verifier.goto(`file://${OFFLINE}`);
		const outcomeOf = async (name: string) => {
			await verifier.setInputFiles("#receipt", join(folder, name));
			await verifier.click("button");
			await verifier.waitForSelector(`dl.facts dd:has-text("${name}")`);
			return (await verifier.textContent("#outcome"))?.replace(/^. /, "");
		};
		expect(await outcomeOf("dossier.zip")).toBe("Verified");
		expect(await verifier.textContent("main")).toContain("Files of the log");
		await expectSound(verifier);
		expect(await outcomeOf("altered.zip")).toBe("Not verified");
		expect(await verifier.textContent("main")).toContain("data/receipt.json");
		await offline.close();
	});
});
