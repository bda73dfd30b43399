/** One reading at two ends: worked examples, published decision rules, properties. Source and tolerance beside each. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { conformanceProbability, conformityOfMeasured } from "../../../src/calculations/comparison/conformity.ts";
import { enNumber } from "../../../src/calculations/comparison/measured-difference.ts";
import { measuredError } from "../../../src/calculations/comparison/measured-error.ts";
import { readingComparison } from "../../../src/calculations/comparison/reading-comparison.ts";
import type { ReadingComparison, ReadingComparisonInput } from "../../../src/calculations/comparison/types.ts";
import { errorDistribution } from "../../../src/calculations/statistics/uncertainty.ts";
import { speak } from "../../../src/texts/say.ts";

const NUMBER = Number.NaN;
const within = (got: number | null | undefined, wanted: number, tolerance: number) =>
	expect(Math.abs((got ?? NUMBER) - wanted)).toBeLessThanOrEqual(tolerance);

function compared(input: ReadingComparisonInput): ReadingComparison {
	const answer = readingComparison(input);
	if (answer.status !== "assessed") throw new Error(`not assessed: ${answer.reason.code}`);
	return answer.result;
}

const VOLTS = {
	kind: "measured",
	comparability: "stated-uncertainty",
	betterIs: "neither",
	limits: { low: 11.04, high: 12.6 },
	equivalenceMargin: 0.25,
	departure: { values: [12.03], instrument: { id: "dmm-1", percentOfReading: 0.5, counts: 2, resolution: 0.01 } },
	arrival: { values: [11.98], instrument: { id: "dmm-2", percentOfReading: 0.5, counts: 2, resolution: 0.01 } },
} as const satisfies ReadingComparisonInput;
const ERRORS = { kind: "count", comparability: "any-bench", betterIs: "lower", limits: { high: 0 } } as const;
const hours = (count: number, amount: number) => ({ count, exposure: { amount, unit: "h" } });

describe("worked examples of the contract; half a unit of the last printed digit", () => {
	test("volts at a named pin, two meters", () => {
		const got = compared({ ...VOLTS, unit: "V" });
		within(got.difference, -0.05, 1e-12);
		within(got.expandedUncertainty, 0.1243, 0.00005);
		within(got.interval?.[0], -0.1743, 0.00005);
		within(got.interval?.[1], 0.0743, 0.00005);
		expect(got).toMatchObject({ verdict: "equivalent", direction: "sideways", intervalOf: "difference" });
		expect(got.conformity.departure?.verdict).toBe("proven-good");
		expect(got.conformity.arrival?.verdict).toBe("proven-good");
		expect(speak(got).why).toBe("The difference, with its uncertainty, lies inside the margin of 0.25 V.");
	});

	test("P05: no error in 24 h, then 5 in 1 h", () => {
		const got = compared({ ...ERRORS, departure: hours(0, 24), arrival: hours(5, 1) });
		within(got.pValue, 1.024e-7, 0.0005e-7);
		expect(got).toMatchObject({ verdict: "differs", direction: "worse", intervalOf: "rate-ratio" });
		expect(got.conformity.departure?.verdict).toBe("held-as-tested");
		within(got.conformity.departure?.upperBound, 0.125, 0.0005);
		expect(got.conformity.arrival?.verdict).toBe("proven-bad");
		within(got.interval?.[0], 21.992541, 2e-4);
		expect(got.interval?.[1]).toBeNull();
	});

	test("P06: no error in 1 h, then 3 in 1 h: the rates say nothing, the limit does", () => {
		const got = compared({ ...ERRORS, departure: hours(0, 1), arrival: hours(3, 1) });
		within(got.pValue, 0.25, 1e-12);
		expect(got).toMatchObject({ verdict: "inconclusive", direction: null });
		expect(got.conformity.arrival?.verdict).toBe("proven-bad");
	});
});

describe("published decision rules", () => {
	test("M05-M07, JCGM 106:2012, 7.3.3 and 7.4 (printed 0.66, 0.92, 0.99; from memory): 1e-8", () => {
		within(conformanceProbability(13.6, 1.8, { low: 12.5, high: 16.3 }), 0.662629786, 1e-8);
		within(conformanceProbability(-5.47, 0.05, { high: -5.4 }), 0.919243341, 1e-8);
		within(conformanceProbability(509.7, 8.6, { low: 490 }), 0.989009547, 1e-8);
	});

	test("M08, non-binary rule of ILAC-G8 with w = U and ISO 14253-1: pass, between, fail", () => {
		// k = 2 is the coverage 95.45 %; probabilities to 1e-4, as that coverage is rounded.
		const error = errorDistribution({
			rectangular: [],
			normal: [{ standardUncertainty: 0.03, degreesOfFreedom: Number.POSITIVE_INFINITY }],
		});
		const got = [11.48, 11.43, 11.33, 11.36, 12.57, 12.63, 12.67].map((value) =>
			conformityOfMeasured(value, error, { low: 11.4, high: 12.6 }, 0.9545),
		);
		expect(got.map(({ verdict }) => verdict)).toEqual([
			"proven-good",
			"inconclusive",
			"proven-bad",
			// By the same rule: below the limit by less than U, and the three places at the upper limit.
			"inconclusive",
			"inconclusive",
			"inconclusive",
			"proven-bad",
		]);
		[0.996169619, 0.841344746, 0.009815329].forEach((wanted, index) => {
			within(got[index]?.probability, wanted, 1e-8);
		});
	});

	test("M11, En of two certificates with k = 2 (own numbers): 1e-4, as k = 2 is rounded", () => {
		const end = (value: number, expanded: number) =>
			measuredError({ values: [value], instrument: { id: "m", certificate: { expanded, k: 2 } } });
		within(enNumber(0.0007, end(10.0005, 0.0004), end(10.0012, 0.0006), 0.9545), 0.970725343, 1e-4);
	});

	test("manual of a 3½-digit hand meter, 200 Ω and 2 kΩ ranges, ±(0.8 % + 2 digits): ±0.204 at 0.5 Ω, ±0.70 at 62.5, ±12.4 at 1300", () => {
		const half = (value: number, resolution: number) => {
			const { scale, counts } = measuredError({
				values: [value],
				instrument: { id: "m", percentOfReading: 0.8, counts: 2, resolution },
			});
			return scale + counts;
		};
		within(half(0.5, 0.1), 0.204, 1e-9);
		within(half(62.5, 0.1), 0.7, 1e-9);
		within(half(1300, 1), 12.4, 1e-9);
	});
});

describe("scores: independent recomputation (R t.test), relative 1e-5", () => {
	const score = { kind: "score", comparability: "same-bench", betterIs: "higher" } as const;
	const departure = { values: [10412, 10388, 10431, 10405, 10397], benchId: "b" };

	test("T05: clearly lower", () => {
		const got = compared({ ...score, departure, arrival: { values: [10120, 10145, 10098], benchId: "b" } });
		within(got.pValue, 0.000234882779, 2e-9);
		within(got.interval?.[0], -333.045672, 1e-3);
		within(got.interval?.[1], -238.154328, 1e-3);
		expect(got).toMatchObject({ verdict: "differs", direction: "worse" });
	});

	test("T06: equivalent within 1 %; without a margin only inconclusive", () => {
		const arrival = { values: [10380, 10402, 10391], benchId: "b" };
		expect(compared({ ...score, equivalenceMargin: 104.066, departure, arrival }).verdict).toBe("equivalent");
		const bare = compared({ ...score, departure, arrival });
		expect(bare.verdict).toBe("inconclusive");
		within(bare.pValue, 0.1600905, 2e-6);
	});

	test("a single run on arrival is held against the prediction interval 10356.97 to 10456.23", () => {
		const verdictOf = (value: number) => compared({ ...score, departure, arrival: { values: [value], benchId: "b" } });
		expect(verdictOf(10356.9).verdict).toBe("differs");
		expect(verdictOf(10357.0).verdict).toBe("inconclusive");
		expect(verdictOf(10456.3)).toMatchObject({ verdict: "differs", direction: "better" });
	});

	test("a single run at departure: the same the other way round", () => {
		const backwards = { ...score, departure: { values: [10000], benchId: "b" }, arrival: departure };
		expect(compared(backwards)).toMatchObject({ verdict: "differs", direction: "better" });
		within(compared(backwards).difference, 406.6, 1e-9);
	});

	test("far above the margin is not equivalent, on either side", () => {
		const low = { values: [10120, 10145, 10098], benchId: "b" };
		const rule = { ...score, equivalenceMargin: 104.066 };
		expect(compared({ ...rule, departure, arrival: low }).verdict).toBe("differs");
		expect(compared({ ...rule, departure: low, arrival: departure }).verdict).toBe("differs");
	});

	test("one run at each end shows no scatter", () => {
		const got = compared({
			...score,
			departure: { values: [100], benchId: "b" },
			arrival: { values: [90], benchId: "b" },
		});
		expect(got).toMatchObject({ verdict: "inconclusive", difference: -10, pValue: null });
	});
});

describe("one instrument at both ends (our choice of 0.9 for the correlation; by hand, 1e-12)", () => {
	const volts = (id: string) => ({
		kind: "measured" as const,
		comparability: "stated-uncertainty" as const,
		betterIs: "higher" as const,
		departure: { values: [100], instrument: { id: "a", percentOfReading: 1 } },
		arrival: { values: [101], instrument: { id, percentOfReading: 1 } },
	});

	test("its scale error cancels in part: half width 0.95 √(1 + 1.01² − 2·0.9·1.01), and no En number", () => {
		const got = compared(volts("a"));
		within(got.expandedUncertainty, 0.95 * Math.sqrt(1 + 1.01 ** 2 - 2 * 0.9 * 1.01), 1e-12);
		expect(got).toMatchObject({ verdict: "differs", direction: "better", enNumber: null });
	});

	test("two instruments: 2.01 − √(0.2 · 1.01), and En over the root sum of squares", () => {
		const got = compared(volts("b"));
		within(got.expandedUncertainty, 2.01 - Math.sqrt(0.2 * 1.01), 1e-12);
		within(got.enNumber, 1 / Math.hypot(0.95, 0.95 * 1.01), 1e-12);
		expect(got.verdict).toBe("inconclusive");
	});
});

describe("outcomes", () => {
	const starts = { kind: "outcome", comparability: "any-bench", betterIs: "higher", limits: { low: 1 } } as const;

	test("B_fish: 20 of 20, then 2 of 5 (R fisher.test, 1e-8)", () => {
		const got = compared({ ...starts, departure: { successes: 20, trials: 20 }, arrival: { successes: 2, trials: 5 } });
		within(got.pValue, 0.004347826, 1e-8);
		expect(got).toMatchObject({ verdict: "differs", direction: "worse" });
		expect(got.conformity.departure).toMatchObject({ verdict: "held-as-tested", upperBoundOf: "failure-share" });
		within(got.conformity.departure?.upperBound, 0.139108341, 1e-8); // B_zero, n = 20
		expect(got.conformity.arrival?.verdict).toBe("proven-bad");
	});

	test("one miss of one after five good starts: the shares are open, the limit is not kept", () => {
		const got = compared({ ...starts, departure: { successes: 5, trials: 5 }, arrival: { successes: 0, trials: 1 } });
		expect(got.verdict).toBe("inconclusive");
		expect(got.conformity.arrival?.verdict).toBe("proven-bad");
	});
});

describe("what is not known is not invented", () => {
	test("no limit, no conformity", () => {
		const { limits: _, ...open } = VOLTS;
		expect(compared(open).conformity).toEqual({ departure: null, arrival: null });
	});

	test("not tested is never a failure, and the tested end keeps its conformity", () => {
		const got = compared({ ...ERRORS, departure: hours(0, 24), arrival: { notTested: "no-equipment" } });
		expect(got).toMatchObject({ verdict: "not-tested", direction: null, pValue: null });
		expect(got.conformity.departure?.verdict).toBe("held-as-tested");
		expect(got.conformity.arrival).toBeNull();
	});

	test("a meter of unknown accuracy is not comparable where the accuracy must be stated", () => {
		const got = compared({ ...VOLTS, arrival: { values: [11.98], instrument: { id: "dmm-2" } } });
		expect(got.verdict).toBe("not-comparable");
		expect(got.conformity.arrival).toMatchObject({ verdict: "inconclusive", probability: null });
	});

	test("a count without exposure is not compared, but an error seen breaks a limit of none", () => {
		const got = compared({ ...ERRORS, departure: hours(0, 24), arrival: { count: 1 } });
		expect(got.verdict).toBe("not-comparable");
		expect(got.conformity.arrival).toMatchObject({ verdict: "proven-bad", upperBound: null });
	});

	test("counts over unlike exposures are not compared", () => {
		const runs = { count: 0, exposure: { amount: 24, unit: "runs" } };
		expect(compared({ ...ERRORS, departure: runs, arrival: hours(5, 1) }).verdict).toBe("not-comparable");
	});

	test("counts of the last digit without its size state no accuracy", () => {
		const end = { values: [12.03], instrument: { id: "dmm-1", percentOfReading: 0.5, counts: 2 } };
		expect(compared({ ...VOLTS, departure: end }).verdict).toBe("not-comparable");
	});

	test("repeats without any scatter, accuracy unknown: the step of the display is not the error", () => {
		const rule = { kind: "measured", comparability: "same-bench", betterIs: "lower" } as const;
		const end = (...values: number[]) => ({ values, benchId: "b" });
		expect(compared({ ...rule, departure: end(71, 71, 71), arrival: end(72, 72, 72) }).verdict).toBe("inconclusive");
		expect(compared({ ...rule, departure: end(70.9, 71, 71.1), arrival: end(79.9, 80, 80.1) }).verdict).toBe("differs");
	});

	test("un-nulled leads: 0.5 against 0.8 ohm with two hand meters shows nothing", () => {
		const end = (value: number, id: string) => ({
			values: [value],
			instrument: { id, percentOfReading: 0.8, counts: 2, resolution: 0.1, leadOffset: 0.5 },
		});
		const open = { kind: "measured", comparability: "stated-uncertainty", betterIs: "neither" } as const;
		expect(compared({ ...open, departure: end(0.5, "a"), arrival: end(0.8, "b") }).verdict).toBe("inconclusive");
	});
});

describe("link width", () => {
	const width = (value: number, benchId: string) => ({
		values: [value],
		benchId,
		instrument: { id: "item", percentOfReading: 0 },
		limits: { low: 16 },
	});
	const link = { kind: "measured", comparability: "same-bench", betterIs: "higher" } as const;

	test("half the lanes on another bench: not comparable, yet below what the card can do", () => {
		const got = compared({ ...link, departure: width(16, "shop"), arrival: width(8, "home") });
		expect(got.verdict).toBe("not-comparable");
		expect(got.conformity.departure).toMatchObject({ verdict: "proven-good", probability: 1 });
		expect(got.conformity.arrival).toMatchObject({ verdict: "proven-bad", probability: 0 });
	});

	test("the same bench: exact values differ or are equal", () => {
		expect(compared({ ...link, departure: width(16, "b"), arrival: width(8, "b") })).toMatchObject({
			verdict: "differs",
			direction: "worse",
			pValue: 0,
		});
		expect(compared({ ...link, departure: width(16, "b"), arrival: width(16, "b") }).verdict).toBe("equivalent");
	});
});

describe("properties", () => {
	const value = fc.double({ min: -1e6, max: 1e6, noNaN: true });
	const values = fc.array(value, { minLength: 1, maxLength: 5 });
	const instrument = fc.record(
		{
			percentOfReading: fc.double({ min: 0, max: 10, noNaN: true }),
			counts: fc.integer({ min: 0, max: 20 }),
			resolution: fc.double({ min: 1e-6, max: 1, noNaN: true }),
		},
		{ requiredKeys: [] },
	);
	const same = { kind: "measured", comparability: "same-instrument", betterIs: "lower" } as const;

	test("any two instruments give not-comparable for a same-instrument check, whatever the values", () => {
		fc.assert(
			fc.property(values, values, instrument, instrument, (one, other, spec1, spec2) => {
				const got = compared({
					...same,
					departure: { values: one, instrument: { id: "meter-a", ...spec1 } },
					arrival: { values: other, instrument: { id: "meter-b", ...spec2 } },
				});
				expect(got).toMatchObject({ verdict: "not-comparable", direction: null, difference: null, pValue: null });
			}),
		);
	});

	test("any two benches give not-comparable for a same-bench check, whatever the values", () => {
		fc.assert(
			fc.property(fc.constantFrom("measured", "score"), values, values, (kind, one, other) => {
				const got = compared({
					kind,
					comparability: "same-bench",
					betterIs: "higher",
					departure: { values: one, benchId: "bench-a" },
					arrival: { values: other, benchId: "bench-b" },
				});
				expect(got.verdict).toBe("not-comparable");
			}),
		);
	});

	test("swapping the ends turns the difference and the direction round", () => {
		fc.assert(
			fc.property(value, value, fc.boolean(), (one, other, sameMeter) => {
				const end = (reading: number, id: string) => ({
					values: [reading],
					instrument: { id, percentOfReading: 1, counts: 2, resolution: 0.1 },
				});
				const rule = { kind: "measured", comparability: "stated-uncertainty", betterIs: "lower" } as const;
				const [a, b] = [end(one, "a"), end(other, sameMeter ? "a" : "b")];
				const there = compared({ ...rule, departure: a, arrival: b });
				const back = compared({ ...rule, departure: b, arrival: a });
				expect(back.verdict).toBe(there.verdict);
				expect(back.difference ?? NUMBER).toBeCloseTo(-(there.difference ?? NUMBER), 6);
				if (there.verdict === "differs")
					expect(new Set([there.direction, back.direction])).toEqual(new Set(["worse", "better"]));
			}),
		);
	});

	test("the same instrument never has a larger uncertainty of the difference than two of its kind", () => {
		fc.assert(
			fc.property(value, value, (one, other) => {
				const end = (reading: number, id: string) => ({
					values: [reading],
					instrument: { id, percentOfReading: 0.5, counts: 2, resolution: 0.01 },
				});
				const rule = { kind: "measured", comparability: "stated-uncertainty", betterIs: "lower" } as const;
				const alike = compared({ ...rule, departure: end(one, "a"), arrival: end(other, "a") });
				const apart = compared({ ...rule, departure: end(one, "a"), arrival: end(other, "b") });
				// At readings of opposite sign a scale error does not cancel; 1e-4 for small parts that are gathered.
				if (one * other >= 0) {
					expect(alike.expandedUncertainty ?? NUMBER).toBeLessThanOrEqual(
						(apart.expandedUncertainty ?? NUMBER) * 1.0001,
					);
				}
			}),
		);
	});

	test("every answer has words", () => {
		const any = fc.record(
			{ values, benchId: fc.constantFrom("a", "b"), instrument: fc.constant({ id: "m", resolution: 1 }) },
			{ requiredKeys: ["values"] },
		);
		fc.assert(
			fc.property(
				fc.constantFrom("measured", "score"),
				fc.constantFrom("any-bench", "stated-uncertainty", "same-instrument", "same-bench"),
				any,
				any,
				(kind, comparability, departure, arrival) => {
					const answer = speak(readingComparison({ kind, comparability, betterIs: "neither", departure, arrival }));
					expect(answer.result?.why.length).toBeGreaterThan(10);
				},
			),
		);
	});
});
