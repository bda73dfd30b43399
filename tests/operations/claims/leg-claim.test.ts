/** The dates of a claim about a leg over the API and on its page, on the real database. Vectors by id from the reference page. */
import ICAL from "ical.js";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { claimCalendar } from "../../../src/operations/claims/claim-calendar.ts";
import { legClaim, readLegClaim } from "../../../src/operations/claims/leg-claim.ts";
import { readConsignment } from "../../../src/operations/orders/consignments.ts";
import { readOrder } from "../../../src/operations/orders/read-orders.ts";
import type { SealedRecord } from "../../../src/operations/records/record-views.ts";
import { customerScene, type Scene } from "../../pages/customer-scene.ts";
import { type TestApp, testApp } from "../../setup/test-app.ts";

let shop: TestApp;
let scene: Scene;
let path: string;
beforeAll(async () => {
	shop = await testApp();
	scene = await customerScene(shop);
	path = `/api/v1/consignments/${scene.legId}/claim`;
	await deliver("2025-03-03T18:00:00+01:00");
});
afterAll(async () => shop?.close());

async function deliver(deliveredAt: string) {
	const { version } = (await shop.ask("GET", `/api/v1/consignments/${scene.legId}`)).json();
	const facts = { mode: "road", bookedBy: "consignor", dispatchedAt: "2025-02-28T10:00:00+01:00", deliveredAt };
	const put = await shop.ask("PUT", `/api/v1/consignments/${scene.legId}`, facts, { "if-match": `"v${version}"` });
	expect(put.statusCode, put.body).toBe(200);
}
async function note(noted: object) {
	const { version } = (await shop.ask("GET", path)).json();
	return shop.ask("PUT", path, noted, { "if-match": `"v${version}"` });
}
const period = (claim: { periods: { ruleId: string }[] }, id: string) =>
	claim.periods.find(({ ruleId }) => ruleId === id) as Record<string, unknown> | undefined;
const caller = () => ({ kind: "account", accountId: shop.accountId, via: "token" }) as const;

describe("the mass that a limit is computed from", () => {
	const noted = async (facts: object, ...masses: readonly (object | undefined)[]) => {
		const order = await readOrder(shop.deps, caller(), scene.orderId);
		const leg = await readConsignment(shop.deps, caller(), scene.legId);
		const records = (["departure", "arrival"] as const).map((stage, place) => ({
			view: { consignmentId: leg.id, stage, supersededBy: null },
			statement: {
				stage,
				observed: { at: "2025-03-04T10:00:00.000Z", offsetMinutes: 60 },
				parcel: { mass: masses[place] },
			},
		}));
		const changed = { ...leg, facts: { ...leg.facts, ...facts } };
		return (await legClaim(shop.deps, order, changed, records as unknown as SealedRecord[])).cover.massKg;
	};
	const kg = (value: number) => ({ value, unit: "kg" });
	it("is as noted for the carrier, else as weighed at departure, else at arrival", async () => {
		expect(await noted({ parcelMassKg: 2 }, kg(3), kg(4))).toBe(2);
		expect(await noted({}, kg(3), kg(4))).toBe(3);
		expect(await noted({}, undefined, kg(4))).toBe(4);
		expect(await noted({}, undefined, undefined)).toBeNull();
	});
	it("is no number in another unit, and none that a parcel cannot have: older records may hold them", async () => {
		expect(await noted({}, { value: 5, unit: "V" }, kg(4))).toBe(4);
		expect(await noted({}, kg(0), kg(-1))).toBeNull();
	});
});

