/** The customer's pages on a real database: entry by link, saving step by step, photos, seal, receipt, sheets, comparison. */
import { randomBytes } from "node:crypto";
import { readFileSync } from "node:fs";
import type { LightMyRequestResponse } from "fastify";
import pg from "pg";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { entriesIn } from "../setup/receipt-entries.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";
import { customerScene, type Scene } from "./customer-scene.ts";

let shop: TestApp;
beforeAll(async () => {
	shop = await testApp();
});
afterAll(async () => shop?.close());

const scene = () => customerScene(shop);

/** Invented, in the form that `lspci -vv` writes: 8 of 16 lanes under load, the path to the root port in it. */
const OUTPUT = new URL("../../demo-data/outputs/card-arrival-load.txt", import.meta.url);
const PNG = Buffer.from(
	"iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==",
	"base64",
);

const pathOf = (link: { readonly url: string }) => new URL(link.url).pathname;

function postForm(url: string, fields: Readonly<Record<string, string>>, cookie = ""): Promise<LightMyRequestResponse> {
	return shop.app.inject({
		method: "POST",
		url,
		headers: { "content-type": "application/x-www-form-urlencoded", ...(cookie === "" ? {} : { cookie }) },
		payload: new URLSearchParams(fields).toString(),
	});
}

function postParts(
	url: string,
	fields: Readonly<Record<string, string>>,
	files: readonly { readonly field: string; readonly name: string; readonly bytes: Buffer }[],
	cookie: string,
): Promise<LightMyRequestResponse> {
	const boundary = `----test${randomBytes(8).toString("hex")}`;
	const parts = [
		...Object.entries(fields).map(([name, value]) =>
			Buffer.from(`--${boundary}\r\nContent-Disposition: form-data; name="${name}"\r\n\r\n${value}\r\n`),
		),
		...files.flatMap(({ field, name, bytes }) => [
			Buffer.from(
				`--${boundary}\r\nContent-Disposition: form-data; name="${field}"; filename="${name}"\r\nContent-Type: application/octet-stream\r\n\r\n`,
			),
			bytes,
			Buffer.from("\r\n"),
		]),
		Buffer.from(`--${boundary}--\r\n`),
	];
	return shop.app.inject({
		method: "POST",
		url,
		headers: { "content-type": `multipart/form-data; boundary=${boundary}`, cookie },
		payload: Buffer.concat(parts),
	});
}

/** Someone who has entered by a link. */
async function enter(made: Scene) {
	const entered = await postForm(pathOf(made.link), { code: made.link.code });
	expect(entered.statusCode, entered.body).toBe(303);
	const cookie = `link=${entered.cookies.find(({ name }) => name === "link")?.value}`;
	const get = (url: string) => shop.app.inject({ method: "GET", url, headers: { cookie } });
	/** A step's form as the page shows it: hidden fields included. */
	const hidden = async (step: string) => {
		const { body } = await get(`/guided/${made.recordId}/${step}`);
		const value = (name: string) => new RegExp(`name="${name}" value="([^"]*)"`).exec(body)?.[1] ?? "";
		return { formToken: value("formToken"), version: value("version") };
	};
	const post = async (step: string, fields: Readonly<Record<string, string>>) =>
		postForm(`/guided/${made.recordId}/${step}`, { ...(await hidden(step)), act: "next", ...fields }, cookie);
	const content = async () =>
		(await shop.ask("GET", `/api/v1/records/${made.recordId}`)).json().content as Record<string, never>;
	return { cookie, get, hidden, post, content };
}

