/**
 * The list of rules by how old their texts are: complete, what was recalled first, nothing recalled called read. Which copies
 * were read in which state stands in the claims page of the reference; the oldest is the print of the conventions of 2017.
 */
import { expect, it } from "vitest";
import { CLAIM_CAPS } from "../../../src/catalogue/claim-caps.ts";
import { CLAIM_RULES } from "../../../src/catalogue/claim-rules.ts";
import { ruleAges } from "../../../src/operations/claims/rule-ages.ts";

const ages = ruleAges("2026-03-02");

it("names every rule and every limit once", () => {
	expect(ages.flatMap(({ ruleId }) => ruleId ?? []).sort()).toEqual(CLAIM_RULES.map(({ id }) => id).sort());
	expect(ages.filter(({ ruleId }) => ruleId === null)).toHaveLength(CLAIM_CAPS.length);
});

it("has what was recalled first, then what has no date, then the oldest state; the oldest is of 2017", () => {
	const groups = ages.map(({ rests }) => rests);
	expect([...new Set(groups)]).toEqual(
		["recalled", "undated", "old", "read"].filter((one) => groups.includes(one as never)),
	);
	for (const { rests, standing, readOn } of ages) {
		expect(rests === "recalled").toBe(standing === "from-memory");
		if (rests === "old" || rests === "read") expect(readOn).not.toBeNull();
	}
	const dates = ages.filter(({ rests }) => rests === "old" || rests === "read").map(({ readOn }) => readOn ?? "");
	expect(dates).toEqual([...dates].sort());
	expect(dates[0]).toBe("2017-05-10");
	// A limit of the same document was read in the same copy.
	const cmr = ages.filter(({ regime }) => regime === "cmr");
	const ofRules = cmr.find(({ ruleId }) => ruleId === "CMR-DMG-CONCEALED");
	expect(cmr.find(({ ruleId }) => ruleId === null)).toMatchObject({
		document: ofRules?.document,
		readOn: ofRules?.readOn,
	});
});

it("names no state of a text that only others reproduced, and calls no recalled text read", () => {
	expect(ages.filter(({ document }) => document.includes("Dutch decree")).map(({ readOn }) => readOn)).toEqual([
		"2017-05-10",
	]);
	for (const { rests, document, readOn } of ages) {
		if (readOn === null) expect(document, document).not.toMatch(/repository, state of/);
		if (rests === "recalled") expect(document, document).toMatch(/recalled/i);
	}
});

it("calls a text old after three years", () => {
	const rests = (today: string) => ruleAges(today).find(({ ruleId }) => ruleId === "DE-HGB438-2")?.rests;
	expect(rests("2025-03-26")).toBe("read");
	expect(rests("2025-03-27")).toBe("old");
});
