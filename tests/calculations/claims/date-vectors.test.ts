/**
 * Dates of claims by id from the claims page, section 7, worked out there by hand from the texts; holidays are the library's for the
 * place named. Dates are exact.
 */
import { describe, expect, it } from "vitest";
import { addDays, addMonths } from "../../../src/calculations/civil-date.ts";
import { type ClaimEvents, type ClaimPeriod, claimPeriods } from "../../../src/calculations/claims/claim-periods.ts";
import type { Damage } from "../../../src/calculations/claims/claim-rule.ts";
import { rolled } from "../../../src/calculations/claims/counting.ts";
import { CLAIM_RULES } from "../../../src/catalogue/claim-rules.ts";
import { publicHolidays } from "../../../src/operations/calculations/holidays.ts";

const YEARS = [2023, 2024, 2025, 2026, 2027, 2028, 2029, 2030];

function periodOf(
	id: string,
	events: ClaimEvents,
	country: string | null,
	damage: Damage,
	wilful = false,
): ClaimPeriod {
	const rule = CLAIM_RULES.find((one) => one.id === id);
	if (rule === undefined) throw new Error(`no rule ${id}`);
	const holidays = country === null ? null : publicHolidays({ country }, YEARS);
	const period = claimPeriods({ rules: [rule], damage, wilful, events, holidays }).result?.periods[0];
	if (period === undefined) throw new Error("no period");
	return period;
}
const endings = ({ endsOn, rolledTo }: ClaimPeriod) => [endsOn, rolledTo];
const others = ({ alternatives }: ClaimPeriod) => alternatives.map(({ endsOn }) => endsOn);

describe("seven days of CMR Art. 30(1): Sundays and holidays out, Saturdays in", () => {
	it.each([
		["D01", "2025-03-03", "DE", "2025-03-11", ["2025-03-09"]],
		["D03", "2025-12-22", "DE", "2026-01-02", ["2025-12-25", "2025-12-26", "2025-12-28", "2026-01-01"]],
		["D04", "2026-05-11", "FR", "2026-05-20", ["2026-05-14", "2026-05-17"]],
		["D05", "2028-02-23", "DE", "2028-03-02", ["2028-02-27"]],
	])("%s", (_, delivered, country, expected, skipped) => {
		const period = periodOf("CMR-DMG-CONCEALED", { delivered }, country, "not-apparent");
		expect(endings(period)).toEqual([expected, null]);
		expect(period.skipped).toEqual(skipped);
		expect(period.safeDate).toBe(expected);
	});
});

