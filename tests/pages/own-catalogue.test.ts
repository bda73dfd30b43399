/**
 * A shop adds checks and a kind of item in its pages, and both ends of a journey are asked for them: from the catalogue's page
 * over the order, the departure at the bench and the owner's arrival to the comparison. The expectations are our own.
 */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { checksOf } from "../../src/catalogue/checks/checks.ts";
import { entriesIn } from "../setup/receipt-entries.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";

let shop: TestApp;
beforeAll(async () => {
	shop = await testApp();
});
afterAll(async () => shop?.close());

const get = async (url: string, cookie = shop.sessionCookie) =>
	(await shop.app.inject({ method: "GET", url, headers: { cookie } })).body;
const hidden = (page: string, name: string) => new RegExp(`name="${name}" value="([^"]*)"`).exec(page)?.[1] ?? "";
async function post(url: string, fields: Record<string, string>, cookie = shop.sessionCookie, from = url) {
	const page = await get(from, cookie);
	const payload = new URLSearchParams({
		formToken: hidden(page, "formToken"),
		version: hidden(page, "version"),
		...fields,
	}).toString();
	const headers = { cookie, "content-type": "application/x-www-form-urlencoded" };
	return shop.app.inject({ method: "POST", url, headers, payload });
}
const keep = (kind: "checks" | "classes", fields: Record<string, string>) =>
	post(`/catalogue/${kind}`, fields, shop.sessionCookie, "/catalogue");
const own = async (query = "") => (await shop.ask("GET", `/api/v1/own-catalogue${query}`)).json();
const idOf = async (name: string) =>
	(await own()).checks.find((one: { definition: { name: string } }) => one.definition.name === name)?.id as string;

const RIPPLE = {
	"check.name": "Ripple at the output, 2 A",
	"check.kind": "measured",
	"check.unit": "mV",
	"check.comparability": "any-bench",
	"check.betterIs": "lower",
	"check.limitHigh": "50",
	"check.how": "At the terminals, with the load of 2 A.",
	"check.whoCan": "meter",
	"check.caution": "The heat sink is live.",
};
const TONE = {
	"check.name": "Ten starts with the tone",
	"check.kind": "outcome",
	"check.unit": "starts",
	"check.comparability": "any-bench",
	"check.betterIs": "higher",
	"check.limitLow": "0,9",
	"check.how": "Switch on ten times; count how often the tone comes.",
	"check.whoCan": "no-instruments",
};
const order = (item: object) => ({
	contractKind: "repair",
	repairer: { kind: "business", country: "AT", name: "Werkbank Lindental" },
	owner: { kind: "consumer", country: "DE", name: "Mara Quist" },
	item: { maker: "Ostwind", model: "Regler 2", serialNumber: "RG-2-7", ...item },
	terms: { reportedFault: "Hums.", agreedWork: "Mend.", carrierContract: { toRepairer: "owner", toOwner: "repairer" } },
});
async function legOf(orderId: string): Promise<string> {
	const facts = { mode: "road", bookedBy: "consignor" };
	return (await shop.ask("POST", `/api/v1/orders/${orderId}/consignments`, { direction: "to-owner", facts })).json().id;
}
const OBSERVED = { observedAt: "2026-03-02T10:00", clock: "+01:00", state: "good", "identity.serialNumber": "RG-2-7" };

