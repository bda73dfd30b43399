/** The calculation as the API offers it: shapes of request and answer, examples of the contract, hostile numbers. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readingComparisonRequest, readingComparisonResult } from "../../../src/contract/reading-comparison.ts";
import { readingComparison } from "../../../src/operations/calculations/reading-comparison.ts";
import { speak } from "../../../src/texts/say.ts";

function answered(request: unknown) {
	const answer = speak(readingComparison.assess(readingComparisonRequest.parse(request)));
	return answer.status === "assessed" ? readingComparisonResult.parse(answer.result) : answer;
}

function faultsOf(request: unknown): string[] {
	const parsed = readingComparisonRequest.safeParse(request);
	return parsed.success ? [] : parsed.error.issues.map((issue) => `/${issue.path.join("/")}`);
}

const MEASURED = readingComparison.example.request as Record<string, unknown>;
const COUNT = {
	kind: "count",
	comparability: "any-bench",
	betterIs: "lower",
	limits: { high: 0 },
	departure: { count: 0, exposure: { amount: 24, unit: "h" } },
	arrival: { count: 5, exposure: { amount: 1, unit: "h" } },
};

test("the count example of the contract", () => {
	expect(answered(COUNT)).toMatchObject({
		pValue: expect.closeTo(1.024e-7, 10),
		verdict: "differs",
		direction: "worse",
	});
});

describe("bad input is named", () => {
	test.each([
		["a member unknown", { ...MEASURED, tolerance: 1 }, "/"],
		["a count where a value belongs", { ...MEASURED, arrival: { count: 3 } }, "/arrival/values"],
		["an end that says both", { ...COUNT, arrival: { ...COUNT.arrival, notTested: "no meter" } }, "/arrival/count"],
		[
			"more successes than trials",
			{ ...COUNT, kind: "outcome", departure: { trials: 1, successes: 2 }, arrival: { trials: 1, successes: 1 } },
			"/departure/successes",
		],
		["limits the wrong way round", { ...MEASURED, limits: { low: 3, high: 2 } }, "/limits/low"],
		[
			"counts without their size",
			{ ...MEASURED, departure: { values: [1], instrument: { id: "m", counts: 2 } } },
			"/departure/instrument/resolution",
		],
		["a string for a number", { ...MEASURED, departure: { values: ["12"] } }, "/departure/values/0"],
		[
			"no exposure at all",
			{ ...COUNT, arrival: { count: 1, exposure: { amount: 0, unit: "h" } } },
			"/arrival/exposure/amount",
		],
	])("%s", (_, request, path) => {
		expect(faultsOf(request)).toContain(path);
	});
});

test("property: no accepted request gives a number that JSON cannot hold, or an answer outside its shape", () => {
	const size = fc.oneof(
		fc.double({ min: -1e15, max: 1e15, noNaN: true }),
		fc.constantFrom(0, 1e15, -1e15, 5e-324, 1e-300),
	);
	const share = fc.oneof(fc.double({ min: 0, max: 1e15, noNaN: true }), fc.constantFrom(0, 5e-324, 1e-323, 1e-170));
	const end = fc.record(
		{
			values: fc.array(size, { minLength: 1, maxLength: 4 }),
			instrument: fc.record(
				{
					id: fc.constantFrom("a", "b"),
					percentOfReading: fc.double({ min: 0, max: 100, noNaN: true }),
					resolution: share,
					leadOffset: share,
					certificate: fc.record({ expanded: share, k: fc.double({ min: 0.5, max: 10, noNaN: true }) }),
				},
				{ requiredKeys: ["id"] },
			),
			benchId: fc.constantFrom("x", "y"),
		},
		{ requiredKeys: ["values"] },
	);
	const count = fc.record({
		count: fc.oneof(fc.nat(5), fc.nat(1_000_000_000), fc.constant(1_000_000_000)),
		exposure: fc.record({
			amount: fc.oneof(fc.double({ min: 1e-9, max: 1e12, noNaN: true }), fc.constantFrom(1e-9, 1e12)),
			unit: fc.constant("h"),
		}),
	});
	const tries = fc
		.tuple(fc.integer({ min: 1, max: 10_000 }), fc.nat(10_000))
		.map(([trials, some]) => ({ trials, successes: Math.min(trials, some) }));
	const rule = {
		comparability: fc.constantFrom("any-bench", "stated-uncertainty", "same-instrument", "same-bench"),
		betterIs: fc.constantFrom("higher", "lower", "neither"),
		limits: fc.record({ low: fc.constant(0.5) }, { requiredKeys: [] }),
	};
	const request = fc.oneof(
		fc.record(
			{
				...rule,
				kind: fc.constantFrom("measured", "score", "ratio"),
				departure: end,
				arrival: end,
				control: fc.record({ departure: end, arrival: end }),
			},
			{ requiredKeys: ["comparability", "betterIs", "kind", "departure", "arrival"] },
		),
		fc.record({ ...rule, kind: fc.constant("count"), departure: count, arrival: count }),
		fc.record({ ...rule, kind: fc.constant("outcome"), departure: tries, arrival: tries }),
	);
	fc.assert(
		fc.property(request, (body) => {
			answered(body);
		}),
		{ numRuns: 500 },
	);
});
