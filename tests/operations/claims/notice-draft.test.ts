/** The draft of a notice: each form's own words, filled from the record, blanks where nothing is recorded. Own regression cases. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { customerScene, type Scene } from "../../pages/customer-scene.ts";
import { type TestApp, testApp } from "../../setup/test-app.ts";
import { PRONOUNCES } from "../../texts/pronounces.ts";

let shop: TestApp;
let scene: Scene;
beforeAll(async () => {
	shop = await testApp();
	scene = await customerScene(shop);
	const { version } = (await shop.ask("GET", `/api/v1/consignments/${scene.legId}`)).json();
	const facts = {
		mode: "road",
		bookedBy: "consignor",
		carrier: "Fuhrwerk Lindental",
		trackingNumber: "FL-0042",
		parcelMassKg: 2.4,
		dispatchedAt: "2026-03-03T10:00:00+01:00",
		deliveredAt: "2026-03-05T12:00:00+01:00",
	};
	await shop.ask("PUT", `/api/v1/consignments/${scene.legId}`, facts, { "if-match": `"v${version}"` });
	const content = {
		observedAt: "2026-03-05T18:00:00+01:00",
		state: "does-not-start",
		identity: { serialNumber: "OW24-7731-C" },
		parcel: { outerDamage: "seen" },
		statement: "It does not start. “One corner of the box was crushed.”",
	};
	await shop.ask("PUT", `/api/v1/records/${scene.recordId}`, content, { "if-match": '"v1"' });
	const sealed = await shop.ask("POST", `/api/v1/records/${scene.recordId}/seal`, undefined, { "if-match": '"v2"' });
	expect(sealed.statusCode, sealed.body).toBe(200);
});
afterAll(async () => shop?.close());

const path = () => `/orders/${scene.orderId}/consignments/${scene.legId}/notice`;
async function draft(noted: object): Promise<string> {
	const claim = `/api/v1/consignments/${scene.legId}/claim`;
	const { version } = (await shop.ask("GET", claim)).json();
	const put = await shop.ask("PUT", claim, noted, { "if-match": `"v${version}"` });
	expect(put.statusCode, put.body).toBe(200);
	const page = await shop.ask("GET", path());
	expect(page.statusCode, page.body).toBe(200);
	return page.body;
}

describe("the draft", () => {
	it("is filled from the leg and the arrival record, outer damage first", async () => {
		const html = await draft({});
		for (const told of [
			"To: Fuhrwerk Lindental",
			"FL-0042",
			"handed over 3 Mar 2026, delivered 5 Mar 2026, gross mass 2.4 kg",
			"serial number OW24-7731-C",
			"The outside of the parcel was damaged, which could be seen at delivery. The fault of the goods themselves shows in use alone.",
			"Damage to the outside of the parcel was seen.",
			"It does not start. “One corner of the box was crushed.”",
			"It was found on 5 Mar 2026.",
			"From: Werkbank Lindental, __________",
			"kept as they were found",
		]) {
			expect(html).toContain(told);
		}
		expect(html).toContain("CMR Art. 30(1)");
		expect(html).not.toContain("By registered letter");
	});
	it.each([
		["fr-road", "not-apparent", "By registered letter"],
		["cim", "not-apparent", "draw up a report on the state of the goods, and for a copy"],
		["us-motor", "not-apparent", "This confirms what we reported"],
		["us-motor", "apparent", "The amount claimed is __________"],
		["upu", "loss", "Notice of loss"],
		["cmr", "delay", "were delivered late"],
	])("has the form of %s for %s", async (regime, damage, words) => {
		const html = await draft({ regime, damage });
		expect(html).toContain(words);
		expect(PRONOUNCES.exec(html.replace(/<[^>]+>/g, " "))?.[0] ?? null).not.toBe("liability");
	});
	it("says of each paper whether it is held here", async () => {
		const html = await draft({});
		const held = (paper: string) => new RegExp(`${paper}[^<]*<strong>([^<]*)`).exec(html)?.[1];
		expect(held("Good order at origin")).toBe("held here in part");
		expect(held("Hand-over")).toBe("held here");
		expect(held("Damage on arrival")).toBe("not held here");
		// No notice with what shows its sending is kept.
		expect(held("Times of delivery")).toBe("held here in part");
		const said = (paper: string) => new RegExp(`${paper}.*?</li>`).exec(html)?.[0] ?? "";
		expect(said("Hand-over")).toContain("The carrier edition of the report tells it.");
		expect(said("A report by someone independent")).not.toContain("carrier edition");
		expect(held("A report by someone independent")).toBe("not held here");
		// The edition tells of such photos, but there are none.
		expect(said("Damage on arrival")).not.toContain("carrier edition");
	});
	it("has its times held once a notice is kept with what shows its sending, and not before", async () => {
		const keep = async (proof: object) => {
			const notice = { language: "en", text: "It came damaged.", sentOn: "2026-03-09", sentBy: "e-mail", ...proof };
			const kept = await shop.ask("POST", `/api/v1/consignments/${scene.legId}/notices`, notice);
			expect(kept.statusCode, kept.body).toBe(201);
			return /Times of delivery[^<]*<strong>([^<]*)/.exec((await shop.ask("GET", path())).body)?.[1];
		};
		expect(await keep({})).toBe("held here in part");
		expect(await keep({ proofOfSending: "Mail of 9 March, 10:02" })).toBe("held here");
	});
	it("says of the goods what someone chose, not what the box alone suggests", async () => {
		const onlyBox = "The fault of the goods themselves shows in use alone.";
		expect(await draft({})).toContain(onlyBox);
		expect(await draft({ damage: "apparent" })).not.toContain(onlyBox);
	});
	it("is not for a reader", async () => {
		const link = (await shop.ask("POST", "/api/v1/links", { scope: "reader", orderId: scene.orderId })).json();
		const payload = { token: link.url.split("/").at(-1), code: link.code };
		const entered = await shop.app.inject({ method: "POST", url: "/api/v1/links/enter", payload });
		const cookie = `link=${entered.cookies[0]?.value}`;
		expect((await shop.app.inject({ url: path(), headers: { cookie } })).statusCode).toBe(403);
		const claim = await shop.app.inject({
			url: `/orders/${scene.orderId}/consignments/${scene.legId}/claim`,
			headers: { cookie },
		});
		expect(claim.statusCode).toBe(200);
		expect(claim.body).not.toContain("/notice");
		expect(claim.body).not.toContain("<textarea");
	});
});
