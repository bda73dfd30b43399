/** What goes to a carrier: of one leg, small with many photos, without attachment, and as text for a web form that says no more. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { ORIGINS } from "../../src/calculations/origin/origins.ts";
import { english } from "../../src/texts/english.ts";
import { type Played, playScenario } from "../scenarios/play-scenario.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";
import { lacks, runTool } from "../setup/tools.ts";

const scenario = JSON.parse(readFileSync(new URL("../../demo-data/scenarios/s10a.json", import.meta.url), "utf8"));
const PHOTO = readFileSync(new URL("../../demo-data/pictures/parcel-closed.png", import.meta.url));
const REMARK = "One corner is pushed in. ".repeat(15).trim();
const PHOTOS = 60;

let shop: TestApp;
let played: Played;
let address: string;
beforeAll(async () => {
	shop = await testApp();
	played = await playScenario(shop, scenario);
	address = `/api/v1/orders/${played.orderId}`;
	const second = await shop.ask("POST", `${address}/consignments`, {
		direction: "to-repairer",
		facts: { mode: "road", bookedBy: "consignor", carrier: "Fernpost West", trackingNumber: "FW-77" },
	});
	expect(second.statusCode, second.body).toBe(201);
	await sealWithPhotos(second.json().id);
}, 60_000);
afterAll(async () => shop?.close());

/** Photos that differ by what follows their last byte. */
async function sealWithPhotos(legId: string): Promise<void> {
	const draft = (await shop.ask("POST", `/api/v1/consignments/${legId}/records`, { stage: "arrival" })).json();
	const exhibits: object[] = [];
	for (let n = 0; n < PHOTOS; n++) {
		const brought = await shop.app.inject({
			method: "POST",
			url: `/api/v1/records/${draft.id}/exhibits?fileName=photo-${n}.png`,
			headers: { authorization: `Bearer ${shop.token}`, "content-type": "image/png" },
			payload: Buffer.concat([PHOTO, Buffer.from(String(n))]),
		});
		expect(brought.statusCode, brought.body).toBeLessThan(300);
		exhibits.push({ sha256: brought.json().sha256, view: "parcel-closed" });
	}
	const content = {
		observedAt: "2026-05-02T10:00:00+02:00",
		state: "does-not-start",
		identity: { serialNumber: "BM12-40118" },
		parcel: { outerDamage: "seen", sealsIntact: false, remark: REMARK },
		exhibits,
	};
	const saved = await shop.ask("PUT", `/api/v1/records/${draft.id}`, content, { "if-match": '"v1"' });
	const sealed = await shop.ask("POST", `/api/v1/records/${draft.id}/seal`, undefined, {
		"if-match": String(saved.headers.etag),
	});
	expect(sealed.statusCode, sealed.body).toBe(200);
}

const pdfOf = async (leg?: number) => {
	const answer = await shop.ask(
		"GET",
		`${address}/report.pdf?edition=carrier${leg === undefined ? "" : `&leg=${leg}`}`,
	);
	expect(answer.statusCode, answer.body.slice(0, 300)).toBe(200);
	return answer.rawPayload;
};
const textOf = async (query = "") => (await shop.ask("GET", `${address}/carrier-text${query}`)).body;
const pageOf = async (query: string) =>
	(
		await shop.app.inject({
			method: "GET",
			url: `/orders/${played.orderId}/carrier-text${query}`,
			headers: { cookie: shop.sessionCookie },
		})
	).body;

describe("the report", () => {
	it(`of ${PHOTOS} photos is under 5 MB, one plain PDF: nothing attached, nothing inside a compressed stream of objects`, async () => {
		const bytes = await pdfOf();
		expect(bytes.length).toBeLessThan(5e6);
		// What the oldest readers and a mail program's preview can open: a table of places in plain, no object streams.
		const structure = bytes.toString("latin1");
		expect(structure).toMatch(/^%PDF-1\.[0-7]\n/);
		expect(structure).toMatch(/\nxref\n0 \d+\n/);
		for (const name of [
			"/ObjStm",
			"/XRef",
			"/EmbeddedFile",
			"/Filespec",
			"/JavaScript",
			"/Launch",
			"/Encrypt",
			"/AcroForm",
		])
			expect(structure.includes(name), name).toBe(false);
	});
	it.skipIf(lacks("pdftotext"))(
		"tells of one leg, the last that arrived where none is named, under the numbers of all",
		async () => {
			const last = textOfPdf(await pdfOf());
			const first = textOfPdf(await pdfOf(1));
			expect(last).toContain("Fernpost West");
			expect(first).not.toContain("Fernpost West");
			expect(last.match(/\bE\d+\b/g)?.length).toBe(PHOTOS);
			expect(first).not.toContain(REMARK.slice(0, 20));
		},
	);
	it("refuses a leg that is not there, and one for another edition, by name", async () => {
		for (const query of ["edition=carrier&leg=9", "edition=carrier&leg=0", "edition=parties&leg=1", "leg=1"]) {
			const answer = await shop.ask("GET", `${address}/report.pdf?${query}`);
			expect(answer.statusCode, query).toBe(400);
			expect(answer.json().errors[0].path).toBe("/leg");
		}
	});
});

