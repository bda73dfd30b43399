/** A recorder's file in a real browser: brought, its columns confirmed, looked at on a phone, on a desk and by a link. */
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { CARD_PACK } from "../operations/packaging/pack-request.ts";
import { inventedTable } from "../operations/transit-recordings/invented-trip.ts";
import { customerScene, type Scene } from "../pages/customer-scene.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";
import { BROWSER_MISSING, enterWith, expectSound, openBrowser } from "./chromium.ts";

const TABLE = inventedTable({
	rateHz: 1000,
	lengthS: 6,
	impacts: [
		{ atS: 2, peakGn: 60, durationMs: 12, fallS: 0.394 },
		{ atS: 4, peakGn: 30, durationMs: 11 },
	],
});

const BOARD = {
	component: { kind: "ball-grid-array", lengthM: 0.03, position: "centre", boardEdgeM: 0.25 },
	boardThicknessM: 0.0016,
	naturalFrequencyHz: 60,
};

describe.skipIf(BROWSER_MISSING)("the recordings' pages", () => {
	let shop: TestApp;
	let scene: Scene;
	let browser: Browser;
	let base: string;
	beforeAll(async () => {
		shop = await testApp();
		scene = await customerScene(shop);
		await shop.ask("POST", `/api/v1/consignments/${scene.legId}/packaging-assessments`, {
			...CARD_PACK,
			item: { ...CARD_PACK.item, board: BOARD },
		});
		base = await shop.listen();
		browser = await openBrowser();
	});
	afterAll(async () => {
		await browser?.close();
		await shop?.close();
	});
	const open = async (cookie: string, width: number) => {
		const context = await enterWith(browser, base, cookie, { viewport: { width, height: 800 } });
		return context.newPage();
	};

	it("take a file, refuse what was not said, and show the trip", async () => {
		const page = await open(shop.sessionCookie, 1100);
		await page.goto(`${base}/orders/${scene.orderId}`);
		await page.click("text=Transit recordings");
		await expectSound(page);
		await page.setInputFiles("#file", { name: "trip.csv", mimeType: "text/csv", buffer: Buffer.from(TABLE) });
		await page.click("text=Look at its columns");
		await page.waitForSelector("#time");
		await expectSound(page);
		expect(await page.inputValue("#time")).toBe("1");
		expect(await page.inputValue("#timeUnit")).toBe("s");
		expect(await page.inputValue("#accelerationUnit")).toBe("Gn");
		expect(await page.inputValue("#humidity")).toBe("6");
		// Neither the place nor the units were confirmed.
		await page.click("text=Read the file");
		expect(await page.locator(".error-summary").count()).toBe(1);
		await page.check("input[name=unitsConfirmed]");
		await page.click("text=Read the file");
		expect(await page.locator(".error-summary").textContent()).toContain("Where the recorder sat");
		await expectSound(page);
		await page.check("input[name=place][value=on-item]");
		await page.fill("#startsAt", "2026-03-03T08:00:00");
		await page.fill("#clockMinutes", "2");
		await page.fill("#fullScaleGn", "200");
		await page.click("text=Read the file");
		expect(await page.locator("h1").textContent()).toBe("Transit recording");
		expect(await page.locator("#events tbody tr").count()).toBe(2);
		expect(await page.locator("svg.chart").count()).toBe(7);
		expect(await page.locator("svg.chart .mark-limit-curve").count()).toBe(2);
		expect(await page.locator("#event-1").textContent()).toContain("At the board's own 60 Hz");
		await expectSound(page);
		const phone = await open(shop.sessionCookie, 320);
		await phone.goto(page.url());
		await expectSound(phone);
		await phone.goto(`${page.url()}/columns`);
		await expectSound(phone);
		await page.emulateMedia({ media: "print" });
		await expectSound(page);
		if (process.env.SHOTS !== undefined) {
			await page.emulateMedia({ media: "screen" });
			await page.screenshot({ path: `${process.env.SHOTS}/desk.png`, fullPage: true });
			await phone.goto(page.url());
			await phone.screenshot({ path: `${process.env.SHOTS}/phone.png`, fullPage: true });
		}
	}, 120_000);

	it("make points of a foam out of drops, refuse a phone, and put them on the shelf", async () => {
		// Six first drops, two energies; pulses whose change of velocity is 1.3 times that of the fall: 2AT/π.
		const told = [...Array(3).fill([1.2, 0.5, 48.3]), ...Array(3).fill([2, 0.8, 52.3])];
		const impacts = told.map(([, heightM, peakGn], index) => ({
			atS: 2 + 3 * index,
			peakGn,
			durationMs: (1000 * 1.3 * Math.sqrt(2 * 9.80665 * heightM) * Math.PI) / (2 * peakGn * 9.80665),
			fallS: Math.sqrt((2 * heightM) / 9.80665),
		}));
		const buffer = Buffer.from(inventedTable({ rateHz: 2000, lengthS: 20, impacts }));
		const page = await open(shop.sessionCookie, 1100);
		await page.goto(`${base}/stock`);
		await page.click("text=A foam by drops of your own");
		await expectSound(page);
		const fill = async (device: string) => {
			await page.setInputFiles("#file", { name: "drops.csv", mimeType: "text/csv", buffer });
			await page.check(`input[name=device][value=${device}]`);
			for (const [name, value] of Object.entries({
				thicknessMm: "50",
				lengthMm: "100",
				widthMm: "100",
				temperatureDegC: "22",
				fullScaleGn: "200",
				lines: told.map(([massKg, heightM]) => `${massKg}; ${heightM * 1000}; 1`).join("\n"),
			}))
				await page.fill(`#${name}`, value);
			await page.click("text=Judge the drops");
		};
		await fill("phone");
		expect(await page.locator(".lead").textContent()).toContain("A phone is refused");
		await fill("recorder");
		expect(await page.locator("#outcome tbody tr").count()).toBe(6);
		expect(await page.locator("#outcome tbody").textContent()).not.toContain("few");
		await expectSound(page);
		await page.fill("#first", "own foam");
		await page.click("text=Keep in the stock");
		expect(await page.locator("#foams").textContent()).toContain("own foam");
	}, 120_000);

	it("take pasted lines, and name the line that is wrong", async () => {
		const page = await open(shop.sessionCookie, 1100);
		await page.goto(`${base}/orders/${scene.orderId}/consignments/${scene.legId}/recordings`);
		await page.fill("#pasted", "time [s],z [g]\n0,1\n0.1,1,5\n");
		await page.click("text=Look at its columns");
		expect(await page.locator(".error-summary").textContent()).toContain("line 3");
		await page.fill("#pasted", "time [s],z [g]\n0,1\n0.1,1.5\n0.2,1.5");
		await page.click("text=Look at its columns");
		expect(await page.locator("table").last().textContent()).toContain("1.5");
	}, 60_000);

	it("are read by a link of the order, which brings nothing", async () => {
		const link = (await shop.ask("POST", "/api/v1/links", { scope: "reader", orderId: scene.orderId })).json();
		const entered = await shop.app.inject({
			method: "POST",
			url: "/api/v1/links/enter",
			payload: { token: link.url.split("/").at(-1), code: link.code },
		});
		const page = await open(`link=${entered.cookies[0]?.value}`, 1100);
		const list = `${base}/orders/${scene.orderId}/consignments/${scene.legId}/recordings`;
		await page.goto(list);
		expect(await page.locator("#bring").count()).toBe(0);
		await page.click("text=trip.csv");
		expect(await page.locator("#events tbody tr").count()).toBe(2);
		await expectSound(page);
	}, 60_000);
});
