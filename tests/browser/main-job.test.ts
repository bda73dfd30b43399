/**
 * The main job in a real browser, as its people do it: the shop is set up from its one-time link, the repairer types an
 * order and a departure record, uploads a photo and a diagnostic output, seals, prints the slip; the owner opens the link
 * on a phone with the code, fills in, seals; both see the comparison.
 */
import { readFileSync } from "node:fs";
import type { AddressInfo } from "node:net";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makeSetUpLink } from "../../src/operations/access/set-up.ts";
import { openLog } from "../../src/operations/log/open-log.ts";
import { buildApp } from "../../src/start/build-app.ts";
import { makeDeps, SILENT } from "../../src/start/deps.ts";
import { type TestDatabase, testDatabase } from "../setup/test-database.ts";
import { BROWSER_MISSING, expectSound, openBrowser } from "./chromium.ts";

const demoData = (path: string) => readFileSync(new URL(`../../demo-data/${path}`, import.meta.url));
const PHOTO = { name: "front.png", mimeType: "image/png", buffer: demoData("pictures/card-front.png") };

describe.skipIf(BROWSER_MISSING)("the main job in a browser", () => {
	let db: TestDatabase;
	let browser: Browser;
	let close: () => Promise<void>;
	let base: string;
	let setUpPath: string;
	beforeAll(async () => {
		db = await testDatabase();
		const deps = makeDeps({
			database: db.database,
			log: SILENT,
			publicUrl: "http://127.0.0.1",
			exhibitFolder: "/tmp/handover-risk-walk",
			keyFolder: db.keyFolder,
		});
		await openLog(deps);
		const app = await buildApp(deps, { requestsPerMinute: 1_000_000 });
		await app.listen({ host: "127.0.0.1", port: 0 });
		base = `http://127.0.0.1:${(app.server.address() as AddressInfo).port}`;
		setUpPath = new URL((await makeSetUpLink(deps)) ?? "").pathname;
		close = () => app.close();
		browser = await openBrowser();
	});
	afterAll(async () => {
		await browser?.close();
		await close?.();
		await db?.close();
	});

	/** Presses a button of the page's text and waits for what comes. */
	async function press(page: Page, name: string): Promise<void> {
		await Promise.all([page.waitForNavigation(), page.getByRole("button", { name, exact: true }).first().click()]);
	}

	it("goes from the set-up link to a comparison that both sides read", async () => {
		const page = await browser.newPage({ viewport: { width: 1100, height: 900 } });
		await page.goto(base + setUpPath);
		await expectSound(page);
		await page.fill("#name", "bench");
		await page.fill("#passphrase", "short");
		await press(page, "Set up your shop");
		await expectSound(page);
		expect(await page.textContent(".error-summary")).toContain("at least 12");
		expect(await page.inputValue("#name")).toBe("bench");
		await page.fill("#passphrase", "several words are easy");
		await press(page, "Set up your shop");
		await expectSound(page);

		await page.click("text=Instruments and benches");
		await expectSound(page);
		await page.fill("[name='label']", "Bench meter");
		await page.fill("[name='facts.percentOfReading']", "0,1");
		await page.fill("[name='facts.counts']", "2");
		await page.fill("[name='facts.resolution']", "0,01");
		await press(page, "Add the instrument");
		expect(await page.textContent("main")).toContain("0.1 %");
		await page.fill("[name='bench.label']", "Bench 1");
		await press(page, "Add the bench");

		await page.goto(`${base}/orders/new`);
		await expectSound(page);
		await page.fill("[name='item.maker']", "Borealis");
		await page.fill("[name='item.massKg']", "two");
		await press(page, "Take the order in");
		await expectSound(page);
		expect(await page.inputValue("[name='item.maker']"), "what was typed stays").toBe("Borealis");
		expect(await page.textContent("[id='item.massKg-error']")).toBeTruthy();
		for (const [name, value] of Object.entries({
			"item.model": "Lumen 7",
			"item.serialNumber": "BL7-00042-K",
			"item.massKg": "1,9",
			"owner.name": "Ada Muster",
			"owner.country": "DE",
			"repairer.name": "Werkbank Nord",
			"repairer.country": "DE",
			"terms.reportedFault": "Memory errors after ten minutes",
			"terms.agreedWork": "Mend the memory fault",
		})) {
			await page.fill(`[name='${name}']`, value);
		}
		await page.selectOption("[name='repairer.kind']", "business");
		await press(page, "Take the order in");
		await expectSound(page);
		const orderUrl = page.url();

		await press(page, "to the owner");
		await expectSound(page);
		await page.fill("[name='carrier']", "Eilbote Süd");
		await page.fill("[name='dispatchedAt']", "2026-10-06T15:00");
		await page.fill("[name='deliveredAt']", "2026-10-08T11:20");
		await page.selectOption("[name='offset']", "+02:00");
		await press(page, "Save");

		await press(page, "Record the last state, full");
		await expectSound(page);
		await page.fill("[name='identity.serialNumber']", "BL7-00042-K");
		await page.setInputFiles("[name='photo.item-front']", PHOTO);
		await page.setInputFiles("[name='file.upload']", {
			name: "lspci.txt",
			mimeType: "text/plain",
			buffer: demoData("outputs/card-departure-load.txt"),
		});
		await page.selectOption("[name='file.load']", "load");
		await page.fill("[name='check.resistance-memory-rail.value']", "62,5");
		await page.selectOption("[name='check.resistance-memory-rail.instrument']", { label: "Bench meter" });
		await page.fill("[name='check.starts-cold.trials']", "10");
		await page.fill("[name='check.starts-cold.successes']", "ten");
		await press(page, "Save the draft");
		await expectSound(page);
		expect(await page.inputValue("[name='check.resistance-memory-rail.value']"), "the digits as typed stay").toBe(
			"62,5",
		);
		await page.fill("[name='check.starts-cold.successes']", "10");
		await page.check("[name='state'][value='good']");
		await page.fill("[name='observedAt']", "2026-10-06T11:30");
		await page.selectOption("[name='clock']", "+02:00");
		await press(page, "Save and go on to seal");
		await expectSound(page);
		await press(page, "Seal it now");
		await expectSound(page);
		const receipt = await page.textContent("main");
		expect(receipt).toContain("Checkpoint of the log");
		expect(receipt).toContain("16 lanes");
		expect(receipt).toContain("62.5");
		expect(await page.locator(".thumbs img").count()).toBe(1);

		await page.goto(orderUrl);
		await expectSound(page);
		await Promise.all([
			page.waitForNavigation(),
			page.getByRole("button", { name: "Ask the owner for the first state on arrival" }).click(),
		]);
		await expectSound(page);
		const [address = "", code = ""] = await page.locator("dd code").allTextContents();
		expect(code).toMatch(/^[0-9]{6}$/);

		const phone = await browser.newContext({ viewport: { width: 390, height: 800 } });
		const owner = await phone.newPage();
		await owner.goto(base + new URL(address).pathname);
		await owner.fill("#code", code);
		await owner.click("button:has-text('Open')");
		await owner.waitForURL("**/parcel-closed");
		await owner.setInputFiles("[name='photos.files']", PHOTO);
		await owner.click("button[value='next']");
		// What was chosen is sent first; the act waits for it.
		await owner.waitForURL((url) => !url.pathname.endsWith("/parcel-closed"));
		const recordUrl = owner.url().replace(/\/[^/]+$/, "");
		await owner.goto(`${recordUrl}/identity`);
		await owner.fill("[name='identity.serialNumber']", "BL7-00042-K");
		await owner.click("button[value='next']");
		await owner.goto(`${recordUrl}/file`);
		await owner.check("[name='file.load'][value='load']");
		await owner.setInputFiles("[name='file.upload']", {
			name: "lspci.txt",
			mimeType: "text/plain",
			buffer: demoData("outputs/card-arrival-load.txt"),
		});
		await owner.locator("main button.quiet[value='stay']").first().click();
		await owner.locator(".file-lines").first().waitFor();
		await owner.goto(`${recordUrl}/result`);
		await owner.check("[name='state'][value='intermittent']");
		await owner.fill("[name='observedAt']", "2026-10-09T19:10");
		await owner.selectOption("[name='clock']", "+02:00");
		await owner.click("button[value='next']");
		await owner.waitForURL("**/review");
		await owner.check("[name='confirm']");
		await owner.click("button[value='seal']");
		await owner.waitForURL("**/receipt");
		await owner.click("a[href$='/comparison']");
		await expectSound(owner);
		const seen = (await owner.textContent("main")) ?? "";
		expect(seen).toContain("Link width under load");
		expect(seen).toContain("8 lanes");

		await page.goto(owner.url());
		expect(await page.textContent("h1"), "both sides read the same page").toBe(await owner.textContent("h1"));
		await page.goto(orderUrl);
		expect(await page.textContent("main, aside")).toContain("marked stretch");
	}, 180_000);
});
