/** A seal that came long after what it seals was seen. Own expectations; the line of 24 hours is our choice. */
import { describe, expect, it } from "vitest";
import { isSealedLate, lateSealNote, sealedLateWords } from "../../../src/operations/records/sealed-late.ts";
import { speakerOf } from "../../../src/texts/speaker.ts";

const SEEN = "2026-09-14T18:15:00Z";
const words = (sealedAt: string) => sealedLateWords({ seenAt: SEEN, sealedAt });

describe("a record that was sealed", () => {
	it.each([
		["within a day", "2026-09-15T18:15:00Z", null],
		["before it was seen", "2026-09-14T10:00:00Z", null],
		["a minute over a day later", "2026-09-15T18:16:00Z", "sealed 24 hours after it was seen"],
		["just before two days", "2026-09-16T18:14:00Z", "sealed 47 hours after it was seen"],
		["weeks later", "2026-11-27T11:28:00Z", "sealed 73 days after it was seen"],
	])("%s", (_, sealedAt, told) => {
		expect(words(sealedAt)).toBe(told);
		expect(isSealedLate({ seenAt: SEEN, sealedAt: new Date(sealedAt) })).toBe(told !== null);
	});

	it("names the line as a choice and what the seal proves, in every language", () => {
		for (const language of ["en", "de", "fr"] as const) expect(lateSealNote(speakerOf(language))).toContain("24");
		expect(lateSealNote()).toMatch(/our choice.*from then on, not what was seen earlier/);
	});
});
