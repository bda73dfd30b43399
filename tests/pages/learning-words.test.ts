/** How long it takes to see a difference, in words. */
import { expect, it } from "vitest";
import { showWords } from "../../src/pages/learning/learning-words.ts";

it.each([
	[0.4, "within a year"],
	[1, "within a year"],
	[1.02, "about a year"],
	[1.06, "about 1.1 years"],
	[12.4, "about 12 years"],
])("%s years", (years, words) => {
	expect(showWords({ from: 0.05, to: 0.1, cases: 40, years, isRough: false })).toBe(`40 legs in each group, ${words}`);
});
