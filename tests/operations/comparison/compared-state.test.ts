/** From sealed statements to comparison and custody line; expectations by hand. */
import { describe, expect, test } from "vitest";
import { compareStates } from "../../../src/calculations/comparison/state-comparison.ts";
import { checksOf } from "../../../src/catalogue/checks/checks.ts";
import { comparedState, custodyRecord } from "../../../src/operations/comparison/compared-state.ts";
import type { OpenedStatement, StatementReading } from "../../../src/records/record-statement.ts";

type Reading = StatementReading<string | null>;
const grams = (value: number, instrumentId: string): Reading => ({
	check: "mass",
	condition: "unknown",
	provenance: "recorded-by-holder",
	instrumentId,
	values: [{ typed: String(value), typedUnit: "g", value: value / 1000, unit: "kg" }],
});
const link = (width: number): Reading => ({
	check: "link-width",
	condition: "load",
	provenance: "imported",
	values: [{ typed: String(width), typedUnit: "lanes", value: width, unit: "lanes" }],
	limitLow: 16,
});

function statement(stage: "departure" | "arrival", readings: readonly Reading[]): OpenedStatement {
	const departing = stage === "departure";
	return {
		$format: "handover-risk/record/1",
		recordId: `rec_${stage}`,
		orderId: "ord_1",
		consignmentId: "con_1",
		itemId: "itm_1",
		itemClass: "graphics-card",
		holderId: departing ? "pty_shop" : "pty_owner",
		stage,
		depth: "full",
		provenance: "recorded-by-holder",
		catalogueVersion: "1",
		observed: { at: departing ? "2026-03-01T10:00:00.000Z" : "2026-03-08T10:00:00.000Z", offsetMinutes: 60 },
		state: "good",
		identity: { serialNumber: "QX-1047", marks: ["scratch"] },
		setUp: { benchId: departing ? "ben_shop" : "ben_home" },
		instruments: [
			{ id: "scale-a", label: "shop scale", unit: "g", resolution: 0.1, counts: 3 },
			{ id: "meter-1", label: "kitchen scale", unit: "g", resolution: 1 },
			{ id: "volts", label: "meter", unit: "V", resolution: 0.01, percentOfReading: 0.5, counts: 2 },
			{ id: "small", label: "letter scale", unit: "g", resolution: 0.1, counts: 1, rangeHigh: 500 },
		],
		readings,
		exhibits: [],
	};
}
const instrumentOf = (id: string) => comparedState(statement("arrival", [grams(1234, id)])).readings[0]?.instrument;

describe("instruments", () => {
	test("the size of a count is converted into the reading's unit", () => {
		expect(instrumentOf("scale-a")).toEqual({
			id: "scale-a",
			counts: 3,
			resolution: 0.0001,
			percentOfReading: undefined,
		});
	});

	test("facts of another quantity, of a smaller range or of an unknown instrument state no accuracy", () => {
		for (const id of ["volts", "small", "gone"]) expect(instrumentOf(id)).toEqual({ id });
	});
});

test("two scales: a difference of 2 g lies inside the larger of 5 g and 0.5 % (6.2 g of 1234 g)", () => {
	const checks = checksOf("graphics-card");
	const departure = comparedState(statement("departure", [grams(1234.2, "scale-a"), link(16)]));
	const arrival = comparedState(statement("arrival", [grams(1232, "meter-1"), link(8)]));
	const { rows, outcome } = compareStates({ departure, arrival, checks });
	expect(outcome).toBe("compared");
	const result = (id: string) => rows.find(({ check }) => check.id === id)?.comparison.result;
	expect(result("mass")).toMatchObject({ verdict: "equivalent", conformity: { departure: null, arrival: null } });
	expect(result("link-width")).toMatchObject({
		verdict: "not-comparable",
		conformity: { arrival: { verdict: "proven-bad" } },
	});
	const missing = comparedState(statement("arrival", [grams(1190, "meter-1")]));
	const lighter = compareStates({ departure, arrival: missing, checks }).rows[0]?.comparison.result;
	expect(lighter).toMatchObject({ verdict: "differs", direction: "sideways" });
});

test("an instrument that two records each describe themselves is not taken for one", () => {
	const [left, came] = (["departure", "arrival"] as const).map(
		(stage) => comparedState(statement(stage, [grams(1234, "meter-1")])).readings[0]?.instrument?.id,
	);
	expect(left).not.toBe(came);
});

test("a control card's link in the same slot stands beside the readings", () => {
	const full = { speedGTPerS: 16, width: 16 };
	const seen = { ...statement("arrival", [link(8)]), link: { card: full, control: full } };
	expect(comparedState(seen).controls?.["link-width"]?.values).toEqual([16]);
	expect(comparedState(statement("arrival", [link(8)])).controls).toBeUndefined();
});

test("a place on the custody line", () => {
	expect(custodyRecord(statement("arrival", [link(8)]))).toMatchObject({
		recordId: "rec_arrival",
		stage: "arrival",
		holderId: "pty_owner",
		consignmentId: "con_1",
		observedAt: "2026-03-08T10:00:00.000Z",
		goodness: { "link-width": "not-good", mass: "untested", "state-of-item": "good" },
	});
});