describe("the dates of a claim", () => {
	it("are suggested from the order before anyone notes anything", async () => {
		const claim = (await shop.ask("GET", path)).json();
		expect(claim).toMatchObject({ regime: "cmr", regimeBasis: "suggested", damage: "not-apparent", version: 0 });
		expect(claim.outerDamage).toBe("not-recorded");
		expect(claim.question).toBe("open");
		expect(claim.claimants).toBeNull();
		expect(claim.holidays).toMatchObject({ country: "DE", region: null, basis: "suggested" });
		// D01
		expect(period(claim, "CMR-DMG-CONCEALED")).toMatchObject({
			safeDate: "2025-03-11",
			consequence: "presumption",
			form: "writing",
			standing: "published",
		});
		expect(claim.nextRuleId).toBe("CMR-SUIT");
	});

	it("tell beside them what applies if the damage could be seen at delivery, and the reverse (CMR Art. 30(1))", async () => {
		const ids = (claim: { otherReading: { periods: { ruleId: string }[] } }) =>
			claim.otherReading.periods.map(({ ruleId }) => ruleId);
		const concealed = (await shop.ask("GET", path)).json();
		expect(concealed.otherReading).toMatchObject({ damage: "apparent" });
		expect(ids(concealed)).toContain("CMR-DMG-APPARENT");
		expect(ids(concealed)).not.toContain("CMR-SUIT");
		const apparent = (await note({ damage: "apparent" })).json();
		expect(apparent.otherReading.damage).toBe("not-apparent");
		expect(period(apparent.otherReading, "CMR-DMG-CONCEALED")?.safeDate).toBe("2025-03-11");
		expect((await note({ damage: "loss" })).json().otherReading).toBeNull();
		await note({});
	});

	it("take the date at the place of delivery, on whatever side of midnight it is elsewhere", async () => {
		// 3 March at 23:30 in Berlin is 22:30 UTC; 4 March at 00:30 in Berlin is still 3 March in UTC.
		await deliver("2025-03-03T23:30:00+01:00");
		expect((await shop.ask("GET", path)).json().events.delivered).toBe("2025-03-03");
		await deliver("2025-03-04T00:30:00+01:00");
		expect((await shop.ask("GET", path)).json().events.delivered).toBe("2025-03-04");
		const at = async (now: string) =>
			(await readLegClaim({ ...shop.deps, now: () => new Date(now) }, caller(), scene.legId)).today;
		expect(await at("2025-03-10T22:59:00Z")).toBe("2025-03-10");
		expect(await at("2025-03-10T23:01:00Z")).toBe("2025-03-11");
		await deliver("2025-03-03T18:00:00+01:00");
	});

	it("count down to the next safe date, and say when it has passed", async () => {
		const at = async (now: string) => readLegClaim({ ...shop.deps, now: () => new Date(now) }, caller(), scene.legId);
		const before = await at("2025-03-08T12:00:00Z");
		expect(before.nextRuleId).toBe("CMR-DMG-CONCEALED");
		expect(period(before, "CMR-DMG-CONCEALED")?.leftDays).toBe(3);
		const after = await at("2025-03-12T12:00:00Z");
		expect(after.nextRuleId).toBe("CMR-SUIT");
		expect(period(after, "CMR-DMG-CONCEALED")?.leftDays).toBe(-1);
	});

	it("follow what is noted: D19 with its rolled date, D36, D27 with its other reading", async () => {
		await deliver("2025-12-18T18:00:00+01:00");
		const hgb = await note({ regime: "de-hgb" });
		expect(hgb.statusCode, hgb.body).toBe(200);
		expect(period(hgb.json(), "DE-HGB438-2")).toMatchObject({
			endsOn: "2025-12-25",
			rolledTo: "2025-12-29",
			safeDate: "2025-12-25",
		});
		expect(hgb.json().claimants).toMatchObject({ who: "sender-or-consignee", standing: "published" });
		await deliver("2025-03-03T18:00:00+01:00");
		expect(period((await note({ regime: "ch-or" })).json(), "CH-OR452")?.endsOn).toBe("2025-03-11");
		await deliver("2025-05-07T18:00:00+02:00");
		const french = (await note({ regime: "fr-road", holidays: { country: "FR" } })).json();
		expect(period(french, "FR-L133-3")).toMatchObject({ endsOn: "2025-05-12", safeDate: "2025-05-11" });
		expect(french.holidays.dates).toContain("2025-05-08");
		expect(period(french, "FR-L133-6")?.standing).toBe("from-memory");
		await deliver("2025-03-03T18:00:00+01:00");
	});

	it("are noted once per version, by the shop alone, and read by the order's links", async () => {
		const { version } = (await shop.ask("GET", path)).json();
		expect((await shop.ask("PUT", path, {})).statusCode).toBe(428);
		expect((await shop.ask("PUT", path, {}, { "if-match": '"v0"' })).statusCode).toBe(412);
		expect((await shop.ask("PUT", path, {}, { "if-match": `"v${version}"` })).statusCode).toBe(200);
		expect((await shop.ask("PUT", path, {}, { "if-match": `"v${version}"` })).statusCode).toBe(412);
		const entered = await shop.app.inject({
			method: "POST",
			url: "/api/v1/links/enter",
			payload: { token: scene.link.url.split("/").at(-1), code: scene.link.code },
		});
		const cookie = `link=${entered.cookies[0]?.value}`;
		expect((await shop.app.inject({ url: path, headers: { cookie } })).statusCode).toBe(200);
		const put = { method: "PUT", url: path, headers: { cookie, "if-match": '"v1"' }, payload: {} } as const;
		expect((await shop.app.inject(put)).statusCode).toBe(403);
		expect((await shop.app.inject({ url: path })).statusCode).toBe(401);
	});

	it("refuse what cannot be, and say where", async () => {
		for (const [bad, place] of [
			[{ dates: { claimed: "2025-04-02", rejected: "2025-04-01" } }, "/dates/rejected"],
			[{ dates: { noticeSent: "2025-04-02", noticeReceived: "2025-04-01" } }, "/dates/noticeReceived"],
			[{ regime: "moon" }, "/regime"],
			[{ holidays: { country: "QQ" } }, "/holidays/country"],
			[{ holidays: { country: "DE", region: "ZZ" } }, "/holidays/region"],
			[{ text: "typed" }, "/text"],
		] as const) {
			const refused = await note(bad);
			expect(refused.statusCode, refused.body).toBe(400);
			expect(refused.body).toContain(place);
		}
	});
});