describe("the catalogue's page", () => {
	it("keeps checks and a kind of item, each change a version, and says what is wrong beside its field", async () => {
		expect(await get("/catalogue")).toContain("None yet.");
		expect((await keep("checks", RIPPLE)).statusCode).toBe(303);
		expect((await keep("checks", TONE)).statusCode).toBe(303);
		const bad = await keep("checks", { ...RIPPLE, "check.limitLow": "60" });
		expect(bad.statusCode).toBe(400);
		expect(bad.body).toContain("Another one has this name.");
		expect(bad.body).toContain("The lower limit is above the upper one.");
		expect(bad.body).toContain('value="60"');
		const share = await keep("checks", { ...TONE, "check.name": "Other", "check.limitLow": "9" });
		expect(share.body).toContain("Of attempts a limit is a share from 0 to 1.");
		const kept = await keep("classes", {
			"class.name": "Bench regulator",
			"class.treatedAs": "power-supply",
			[`class.own.${await idOf(RIPPLE["check.name"])}`]: "yes",
			[`class.own.${await idOf(TONE["check.name"])}`]: "yes",
		});
		expect(kept.statusCode).toBe(303);
		const { version, classes } = await own();
		expect(version).toBe(3);
		const [left = { id: "" }] = checksOf("power-supply").filter(({ short }) => short);
		const changing = await get(`/catalogue?change=${classes[0].id}`);
		expect(changing).toContain(`class.out.${left.id}`);
		const changed = await keep("classes", {
			id: classes[0].id,
			"class.name": "Bench regulator",
			"class.treatedAs": "power-supply",
			...Object.fromEntries(classes[0].ownChecks.map((id: string) => [`class.own.${id}`, "yes"])),
			[`class.out.${left.id}`]: "yes",
		});
		expect(changed.statusCode).toBe(303);
		expect((await own()).classes[0].leftOut).toEqual([left.id]);
		expect((await own("?version=3")).classes[0].leftOut).toEqual([]);
		expect((await shop.ask("GET", "/api/v1/own-catalogue?version=99")).statusCode).toBe(404);
	});

	it("gives at most five own checks to one class", async () => {
		const [kept] = (await own()).checks;
		const { id: _, ...body } = kept;
		const add = (name: string) =>
			shop.ask("POST", "/api/v1/own-catalogue/checks", {
				...body,
				definition: { ...body.definition, name },
				classes: ["module"],
			});
		for (const name of ["a", "b", "c", "d", "e"]) expect((await add(name)).statusCode).toBe(201);
		const sixth = await add("f");
		expect(sixth.json().errors[0]).toMatchObject({ path: "/classes", code: "class-full" });
		for (const name of ["a", "b", "c", "d", "e"])
			expect((await shop.ask("DELETE", `/api/v1/own-catalogue/checks/${await idOf(name)}`)).statusCode).toBe(200);
		expect((await own()).classes[0].ownChecks).toHaveLength(2);
	});

	it("shows the checks of each class as they are done", async () => {
		const page = await get("/catalogue/drive");
		for (const check of checksOf("drive")) expect(page).toContain(`id="${check.id}"`);
		expect(
			(await shop.app.inject({ url: "/catalogue/teapot", headers: { cookie: shop.sessionCookie } })).statusCode,
		).toBe(404);
	});
});

