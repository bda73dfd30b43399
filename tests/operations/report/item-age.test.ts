/** An item's age in a report is that of the day on which its newest leg began. Own expectations. */
import { describe, expect, it } from "vitest";
import type { ReportFacts } from "../../../src/operations/report/report-facts.ts";
import { ageWords } from "../../../src/operations/report/report-words.ts";
import { LANGUAGES, type Language } from "../../../src/texts/language.ts";
import { speakerOf } from "../../../src/texts/speaker.ts";

const leg = (number: number, facts: object, seen: object | null = null) => ({
	leg: { leg: number, facts },
	found: { departure: seen === null ? null : { statement: { observed: seen } } },
});
const words = (legs: readonly object[], language: Language = "en", boughtOn: string | undefined = "2025-02-14") =>
	ageWords({
		order: { item: { boughtOn } },
		legs,
		asOf: new Date("2026-11-27T11:28:00Z"),
		speaker: speakerOf(language),
	} as unknown as ReportFacts);

describe("the age of an item", () => {
	it("is counted to the day on which the newest leg that began was handed over, on the clock there", () => {
		const legs = [
			leg(1, { dispatchedAt: "2026-09-15T08:00:00Z" }),
			leg(2, { dispatchedAt: "2026-10-13T23:30:00-02:00" }),
		];
		expect(words(legs)).toBe("new on 14 Feb 2025, so 19 months old on 13 Oct 2026, when leg 2 was handed over");
		expect(words([...legs, leg(3, {})])).toContain("when leg 2 was handed over");
	});

	it("takes the departure record's time where none is noted, and the report's day where nothing left", () => {
		const seen = { at: "2026-10-13T22:30:00Z", offsetMinutes: 120 };
		expect(words([leg(1, {}, seen)])).toContain("so 20 months old on 14 Oct 2026");
		expect(words([leg(1, {})])).toBe("new on 14 Feb 2025, so 21 months old on 27 Nov 2026");
	});

	it("writes its dates with the month's name in every language", () => {
		for (const language of LANGUAGES) expect(words([leg(1, {})], language)).not.toMatch(/\d{4}-\d\d/);
	});
});