describe("coming in by a link", () => {
	it("says in words why a code is not taken, how many tries are left, and that the link is locked", async () => {
		const made = await scene();
		const path = pathOf(made.link);
		const first = await shop.app.inject({ method: "GET", url: path });
		expect(first.statusCode).toBe(200);
		expect(first.headers["cache-control"]).toBe("no-store");
		expect((await postForm(path, { code: "12345" })).statusCode).toBe(400);
		const wrongCode = made.link.code === "000000" ? "000001" : "000000";
		const wrong = await postForm(path, { code: wrongCode });
		expect(wrong.statusCode).toBe(401);
		expect(wrong.body).toContain("You have 4 tries left");
		for (let tries = 0; tries < 4; tries += 1) await postForm(path, { code: wrongCode });
		const locked = await postForm(path, { code: made.link.code });
		expect(locked.statusCode).toBe(429);
		expect(locked.headers["retry-after"]).toBeDefined();
		expect(locked.body).toContain("Wait 15 minutes");
	});

	it("says what each kind of link opens; only a record's asks for photos first, and whoever settles finds the papers", async () => {
		const made = await scene();
		const linkOf = async (scope: "settle" | "reader") =>
			(await shop.ask("POST", "/api/v1/links", { scope, orderId: made.orderId })).json() as Scene["link"];
		const entry = async (link: Scene["link"]) => (await shop.app.inject({ method: "GET", url: pathOf(link) })).body;
		expect(await entry(made.link)).toMatch(/It opens one record.*Take photos of it/s);
		const settle = await linkOf("settle");
		for (const [link, words] of [
			[settle, "Here you say your piece"],
			[await linkOf("reader"), "to read along"],
		] as const) {
			const body = await entry(link);
			expect(body).toContain(words);
			expect(body).not.toMatch(/It opens one record|Take photos of it/);
			const wrong = await postForm(pathOf(link), { code: "1" });
			expect(wrong.body).toContain(words);
		}
		const papers = `href="/orders/${made.orderId}/papers"`;
		const owner = await enter({ ...made, link: settle });
		expect((await owner.get(`/orders/${made.orderId}/positions`)).body).toContain(papers);
		expect((await owner.get(`/orders/${made.orderId}/papers`)).statusCode).toBe(200);
		expect((await owner.get("/")).headers.location).toBe(`/orders/${made.orderId}/positions`);
		const one = await enter(made);
		expect((await one.get(`/orders/${made.orderId}/positions`)).body).not.toContain(papers);
		expect((await one.get("/")).headers.location).toBe(`/guided/${made.recordId}`);
	});

	it("takes the code with spaces", async () => {
		const made = await scene();
		const { code } = made.link;
		expect((await postForm(pathOf(made.link), { code: `${code.slice(0, 3)} ${code.slice(3)}` })).statusCode).toBe(303);
	});

	it("tells an unknown, a withdrawn and an expired link apart", async () => {
		const unknown = await shop.app.inject({ method: "GET", url: `/l/${"A".repeat(43)}` });
		expect(unknown.statusCode).toBe(404);
		expect(unknown.body).toContain("There is no such link");
		const withdrawn = await scene();
		await shop.ask("DELETE", `/api/v1/links/${withdrawn.link.id}`);
		const gone = await shop.app.inject({ method: "GET", url: pathOf(withdrawn.link) });
		expect(gone.statusCode).toBe(404);
		expect(gone.body).toContain("The link was withdrawn");
		const expired = await scene();
		const owner = new pg.Client({ connectionString: shop.db.ownerUrl });
		await owner.connect();
		await owner.query("UPDATE link SET expires_at = now() - interval '73 hours' WHERE id = $1", [expired.link.id]);
		await owner.end();
		const over = await shop.app.inject({ method: "GET", url: pathOf(expired.link) });
		expect(over.statusCode).toBe(403);
		expect(over.body).toContain("The link has expired");
		for (const page of [unknown, gone, over]) expect(page.headers["content-type"]).toContain("text/html");
	});

	it("takes no files from someone unknown", async () => {
		const made = await scene();
		const sent = await postParts(
			pathOf(made.link),
			{ code: made.link.code },
			[{ field: "x", name: "x.png", bytes: PNG }],
			"",
		);
		expect(sent.statusCode).toBe(415);
	});

	it("opens nothing of another order, and nothing without a link", async () => {
		const [mine, other] = [await scene(), await scene()];
		const me = await enter(mine);
		expect((await me.get(`/guided/${other.recordId}`)).statusCode).toBe(404);
		expect((await me.get(`/orders/${other.orderId}/consignments/${other.legId}/comparison`)).statusCode).toBe(404);
		expect((await me.get(`/orders/${mine.orderId}/consignments/${mine.legId}/slip`)).statusCode).toBe(403);
		expect((await shop.app.inject({ method: "GET", url: `/guided/${mine.recordId}` })).statusCode).toBe(401);
	});
});

