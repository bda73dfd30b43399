/**
 * The page on which a foam is characterised by own drops. The table is made of half sines of a foam whose stress-energy set
 * is chosen here, so the set that the page says must be that one; the pulse's length follows from Δv = 2AT/π.
 */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { STANDARD_GRAVITY_M_PER_S2 as G } from "../../src/calculations/quantities.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";

let shop: TestApp;
beforeAll(async () => {
	shop = await testApp();
});
afterAll(async () => shop?.close());

const SET = { aKPa: 40, bPerKPa: 0.03 };
const [AREA_M2, THICKNESS_M, RESTITUTION, RATE_HZ, QUIET_S] = [0.01, 0.05, 0.3, 2000, 2];
const DROPS = [1.2, 1.2, 1.2, 2, 2, 2].map((massKg) => ({ massKg, heightM: massKg === 2 ? 0.8 : 0.5 }));

/** One table of all drops, each after two seconds of rest. */
function table(): string {
	const rows: number[] = [];
	for (const { massKg, heightM } of DROPS) {
		const stress = (massKg * G) / AREA_M2 / 1000;
		const peakGn = (SET.aKPa * Math.exp((SET.bPerKPa * stress * heightM) / THICKNESS_M)) / stress;
		const lengthS = ((1 + RESTITUTION) * Math.sqrt(2 * G * heightM) * Math.PI) / (2 * peakGn * G);
		for (let index = 0; index < QUIET_S * RATE_HZ; index += 1) rows.push(0);
		for (let index = 1; index / RATE_HZ < lengthS; index += 1)
			rows.push(peakGn * Math.sin((Math.PI * index) / RATE_HZ / lengthS));
	}
	for (let index = 0; index < QUIET_S * RATE_HZ; index += 1) rows.push(0);
	return `time [s],z [g]\n${rows.map((gn, index) => `${(index / RATE_HZ).toFixed(4)},${gn.toFixed(3)}\n`).join("")}`;
}

const FORM = {
	device: "recorder",
	thicknessMm: "50",
	lengthMm: "100",
	widthMm: "100",
	temperatureDegC: "22",
	fullScaleGn: "500",
	lines: DROPS.map(({ massKg, heightM }) => `${massKg}; ${1000 * heightM}; 1`).join("\n"),
};
const get = (url: string) => shop.app.inject({ method: "GET", url, headers: { cookie: shop.sessionCookie } });
const wordsOf = (html: string) => html.replace(/<[^>]+>/g, " ").replace(/\s+/g, " ");
const unescaped = (html: string) => html.replaceAll("&quot;", '"').replaceAll("&amp;", "&");

async function judge(change: Record<string, string> = {}, file: string | null = table()) {
	const formToken = /name="formToken" value="([^"]+)"/.exec((await get("/foam-drops")).body)?.[1] ?? "";
	const parts = Object.entries({ formToken, ...FORM, ...change }).map(
		([name, value]) => `--x\r\nContent-Disposition: form-data; name="${name}"\r\n\r\n${value}\r\n`,
	);
	const sent =
		file === null
			? ""
			: `--x\r\nContent-Disposition: form-data; name="file"; filename="drops.csv"\r\nContent-Type: text/csv\r\n\r\n${file}\r\n`;
	return shop.app.inject({
		method: "POST",
		url: "/foam-drops",
		headers: { cookie: shop.sessionCookie, "content-type": "multipart/form-data; boundary=x" },
		payload: `${parts.join("")}${sent}--x--\r\n`,
	});
}
async function keep(fields: Record<string, string>) {
	const formToken = /name="formToken" value="([^"]+)"/.exec((await get("/foam-drops")).body)?.[1] ?? "";
	return shop.app.inject({
		method: "POST",
		url: "/foam-drops/keep",
		headers: { cookie: shop.sessionCookie, "content-type": "application/x-www-form-urlencoded" },
		payload: new URLSearchParams({ formToken, ...fields }).toString(),
	});
}

describe("a foam by own drops", () => {
	it("gives the foam's set back, and puts it into the stock under a name; a name that is refused loses nothing", async () => {
		const page = await judge();
		expect(page.statusCode, wordsOf(page.body).slice(0, 600)).toBe(200);
		const [, a, b] = /a = ([\d.]+) kPa, b = ([\d.]+) 1\/kPa/.exec(wordsOf(page.body)) ?? [];
		// Peaks of half sines of 27 samples and more, and printed with four digits: within 1 %.
		expect(Math.abs(Number(a) / SET.aKPa - 1)).toBeLessThan(0.01);
		expect(Math.abs(Number(b) / SET.bPerKPa - 1)).toBeLessThan(0.01);
		const sheet = unescaped(/name="sheet" value="([^"]+)"/.exec(page.body)?.[1] ?? "");
		const nameless = await keep({ sheet, first: "" });
		expect(nameless.statusCode).toBe(400);
		expect(nameless.body).toMatch(/id="first-error"/);
		expect(unescaped(/name="sheet" value="([^"]+)"/.exec(nameless.body)?.[1] ?? "")).toBe(sheet);
		expect((await keep({ sheet, first: "Own foam" })).statusCode).toBe(303);
		const { foams } = (await shop.ask("GET", "/api/v1/stock")).json();
		expect(foams).toEqual([expect.objectContaining({ id: "Own foam", thicknessM: THICKNESS_M })]);
	});

	it.each([
		[{ thicknessMm: "0" }, "thicknessMm", "greater than 0"],
		[{ thicknessMm: "2 in" }, "thicknessMm", "is no number"],
		[{ temperatureDegC: "" }, "temperatureDegC", "missing"],
		[{ lines: "1,2; 500" }, "lines", "1"],
		[{ lines: "1,2; 500; 1" }, "lines", "6"],
	])("tells %j beside its field and keeps what was typed", async (change, field, message) => {
		const page = await judge(change);
		expect(page.statusCode).toBe(400);
		const error = new RegExp(`id="${field}-error">([^<]*)<`).exec(page.body)?.[1];
		expect(error, wordsOf(page.body).slice(0, 600)).toContain(message);
		expect(page.body).toContain('value="500"');
	});

	it("refuses a file that is none, and what no page of ours sends, without a 500", async () => {
		expect((await judge({}, null)).statusCode).toBe(400);
		expect((await judge({}, "hello")).statusCode).toBe(400);
		for (const sheet of ["", "{", "[]", '{"foam":{"points":[]},"thicknessM":0}'])
			expect((await keep({ sheet, first: "x" })).statusCode).toBe(400);
	});
});
