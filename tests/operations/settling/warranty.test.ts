/** The warranty of an order over the API and on its page: the clock from the legs, days and months later. Own regression cases. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readWarranty } from "../../../src/operations/settling/read-warranty.ts";
import { type TestApp, testApp } from "../../setup/test-app.ts";

let shop: TestApp;
let orderId: string;
beforeAll(async () => {
	shop = await testApp();
	const made = await shop.ask("POST", "/api/v1/orders", {
		contractKind: "repair",
		repairer: { kind: "business", country: "AT", name: "Werkbank Lindental" },
		owner: { kind: "consumer", country: "DE", name: "Mara Quist" },
		item: { class: "graphics-card", maker: "Ostwind", model: "Orca 24" },
		terms: {
			reportedFault: "Memory errors.",
			agreedWork: "Mend them.",
			warranty: { months: 6, covers: "the memory that was replaced" },
			carrierContract: { toRepairer: "owner", toOwner: "repairer" },
		},
	});
	orderId = made.json().id;
	await shop.ask("POST", `/api/v1/orders/${orderId}/consignments`, {
		direction: "to-owner",
		facts: { mode: "road", bookedBy: "consignor", inHandAt: "2025-08-31T20:00:00+02:00" },
	});
});
afterAll(async () => shop?.close());

const ask = (query = "") => shop.ask("GET", `/api/v1/orders/${orderId}/warranty${query}`);

describe("the warranty", () => {
	it("runs from the day in hand to the month's last day, and counts down there", async () => {
		expect((await ask()).json()).toMatchObject({
			months: 6,
			startsOn: "2025-08-31",
			startBasis: "in-hand",
			endsOn: "2026-02-28",
			time: "open",
		});
		const at = { ...shop.deps, now: () => new Date("2026-02-27T22:30:00Z") };
		const caller = { kind: "account", accountId: shop.accountId, via: "token" } as const;
		// In the zone of the delivery it is 28 February already.
		expect((await readWarranty(at, caller, orderId, {})).leftDays).toBe(0);
	});
	it("says whether a failure falls inside, days and months later, with reasons on both sides", async () => {
		const days = (await ask("?failedOn=2025-09-02&sameFault=yes&eventSince=yes")).json();
		expect(days).toMatchObject({ time: "inside", leftAtFailureDays: 179 });
		expect(days.for).toHaveLength(2);
		expect(days.against).toHaveLength(1);
		expect(days.open).toHaveLength(1);
		expect((await ask("?failedOn=2026-03-01")).json()).toMatchObject({ time: "outside", leftAtFailureDays: -1 });
	});
	it("tells what was read of the law, with its article and the state of the text", async () => {
		expect((await ask()).json().floors).toEqual([
			expect.objectContaining({ locator: "§§ 634a, 640", standing: "published", readOn: "2022-03-26" }),
		]);
	});
	it("refuses what it cannot read, and shows it on the page beside its field", async () => {
		expect((await ask("?failedOn=yesterday")).statusCode).toBe(400);
		const page = await shop.ask("GET", `/orders/${orderId}/warranty?failedOn=yesterday`);
		expect(page.statusCode).toBe(400);
		expect(page.body).toContain('value="yesterday"');
		const good = await shop.ask("GET", `/orders/${orderId}/warranty?failedOn=2025-09-02&samePart=no`);
		expect(good.body).toContain("Speaks against it");
		expect(good.body).toContain("the memory that was replaced");
		expect(good.body).toContain("a part that the repair did not touch");
	});
});
