/** Civil dates against the runtime's own calendar in UTC, over four centuries, and a few dates that everyone can look up. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays, addMonths, civilDateOf, dayNumber, daysBetween, weekday } from "../../src/calculations/civil-date.ts";

const DAY_MS = 86_400_000;
const byRuntime = (number: number) => new Date(number * DAY_MS).toISOString().slice(0, 10);
/** 1901 to 2300. */
const days = fc.integer({ min: -25_202, max: 120_895 });

describe("civil dates", () => {
	it("are the runtime's, day by day from 1970 to 2200", () => {
		for (let number = 0; number <= 84_370; number += 1) {
			const date = byRuntime(number);
			if (civilDateOf(number) !== date || dayNumber(date) !== number)
				expect([number, civilDateOf(number)]).toEqual([number, date]);
		}
	});
	it("are the runtime's over four centuries, weekday and all", () => {
		fc.assert(
			fc.property(days, days, (number, other) => {
				const date = byRuntime(number);
				expect(civilDateOf(number)).toBe(date);
				expect(weekday(date)).toBe(new Date(number * DAY_MS).getUTCDay() || 7);
				expect(addDays(date, other - number)).toBe(byRuntime(other));
				expect(daysBetween(date, byRuntime(other))).toBe(other - number);
			}),
		);
	});
	it("know the leap years", () => {
		expect(addDays("2000-02-28", 1)).toBe("2000-02-29");
		expect(addDays("2100-02-28", 1)).toBe("2100-03-01");
		expect(addDays("2028-02-28", 1)).toBe("2028-02-29");
		expect(addDays("2025-12-31", 1)).toBe("2026-01-01");
		expect(weekday("2026-11-27")).toBe(5);
	});
	it("keep the day of the month, or take the month's last", () => {
		fc.assert(
			fc.property(days, fc.integer({ min: 0, max: 60 }), (number, months) => {
				const date = byRuntime(number);
				const [year = 0, month = 0, day = 0] = date.split("-").map(Number);
				// Day 0 of the month after is the last of the month.
				const last = new Date(Date.UTC(year, month - 1 + months + 1, 0)).getUTCDate();
				const expected = new Date(Date.UTC(year, month - 1 + months, Math.min(day, last))).toISOString().slice(0, 10);
				expect(addMonths(date, months)).toBe(expected);
			}),
		);
	});
});