describe("an order with an own kind of item", () => {
	it("takes the kind on the page for new orders, and refuses one that is treated otherwise", async () => {
		const [kind] = (await own()).classes;
		expect(await get("/orders/new")).toContain(`value="${kind.id}"`);
		const other = await shop.ask("POST", "/api/v1/orders", order({ class: "drive", ownClassId: kind.id }));
		expect(other.json().errors[0]).toMatchObject({ path: "/item/class", code: "other-class" });
		const { item, terms } = order({ class: kind.id });
		const made = await post("/orders/new", {
			contractKind: "repair",
			...Object.fromEntries(Object.entries(item).map(([name, value]) => [`item.${name}`, value])),
			"owner.name": "Mara Quist",
			"owner.kind": "consumer",
			"owner.country": "DE",
			"repairer.name": "Werkbank Lindental",
			"repairer.kind": "business",
			"repairer.country": "AT",
			"terms.reportedFault": terms.reportedFault,
			"terms.agreedWork": terms.agreedWork,
			"terms.carrierContract.toRepairer": "owner",
			"terms.carrierContract.toOwner": "repairer",
		});
		expect(made.statusCode, made.body).toBe(303);
		expect(await get(made.headers.location as string)).toContain("Bench regulator, treated as: Power supply");
	});

	it("asks both ends for its own checks, and compares them; a changed definition changes no record", async () => {
		const [kind] = (await own()).classes;
		const made = await shop.ask("POST", "/api/v1/orders", order({ class: "power-supply", ownClassId: kind.id }));
		const orderId = made.json().id as string;
		// In the shop's list it is of the shop's own kind.
		const isListed = async (itemClass: string) =>
			(await get(`/?class=${itemClass}`)).includes(`href="/orders/${orderId}"`);
		expect([await isListed(kind.id), await isListed("power-supply")]).toEqual([true, false]);
		const legId = await legOf(orderId);
		const opened = (await shop.ask("POST", `/api/v1/consignments/${legId}/records`, { stage: "departure" })).json();
		const version = (await own()).version;
		expect(opened.ownCatalogueVersion).toBe(version);

		// Changed after the record was opened: its words stay.
		const ripple = (await own()).checks.find(
			(one: { definition: { name: string } }) => one.definition.name === RIPPLE["check.name"],
		);
		expect(
			(await keep("checks", { ...RIPPLE, id: ripple.id, "check.limitHigh": "20", "check.how": "Otherwise." }))
				.statusCode,
		).toBe(303);
		const page = await get(`/records/${opened.id}`);
		expect(page).toContain("At the terminals, with the load of 2 A.");
		expect(page).toContain("The heat sink is live.");
		expect(page).toContain("at most 50");
		const leftOut = kind.leftOut[0] as string;
		expect(page).not.toContain(`check.${leftOut}.`);

		const wrong = await post(`/records/${opened.id}`, { ...OBSERVED, act: "save", "own-1.values": "many" });
		expect(wrong.statusCode).toBe(400);
		const saved = await post(`/records/${opened.id}`, {
			...OBSERVED,
			act: "save",
			"own-1.values": "31,5",
			"own-2.trials": "10",
			"own-2.successes": "10",
		});
		expect(saved.statusCode, saved.body).toBe(303);
		const draft = (await shop.ask("GET", `/api/v1/records/${opened.id}`)).json();
		const sealed = await shop.ask("POST", `/api/v1/records/${opened.id}/seal`, undefined, {
			"if-match": `"v${draft.version}"`,
		});
		expect(sealed.statusCode, sealed.body).toBe(200);
		const statement = JSON.parse(
			entriesIn(sealed.json())
				.findLast((entry) => entry.kind === "record-sealed")
				?.statement?.toString() ?? "{}",
		);
		expect(statement).toMatchObject({ $format: "handover-risk/record/1", itemClass: "power-supply" });
		const readings = statement.readings as { check: string }[];
		expect(readings.map(({ check }) => check)).toEqual(expect.arrayContaining(["own-1", "own-2"]));
		expect(readings.some(({ check }) => check === leftOut)).toBe(false);
		const verified = await shop.ask("POST", "/api/v1/verify", { receipt: sealed.json() });
		expect(verified.statusCode, verified.body).toBe(200);

		const arrival = (await shop.ask("POST", `/api/v1/consignments/${legId}/records`, { stage: "arrival" })).json();
		expect(arrival.ownCatalogueVersion).toBe(version);
		const link = (await shop.ask("POST", "/api/v1/links", { scope: "record", orderId, recordId: arrival.id })).json();
		const entered = await shop.app.inject({
			method: "POST",
			url: new URL(link.url).pathname,
			headers: { "content-type": "application/x-www-form-urlencoded" },
			payload: new URLSearchParams({ code: link.code }).toString(),
		});
		const cookie = `link=${entered.cookies.find(({ name }) => name === "link")?.value}`;
		const step = await get(`/guided/${arrival.id}/checks`, cookie);
		expect(step).toContain("Switch on ten times; count how often the tone comes.");
		expect(step).not.toContain("own-1.");
		const told = { act: "next", "own-2.trials": "10", "own-2.successes": "2" };
		expect((await post(`/guided/${arrival.id}/checks`, told, cookie)).statusCode).toBe(303);
		// Another step leaves it alone.
		await post(`/guided/${arrival.id}/result`, { ...OBSERVED, act: "next" }, cookie);
		await post(`/guided/${arrival.id}/identity`, { ...OBSERVED, act: "next" }, cookie);
		expect(await get(`/guided/${arrival.id}/review`, cookie)).toContain("Ten starts with the tone");
		const { version: last } = (await shop.ask("GET", `/api/v1/records/${arrival.id}`)).json();
		const end = await shop.ask("POST", `/api/v1/records/${arrival.id}/seal`, undefined, { "if-match": `"v${last}"` });
		expect(end.statusCode, end.body).toBe(200);

		const { checks } = (await shop.ask("GET", `/api/v1/consignments/${legId}/comparison`)).json();
		const row = (check: string) => checks.find((one: { check: string }) => one.check === check);
		expect(row("own-2")).toMatchObject({
			name: "Ten starts with the tone",
			comparison: { result: { verdict: "differs", direction: "worse" } },
		});
		expect(row("own-1")).toMatchObject({ name: "Ripple at the output, 2 A" });
		expect((await shop.ask("GET", `/api/v1/records/${opened.id}`)).json().ownCatalogueVersion).toBe(version);
	});

	it("orders of the plain class are asked for what is kept for it", async () => {
		const [, tone] = (await own()).checks;
		const { id, ...body } = tone;
		await shop.ask("PUT", `/api/v1/own-catalogue/checks/${id}`, { ...body, classes: ["power-supply"] });
		const orderId = (await shop.ask("POST", "/api/v1/orders", order({ class: "power-supply" }))).json().id;
		const record = (
			await shop.ask("POST", `/api/v1/consignments/${await legOf(orderId)}/records`, { stage: "departure" })
		).json();
		const page = await get(`/records/${record.id}`);
		expect(page).toContain("own-1.trials");
		// A check that is typed by hand stands at the next place.
		const typed = { "own-2.name": "By hand", "own-2.kind": "measured", "own-2.unit": "V" };
		const more = { "own-2.comparability": "any-bench", "own-2.betterIs": "neither", "own-2.values": "5" };
		await post(`/records/${record.id}`, { ...OBSERVED, act: "save", ...typed, ...more });
		const { content } = (await shop.ask("GET", `/api/v1/records/${record.id}`)).json();
		expect(content.readings).toMatchObject([{ check: "own-2", definition: { name: "By hand" } }]);
	});
});
