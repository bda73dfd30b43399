/** The page on which a pack is planned and sealed. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type TestApp, testApp } from "../setup/test-app.ts";
import { customerScene, type Scene } from "./customer-scene.ts";

let shop: TestApp;
let scene: Scene;
let path: string;
beforeAll(async () => {
	shop = await testApp();
	scene = await customerScene(shop);
	path = `/consignments/${scene.legId}/packaging`;
});
afterAll(async () => shop?.close());

/** The check case as a person types it. */
const CARD = {
	"item.massKg": "2",
	"item.lengthMm": "270",
	"item.widthMm": "110",
	"item.heightMm": "40",
	"item.gn": "50",
	"item.basis": "maker",
	"item.cell": "none",
	"item.edgesPadded": "yes",
	"cushion.foam": "pe-plank-23c",
	"cushion.thicknessMm": "50,8",
	"bag.1.kind": "shielding-metal-in",
	"bag.1.closed": "yes",
	"bag.1.intact": "yes",
	"bag.1.evidence": "data-sheet",
	"box.lengthMm": "380",
	"box.widthMm": "220",
	"box.heightMm": "150",
	"route.dropBasis": "our-choice-762",
	"route.mode": "road",
	"route.transitDays": "2",
};
const get = (url: string) => shop.app.inject({ method: "GET", url, headers: { cookie: shop.sessionCookie } });
async function post(form: Record<string, string>) {
	const token = /name="formToken" value="([^"]+)"/.exec((await get(path)).body)?.[1] ?? "";
	return shop.app.inject({
		method: "POST",
		url: path,
		headers: { cookie: shop.sessionCookie, "content-type": "application/x-www-form-urlencoded" },
		payload: new URLSearchParams({ formToken: token, act: "plan", ...form }).toString(),
	});
}
const wordsOf = (html: string) => html.replace(/<[^>]+>/g, " ").replace(/\s+/g, " ");
const hidden = (html: string, name: string) => new RegExp(`name="${name}" value="([^"]+)"`).exec(html)?.[1] ?? "";
async function sealedCount(): Promise<number> {
	const [row] = await shop.db.database.query<{ count: string }>("SELECT count(*) FROM packaging_assessment");
	return Number(row?.count);
}

