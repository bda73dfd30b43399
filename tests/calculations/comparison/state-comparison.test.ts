/** Two whole records against the real catalogue. Expectations are worked out by hand from the rules of the contract. */
import { describe, expect, test } from "vitest";
import { goodnessOf } from "../../../src/calculations/comparison/goodness.ts";
import { ownCheck } from "../../../src/calculations/comparison/own-check.ts";
import { compareStates } from "../../../src/calculations/comparison/state-comparison.ts";
import type { ComparedState, StateReading } from "../../../src/calculations/comparison/types.ts";
import { checksOf } from "../../../src/catalogue/checks/checks.ts";
import { speak } from "../../../src/texts/say.ts";

const CHECKS = checksOf("graphics-card");
const load = { condition: "load" } as const;
const lanes = (value: number): StateReading => ({ check: "link-width", ...load, values: [value], limits: { low: 16 } });
const errors = (count: number, hours: number): StateReading => ({
	check: "memory-errors",
	...load,
	count,
	exposure: { amount: hours, unit: "h" },
});
const looked = (check: string, good: boolean): StateReading => ({
	check,
	condition: "unknown",
	trials: 1,
	successes: good ? 1 : 0,
});
const ohms = (value: number, id: string): StateReading => ({
	check: "resistance-memory-rail",
	condition: "cold",
	values: [value],
	instrument: { id, percentOfReading: 0.8, counts: 2, resolution: 0.1 },
});

const DEPARTURE: ComparedState = {
	recordId: "rec-1",
	stateOfItem: "good",
	identity: { "serial-number": "QX-1047", uuid: "aa-01", maker: "Fernhollow", model: "Tarn 7" },
	marks: ["scratch beside the second screw"],
	benchId: "shop",
	readings: [lanes(16), errors(0, 24), ohms(62.5, "meter-a"), looked("visual-fan", true)],
};
const ARRIVAL: ComparedState = {
	recordId: "rec-2",
	stateOfItem: "partly-good",
	identity: { "serial-number": "qx-1047 ", uuid: undefined, maker: "Fernhollow", model: "Tarn 7" },
	marks: [],
	benchId: "home",
	readings: [lanes(8), errors(0, 1), ohms(74, "meter-b"), looked("visual-fan", true)],
};
const compare = (departure: Partial<ComparedState> | null, arrival: Partial<ComparedState> | null) =>
	compareStates({
		departure: departure && { ...DEPARTURE, ...departure },
		arrival: arrival && { ...ARRIVAL, ...arrival },
		checks: CHECKS,
	});
const rowOf = (comparison: ReturnType<typeof compare>, id: string) => {
	const row = comparison.rows.find(({ check }) => check.id === id);
	if (row?.comparison.status !== "assessed") throw new Error(`no row ${id}`);
	return row.comparison.result;
};

describe("a card that came to another computer", () => {
	const got = compare({}, {});

	test("compared; the item is the same as far as it was looked at", () => {
		expect(got.outcome).toBe("compared");
		expect(got.identity).toEqual({
			agree: ["serial-number", "maker", "model"],
			differ: [],
			readAlike: [],
			notSeen: ["uuid", "scratch beside the second screw"],
			likelySlips: [],
			mismatches: [],
			withoutPower: { agree: 3, compared: 3, of: 4 },
		});
	});

	test("half the lanes: the benches do not compare, the card's own capability does", () => {
		const width = rowOf(got, "link-width");
		expect(width.verdict).toBe("not-comparable");
		expect(width.conformity.departure?.verdict).toBe("proven-good");
		expect(width.conformity.arrival?.verdict).toBe("proven-bad");
	});

	test("another meter makes a resistance look different: not comparable, and no conformity is invented", () => {
		const rail = rowOf(got, "resistance-memory-rail");
		expect(rail).toMatchObject({ verdict: "not-comparable", difference: null });
		expect(rail.conformity).toEqual({ departure: null, arrival: null });
	});

	test("every check has a row with words; what was not done is not tested", () => {
		expect(got.rows.map(({ check }) => check.id)).toEqual(CHECKS.map(({ id }) => id));
		expect(rowOf(got, "score").verdict).toBe("not-tested");
		for (const row of speak(got.rows)) expect(row.comparison.result?.why).toMatch(/\.$/);
		expect(speak(got).why).toMatch(/\.$/);
	});

	test("visual points: nothing found is equal, one look bounds nothing", () => {
		const fan = rowOf(got, "visual-fan");
		expect(fan).toMatchObject({ verdict: "equivalent", direction: "sideways" });
		expect(fan.conformity.departure).toMatchObject({ verdict: "held-as-tested", upperBound: null });
		const broken = compare({}, { readings: [looked("visual-fan", false)] });
		expect(rowOf(broken, "visual-fan")).toMatchObject({ verdict: "differs", direction: "worse" });
	});

	test("goodness for the custody line", () => {
		expect(goodnessOf(ARRIVAL, CHECKS)).toMatchObject({
			"link-width": "not-good",
			"memory-errors": "good",
			"resistance-memory-rail": "no-limit",
			score: "untested",
		});
	});
});

