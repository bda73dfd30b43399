/** When an item counts as worse where it arrived. Own expectations: a faulty board is sent in because it is faulty. */
import { expect, it } from "vitest";
import { isWorseOnArrival } from "../../src/records/arrived-worse.ts";

it.each([
	["does-not-start", "good", true, true],
	["does-not-start", "good", false, true],
	["partly-good", "partly-good", false, false],
	["partly-good", "partly-good", true, false],
	["good", "does-not-start", true, false],
	["intermittent", undefined, true, true],
	["intermittent", undefined, false, false],
	["intermittent", "not-tested", true, true],
	["not-tested", "good", true, false],
	["unrepaired", "unrepaired", true, false],
] as const)("%s after %s, to the owner %s: %s", (arrived, left, isToOwner, expected) => {
	expect(isWorseOnArrival(arrived, left, isToOwner)).toBe(expected);
});