describe("the text for a web form", () => {
	it("holds numbered facts in short lines: item, value and age, hand-over, pack, outside, notice, who may claim", async () => {
		const text = await textOf();
		const lines = text.trimEnd().split("\n");
		expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(72);
		const numbers = lines.flatMap((line) => /^(\d+)\. /.exec(line)?.[1] ?? []).map(Number);
		expect(numbers).toEqual(numbers.map((_, index) => index + 1));
		const titles = ["item", "hand-over", "pack", "outer", "notice", "entitled"] as const;
		const at = titles.map((title) => lines.indexOf(english[`report.carrier-${title}`]));
		expect(at.every((place) => place > 0)).toBe(true);
		expect(at).toEqual([...at].sort((a, b) => a - b));
		for (const fact of ["Item: Brookmere Heron 12", "Value, as the order says:", "Age:", "Tracking number: FW-77"])
			expect(text).toContain(fact);
		expect(text.replace(/\s+/g, " ")).toContain(REMARK);
	});
	it("and its page name no origin, nor the page about them, nor a position, a plan or a probability", async () => {
		for (const said of [await textOf(), await textOf("?leg=1"), await pageOf("?most=500")]) {
			const low = said.toLowerCase();
			for (const id of ORIGINS) {
				if (id.includes("-")) expect(low).not.toContain(id);
				expect(low).not.toContain(english[`origin.${id}`].toLowerCase());
			}
			expect(low).not.toContain(english["comparison-page.origin"].toLowerCase());
			expect(low).not.toContain("probab");
			for (const [key, words] of Object.entries(english)) {
				if (/^(origin\.finding-|pack\.verdict\.)/.test(key) && words.length > 9) expect(said).not.toContain(words);
			}
		}
	});
	it.each([500, 1000, 2000, 4000])(
		"is divided into parts of at most %i characters, no line torn or lost",
		async (most) => {
			const page = await pageOf(`?most=${most}`);
			const parts = [...page.matchAll(/<textarea[^>]*>([^<]*)<\/textarea>/g)].map(([, part = ""]) => unescaped(part));
			expect(parts.length).toBeGreaterThan(most < 4000 ? 1 : 0);
			for (const [index, part] of parts.entries()) {
				expect(part.length).toBeLessThanOrEqual(most);
				if (parts.length > 1) expect(part).toMatch(new RegExp(`^Part ${index + 1} of ${parts.length}\n`));
				expect(page).toContain(`${part.length} characters`);
			}
			const linesOf = (text: string) => text.split("\n").filter((line) => line !== "");
			expect(parts.flatMap((part) => linesOf(part).slice(parts.length > 1 ? 1 : 0))).toEqual(linesOf(await textOf()));
		},
	);
	it("is the shop's alone, the page too", async () => {
		const made = (await shop.ask("POST", "/api/v1/links", { scope: "settle", orderId: played.orderId })).json();
		const entered = await shop.app.inject({
			method: "POST",
			url: "/api/v1/links/enter",
			payload: { token: made.url.split("/").at(-1), code: made.code },
		});
		for (const url of [`${address}/carrier-text`, `/orders/${played.orderId}/carrier-text`]) {
			const headers = { cookie: `link=${entered.cookies[0]?.value}` };
			expect((await shop.app.inject({ method: "GET", url, headers })).statusCode, url).toBe(403);
		}
	});
});

function textOfPdf(bytes: Uint8Array): string {
	const folder = mkdtempSync(join(tmpdir(), "handover-risk-carrier-"));
	try {
		writeFileSync(join(folder, "report.pdf"), bytes);
		return runTool("pdftotext", ["-raw", join(folder, "report.pdf"), "-"]).said.replace(/\s+/g, " ");
	} finally {
		rmSync(folder, { recursive: true });
	}
}

/** The page writes these four marks as HTML asks. */
function unescaped(html: string): string {
	return html.replaceAll("&lt;", "<").replaceAll("&gt;", ">").replaceAll("&quot;", '"').replaceAll("&amp;", "&");
}