describe("planning a pack", () => {
	it("leads with what is assessed, draws each cushion, and names what is missing", async () => {
		const page = await post(CARD);
		expect(page.statusCode, page.body).toBe(200);
		const words = wordsOf(page.body);
		expect(words).toContain("The design drop is 0.762 m.");
		expect(words).toContain("Use smaller pads, or a softer foam.");
		expect(words).toContain("120.3 gₙ, between 96.39 and 149.2 gₙ");
		expect(words).toContain("outside the checked range of 33 to 99 kJ/m³");
		expect(words).toMatch(/Corner and edge drops falls short/);
		expect(words).toContain("Would add to it: Temperature");
		expect(words).toContain("per drop, not per trip");
		const drawn = (id: string) => page.body.match(new RegExp(`role="img" aria-labelledby="${id}-`, "g"))?.length;
		expect({
			curves: drawn("curve"),
			thickness: drawn("thickness"),
			sections: drawn("section"),
			margins: drawn("margin"),
		}).toEqual({ curves: 3, thickness: 3, sections: 2, margins: 9 });
		expect(page.body).not.toMatch(/ style=/);
		// Beside the verdicts, every source with how well it is known.
		expect(words).toMatch(/\(published\)/);
		expect(await sealedCount()).toBe(0);
	});

	it.each([
		[{ "item.massKg": "two" }, "item.massKg", "“two” is no number"],
		[{ "cushion.thicknessMm": "" }, "cushion.thicknessMm", "This is missing"],
		[
			{ "cushion.padCount": "2,5", "cushion.padLengthMm": "50", "cushion.padWidthMm": "50" },
			"cushion.padCount",
			"whole number",
		],
		[{ "cushion.padCount": "4" }, "cushion.padLengthMm", "This is missing"],
		[{ "face.left.foam": "pe-27-first", "face.left.thicknessMm": "-5" }, "face.left.thicknessMm", "too small"],
		[{ "cushion.foam": "own", "cushion.aKPa": "60" }, "cushion.bPerKPa", "both numbers"],
		[
			{ "cushion.foam": "own", "cushion.aKPa": "1", "cushion.bPerKPa": "0,001" },
			"cushion.bPerKPa",
			"better than any foam",
		],
		[{ "cushion.foam": "no-such-foam" }, "cushion.foam", ""],
		[{ "route.dropBasis": "nobody" }, "route.dropBasis", ""],
	])("tells %j beside its field and keeps what was typed", async (change, field, message) => {
		const page = await post({ ...CARD, ...change });
		expect(page.statusCode).toBe(400);
		const error = new RegExp(`id="${field.replaceAll(".", "\\.")}-error">([^<]*)<`).exec(page.body)?.[1];
		expect(error, wordsOf(page.body).slice(0, 600)).toBeDefined();
		expect(error).toContain(message);
		expect(page.body).toContain(
			'name="box.lengthMm" type="text" class="long" inputmode="decimal" autocomplete="off" value="380"',
		);
	});

	it("takes pads, other faces, a set of one's own and a foam of which nothing is known", async () => {
		const pads = { "cushion.padCount": "4", "cushion.padLengthMm": "40", "cushion.padWidthMm": "28" };
		expect(wordsOf((await post({ ...CARD, ...pads })).body)).toContain("4.378 kPa");
		const left = { "face.left.foam": "unknown", "face.left.thicknessMm": "10" };
		expect(wordsOf((await post({ ...CARD, ...left })).body)).toContain(
			"at this thickness no cushion can stay below 76.2 gₙ",
		);
		const own = { "cushion.foam": "own", "cushion.aKPa": "68,04", "cushion.bPerKPa": "0,01566" };
		const page = wordsOf((await post({ ...CARD, ...own })).body);
		expect(page).toContain("Your own set, without a prediction interval.");
		expect(page).toContain("120.3 gₙ");
	});

	it("takes a face without a cushion, and a bag that was used before and stapled", async () => {
		const bare = wordsOf((await post({ ...CARD, "face.left.foam": "no-cushion" })).body);
		expect(bare).toContain("The left has no cushion.");
		const stapled = wordsOf((await post({ ...CARD, "bag.1.stapled": "yes", "bag.1.reused": "yes" })).body);
		expect(stapled).toContain("No closed, intact layer shields against a discharge");
		const used = wordsOf((await post({ ...CARD, "bag.1.reused": "yes" })).body);
		expect(used).toContain("A bag that was used before needs a look for holes and creases");
	});

	it("warns of lithium where there is a cell", async () => {
		const page = await post({ ...CARD, "item.cell": "lithium-ion" });
		expect(page.body).toMatch(/class="caution"[^>]*>.*?Lithium cells are dangerous goods/s);
	});
});

describe("sealing the pack as shipped", () => {
	it("says who will see it, seals what was looked at, once, and shows it to both sides", async () => {
		const planned = await post(CARD);
		expect(wordsOf(planned.body)).toContain("Both parties and everyone with a link to this order can read it.");
		const sealing = {
			...CARD,
			act: "seal",
			seen: hidden(planned.body, "seen"),
			sealKey: hidden(planned.body, "sealKey"),
		};
		const first = await post(sealing);
		const again = await post(sealing);
		expect([first.statusCode, again.statusCode]).toEqual([303, 303]);
		expect(first.headers.location).toBe(again.headers.location);
		expect(await sealedCount()).toBe(1);
		expect(wordsOf((await get(String(first.headers.location))).body)).toContain("The pack as shipped is sealed");
		expect(wordsOf((await get(`/orders/${scene.orderId}`)).body)).toMatch(/Pack as shipped sealed .*: falls short\./);

		const entered = await shop.app.inject({
			method: "POST",
			url: "/api/v1/links/enter",
			payload: { token: scene.link.url.split("/").at(-1), code: scene.link.code },
		});
		const seen = await shop.app.inject({
			method: "GET",
			url: `/orders/${scene.orderId}/consignments/${scene.legId}/pack`,
			headers: { cookie: `link=${entered.cookies[0]?.value}` },
		});
		expect(seen.statusCode).toBe(200);
		expect(wordsOf(seen.body)).toContain("50.8 mm, over the whole face");
		expect(seen.body.match(/aria-labelledby="curve-/g)).toHaveLength(3);
	});

	it("seals nothing that was changed after it was computed", async () => {
		const before = await sealedCount();
		const planned = await post(CARD);
		const changed = await post({ ...CARD, "item.massKg": "1", act: "seal", seen: hidden(planned.body, "seen") });
		expect(changed.statusCode).toBe(409);
		expect(wordsOf(changed.body)).toContain("Nothing was sealed");
		expect(await sealedCount()).toBe(before);
	});
});
