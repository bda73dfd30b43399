/** Debian's Chromium for the browser tests, and what every page must stand. */
import { existsSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { type Browser, type BrowserContext, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { expect } from "vitest";

const CHROMIUM = "/usr/bin/chromium";
/** Without the browser the tests are skipped on a developer's machine; under CI that is a failure. */
export const BROWSER_MISSING = !existsSync(CHROMIUM);
if (BROWSER_MISSING && process.env.CI !== undefined)
	throw new Error(`${CHROMIUM} is missing: apt-get install chromium`);

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

export function openBrowser(): Promise<Browser> {
	return chromium.launch({
		executablePath: CHROMIUM,
		args: [
			"--no-sandbox",
			"--disable-gpu",
			"--disable-background-networking",
			"--disable-component-update",
			"--disable-sync",
		],
	});
}

/** A browser's window of whoever has a cookie, written `name=value`. */
export async function enterWith(
	browser: Browser,
	base: string,
	cookie: string,
	options: BrowserContextOptions,
): Promise<BrowserContext> {
	const context = await browser.newContext(options);
	const [name = "", value = ""] = cookie.split("=");
	await context.addCookies([{ name, value, url: base }]);
	return context;
}

/** Nothing wider than the screen, and nothing that axe-core finds. Axe runs by `evaluate`: pages allow no foreign script. */
export async function expectSound(page: Page): Promise<void> {
	const wider = await settled(page, "document.documentElement.scrollWidth - document.documentElement.clientWidth");
	expect(wider, `${page.url()} is wider than the screen`).toBe(0);
	const found = await settled(page, `${AXE}; axe.run(document, { runOnly: ${JSON.stringify(RULES)} })`);
	const { violations } = found as { violations: { id: string; nodes: { html: string }[] }[] };
	expect(violations.map(({ id, nodes }) => [page.url(), id, nodes[0]?.html])).toEqual([]);
}

/** Every cell can be seen: none begins left of the box that scrolls it, where nothing scrolls to, and none needs scrolling. */
export async function expectTablesWhole(page: Page): Promise<void> {
	const cut = await page.evaluate(`[...document.querySelectorAll("th, td")].flatMap((cell) => {
		const box = (cell.closest(".scroll") ?? document.documentElement).getBoundingClientRect();
		const { left, right, width } = cell.getBoundingClientRect();
		const isCut = left < box.left - 1 || right > box.right + 1 || cell.scrollWidth > Math.ceil(width) + 1;
		return isCut ? [cell.textContent + " " + [left, right, box.left, box.right].map(Math.round)] : [];
	})`);
	expect(cut, `${page.url()} cuts cells`).toEqual([]);
}

/** A click does not wait for the page that it leads to: where that comes in between, once more on the new one. */
async function settled(page: Page, expression: string): Promise<unknown> {
	for (let attempt = 1; ; attempt += 1) {
		await page.waitForLoadState();
		try {
			return await page.evaluate(expression);
		} catch (error) {
			const isLeft = /context was destroyed|of null/.test((error as Error).message);
			if (!isLeft || attempt === 3) throw error;
		}
	}
}