describe("the calendar file", () => {
	it("is read by a standard parser, with every safe date as a day and a reminder before it", async () => {
		expect((await note({})).statusCode).toBe(200);
		const file = await shop.ask("GET", `/orders/${scene.orderId}/consignments/${scene.legId}/claim.ics`);
		expect(file.headers["content-type"]).toContain("text/calendar");
		const claim = (await shop.ask("GET", path)).json();
		const calendar = new ICAL.Component(ICAL.parse(file.body));
		const events = calendar.getAllSubcomponents("vevent").map((event) => new ICAL.Event(event));
		// Until someone has said whether the damage could be seen, the dates of both answers are to be kept.
		const datesOf = (of: { ruleId: string; safeDate: string | null }[]) => of.flatMap(({ safeDate }) => safeDate ?? []);
		const bothReadings = [...datesOf(claim.periods), ...datesOf(claim.otherReading.periods)];
		expect(bothReadings).toContain("2025-03-03");
		expect(events.map(({ startDate }) => startDate.toString()).sort()).toEqual(bothReadings.sort());
		const concealed = events.find(({ uid }) => uid.includes("CMR-DMG-CONCEALED"));
		expect(concealed?.startDate.isDate).toBe(true);
		expect(concealed?.endDate.toString()).toBe("2025-03-12");
		expect(concealed?.description).toContain("CMR Art. 30(1), (4)\n");
		expect(concealed?.summary).toBe(
			"Safe date: Written reserve on damage that could not be seen; Sundays and holidays do not count.",
		);
		const alarms = concealed?.component.getAllSubcomponents("valarm") ?? [];
		expect(alarms.map((alarm) => String(alarm.getFirstPropertyValue("trigger")))).toEqual(["-P3D", "-P1D"]);
	});

	it("holds the dates of one answer alone once it is chosen, and the countdown goes by the same dates", async () => {
		const at = async (now: string) => readLegClaim({ ...shop.deps, now: () => new Date(now) }, caller(), scene.legId);
		// Seen as apparent, 3 March has passed; the other answer's date is still open.
		await note({});
		expect((await at("2025-03-03T12:00:00Z")).nextRuleId).toBe("CMR-DMG-APPARENT");
		expect((await at("2025-03-05T12:00:00Z")).nextRuleId).toBe("CMR-DMG-CONCEALED");
		await note({ damage: "apparent" });
		const chosen = await at("2025-03-05T12:00:00Z");
		expect(chosen.nextRuleId).toBe("CMR-SUIT");
		const text = claimCalendar(chosen, new Date("2025-03-05T00:00:00Z"));
		expect(text).toContain("CMR-DMG-APPARENT");
		expect(text).not.toContain("CMR-DMG-CONCEALED");
		await note({});
	});

	it("keeps lines to 75 octets that end in CRLF, and cuts no character", async () => {
		const claim = await readLegClaim(shop.deps, caller(), scene.legId);
		const wide = { ...claim, periods: claim.periods.map((one) => ({ ...one, what: "€ä𝄞".repeat(60) })) };
		const text = claimCalendar(wide, new Date("2025-03-04T00:00:00Z"));
		expect(text.endsWith("\r\n")).toBe(true);
		for (const line of text.split("\r\n")) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
		expect(text.replaceAll("\r\n", "")).not.toContain("\n");
		const [event] = new ICAL.Component(ICAL.parse(text)).getAllSubcomponents("vevent");
		expect(String(event?.getFirstPropertyValue("summary"))).toContain("€ä𝄞".repeat(60));
	});

	it("calls a recalled rule recalled", async () => {
		const claim = await readLegClaim(shop.deps, caller(), scene.legId);
		const recalled = claim.periods.map((one) => ({ ...one, standing: "from-memory" as const }));
		expect(
			claimCalendar({ ...claim, periods: recalled }, new Date()).match(/SUMMARY:Recalled\\, not read/g)?.length,
		).toBe(claim.periods.filter(({ safeDate }) => safeDate !== null).length);
	});
});

