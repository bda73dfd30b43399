/** Files dropped and pasted: what the script makes of them, that the control stays, and that a page shows what was understood. */
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { customerScene, type Scene } from "../pages/customer-scene.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";
import { BROWSER_MISSING, enterWith, expectSound, openBrowser } from "./chromium.ts";

const LOG = [
	"Mar 29 20:09:52 werkbank kernel: pcieport 0000:00:01.0: PCIe Bus Error: severity=Corrected, type=Physical Layer, (Receiver ID)",
	"Mar 29 20:09:53 werkbank kernel: usb 1-1: new device",
	"Mar 29 20:09:54 werkbank kernel: usb 1-2: new device",
].join("\n");

describe.skipIf(BROWSER_MISSING)("a file", () => {
	let shop: TestApp;
	let browser: Browser;
	let scene: Scene;
	let page: Page;
	beforeAll(async () => {
		shop = await testApp();
		const base = await shop.listen();
		browser = await openBrowser();
		scene = await customerScene(shop);
		const context = await enterWith(browser, base, shop.sessionCookie, { viewport: { width: 390, height: 800 } });
		page = await context.newPage();
		await page.goto(`${base}/records/${scene.recordId}`);
	});
	afterAll(async () => {
		await browser?.close();
		await shop?.close();
	});
	/** Files of a control are sent at once, and stand in the list beside it. */
	const chosen = async (id: string) => {
		const names = await page.locator(`[data-upload-for="${id}"] .uploads li`).allTextContents();
		return names.map((text) => /[a-z]+\.[a-z]+/.exec(text)?.[0]);
	};

	it("is taken where it is dropped, several where several may be chosen, and shows while it hangs over the field", async () => {
		const states = await page.evaluate(`(() => {
			const field = document.getElementById("photo.item-front").closest(".takes-files");
			const held = (...names) => {
				const data = new DataTransfer();
				for (const name of names) data.items.add(new File(["x"], name));
				return data;
			};
			const fire = (kind, data) =>
				field.dispatchEvent(new DragEvent(kind, { dataTransfer: data, bubbles: true, cancelable: true }));
			fire("dragover", held("a.png"));
			const over = field.classList.contains("drop-over");
			fire("drop", held("a.png"));
			fire("drop", held("b.png", "c.png"));
			return [over, field.classList.contains("drop-over")];
		})()`);
		expect(states).toEqual([true, false]);
		expect(await chosen("photo.item-front")).toEqual(["a.png", "b.png", "c.png"]);
		// Text under the name of a picture is refused, once all of it is there.
		await page.locator(".uploads .error").nth(2).waitFor();
	});

	it("that misses every field does not take the place of the page", async () => {
		const kept = await page.evaluate(`(() => {
			const data = new DataTransfer();
			data.items.add(new File(["x"], "a.png"));
			const event = new DragEvent("drop", { dataTransfer: data, bubbles: true, cancelable: true });
			document.querySelector("h1").dispatchEvent(event);
			return event.defaultPrevented;
		})()`);
		expect(kept).toBe(true);
	});

	it("is made of text that is pasted while the field has the focus, and then stands line by line", async () => {
		const paste = (id: string) =>
			page.evaluate(`(() => {
				document.getElementById(${JSON.stringify(id)}).focus();
				const data = new DataTransfer();
				data.setData("text/plain", ${JSON.stringify(LOG)});
				document.activeElement.dispatchEvent(
					new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true }),
				);
			})()`);
		await paste("photo.item-back");
		expect(await chosen("photo.item-back"), "a picture is no text").toEqual([]);
		await paste("file.upload");
		expect(await chosen("file.upload")).toEqual(["pasted.txt"]);
		await page.locator('button[name="act"][value="save"].quiet').first().click();
		const rows = page.locator(".file-lines tbody tr");
		await rows.first().waitFor({ state: "attached" });
		expect(await rows.count()).toBe(2);
		expect(await rows.nth(0).textContent()).toMatch(/^1\D.*computer \(werkbank\)/);
		expect(await rows.nth(1).textContent()).toMatch(/^2 – 3\D.*Nothing in it is read/);
		await expectSound(page);
	});
});
