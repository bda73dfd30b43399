/** Counting over generated dates against a second implementation, written here on the runtime's calendar, and its properties. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Rolling, Skipping } from "../../../src/calculations/claims/claim-rule.ts";
import { countDays, rolled } from "../../../src/calculations/claims/counting.ts";

const DAY_MS = 86_400_000;
const START = Date.UTC(1970, 0, 1);
const END = Date.UTC(2199, 0, 1);
const iso = (ms: number) => new Date(ms).toISOString().slice(0, 10);

const date = fc.integer({ min: 0, max: (END - START) / DAY_MS }).map((day) => iso(START + day * DAY_MS));
const skipping = fc.constantFrom<Skipping>("none", "sundays-and-holidays", "weekends-and-holidays");
const rolling = fc.constantFrom<Rolling>("none", "weekends-and-holidays", "sundays-and-holidays");
/** Holidays near a date, so that they matter. */
const near = (around: string) =>
	fc
		.array(fc.integer({ min: -3, max: 40 }), { maxLength: 12 })
		.map((offsets) => new Set(offsets.map((offset) => iso(Date.parse(around) + offset * DAY_MS))));
const dateAndHolidays = date.chain((start) => near(start).map((holidays) => ({ start, holidays })));

/** Made once: it is made anew by every `toLocaleDateString`, which took most of this test's time. */
const WEEKDAY = new Intl.DateTimeFormat("en-GB", { weekday: "long", timeZone: "UTC" });

function isOff(day: string, kind: Skipping, holidays: ReadonlySet<string>): boolean {
	if (kind === "none") return false;
	const name = WEEKDAY.format(new Date(`${day}T12:00:00Z`));
	return name === "Sunday" || (kind === "weekends-and-holidays" && name === "Saturday") || holidays.has(day);
}

/** The other way round: of all days after the start, the count-th that is not off. */
function byList(start: string, count: number, kind: Skipping, holidays: ReadonlySet<string>): string | undefined {
	const following = Array.from({ length: 7 * count + 60 }, (_, index) => iso(Date.parse(start) + (index + 1) * DAY_MS));
	return count === 0 ? start : following.filter((day) => !isOff(day, kind, holidays))[count - 1];
}

describe("counting", () => {
	it("is what a list of the days gives", () => {
		fc.assert(
			fc.property(dateAndHolidays, fc.integer({ min: 0, max: 60 }), skipping, ({ start, holidays }, count, kind) => {
				expect(countDays(start, count, kind, holidays).endsOn).toBe(byList(start, count, kind, holidays));
			}),
			{ numRuns: 500 },
		);
	});
	it("passes over exactly the days off between, and ends on none", () => {
		fc.assert(
			fc.property(dateAndHolidays, fc.integer({ min: 1, max: 60 }), skipping, ({ start, holidays }, count, kind) => {
				const { endsOn, skipped } = countDays(start, count, kind, holidays);
				const length = (Date.parse(endsOn) - Date.parse(start)) / DAY_MS;
				expect(length).toBe(count + skipped.length);
				expect(isOff(endsOn, kind, holidays)).toBe(false);
				for (const day of skipped) {
					expect(isOff(day, kind, holidays)).toBe(true);
					expect(day > start && day < endsOn).toBe(true);
				}
			}),
			{ numRuns: 300 },
		);
	});
	it("grows with the count and with the start, and more holidays never make it earlier", () => {
		fc.assert(
			fc.property(dateAndHolidays, fc.integer({ min: 1, max: 40 }), skipping, ({ start, holidays }, count, kind) => {
				const end = countDays(start, count, kind, holidays).endsOn;
				const nextDay = iso(Date.parse(start) + DAY_MS);
				expect(countDays(start, count + 1, kind, holidays).endsOn > end).toBe(true);
				expect(countDays(nextDay, count, kind, holidays).endsOn >= end).toBe(true);
				expect(countDays(start, count, kind, new Set()).endsOn <= end).toBe(true);
			}),
			{ numRuns: 300 },
		);
	});
	it("Sundays that count bring the end forward by no more than the Sundays passed over", () => {
		fc.assert(
			fc.property(dateAndHolidays, fc.integer({ min: 1, max: 40 }), ({ start, holidays }, count) => {
				const without = countDays(start, count, "sundays-and-holidays", holidays);
				const counted = countDays(start, count, "sundays-and-holidays", holidays, true);
				expect(counted.endsOn <= without.endsOn).toBe(true);
				expect(counted.skipped.every((day) => holidays.has(day))).toBe(true);
			}),
			{ numRuns: 300 },
		);
	});
	it("moves an end to the first day that is not off, and only then", () => {
		fc.assert(
			fc.property(dateAndHolidays, rolling, ({ start, holidays }, kind) => {
				const moved = rolled(start, kind, holidays);
				expect(isOff(moved, kind, holidays)).toBe(false);
				for (let day = Date.parse(start); iso(day) < moved; day += DAY_MS)
					expect(isOff(iso(day), kind, holidays)).toBe(true);
			}),
			{ numRuns: 300 },
		);
	});
	it("crosses leap days and year ends as days like others", () => {
		expect(countDays("2028-02-28", 1, "none", new Set()).endsOn).toBe("2028-02-29");
		expect(countDays("2100-02-28", 1, "none", new Set()).endsOn).toBe("2100-03-01");
		expect(countDays("2025-12-31", 1, "none", new Set()).endsOn).toBe("2026-01-01");
		expect(countDays("2025-12-31", 1, "sundays-and-holidays", new Set(["2026-01-01"])).endsOn).toBe("2026-01-02");
	});
});
