/** When a limit that is held at each end must be told apart from a difference. Own expectations. */
import { expect, it } from "vitest";
import type { ReadingComparison } from "../../../src/calculations/comparison/types.ts";
import { isHeldApart } from "../../../src/operations/comparison/lead-screen.ts";

const judged = (verdict: string, departure: string | null, arrival: string | null) =>
	({
		verdict,
		conformity: {
			departure: departure === null ? null : { verdict: departure },
			arrival: arrival === null ? null : { verdict: arrival },
		},
	}) as unknown as ReadingComparison;

it.each([
	[
		"good when it left and bad on arrival, on benches that cannot be compared",
		"not-comparable",
		"proven-good",
		"proven-bad",
		true,
	],
	["one end alone tells", "not-comparable", "held-as-tested", null, true],
	["neither end tells", "not-comparable", "inconclusive", null, false],
	["the two were compared", "differs", "proven-good", "proven-bad", false],
] as const)("%s", (_, verdict, departure, arrival, apart) => {
	expect(isHeldApart(judged(verdict, departure, arrival))).toBe(apart);
});
