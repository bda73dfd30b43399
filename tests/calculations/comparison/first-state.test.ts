/** The fair first state, after the page on bench practice, 2.2 (common practice as a whole): list first, grade second. */
import { describe, expect, test } from "vitest";
import { type FirstStateFacts, firstState } from "../../../src/calculations/comparison/first-state.ts";
import { isTextKey } from "../../../src/texts/say.ts";

const FULL: FirstStateFacts = {
	tested: true,
	works: false,
	startedAfterH: 20,
	firstAttemptEver: true,
	waitedH: 6,
	wetnessSeen: false,
	workDoneBefore: false,
	otherItem: false,
	sameItem: true,
	controlBefore: true,
	controlAfter: true,
	platforms: 2,
	setUpRecorded: true,
	filmed: true,
};
const ids = (points: readonly { id: string }[]) => points.map(({ id }) => id);

test.each([
	["all of it", {}, "full"],
	["no film", { filmed: false }, "fair"],
	["after three days", { startedAfterH: 72 }, "fair"],
	["times not recorded", { startedAfterH: undefined }, "fair"],
	["no control after", { controlAfter: undefined }, "weak"],
	["one computer, and it does not start", { platforms: 1 }, "weak"],
	[
		"one computer, and it works",
		{ platforms: 1, works: true, controlBefore: undefined, controlAfter: undefined },
		"full",
	],
	["too few marks", { sameItem: false }, "weak"],
	["another item", { otherItem: true }, "void"],
	["cleaned before the test", { workDoneBefore: true }, "void"],
	["not powered", { tested: false }, null],
	["a wait not kept is a fact, not a mark against anyone", { waitedH: undefined, wetnessSeen: undefined }, "full"],
] as const)("%s", (_, facts, grade) => {
	expect(firstState({ ...FULL, ...facts }).grade).toBe(grade);
});

describe("what is excluded and what is not", () => {
	test("one computer, no control: the bench and the pairing stay open, and each says how to close it", () => {
		const got = firstState({ ...FULL, platforms: 1, controlBefore: undefined });
		expect(ids(got.notExcluded)).toEqual(["bench-good", "other-computer"]);
		expect(got.notExcluded.every(({ how }) => how !== null)).toBe(true);
		expect(ids(got.excluded)).toEqual([
			"same-item",
			"untouched",
			"first-attempt",
			"soon",
			"dry",
			"set-up-recorded",
			"filmed",
		]);
	});
	test("what can not be had afterwards asks for nothing", () => {
		const got = firstState({ ...FULL, filmed: false, firstAttemptEver: undefined });
		expect(got.notExcluded.map(({ id, how }) => [id, how])).toEqual([
			["first-attempt", null],
			["filmed", null],
		]);
	});
	test("nothing powered: only what was seen, and how to go on without harm", () => {
		const got = firstState({ ...FULL, tested: false });
		expect(ids(got.notExcluded)).toEqual(["tested"]);
		expect(got.notExcluded[0]?.how?.sentence).toBe("first-state.tested-how");
	});
	test("every point has words for both and for how", () => {
		for (const facts of [FULL, { ...FULL, tested: false }]) {
			const points = [...firstState(facts).excluded, ...firstState(facts).notExcluded];
			for (const { says, how } of points) {
				expect(isTextKey(says.sentence), says.sentence).toBe(true);
				if (how !== null) expect(isTextKey(how.sentence), how.sentence).toBe(true);
			}
		}
		const none = firstState({
			tested: true,
			works: false,
			otherItem: false,
			sameItem: false,
			setUpRecorded: false,
			filmed: false,
		});
		expect(none.excluded).toEqual([]);
		for (const { says, how } of none.notExcluded) {
			expect(isTextKey(says.sentence), says.sentence).toBe(true);
			if (how !== null) expect(isTextKey(how.sentence), how.sentence).toBe(true);
		}
	});
});