describe("saving step by step", () => {
	it("begins with the closed parcel and comes back to where it was left", async () => {
		const made = await scene();
		const me = await enter(made);
		expect((await me.get(`/guided/${made.recordId}`)).headers.location).toBe(`/guided/${made.recordId}/parcel-closed`);
		const saved = await me.post("parcel-closed", { "parcel.outerDamage": "seen" });
		expect(saved.headers.location).toBe(`/guided/${made.recordId}/parcel-facts`);
		expect((await me.get(`/guided/${made.recordId}`)).headers.location).toBe(`/guided/${made.recordId}/parcel-facts`);
		expect((await me.get(`/guided/${made.recordId}/no-such-step`)).statusCode).toBe(404);
	});

	it("keeps the good answers, gives every typed one back, and escapes it", async () => {
		const made = await scene();
		const me = await enter(made);
		const bad = await me.post("parcel-facts", {
			"parcel.mass": '2" <b>kg',
			"parcel.sealsIntact": "yes",
			"parcel.inHandAt": "2026-03-04T18:30",
		});
		expect(bad.statusCode).toBe(400);
		expect(bad.body).toContain('value="2&quot; &lt;b>kg"');
		expect(bad.body).toContain('value="2026-03-04T18:30"');
		expect(bad.body).toContain("Choose what your clock shows");
		expect(await me.content()).toEqual({ parcel: { sealsIntact: true } });
		await me.post("parcel-closed", { "parcel.remark": "<script>alert(1)</script>" });
		const review = await me.get(`/guided/${made.recordId}/review`);
		expect(review.body).toContain("&lt;script>alert(1)");
		expect(review.body).not.toContain("<script>");
	});

	it("says it when the draft was saved elsewhere, and loses nothing of either side", async () => {
		const made = await scene();
		const me = await enter(made);
		const { formToken, version } = await me.hidden("identity");
		await me.post("parcel-closed", { "parcel.outerDamage": "seen" });
		const stale = await postForm(
			`/guided/${made.recordId}/identity`,
			{ formToken, version, act: "next", "identity.serialNumber": "OW24-7731-C" },
			me.cookie,
		);
		expect(stale.statusCode).toBe(409);
		expect(stale.body).toContain('value="OW24-7731-C"');
		expect(await me.content()).toEqual({ parcel: { outerDamage: "seen" } });
		const again = await me.post("identity", { "identity.serialNumber": "OW24-7731-C" });
		expect(again.statusCode).toBe(303);
	});

	it("refuses a form that does not come from our page", async () => {
		const made = await scene();
		const me = await enter(made);
		const forged = await postForm(`/guided/${made.recordId}/identity`, { version: "1", act: "next" }, me.cookie);
		expect(forged.statusCode).toBe(403);
		expect(forged.headers["content-type"]).toContain("text/html");
	});

	it("counts a wait without a time in hand from the entry of the temperatures, which other saves do not move", async () => {
		const made = await scene();
		const me = await enter(made);
		const cold = { "setUp.ambient": "20", "setUp.ambient.unit": "degC", "parcel.temperature": "-5" };
		const noted = async () =>
			((await me.content()) as { parcel?: { temperaturesNotedAt?: string } }).parcel?.temperaturesNotedAt ?? "";
		await me.post("wait", { ...cold, "parcel.temperature.unit": "degC" });
		const at = await noted();
		expect((await me.get(`/guided/${made.recordId}/wait`)).body).toContain("when you entered the temperatures");
		await me.post("wait", { ...cold, "parcel.temperature.unit": "degC", "setUp.humidity": "40" });
		await me.post("parcel-closed", { "parcel.outerDamage": "none-seen" });
		expect(await noted()).toBe(at);
		const { content, version } = (await shop.ask("GET", `/api/v1/records/${made.recordId}`)).json();
		const sent = { ...content, parcel: { ...content.parcel, temperaturesNotedAt: "2020-01-01T00:00:00Z" } };
		const saved = await shop.app.inject({
			method: "PUT",
			url: `/api/v1/records/${made.recordId}`,
			headers: { cookie: me.cookie, "if-match": `"v${version}"` },
			payload: sent,
		});
		expect(saved.statusCode, saved.body).toBe(200);
		expect(await noted()).toBe(at);
		await me.post("wait", { ...cold, "parcel.temperature": "-6", "parcel.temperature.unit": "degC" });
		expect(Date.parse(await noted())).toBeGreaterThan(Date.parse(at));
	});

	it("warns of another serial number, and of a stop sign on every later step", async () => {
		const made = await scene();
		const me = await enter(made);
		await me.post("identity", { "identity.serialNumber": "OW24-0000-X" });
		expect((await me.get(`/guided/${made.recordId}/visual`)).body).toContain("not the one in the order");
		await me.post("identity", { "identity.serialNumber": "ow24 7731 c" });
		expect((await me.get(`/guided/${made.recordId}/visual`)).body).not.toContain("not the one in the order");
		await me.post("first-power-on", {
			"firstPowerOn.stopSigns.smell-or-smoke": "yes",
			"check.starts-cold.trials": "1",
			"check.starts-cold.successes": "0",
		});
		const checks = await me.get(`/guided/${made.recordId}/checks`);
		expect(checks.body).toContain("Do not switch it on again");
		expect(checks.body).toMatch(/<option selected value="stop-sign"|<option value="stop-sign" selected/);
		expect((await me.content()).readings).toEqual([
			{ check: "starts-cold", condition: "cold", trials: 1, successes: 0 },
		]);
	});

	it("takes a crack for a stop sign that nobody ticked: no step asks for power, and no second computer is offered", async () => {
		const made = await scene();
		const me = await enter(made);
		const pages = async () =>
			Promise.all(
				["before-power", "first-power-on", "checks", "review"].map(
					async (step) => (await me.get(`/guided/${made.recordId}/${step}`)).body,
				),
			);
		const [before, first] = await pages();
		expect(before).toContain("Try it now in the same slot");
		expect(first).toContain("Switch on, keep your hand near the switch");
		await me.post("visual", { "check.visual-cracks.result": "bad" });
		await me.post("result", {
			state: "does-not-start",
			"setUp.platforms": "1",
			observedAt: "2026-03-05T18:00",
			clock: "+01:00",
		});
		expect(await me.content()).toMatchObject({ state: "does-not-start" });
		for (const body of await pages()) {
			// Nobody told that it had power.
			expect(body).toContain("Do not switch it on.</strong>");
			expect(body).toContain("For “No cracks”, what you found is not as it should be. That counts as a stop sign");
			expect(body).not.toMatch(/Before you switch it on|Switching it on for the first time|Not as it should be:/);
			expect(body).not.toMatch(
				/Try it now|Switch on, keep|Change one thing at a time|Do what you can|second computer of another/,
			);
		}
		const [, after, checks] = await pages();
		expect(after).toContain("The board gets no power now");
		for (const body of [after, checks]) expect(body).toMatch(/<details><summary>Checks that need power: [1-9]/);
		expect(checks).toContain("that is never held against you");
		expect(checks).not.toMatch(/turning fans|hot enough to burn/);
		for (const body of [after, checks])
			expect(body).toMatch(/<option selected value="stop-sign"|<option value="stop-sign" selected/);
	});

	it("asks for no power where the board is another one than the order's", async () => {
		const made = await scene();
		const me = await enter(made);
		await me.post("identity", { "identity.serialNumber": "OW24-0000-X" });
		const { body } = await me.get(`/guided/${made.recordId}/first-power-on`);
		expect(body).toContain("not the one in the order");
		expect(body).not.toContain("Switch on, keep your hand");
	});

	it("takes no parcel above a tonne, in whatever unit, and asks about one that is odd", async () => {
		const made = await scene();
		const me = await enter(made);
		const weigh = (value: string, unit: string) =>
			me.post("parcel-facts", { "parcel.mass": value, "parcel.mass.unit": unit });
		for (const [value, unit, most] of [
			["99999", "kg", 1000],
			["1000001", "g", 1_000_000],
			["2205", "lb", 2204],
		] as const) {
			const refused = await weigh(value, unit);
			expect(refused.statusCode).toBe(400);
			expect(refused.body).toContain(`the most is ${most}`);
		}
		expect(await me.content()).toEqual({});
		const board = await me.post("visual", { "check.mass.value": "250", "check.mass.value.unit": "kg" });
		expect(board.body).toContain("the most is 200");
		await me.post("visual", { "check.mass.value": "1.4", "check.mass.value.unit": "kg" });
		const page = async () => (await me.get(`/guided/${made.recordId}/wait`)).body;
		expect(await page()).not.toMatch(/would weigh/);
		await weigh("1400", "g");
		expect(await page()).not.toMatch(/would weigh/);
		await weigh("1399", "g");
		expect(await page()).toContain("would weigh less than the board alone");
		await weigh("71", "kg");
		expect(await page()).toContain("would weigh more than 70 kg");
		const at = async () => (await shop.ask("GET", `/api/v1/records/${made.recordId}`)).json().version;
		for (const [parcel, path, code] of [
			[{ mass: { value: 99_999, unit: "kg" } }, "/parcel/mass", "parcel-too-heavy"],
			[{ mass: { value: 5, unit: "V" } }, "/parcel/mass", "not-a-mass"],
			[{ mass: { value: 0, unit: "kg" } }, "/parcel/mass", "not-a-mass"],
			[{ mass: { value: -5, unit: "kg" } }, "/parcel/mass", "not-a-mass"],
			[{ temperature: { value: 5, unit: "kg" } }, "/parcel/temperature", "not-a-temperature"],
		] as const) {
			const api = { observedAt: "2026-03-05T18:00:00+01:00", state: "good", parcel };
			await shop.ask("PUT", `/api/v1/records/${made.recordId}`, api, { "if-match": `"v${await at()}"` });
			const sealed = await shop.ask("POST", `/api/v1/records/${made.recordId}/seal`, undefined, {
				"if-match": `"v${await at()}"`,
			});
			expect(sealed.statusCode).toBe(400);
			expect(sealed.json().errors).toContainEqual(expect.objectContaining({ path, code }));
		}
	});

	it("leads from what was sealed to the taker's photos, also when the link is used again", async () => {
		const made = await scene();
		const me = await enter(made);
		await postParts(
			`/guided/${made.recordId}/parcel-closed`,
			{ ...(await me.hidden("parcel-closed")), act: "stay", "photos.view": "parcel-closed" },
			[{ field: "photos.files", name: "closed.png", bytes: PNG }],
			me.cookie,
		);
		await me.post("identity", { "identity.serialNumber": "OW24-7731-C" });
		await me.post("result", { state: "good", observedAt: "2026-03-05T18:00", clock: "+01:00" });
		await me.post("review", { act: "seal", confirm: "yes" });
		const photo = `href="/records/${made.recordId}/exhibits/`;
		const again = await enter(made);
		const start = await again.get(`/guided/${made.recordId}`);
		expect(start.headers.location).toBe(`/guided/${made.recordId}/receipt`);
		const receipt = (await again.get(`/guided/${made.recordId}/receipt`)).body;
		expect(receipt).toContain("Your photos and files");
		expect(receipt).toContain(photo);
		const comparison = `/orders/${made.orderId}/consignments/${made.legId}/comparison`;
		expect((await again.get(comparison)).body).toContain(photo);
		const reader = (await shop.ask("POST", "/api/v1/links", { scope: "reader", orderId: made.orderId })).json();
		const reading = await enter({ ...made, link: reader });
		expect((await reading.get(comparison)).body).not.toContain("Your photos and files");
	});

	it("refuses times that cannot be where they are typed, and names those that do not fit at the seal, with their step", async () => {
		const made = await scene();
		const me = await enter(made);
		const clock = "+01:00";
		const future = await me.post("parcel-facts", { "parcel.deliveredAt": "2099-01-01T10:00", clock });
		expect(future.statusCode).toBe(400);
		expect(future.body).toContain("When was it delivered? This time has not come yet.");
		expect(future.body).toContain('href="#parcel.deliveredAt"');
		const before = await me.post("result", { state: "good", observedAt: "2025-01-01T10:00", clock });
		expect(before.statusCode).toBe(400);
		expect(before.body).toContain("before the departure record says");
		expect(await me.content()).toEqual({ state: "good" });
		await me.post("result", { state: "good", observedAt: "2026-03-05T18:00", clock });
		await me.post("identity", { "identity.serialNumber": "OW24-7731-C" });
		await me.post("parcel-facts", { "parcel.deliveredAt": "2026-03-09T10:00", clock });
		for (const page of [
			await me.get(`/guided/${made.recordId}/review`),
			await me.post("review", { act: "seal", confirm: "yes" }),
		]) {
			expect(page.body).toContain(
				`<a href="/guided/${made.recordId}/result#observedAt">When did you see it in this state?</a>`,
			);
			expect(page.body).toContain("seen more than a day before it was delivered");
			expect(page.body).not.toContain("/observedAt");
		}
		const refused = await shop.ask("POST", `/api/v1/records/${made.recordId}/seal`, undefined, {
			"if-match": `"v${(await shop.ask("GET", `/api/v1/records/${made.recordId}`)).json().version}"`,
		});
		expect(refused.statusCode).toBe(400);
		expect(refused.body).toContain("/observedAt");
		await me.post("parcel-facts", { "parcel.deliveredAt": "2026-03-05T10:00", clock });
		const sealed = await me.post("review", { act: "seal", confirm: "yes" });
		expect(sealed.headers.location).toBe(`/guided/${made.recordId}/receipt`);
	});

	it("refuses a leg's times that have not come or lie in no possible order", async () => {
		const { legId } = await scene();
		const put = (facts: object) =>
			shop.ask(
				"PUT",
				`/api/v1/consignments/${legId}`,
				{ mode: "road", bookedBy: "consignor", ...facts },
				{ "if-match": '"v1"' },
			);
		const refused = async (facts: object) =>
			(await put(facts)).json().errors?.map((one: { path: string; code: string }) => [one.path, one.code]);
		expect(await refused({ deliveredAt: "2099-01-01T10:00:00Z" })).toEqual([["/deliveredAt", "in-the-future"]]);
		expect(await refused({ dispatchedAt: "2026-03-25T10:00:00Z", deliveredAt: "2026-03-24T10:00:00Z" })).toEqual([
			["/deliveredAt", "delivered-before-dispatched"],
		]);
		expect(await refused({ deliveredAt: "2026-03-24T10:00:00Z", inHandAt: "2026-03-24T09:00:00Z" })).toEqual([
			["/inHandAt", "in-hand-before-delivered"],
		]);
		const inHandAt = "2099-01-01T10:00:00Z";
		expect(
			await refused({ dispatchedAt: "2026-03-25T10:00:00Z", deliveredAt: "2026-03-24T10:00:00Z", inHandAt }),
		).toEqual([
			["/inHandAt", "in-the-future"],
			["/deliveredAt", "delivered-before-dispatched"],
		]);
		const kept = await put({ dispatchedAt: "2026-03-23T10:00:00Z", deliveredAt: "2026-03-24T10:00:00Z" });
		expect(kept.statusCode, kept.body).toBe(200);
	});

	it("keeps photos by the step they show, refuses one file alone, and takes one out again", async () => {
		const made = await scene();
		const me = await enter(made);
		const file = (name: string, bytes: Buffer) => ({ field: "photos.files", name, bytes });
		const sent = await postParts(
			`/guided/${made.recordId}/parcel-closed`,
			{
				...(await me.hidden("parcel-closed")),
				act: "stay",
				"parcel.outerDamage": "seen",
				"photos.view": "parcel-damage",
				"photos.note": "left corner",
			},
			[
				file("one.png", PNG),
				file("../../two.png", Buffer.concat([PNG, Buffer.from("2")])),
				file("program.bin", Buffer.from([0, 1, 2, 0, 255])),
				file("film.png", Buffer.concat([PNG, Buffer.alloc(20 * 1024 * 1024)])),
			],
			me.cookie,
		);
		expect(sent.statusCode).toBe(400);
		expect(sent.body).toContain("program.bin was not added");
		expect(sent.body).toContain("film.png was not added: it is larger than 20 MB");
		const content = (await me.content()) as unknown as { exhibits: { sha256: string; view: string; note: string }[] };
		expect(content).toMatchObject({ parcel: { outerDamage: "seen" } });
		expect(content.exhibits.map(({ view, note }) => [view, note])).toEqual([
			["parcel-damage", "left corner"],
			["parcel-damage", "left corner"],
		]);
		const page = await me.get(`/guided/${made.recordId}/parcel-closed`);
		const [first] = content.exhibits;
		expect(page.body).toContain(`href="/records/${made.recordId}/exhibits/${first?.sha256}"`);
		expect((await me.get(`/api/v1/exhibits/${first?.sha256}`)).statusCode).toBe(200);
		await me.post("parcel-closed", {
			act: "stay",
			"parcel.outerDamage": "seen",
			"photos.remove": `${first?.sha256} parcel-damage`,
		});
		expect((await me.content()).exhibits).toHaveLength(1);
	});

	it("keeps a file whose format is not read, and says so", async () => {
		const made = await scene();
		const me = await enter(made);
		const sent = await postParts(
			`/guided/${made.recordId}/file`,
			{ ...(await me.hidden("file")), act: "stay", "file.load": "load" },
			[{ field: "file.upload", name: "notes.txt", bytes: Buffer.from("it stays dark") }],
			me.cookie,
		);
		expect(sent.statusCode, sent.body).toBe(200);
		expect(sent.body).toContain("notes.txt is kept as it is");
		expect((await me.content()).exhibits).toMatchObject([{ view: "diagnostic-output" }]);
	});
});