describe("calendar days, months and years", () => {
	it.each([
		["D06", "CMR-DELAY", { placedAtDisposal: "2024-02-10" }, "DE", "delay", "2024-03-02", null],
		["D07", "CMR-DELAY", { placedAtDisposal: "2025-02-10" }, "DE", "delay", "2025-03-03", null],
		["D08", "CMR-SUIT", { delivered: "2024-02-29" }, null, "apparent", "2025-02-28", null],
		["D09", "CMR-SUIT", { delivered: "2025-03-03" }, null, "apparent", "2026-03-03", null],
		["D11", "CMR-SUIT", { takenOver: "2025-01-15" }, null, "loss", "2026-03-16", null],
		["D13", "MC99-DMG", { delivered: "2024-02-20" }, null, "apparent", "2024-03-05", null],
		["D14", "MC99-DMG", { delivered: "2025-02-20" }, null, "apparent", "2025-03-06", null],
		["D15", "MC99-DMG", { delivered: "2025-12-24" }, "DE", "apparent", "2026-01-07", null],
		["D16", "MC99-SUIT", { delivered: "2024-02-29" }, null, "apparent", "2026-02-28", null],
		["D17", "DE-HGB438-2", { delivered: "2025-03-03" }, "DE", "not-apparent", "2025-03-10", "2025-03-10"],
		["D19", "DE-HGB438-2", { delivered: "2025-12-18" }, "DE", "not-apparent", "2025-12-25", "2025-12-29"],
		["D20", "DE-HGB438-2", { delivered: "2024-02-24" }, "DE", "not-apparent", "2024-03-02", "2024-03-04"],
		["D21", "DE-HGB439", { delivered: "2024-02-29" }, null, "apparent", "2025-02-28", null],
		["D22", "DE-HGB439", { delivered: "2023-02-28" }, null, "apparent", "2024-02-28", null],
		["D27", "FR-L133-3", { delivered: "2025-05-07" }, "FR", "apparent", "2025-05-12", null],
		["D28", "FR-L133-3", { delivered: "2026-04-02" }, "FR", "apparent", "2026-04-07", null],
		["D29", "FR-L133-3", { delivered: "2025-03-05" }, "FR", "apparent", "2025-03-08", null],
		["D30", "US-NMFC-300135", { delivered: "2025-07-02" }, "US", "not-apparent", "2025-07-10", null],
		["D32", "US-CARMACK-CLAIM", { delivered: "2025-05-31" }, null, "apparent", "2026-02-28", null],
		["D33, 30 days", "US-370-5", { claimed: "2025-01-02" }, null, "apparent", "2025-02-01", null],
		["D33, 120 days", "US-370-9", { claimed: "2025-01-02" }, null, "apparent", "2025-05-02", null],
		["D34", "UPU-INQUIRY", { posted: "2025-03-10" }, null, "apparent", "2025-09-10", null],
		["D36", "CH-OR452", { delivered: "2025-03-03" }, "CH", "not-apparent", "2025-03-11", "2025-03-11"],
		["D38", "CIM-CONCEALED", { delivered: "2025-03-03" }, null, "not-apparent", "2025-03-10", null],
		["D39", "NL-BW8-ROAD-SUIT", { delivered: "2025-03-03" }, null, "apparent", "2026-03-03", null],
		["D40", "UK-CRA-22", { delivered: "2025-03-03" }, null, "apparent", "2025-04-02", null],
		["D42", "DE-BGB477", { delivered: "2024-02-29" }, null, "apparent", "2025-02-28", null],
		["D46, domestic", "DE-HGB424", { agreedLimit: "2025-03-10" }, null, "loss", "2025-03-30", null],
		["D47", "FR-POST-PARCEL-LOST", { posted: "2025-03-03" }, null, "loss", "2025-04-12", null],
	] as const)("%s: %s", (_, id, events, country, damage, endsOn, rolledTo) => {
		expect(endings(periodOf(id, events, country, damage))).toEqual([endsOn, rolledTo]);
	});
	it("D10: three years where wilful", () => {
		expect(periodOf("CMR-SUIT", { delivered: "2024-02-29" }, null, "apparent", true).endsOn).toBe("2027-02-28");
	});
	it("D11, on the way: lost on the 60th day after taking over; with an agreed limit on the 30th after it", () => {
		expect(periodOf("CMR-LOSS-PRESUMED", { takenOver: "2025-01-15" }, null, "loss").endsOn).toBe("2025-03-16");
		const both = { takenOver: "2025-01-15", agreedLimit: "2025-01-20" };
		expect(periodOf("CMR-LOSS-PRESUMED", both, null, "loss").endsOn).toBe("2025-02-19");
	});
});

