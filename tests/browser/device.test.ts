/** What the reader's device does on a page, in a real browser: it signs what was done through a link, and watches the log. */
import type { AddressInfo } from "node:net";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { verifyReceipt } from "../../src/records/verify/verify-receipt.ts";
import { customerScene, type Scene } from "../pages/customer-scene.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";
import { BROWSER_MISSING, expectSound, openBrowser } from "./chromium.ts";

const SIGNATURES = "**/api/v1/links/*/signatures";
const KEPT = "handover-risk: newest checkpoint seen";

describe.skipIf(BROWSER_MISSING)("the reader's device", () => {
	let shop: TestApp;
	let browser: Browser;
	let base: string;
	let scene: Scene;
	let context: BrowserContext;
	let page: Page;
	beforeAll(async () => {
		shop = await testApp();
		await shop.app.listen({ host: "127.0.0.1", port: 0 });
		// Chromium holds this name, like an address of HTTPS, for a place where keys may be kept.
		base = `http://localhost:${(shop.app.server.address() as AddressInfo).port}`;
		browser = await openBrowser();
	});
	beforeEach(async () => {
		scene = await customerScene(shop);
		context = await browser.newContext({ viewport: { width: 360, height: 740 } });
		page = await context.newPage();
	});
	afterEach(() => context.close());
	afterAll(async () => {
		await browser?.close();
		await shop?.close();
	});

	async function enter(): Promise<void> {
		await page.goto(base + new URL(scene.link.url).pathname);
		await page.fill("#code", scene.link.code);
		await page.click("button:has-text('Open')");
		await page.waitForURL("**/parcel-closed");
	}

	/** Saves and seals the arrival with the browser's cookie. */
	async function sealArrival(): Promise<void> {
		const record = `${base}/api/v1/records/${scene.recordId}`;
		const data = {
			observedAt: "2026-03-04T10:00:00+01:00",
			state: "does-not-start",
			identity: { serialNumber: "OW24-7731-C" },
		};
		const saved = await context.request.put(record, { data, headers: { "if-match": '"v1"' } });
		expect(saved.status(), await saved.text()).toBe(200);
		const sealed = await context.request.post(`${record}/seal`, { headers: { "if-match": '"v2"' } });
		expect(sealed.status(), await sealed.text()).toBe(200);
	}

	const textOf = async (place: string, words: string) => page.waitForSelector(`${place}:has-text("${words}")`);

	it("signs the first use of the link and the sealed record with one key, and the page says no more than that", async () => {
		await enter();
		await textOf("#device-signature", "This device has signed");
		await expectSound(page);
		await sealArrival();
		await page.goto(`${base}/guided/${scene.recordId}/receipt`);
		await textOf("dd", "this device, which used the link, has just signed this entry");
		await expectSound(page);
		await page.reload();
		await textOf("dd", "a device that used the link signed this entry on ");
		const answer = await context.request.get(`${base}/api/v1/records/${scene.recordId}/receipt`);
		const receipt = await answer.body();
		const { outcome, checks } = verifyReceipt(receipt);
		expect(outcome).toBe("verified");
		expect(checks.find(({ id }) => id === "party-signature")).toMatchObject({
			outcome: "passed",
			why: { values: { signed: "2" } },
		});
		const statements = (JSON.parse(receipt.toString("utf8")) as { entries: { statement?: string }[] }).entries.flatMap(
			({ statement }) =>
				statement === undefined ? [] : [JSON.parse(Buffer.from(statement, "base64").toString("utf8"))],
		);
		const keys = statements.flatMap(({ publicKey }) => publicKey ?? []);
		expect(keys).toHaveLength(2);
		expect(new Set(keys).size).toBe(1);
		const extractable = await page.evaluate(`new Promise((resolve) => {
			const opening = indexedDB.open("handover-risk");
			opening.onsuccess = () => {
				const reading = opening.result.transaction("keys").objectStore("keys").getAll();
				reading.onsuccess = () => resolve(reading.result.map((pair) => pair.privateKey.extractable));
			};
		})`);
		expect(extractable).toEqual([false]);
	});

	it("does not sign what was sealed before it entered: an unsigned record stays so when another device looks", async () => {
		await context.route("**/assets/device.js", (route) => route.abort());
		await enter();
		await sealArrival();
		const other = await browser.newContext();
		page = await other.newPage();
		await page.goto(base + new URL(scene.link.url).pathname);
		await page.fill("#code", scene.link.code);
		await page.click("button:has-text('Open')");
		await page.waitForURL("**/receipt");
		// The script has run to its end: it looks at the log beside signing.
		await textOf("#log-seen", "This device keeps this checkpoint");
		await textOf("dd", "not signed by the party");
		expect(await page.$("#device-signature")).toBeNull();
		await other.close();
	});

	it("says that nothing is signed where it cannot keep a key, and lets the record be sealed", async () => {
		await context.addInitScript("Object.defineProperty(window, 'indexedDB', { value: undefined })");
		await enter();
		await textOf("#device-signature", "this browser cannot keep a key");
		await sealArrival();
		await page.goto(`${base}/guided/${scene.recordId}/receipt`);
		await textOf("dd", "not signed by the party");
	});

	it("offers to sign again when the signature did not arrive", async () => {
		await context.route(SIGNATURES, (route) => route.abort());
		await enter();
		await textOf("#device-signature", "the signature did not arrive");
		await expectSound(page);
		await context.unroute(SIGNATURES);
		await page.click("button:has-text('Sign again')");
		await textOf("#device-signature", "This device has signed");
	});

	it("finds that the log it saw is the beginning of today's, and keeps today's", async () => {
		await enter();
		await textOf("#log-seen", "This device keeps this checkpoint");
		await customerScene(shop);
		await page.reload();
		await textOf("#log-seen", "is the beginning of this one");
		const kept = JSON.parse(String(await page.evaluate(`localStorage.getItem(${JSON.stringify(KEPT)})`)));
		const newest = await (await context.request.get(`${base}/api/v1/log/checkpoint`)).text();
		expect(kept.note).toBe(newest);
	});

	it("warns of a log that is not the one it saw, and hands out both checkpoints", async () => {
		await enter();
		await textOf("#log-seen", "This device keeps this checkpoint");
		// The log that this device saw held something else at its newest place.
		await page.evaluate(`(() => {
			const seen = JSON.parse(localStorage.getItem(${JSON.stringify(KEPT)}));
			const lines = seen.note.split("\\n");
			lines[2] = btoa("x".repeat(32));
			localStorage.setItem(${JSON.stringify(KEPT)}, JSON.stringify({ ...seen, note: lines.join("\\n") }));
		})()`);
		const before = await page.evaluate(`localStorage.getItem(${JSON.stringify(KEPT)})`);
		await page.reload();
		await textOf("#log-seen", "is NOT the beginning of this one");
		await expectSound(page);
		const [download] = await Promise.all([page.waitForEvent("download"), page.click("text=Keep both checkpoints")]);
		expect(download.suggestedFilename()).toBe("two-checkpoints.json");
		await customerScene(shop);
		await page.reload();
		await textOf("#log-seen", "is NOT the beginning of this one");
		expect(await page.evaluate(`localStorage.getItem(${JSON.stringify(KEPT)})`)).toBe(before);
	});

	it("says that it could not look where the log is out of reach", async () => {
		await enter();
		await textOf("#log-seen", "This device keeps this checkpoint");
		await context.route("**/api/v1/log/checkpoint", (route) => route.abort());
		await page.reload();
		await textOf("#log-seen", "could not be checked now");
	});
});