it("says it where more files come at once than are taken", async () => {
	const made = await scene();
	const me = await enter(made);
	const files = Array.from({ length: 21 }, (_, index) => ({ field: "photos.files", name: `${index}.png`, bytes: PNG }));
	const sent = await postParts(`/guided/${made.recordId}/visual`, await me.hidden("visual"), files, me.cookie);
	expect(sent.statusCode).toBe(413);
	expect(sent.body).toContain("At most 20 files are taken at once");
});

it("reads a diagnostic file into the record, and takes no typed value in place of what the file says", async () => {
	const made = await scene();
	const me = await enter(made);
	const sent = await postParts(
		`/guided/${made.recordId}/file`,
		{ ...(await me.hidden("file")), act: "stay", "file.load": "load" },
		[{ field: "file.upload", name: "output.txt", bytes: readFileSync(OUTPUT) }],
		me.cookie,
	);
	expect(sent.statusCode, sent.body).toBe(200);
	expect(sent.body).toContain("output.txt was read. Taken from it: Link width under load, Link speed under load");
	await me.post("checks", { "check.link-width.value": "16", "check.link-width.value.unit": "lanes" });
	const { readings } = (await me.content()) as unknown as {
		readings: { check: string; values: { value: number }[] }[];
	};
	expect(readings.find(({ check }) => check === "link-width")?.values).toEqual([{ value: 8, unit: "lanes" }]);
	expect((await me.get(`/guided/${made.recordId}/checks`)).body).toContain("from your file");
});