describe("other readings stand beside the date, and the safe date is the earliest", () => {
	it("D27, D28: where Sundays count", () => {
		const d27 = periodOf("FR-L133-3", { delivered: "2025-05-07" }, "FR", "apparent");
		expect(others(d27)).toEqual(["2025-05-11"]);
		expect(d27.safeDate).toBe("2025-05-11");
		expect(others(periodOf("FR-L133-3", { delivered: "2026-04-02" }, "FR", "apparent"))).toEqual(["2026-04-05"]);
		expect(others(periodOf("FR-L133-3", { delivered: "2025-03-05" }, "FR", "apparent"))).toEqual([]);
	});
	it("D33: the word after 60 days more; D34: the lenient reading; D46: across borders", () => {
		expect(others(periodOf("US-370-9", { claimed: "2025-01-02" }, null, "apparent"))).toEqual(["2025-07-01"]);
		const inquiry = periodOf("UPU-INQUIRY", { posted: "2025-03-10" }, null, "apparent");
		expect(others(inquiry)).toEqual(["2025-09-11"]);
		expect(inquiry.safeDate).toBe("2025-09-10");
		const lost = periodOf("DE-HGB424", { agreedLimit: "2025-03-10" }, null, "loss");
		expect(others(lost)).toEqual(["2025-04-09"]);
		// A right that begins: safe is the latest.
		expect(lost.safeDate).toBe("2025-04-09");
	});
	it("a delivery period longer than 20 days runs once more in full", () => {
		const events = { takenOver: "2025-02-01", agreedLimit: "2025-03-10" };
		expect(periodOf("DE-HGB424", events, null, "loss").endsOn).toBe("2025-04-16");
	});
	it("an end that moves on is never the safe one", () => {
		expect(periodOf("DE-HGB438-2", { delivered: "2025-12-18" }, "DE", "not-apparent").safeDate).toBe("2025-12-25");
	});
	it("air: whether the first day counts is not said, and discovery asks for action at once", () => {
		const period = periodOf("MC99-DMG", { delivered: "2025-02-20", discovered: "2025-02-22" }, null, "not-apparent");
		expect(period.endsOn).toBe("2025-03-06");
		expect(others(period)).toEqual(["2025-03-05", "2025-02-22"]);
		expect(period.safeDate).toBe("2025-02-22");
	});
	it("Good Friday in the Netherlands, and a Boxing Day on a Saturday, are doubtful: the date with them is shown, the one without is safe", () => {
		const dutch = periodOf("CMR-DMG-CONCEALED", { delivered: "2026-03-30" }, "NL", "not-apparent");
		expect([dutch.endsOn, ...others(dutch)]).toEqual(["2026-04-08", "2026-04-09"]);
		expect(dutch.safeDate).toBe("2026-04-08");
		const british = periodOf("CMR-DMG-CONCEALED", { delivered: "2026-12-21" }, "GB", "not-apparent");
		expect(british.skipped).toEqual(["2026-12-25", "2026-12-27", "2026-12-28"]);
		expect([british.endsOn, ...others(british)]).toEqual(["2026-12-31", "2027-01-02"]);
	});
	it("a written claim stops the time until it is refused; the plain end stays the safe one", () => {
		const claimed = { delivered: "2025-03-03", claimed: "2025-04-01" };
		expect(others(periodOf("CMR-SUIT", claimed, null, "apparent"))).toEqual([null]);
		const refused = { ...claimed, rejected: "2025-05-01" };
		// CMR waits for the documents as well; the German text does not.
		expect(others(periodOf("CMR-SUIT", refused, null, "apparent"))).toEqual([null]);
		expect(others(periodOf("DE-HGB439", refused, null, "apparent"))).toEqual(["2026-04-02"]);
		const returned = periodOf("CMR-SUIT", { ...refused, documentsReturned: "2025-05-11" }, null, "apparent");
		expect(others(returned)).toEqual(["2026-04-12"]);
		expect(returned.safeDate).toBe("2026-03-03");
	});
});

describe("months and weeks by the BGB and by Regulation 1182/71, the day of the event out", () => {
	const german = new Set(publicHolidays({ country: "DE" }, [2024, 2025, 2026]).dates);
	it.each([
		["D23", "2024-01-31", 1, "2024-02-29"],
		["D24", "2025-01-31", 1, "2025-02-28"],
		["D25", "2025-08-31", 6, "2026-02-28"],
	])("%s", (_, from, months, expected) => {
		expect(addMonths(from, months)).toBe(expected);
	});
	it("D25: moved on from a Saturday", () => {
		expect(rolled("2026-02-28", "weekends-and-holidays", german)).toBe("2026-03-02");
	});
	// D43, D44 and the rest of the set: the Court's method (C-171/03, summary), three weeks; the authority's own dates were one day late.
	it.each([
		["1998-03-12", "1998-04-02"],
		["1998-03-13", "1998-04-03"],
		["1998-03-16", "1998-04-06"],
		["1998-01-27", "1998-02-17"],
		["1998-01-28", "1998-02-18"],
	])("three weeks from %s", (from, expected) => {
		expect(rolled(addDays(from, 21), "weekends-and-holidays", new Set())).toBe(expected);
	});
});