describe("outcomes", () => {
	test("no record at one end, or work done before the first test", () => {
		expect(compare(null, {}).outcome).toBe("no-first-state");
		expect(compare({}, null).outcome).toBe("no-first-state");
		expect(compare({}, { workDoneBefore: true }).outcome).toBe("no-first-state");
	});

	test("another serial number; letters read for digits are only pointed out", () => {
		const other = compare({}, { identity: { "serial-number": "QX-1048" } });
		expect(other.outcome).toBe("identity-mismatch");
		const alike = compare({}, { identity: { "serial-number": "QX-IO47" } });
		expect(alike.outcome).toBe("compared");
		expect(alike.identity.readAlike).toEqual(["serial-number"]);
		const lower = compare({}, { identity: { "serial-number": "QX-l047" } });
		expect(lower.identity.readAlike).toEqual(["serial-number"]);
	});

	test("moisture holds; better than it left is a conflict", () => {
		expect(compare({}, { wetnessSeen: true }).outcome).toBe("moisture-hold");
		expect(compare({ readings: [errors(4, 1)] }, {}).outcome).toBe("state-conflict");
		expect(compare({ stateOfItem: "does-not-start" }, {}).outcome).toBe("state-conflict");
		expect(compare({ stateOfItem: "unrepaired" }, {}).outcome).toBe("compared");
	});
});

describe("conditions and set-up", () => {
	test("a link at rest answers nothing about load", () => {
		const got = rowOf(compare({}, { readings: [{ ...lanes(8), condition: "idle" }] }), "link-width");
		expect(got.verdict).toBe("not-comparable");
		expect(got.conformity.arrival).toBeNull();
		expect(got.conformity.departure?.verdict).toBe("proven-good");
	});

	test("nor does a link of which nobody said whether the card was working", () => {
		const got = rowOf(compare({}, { readings: [{ ...lanes(8), condition: "unknown" }] }), "link-width");
		expect(got).toMatchObject({ verdict: "not-comparable", conformity: { arrival: null } });
	});

	test("the same bench in a room that is more than 3 K warmer does not compare", () => {
		const warm = (ambientDegC: number): Partial<ComparedState> => ({
			benchId: "b",
			ambientDegC,
			readings: [{ check: "temperature-core", ...load, values: [70] }],
		});
		expect(rowOf(compare(warm(22), warm(25)), "temperature-core").verdict).toBe("equivalent");
		expect(rowOf(compare(warm(22), warm(25.5)), "temperature-core").verdict).toBe("not-comparable");
	});

	test("the same bench with another driver does not compare", () => {
		const warm = (value: number): StateReading => ({
			check: "temperature-core",
			...load,
			values: [value],
			limits: { high: 95 },
		});
		const bench = (driver: string, value: number) => ({ benchId: "b", driver, readings: [warm(value)] });
		expect(rowOf(compare(bench("1.0", 70), bench("2.0", 71)), "temperature-core").verdict).toBe("not-comparable");
		expect(rowOf(compare(bench("1.0", 70), bench("1.0", 71)), "temperature-core")).toMatchObject({
			verdict: "equivalent",
			conformity: { arrival: { verdict: "proven-good" } },
		});
		expect(rowOf(compare(bench("1.0", 70), bench("1.0", 82)), "temperature-core").direction).toBe("worse");
	});

	test("percent and revolutions do not compare", () => {
		const fan = (unit: string, value: number) => ({
			benchId: "b",
			readings: [{ check: "fan-speed", ...load, unit, values: [value] }],
		});
		expect(rowOf(compare(fan("percent", 40), fan("rpm", 1800)), "fan-speed").verdict).toBe("not-comparable");
	});

	test("minutes at one end and hours at the other are one exposure", () => {
		const minutes: StateReading = { ...errors(3, 1), exposure: { amount: 3600, unit: "s" } };
		const got = rowOf(compare({ readings: [errors(0, 1)] }, { readings: [minutes] }), "memory-errors");
		expect(got.pValue).toBeCloseTo(0.25, 12); // P06
	});

	test("leads that were not nulled: 0.5 against 0.8 ohm with one meter shows nothing; nulled it does", () => {
		const core = (value: number, leadsNulled: boolean | undefined): Partial<ComparedState> => ({
			readings: [
				{
					check: "resistance-core-rail",
					condition: "cold",
					leadsNulled,
					values: [value],
					instrument: { id: "m", percentOfReading: 0.1, counts: 2, resolution: 0.01 },
				},
			],
		});
		expect(rowOf(compare(core(0.5, false), core(0.8, true)), "resistance-core-rail").verdict).toBe("inconclusive");
		expect(rowOf(compare(core(0.5, undefined), core(0.8, true)), "resistance-core-rail").verdict).toBe("inconclusive");
		expect(rowOf(compare(core(0.5, true), core(0.8, true)), "resistance-core-rail").verdict).toBe("differs");
	});
});