describe("sealing", () => {
	it("asks for what is missing, seals once, and shows the receipt", async () => {
		const made = await scene();
		const me = await enter(made);
		const { formToken } = await me.hidden("review");
		const early = await me.get(`/guided/${made.recordId}/review`);
		expect(early.body).toContain("Before sealing, this is still needed");
		expect(early.body).not.toContain('value="seal"');
		expect((await me.post("review", { act: "seal", confirm: "yes" })).statusCode).toBe(400);
		await me.post("identity", { "identity.serialNumber": "OW24-7731-C" });
		await me.post("result", {
			state: "does-not-start",
			observedAt: "2026-03-05T18:00",
			clock: "+01:00",
			"setUp.platforms": "1",
			statement: "It stayed dark.",
		});
		const review = await me.get(`/guided/${made.recordId}/review`);
		expect(review.body).toContain("Did not start on this platform");
		expect(review.body).toContain("5 Mar 2026, 18:00 (UTC+01:00)");
		expect((await me.post("review", { act: "seal" })).body).toContain("Tick the box");
		const sealed = await me.post("review", { act: "seal", confirm: "yes" });
		expect(sealed.headers.location).toBe(`/guided/${made.recordId}/receipt`);
		const receipt = await me.get(`/guided/${made.recordId}/receipt`);
		const record = (await shop.ask("GET", `/api/v1/records/${made.recordId}`)).json();
		expect(receipt.body).toContain(record.sealed.fingerprint.match(/.{4}/g).join(" "));
		expect(receipt.body).toContain(`through link ${made.link.id}`);
		expect(receipt.body).toContain("Checkpoint of the log");
		const kept = (await me.get(`/api/v1/records/${made.recordId}/receipt`)).json();
		expect(entriesIn(kept).filter((entry) => entry.fits && entry.statement !== null)).toHaveLength(2);
		expect((await me.get(`/guided/${made.recordId}/identity`)).headers.location).toContain("/receipt");
		const second = await postForm(
			`/guided/${made.recordId}/review`,
			{ formToken, version: "9", act: "seal", confirm: "yes" },
			me.cookie,
		);
		expect(second.headers.location).toBe(`/guided/${made.recordId}/receipt`);
		// What could not be tested is said as such, never as a failure.
		const reasons = record.sealed.statement.readings.map(
			(reading: { notTested?: { reason: string } }) => reading.notTested,
		);
		expect(reasons.every((reason: unknown) => reason !== undefined)).toBe(true);
		const comparison = await me.get(`/orders/${made.orderId}/consignments/${made.legId}/comparison`);
		expect(comparison.statusCode).toBe(200);
		expect(comparison.body).toContain("What is certain");
		expect(comparison.body).toContain("Did not start on this platform");
		expect(comparison.body).toContain("It stayed dark.");
		const asShop = await shop.ask("GET", `/orders/${made.orderId}/consignments/${made.legId}/comparison`);
		// The foot differs, as the party's device may sign what was done through its link; and the ways to the papers and to
		// the order's own page stand for those alone whom they let in. What is said is the same.
		const sheet = (body: string) =>
			body
				.slice(0, body.indexOf("<footer"))
				.replace(/<p class="no-print"><a href="[^"]*\/papers">[^<]*<\/a><\/p>/, "")
				.replace(`<p class="no-print"><a href="/orders/${made.orderId}">Back to the order</a></p>`, "");
		expect(sheet(asShop.body)).toBe(sheet(comparison.body));
	});
});

