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

/** How a page is seen: the window's width, and the colours that its reader asks for. */
interface View {
	readonly width: number;
	readonly colorScheme?: "light" | "dark";
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

/** The same page, loaded once, in several views: what differs between them is style alone. */
export async function expectSoundIn(page: Page, views: readonly View[]): Promise<void> {
	for (const { width, colorScheme = "light" } of views) {
		await page.setViewportSize({ width, height: 800 });
		await page.emulateMedia({ colorScheme });
		await expectSound(page);
	}
}

/** Nothing wider than the screen, and nothing that axe-core finds. Axe runs by `evaluate`: pages allow no foreign script. */
export async function expectSound(page: Page): Promise<void> {
	const { wider, violations } = await look(page);
	const view = `${page.url()} at ${page.viewportSize()?.width} px`;
	expect(wider, `${view} is wider than the screen`).toBe(0);
	expect(violations.map((violation) => [view, ...violation])).toEqual([]);
}

/** Brings back what was found alone: all that axe-core tells takes longer to bring than to find. */
const LOOK = `(async () => {
	const { scrollWidth, clientWidth } = document.documentElement;
	const { violations } = await axe.run(document, { runOnly: ${JSON.stringify(RULES)}, resultTypes: ["violations"] });
	return { wider: scrollWidth - clientWidth, violations: violations.map(({ id, nodes }) => [id, nodes[0]?.html]) };
})()`;

/** A click does not wait for the page that it leads to: where that comes in between, once more on the new one. */
async function look(page: Page): Promise<{ wider: number; violations: [id: string, html: string | undefined][] }> {
	for (let attempt = 1; ; attempt += 1) {
		await page.waitForLoadState();
		try {
			if (!(await page.evaluate("'axe' in window"))) await page.evaluate(`${AXE}; 0`);
			return await page.evaluate(LOOK);
		} catch (error) {
			const isLeft = /context was destroyed|of null|axe is not defined/.test((error as Error).message);
			if (!isLeft || attempt === 3) throw error;
		}
	}
}