describe("a shop's own checks", () => {
	const definition = ownCheck("own-1", {
		kind: "measured",
		unit: "mV",
		comparability: "stated-uncertainty",
		betterIs: "neither",
		limitLow: 900,
		limitHigh: 1100,
		equivalenceMargin: 50,
	});
	const own = (value: number, name = "core rail"): StateReading => ({
		check: "own-1",
		condition: "unknown",
		definition,
		definitionName: name,
		values: [value],
		instrument: { id: `m${value}`, percentOfReading: 0.5, counts: 1, resolution: 0.001 },
	});

	test("limits stand in the reading unit", () => {
		expect(definition).toMatchObject({ limits: { low: 0.9, high: 1.1 }, margin: { absolute: 0.05 }, unitSymbol: "V" });
	});

	test("compared under one definition, not under two", () => {
		const got = rowOf(compare({ readings: [own(1.0)] }, { readings: [own(1.01)] }), "own-1");
		expect(got).toMatchObject({ verdict: "equivalent", conformity: { departure: { verdict: "proven-good" } } });
		const other = compare({ readings: [own(1.0)] }, { readings: [own(1.01, "memory rail")] });
		expect(rowOf(other, "own-1").verdict).toBe("not-comparable");
	});
});

test("many differences tested together: one that would stand out alone is expected by chance", () => {
	const volts = (id: string, value: number, meter: string): StateReading => ({
		check: id,
		condition: "unknown",
		definition: ownCheck(id, { kind: "measured", unit: "V", comparability: "stated-uncertainty", betterIs: "neither" }),
		values: [value],
		instrument: { id: meter, certificate: { expanded: 0.02, k: 2 } },
	});
	// One difference of 2.1 standard uncertainties (p = 0.036), alone and among four that show nothing.
	const far = 2.1 * Math.hypot(0.01, 0.01);
	const alone = compare({ readings: [volts("own-1", 1, "a")] }, { readings: [volts("own-1", 1 + far, "b")] });
	expect(rowOf(alone, "own-1").verdict).toBe("differs");
	const ids = ["own-2", "own-3", "own-4", "own-5"];
	const many = compare(
		{ readings: [volts("own-1", 1, "a"), ...ids.map((id) => volts(id, 1, "a"))] },
		{ readings: [volts("own-1", 1 + far, "b"), ...ids.map((id) => volts(id, 1.001, "b"))] },
	);
	expect(many.adjustedFor).toBe(5);
	expect(rowOf(many, "own-1")).toMatchObject({ verdict: "inconclusive", direction: null });
});