describe("sheets to print", () => {
	it("makes the slip with the link, its code outside what is printed, and the fingerprint in groups of four", async () => {
		const made = await scene();
		const url = `/orders/${made.orderId}/consignments/${made.legId}/slip`;
		const before = await shop.ask("GET", url);
		expect(before.body).toContain("No link is printed on this slip");
		expect(before.body).toContain("Mara &lt;Quist>");
		const cookie = shop.sessionCookie;
		const page = await shop.app.inject({ method: "GET", url, headers: { cookie } });
		const formToken = /name="formToken" value="([^"]*)"/.exec(page.body)?.[1] ?? "";
		const slip = await postForm(url, { formToken }, cookie);
		expect(slip.statusCode, slip.body).toBe(200);
		const [panel = "", printed = ""] = slip.body.split('<div class="slip">');
		const code = /<strong class="fingerprint">(\d{6})<\/strong>/.exec(panel)?.[1] ?? "";
		expect(panel).toContain('class="note no-print"');
		expect(code).toMatch(/^\d{6}$/);
		expect(printed.replaceAll(/[0-9a-f]{4}( [0-9a-f]{4}){15}/g, "")).not.toContain(`>${code}<`);
		const departure = (await shop.ask("GET", `/api/v1/records/${made.departureId}`)).json();
		expect(printed).toContain(departure.sealed.fingerprint.match(/.{4}/g).join(" "));
		const address = /http:\/\/localhost(\/l\/[A-Za-z0-9_-]{43})/.exec(printed)?.[1] ?? "";
		expect((await postForm(address, { code })).headers.location).toBe(`/guided/${made.recordId}`);
		expect(slip.body).not.toMatch(/ style=|<script/);
	});

	it("prints the paper form in the order of the steps", async () => {
		const made = await scene();
		const form = await shop.ask("GET", `/orders/${made.orderId}/consignments/${made.legId}/paper-form`);
		const places = ["1. The closed parcel", "3. Closed until it is warm", "4. Opening", "8. Switching it on"].map(
			(title) => form.body.indexOf(title),
		);
		expect(places.every((place) => place > 0)).toBe(true);
		expect(places).toEqual([...places].sort((a, b) => a - b));
	});
});