describe("the page", () => {
	const page = async () => (await shop.ask("GET", `/orders/${scene.orderId}/consignments/${scene.legId}/claim`)).body;
	it("doubts a law that what is noted of the leg does not suggest", async () => {
		const before = (await shop.ask("GET", path)).json().noted;
		await note({});
		expect(await page()).not.toContain("Look whether the chosen one applies");
		await note({ regime: "us-motor" });
		expect(await page()).toContain(
			"suggests another: CMR: road between two states. Look whether the chosen one applies",
		);
		await note(before);
	});
	it("asks who can claim and for outer damage before any date", async () => {
		const html = await page();
		const places = ["Outer damage", "Who can claim", "Which law of carriage", "Safe date"].map((word) =>
			html.indexOf(word),
		);
		expect(places.every((place) => place > 0)).toBe(true);
		expect([...places].sort((a, b) => a - b)).toEqual(places);
		expect(html).toContain("not legal advice");
		expect(html).toContain("Text read in the state of 2017-05-10");
		expect(html).toContain("2025-03-09");
	});
	it("states no rule that was only recalled as firm", async () => {
		await note({ regime: "fr-road" });
		const html = await page();
		const [, recalled = ""] = /id="FR-L133-6">(.*?)<\/section>/s.exec(html) ?? [];
		expect(recalled).toContain("Recalled and not read");
		const [, read = ""] = /id="FR-L224-65">(.*?)<\/section>/s.exec(html) ?? [];
		expect(read).not.toContain("Recalled");
		await note({});
	});
	it("takes the form, keeps what was typed when it is wrong, and shows the countdown on the order", async () => {
		const url = `/orders/${scene.orderId}/consignments/${scene.legId}/claim`;
		const html = await page();
		const formToken = /name="formToken" value="([^"]*)"/.exec(
			(await shop.app.inject({ url, headers: { cookie: shop.sessionCookie } })).body,
		)?.[1];
		const version = /name="version" value="(\d+)"/.exec(html)?.[1] ?? "";
		const post = (fields: Record<string, string>) =>
			shop.app.inject({
				method: "POST",
				url,
				headers: { cookie: shop.sessionCookie, "content-type": "application/x-www-form-urlencoded" },
				payload: new URLSearchParams({ formToken: formToken ?? "", version, ...fields }).toString(),
			});
		const bad = await post({ "holidays.country": "qq" });
		expect(bad.statusCode).toBe(400);
		expect(bad.body).toContain('value="qq"');
		const good = await post({ regime: "montreal", "dates.discovered": "2025-03-05" });
		expect(good.statusCode, good.body).toBe(303);
		const claim = (await shop.ask("GET", path)).json();
		expect(claim.noted).toEqual({ regime: "montreal", dates: { discovered: "2025-03-05" } });
		// Forthwith on discovery is the safe date, before the fourteen days.
		expect(period(claim, "MC99-DMG")).toMatchObject({ endsOn: "2025-03-17", safeDate: "2025-03-05" });
		const order = (await shop.ask("GET", `/orders/${scene.orderId}`)).body;
		expect(order).toContain("Safe date 2027-03-03");
	});
});
