/**
 * Files sent piece by piece from the customer's photo step, in a real browser: progress that is seen and read out, a network
 * that goes away, a reload in the middle, a file that is refused; and nothing that axe-core finds.
 */
import { createHash, randomBytes } from "node:crypto";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { customerScene, type Scene } from "../pages/customer-scene.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";
import { BROWSER_MISSING, expectSound, openBrowser } from "./chromium.ts";

describe.skipIf(BROWSER_MISSING)("a film and photos from a phone", () => {
	let shop: TestApp;
	let browser: Browser;
	let made: Scene;
	let page: Page;
	// On disk, as its time of change is part of what tells that it is the same file.
	const folder = mkdtempSync(join(tmpdir(), "handover-risk-film-"));
	const filmPath = join(folder, "around.pdf");
	beforeAll(async () => {
		writeFileSync(filmPath, film.buffer);
		shop = await testApp();
		const base = await shop.listen();
		browser = await openBrowser();
		made = await customerScene(shop);
		page = await browser.newPage({ viewport: { width: 390, height: 800 } });
		await page.goto(base + new URL(made.link.url).pathname);
		await page.fill("#code", made.link.code);
		await page.click("button:has-text('Open')");
		await page.waitForURL("**/parcel-closed");
	});
	afterAll(async () => {
		await browser?.close();
		await shop?.close();
		rmSync(folder, { recursive: true });
	});

	// More than one piece, so that some of it is acknowledged while the rest is on its way.
	const film = {
		name: "around.pdf",
		mimeType: "application/pdf",
		buffer: Buffer.concat([Buffer.from("%PDF-1.7\n"), randomBytes(12_000_000)]),
	};
	const lie = { name: "page.jpg", mimeType: "image/jpeg", buffer: Buffer.from("<html>no picture</html>") };
	const network = async (uploadThroughput: number, offline = false) => {
		const session = await page.context().newCDPSession(page);
		const conditions = { offline, latency: 0, downloadThroughput: -1, uploadThroughput };
		await session.send("Network.emulateNetworkConditions", conditions);
	};
	const sentBytes = () =>
		page.evaluate(() => (document.querySelector(".uploads progress") as unknown as { value: number }).value);
	const LONG = { timeout: 20_000 };
	const choose = (...files: (typeof film)[]) => page.setInputFiles('[name="photos.files"]', files);

	it("goes on after the network was away and after a reload, and is added with the step", async () => {
		await network(4_000_000);
		await page.setInputFiles('[name="photos.files"]', filmPath);
		await expect.poll(sentBytes, LONG).toBeGreaterThan(8_600_000);
		await network(4_000_000, true);
		await expect.poll(() => page.textContent(".uploads .upload-state"), LONG).toContain("No network");
		// So slow that it is under way for as long as the page is looked at.
		await network(50_000);
		await expect.poll(() => page.textContent(".uploads .upload-state"), LONG).toMatch(/^\d+ %$/);
		await expectSound(page);
		page.once("dialog", (dialog) => dialog.accept());
		await page.reload();
		await network(-1);
		// It begins where it was: the first piece is not sent again.
		const offsets: number[] = [];
		page.on("request", (request) => {
			if (request.method() === "PATCH") offsets.push(Number(request.headers()["upload-offset"]));
		});
		await page.setInputFiles('[name="photos.files"]', filmPath);
		await page.fill('[name="parcel.remark"]', "one corner is soft");
		await page.click("button:has-text('Add them')");
		await page.waitForSelector(".thumbs a:has-text('around.pdf')", LONG);
		expect(Math.min(...offsets)).toBeGreaterThanOrEqual(8 * 1024 * 1024);
		const [kept] = (await shop.ask("GET", `/api/v1/records/${made.recordId}/exhibits`)).json().exhibits;
		expect(kept).toMatchObject({
			sizeBytes: film.buffer.length,
			sha256: createHash("sha256").update(film.buffer).digest("hex"),
		});
		const { content } = (await shop.ask("GET", `/api/v1/records/${made.recordId}`)).json();
		expect(content.exhibits).toEqual([{ sha256: kept.sha256, view: "parcel-closed" }]);
		expect(JSON.stringify(content)).toContain("one corner is soft");
	}, 60_000);

	it("says why one is not taken, adds the others, and can be left by keys", async () => {
		await choose(lie, { ...film, name: "label.pdf", buffer: Buffer.from("%PDF-1.7\nsmall") });
		await expect.poll(() => page.textContent(".uploads .error"), LONG).toContain("another kind than its name says");
		await expect
			.poll(() => page.textContent('[data-upload-for] [role="status"]'), LONG)
			.toContain("All files have arrived");
		await expectSound(page);
		await page.focus(".uploads li:first-child button");
		await page.keyboard.press("Enter");
		await expect.poll(() => page.locator(".uploads li").count(), LONG).toBe(1);
		expect(await page.evaluate(() => (document.activeElement as unknown as { name: string }).name)).toBe(
			"photos.files",
		);
		await page.click("button:has-text('Save and go on')");
		await page.waitForURL("**/parcel-facts");
		const { content } = (await shop.ask("GET", `/api/v1/records/${made.recordId}`)).json();
		expect(content.exhibits).toHaveLength(2);
	}, 30_000);
});
