/** The clock of a warranty and the reasons on both sides. Months as in D21, D23, D24 of the reference page: the same day, or the month's last. */
import { describe, expect, it } from "vitest";
import { type WarrantyInput, warranty } from "../../../src/calculations/claims/warranty.ts";

const input = (more: Partial<WarrantyInput> = {}): WarrantyInput => ({
	months: 6,
	startsOn: "2025-03-03",
	failedOn: "2025-08-01",
	sameFault: "not-known",
	samePart: "not-known",
	eventSince: "not-known",
	...more,
});
const keys = (list: readonly { readonly sentence: string }[]) => list.map(({ sentence }) => sentence);

describe("the clock", () => {
	it.each([
		["2024-01-31", 1, "2024-02-29"],
		["2025-01-31", 1, "2025-02-28"],
		["2024-02-29", 12, "2025-02-28"],
		["2023-02-28", 12, "2024-02-28"],
		["2025-08-31", 6, "2026-02-28"],
	])("from %s over %i months ends on %s", (startsOn, months, endsOn) => {
		expect(warranty(input({ startsOn, months })).endsOn).toBe(endsOn);
	});
	it.each([
		["2025-03-02", "outside"],
		["2025-03-03", "inside"],
		["2025-09-03", "inside"],
		["2025-09-04", "outside"],
	])("a failure on %s is %s", (failedOn, time) => {
		expect(warranty(input({ failedOn })).time).toBe(time);
	});
	it("is open without a start or a failure, and never inside without a warranty", () => {
		expect(warranty(input({ startsOn: null })).time).toBe("open");
		expect(warranty(input({ failedOn: null })).time).toBe("open");
		expect(warranty(input({ months: null }))).toMatchObject({ time: "open", endsOn: null });
		expect(keys(warranty(input({ months: null })).against)).toContain("warranty.none-agreed");
	});
});

describe("the reasons", () => {
	it("stand on the side for which they speak, and open where nobody knows", () => {
		const found = warranty(input({ sameFault: "yes", samePart: "no", eventSince: "no" }));
		expect(keys(found.for)).toEqual(["warranty.in-time", "warranty.same-fault-yes", "warranty.event-since-no"]);
		expect(keys(found.against)).toEqual(["warranty.same-part-no"]);
		expect(found.open).toEqual([]);
		expect(keys(warranty(input()).open)).toEqual([
			"warranty.same-fault-not-known",
			"warranty.same-part-not-known",
			"warranty.event-since-not-known",
		]);
		expect(keys(warranty(input({ eventSince: "yes" })).against)).toEqual(["warranty.event-since-yes"]);
	});
});
