/**
 * Verifying a receipt in a real browser: on the service's page without script, and with the offline file opened from a
 * disk, which fetches nothing.
 */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { orderLog, PHOTO, RECORD, rootOf, TestLog, testKey, written } from "../records/verify/independent-maker.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";
import { BROWSER_MISSING, expectSound, expectTablesWhole, openBrowser } from "./chromium.ts";

const OFFLINE = new URL("../../dist/pages/browser/verify-offline.html", import.meta.url).pathname;
const key = testKey();
const log = orderLog(new TestLog(undefined, [key]));
const receipt = written(log.receipt(RECORD, { earlier: [3] }));
/** One letter of one sealed statement, replaced by another letter of base64. */
const altered = Buffer.from(receipt);
const place = receipt.indexOf('"statement":"') + 200;
altered[place] = altered[place] === 0x41 ? 0x42 : 0x41;

describe.skipIf(BROWSER_MISSING)("verifying in a browser", () => {
	let browser: Browser;
	let folder: string;
	const fileOf = (name: string) => join(folder, name);
	beforeAll(async () => {
		browser = await openBrowser();
		folder = mkdtempSync(join(tmpdir(), "handover-risk-verify-"));
		writeFileSync(fileOf("receipt.json"), receipt);
		writeFileSync(fileOf("altered.json"), altered);
		writeFileSync(fileOf("photo.png"), PHOTO);
		writeFileSync(fileOf("checkpoint.txt"), log.note(5));
		const proof = { size: log.entries.length, rootSha256: null, proof: log.consistency(5) };
		writeFileSync(fileOf("proof.json"), JSON.stringify(proof));
	});
	afterAll(async () => {
		await browser?.close();
		if (folder !== undefined) rmSync(folder, { recursive: true });
	});

	describe("with the offline file from a disk", () => {
		/** Opens it where nothing can be fetched; anything that it would fetch, and any error, is told at the end. */
		async function offline(options: BrowserContextOptions, act: (page: Page) => Promise<void>): Promise<void> {
			const context = await browser.newContext({ viewport: { width: 320, height: 640 }, offline: true, ...options });
			const page = await context.newPage();
			const wrong: string[] = [];
			page.on("request", (request) => {
				if (request.url() !== `file://${OFFLINE}`) wrong.push(request.url());
			});
			page.on("console", (message) => wrong.push(message.text()));
			page.on("pageerror", (error) => wrong.push(error.message));
			await page.goto(`file://${OFFLINE}`);
			await act(page);
			expect(wrong).toEqual([]);
			await context.close();
		}
		const outcomeOf = async (page: Page) => (await page.textContent("#outcome"))?.replace(/^. /, "");
		const rowOf = (page: Page, check: string) => page.textContent(`tr:has(th:has-text("${check}")) td:nth-child(2)`);

		it.each(["light", "dark"] as const)("verifies a good receipt, sound at 320 px, %s", async (colorScheme) => {
			await offline({ colorScheme }, async (page) => {
				await expectSound(page);
				await page.setInputFiles("#receipt", fileOf("receipt.json"));
				await page.fill("#key", key.pem);
				await page.setInputFiles("#earlier", [fileOf("checkpoint.txt"), fileOf("proof.json")]);
				await page.setInputFiles("#exhibits", fileOf("photo.png"));
				await page.fill("#size", "3");
				await page.fill("#root", rootOf(log.leaves.slice(0, 3)).toString("hex").replace(/.{4}/g, "$& "));
				await page.click("button");
				await page.waitForSelector("#outcome");
				expect(await outcomeOf(page)).toBe("Verified");
				expect(await page.evaluate("document.activeElement.id"), "who listens is led to it").toBe("outcome");
				for (const check of [
					"Form",
					"Place in the log",
					"The key you know",
					"Earlier checkpoints",
					"Photos and files",
				]) {
					expect(await rowOf(page, check), check).toContain("Passed");
				}
				expect(await rowOf(page, "Independent time")).toContain("Not possible");
				await expectSound(page);
			});
		});
		it.each([1024, 1280])("shows its tables whole at %i px", async (width) => {
			await offline({ viewport: { width, height: 800 } }, async (page) => {
				await page.setInputFiles("#receipt", fileOf("receipt.json"));
				await page.setInputFiles("#exhibits", fileOf("photo.png"));
				await page.click("button");
				await page.waitForSelector("#outcome");
				await expectTablesWhole(page);
				await expectSound(page);
			});
		});
		it("refuses one with a single letter changed, and names the check and the place", async () => {
			await offline({}, async (page) => {
				await page.setInputFiles("#receipt", fileOf("altered.json"));
				await page.click("button");
				await page.waitForSelector("#outcome");
				expect(await outcomeOf(page)).toBe("Not verified");
				expect(await page.textContent("main")).toContain("/entries/1/statement");
				await expectSound(page);
			});
		});
		it("takes a receipt that is dropped on it", async () => {
			await offline({}, async (page) => {
				const dropped = await page.evaluateHandle((text) => {
					const files = new DataTransfer();
					files.items.add(new File([text], "dropped.json"));
					return files;
				}, receipt.toString("utf8"));
				await page.dispatchEvent("body", "drop", { dataTransfer: dropped });
				await page.waitForSelector("#outcome");
				expect(await outcomeOf(page)).toBe("Verified");
				expect(await page.textContent("main")).toContain("dropped.json");
			});
		});
		it("says what is missing, hashes a large file in slices, and prints the outcome without the form", async () => {
			const large = fileOf("recording.bin");
			execFileSync("dd", ["if=/dev/zero", `of=${large}`, "bs=1M", "count=64", "status=none"]);
			await offline({}, async (page) => {
				await page.click("button");
				expect(await page.textContent("[role=status]")).toBe("Choose a receipt or a dossier first.");
				await page.setInputFiles("#receipt", fileOf("receipt.json"));
				await page.setInputFiles("#exhibits", large);
				await page.click("button");
				await page.waitForSelector("#outcome");
				const digest = execFileSync("sha256sum", [large]).toString().slice(0, 64);
				expect(await page.textContent("main"), "the fingerprint that sha256sum finds").toContain(digest);
				expect(await outcomeOf(page)).toBe("Not verified");
				await page.emulateMedia({ media: "print" });
				expect(await page.isVisible("form")).toBe(false);
				expect(await page.isVisible("#outcome")).toBe(true);
			});
		});
		it("is one file whose policy admits its own script and style alone", () => {
			const html = readFileSync(OFFLINE, "utf8");
			const [policy = ""] = /Content-Security-Policy" content="([^"]+)"/.exec(html)?.slice(1) ?? [];
			expect(policy).toMatch(
				/^default-src 'none'; script-src 'sha256-[^ ]+'; style-src 'sha256-[^ ]+'; base-uri 'none'; form-action 'none'$/,
			);
			expect(html.match(/<script/g)).toHaveLength(1);
			expect(html.replace(/<script[\s\S]*<\/script>/, "")).not.toMatch(/\s(src|href)=|url\(|@import/);
		});
	});

	describe("on the service's page, without script and signed in as nobody", () => {
		let test: TestApp;
		let base: string;
		beforeAll(async () => {
			test = await testApp();
			base = await test.listen();
		});
		afterAll(() => test?.close());

		it("verifies, refuses, and hands out the offline file", async () => {
			const context = await browser.newContext({ viewport: { width: 320, height: 640 }, javaScriptEnabled: false });
			const sound = await browser.newPage({ viewport: { width: 320, height: 640 } });
			const page = await context.newPage();
			await page.goto(`${base}/verify`);
			await sound.goto(`${base}/verify`);
			await expectSound(sound);
			await page.click("button:has-text('Verify')");
			expect(await page.textContent(".error-summary")).toContain("Choose a receipt or a dossier first.");
			for (const [file, outcome] of [
				["receipt.json", "Verified"],
				["altered.json", "Not verified"],
			] as const) {
				await page.setInputFiles("#receipt", fileOf(file));
				await page.fill("#key", key.publicKey);
				await page.fill("#size", "7");
				await page.fill("#root", rootOf(log.leaves).toString("hex"));
				await page.click("button:has-text('Verify')");
				expect(await page.textContent("#outcome"), file).toContain(outcome);
				expect(await page.inputValue("#key"), "what was typed stays").toBe(key.publicKey);
				expect(await page.inputValue("#size")).toBe("7");
			}
			await sound.setInputFiles("#receipt", fileOf("receipt.json"));
			await sound.click("button:has-text('Verify')");
			await expectSound(sound);
			const download = sound.waitForEvent("download");
			await sound.click("a:has-text('Download this page')");
			const saved = await (await download).path();
			expect(readFileSync(saved).equals(readFileSync(OFFLINE))).toBe(true);
			await context.close();
		});
	});
});
