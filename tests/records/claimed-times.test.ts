/** Which claimed times a seal refuses: in the future, or in no possible order. Own rule, a day of tolerance is our choice. */
import { describe, expect, it } from "vitest";
import { timeShortcomings } from "../../src/records/claimed-times.ts";

const NOW = new Date("2026-11-27T12:00:00Z");
const codes = (content: object, noted: object = {}) =>
	timeShortcomings(content, noted, NOW).map(({ path, code }) => `${path} ${code}`);

describe("claimed times", () => {
	it("lie in no future, a clock ten minutes off aside", () => {
		expect(codes({ observedAt: "2026-11-27T13:10:00+01:00" })).toEqual([]);
		expect(codes({ observedAt: "2026-11-27T13:11:00+01:00", parcel: { deliveredAt: "2026-11-28T10:00:00Z" } })).toEqual(
			["/observedAt in-the-future", "/parcel/deliveredAt in-the-future"],
		);
		const tomorrow = "2026-11-28T12:00:00Z";
		expect(codes({ reported: { receivedAt: tomorrow }, parcel: { inHandAt: tomorrow } })).toEqual([
			"/reported/receivedAt in-the-future",
			"/parcel/inHandAt in-the-future",
		]);
	});

	it("are refused all at once: one that has not come yet hides no other that is out of order", () => {
		const parcel = { deliveredAt: "2026-11-20T10:00:00Z", inHandAt: "2027-11-20T10:00:00Z" };
		expect(codes({ observedAt: "2026-11-01T10:00:00Z", parcel })).toEqual([
			"/parcel/inHandAt in-the-future",
			"/observedAt seen-before-delivered",
		]);
	});

	it("lie in their order, a day aside", () => {
		const deliveredAt = "2026-11-20T10:00:00Z";
		expect(codes({ observedAt: "2025-01-01T10:00:00Z", parcel: { deliveredAt } })).toEqual([
			"/observedAt seen-before-delivered",
		]);
		expect(codes({ observedAt: "2026-11-19T10:00:00Z", parcel: { deliveredAt } })).toEqual([]);
		expect(codes({ observedAt: "2026-11-19T09:59:00Z", parcel: { deliveredAt } })).toEqual([
			"/observedAt seen-before-delivered",
		]);
		expect(codes({ parcel: { deliveredAt, inHandAt: "2026-11-18T10:00:00Z" } })).toEqual([
			"/parcel/inHandAt in-hand-before-delivered",
		]);
		expect(codes({ observedAt: "2026-11-19T10:00:00Z", parcel: { inHandAt: deliveredAt } })).toEqual([]);
		expect(codes({ observedAt: "2026-11-19T09:00:00Z", parcel: { inHandAt: deliveredAt } })).toEqual([
			"/observedAt seen-before-in-hand",
		]);
	});

	it("are told once for a time that lies before two others", () => {
		const parcel = { deliveredAt: "2026-11-20T10:00:00Z", inHandAt: "2026-11-21T10:00:00Z" };
		expect(codes({ observedAt: "2026-11-10T10:00:00Z", parcel })).toEqual(["/observedAt seen-before-delivered"]);
	});

	it("are held against the leg, but what one side noted keeps the other from nothing that it tells itself", () => {
		const noted = { deliveredAt: "2026-11-20T10:00:00Z", departureSeenAt: "2026-11-10T10:00:00Z" };
		const observedAt = "2026-11-05T10:00:00Z";
		expect(codes({ observedAt }, noted)).toEqual(["/observedAt seen-before-noted-delivery"]);
		expect(codes({ observedAt }, { departureSeenAt: noted.departureSeenAt })).toEqual([
			"/observedAt seen-before-departure",
		]);
		expect(codes({ observedAt, parcel: { deliveredAt: "2026-11-04T10:00:00Z" } }, noted)).toEqual([]);
	});
});
