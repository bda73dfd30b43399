/** Every point that is looked at is decided on: a stop where it is not as it should be, or named as none. Own rule. */
import { describe, expect, test } from "vitest";
import { checksOf } from "../../src/catalogue/checks/checks.ts";
import { meansStop, POINTS_WITHOUT_STOP, STOP_POINTS } from "../../src/catalogue/checks/stop-points.ts";
import { ITEM_CLASSES } from "../../src/catalogue/codes.ts";
import { checksThatStop, powerStop } from "../../src/operations/records/power-stop.ts";

describe.each(ITEM_CLASSES)("%s", (itemClass) => {
	test.each(
		checksOf(itemClass)
			.filter(({ kind }) => kind === "visual")
			.map(({ id }) => id),
	)("%s is decided on", (id) => {
		expect([...STOP_POINTS, ...POINTS_WITHOUT_STOP].filter((known) => known === id)).toEqual([id]);
		expect(meansStop({ check: id, trials: 1, successes: 0 })).toBe(STOP_POINTS.includes(id));
		expect(meansStop({ check: id, trials: 1, successes: 1 })).toBe(false);
	});

	test("every value below which a board is not powered counts", () => {
		for (const { id, stopBelow } of checksOf(itemClass)) {
			if (stopBelow === undefined) continue;
			expect(meansStop({ check: id, values: [{ value: stopBelow.value * 0.9, unit: "ohm" }] })).toBe(true);
			expect(meansStop({ check: id, values: [{ value: stopBelow.value, unit: "ohm" }] })).toBe(false);
			expect(meansStop({ check: id, values: [{ value: stopBelow.value * 0.9, unit: "kohm" }] })).toBe(false);
		}
	});
});

test("a board gets no power after such a point, whether or not a sign was ticked; untested points say nothing", () => {
	const cracked = { readings: [{ check: "visual-cracks", trials: 1, successes: 0 }] };
	expect(powerStop(cracked)).toBe("sign");
	expect(checksThatStop(cracked)).toEqual(["visual-cracks"]);
	expect(powerStop({ ...cracked, firstPowerOn: { wetnessSeen: true } })).toBe("sign");
	expect(powerStop({ ...cracked, firstPowerOn: { stopSigns: ["swollen-cell"] } })).toBe("cell");
	expect(powerStop({ readings: [{ check: "visual-cracks" }, { check: "visual-fan", trials: 1, successes: 0 }] })).toBe(
		null,
	);
	expect(powerStop({ firstPowerOn: { stopSigns: ["smoke"] } })).toBe("sign");
	expect(powerStop({ readings: [{ check: "starts-cold", trials: 3, successes: 0 }] })).toBe(null);
	expect(powerStop({})).toBe(null);
});

test("one look of several, or one value of several, is enough; what has another unit is no such value", () => {
	expect(meansStop({ check: "visual-cracks", trials: 3, successes: 2 })).toBe(true);
	const stops = checksOf("graphics-card").flatMap(({ id, stopBelow }) =>
		stopBelow === undefined ? [] : [{ check: id, value: stopBelow.value }],
	);
	expect(stops.length).toBeGreaterThan(0);
	for (const { check, value } of stops) {
		const below = { value: value / 2, unit: "ohm" };
		expect(meansStop({ check, values: [{ value: value * 2, unit: "ohm" }, below] })).toBe(true);
		expect(meansStop({ check, values: [{ ...below, unit: "of our own" }] })).toBe(false);
	}
});
