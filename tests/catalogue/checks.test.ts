/** The catalogue is complete: every check has words, comparability, direction, and a source for each figure. */
import { describe, expect, test } from "vitest";
import { STANDINGS } from "../../src/calculations/sources.ts";
import { checksOf } from "../../src/catalogue/checks/checks.ts";
import { ITEM_CLASSES } from "../../src/catalogue/codes.ts";
import { isTextKey } from "../../src/texts/say.ts";

describe.each(ITEM_CLASSES)("%s", (itemClass) => {
	const checks = checksOf(itemClass);

	test("ids are kebab-case and occur once", () => {
		const ids = checks.map((check) => check.id);
		expect(new Set(ids).size).toBe(ids.length);
		for (const id of ids) expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
	});

	test.each(checks.map((check) => [check.id, check] as const))("%s", (_, check) => {
		for (const key of [check.nameKey, check.hintKey, ...check.cautionKeys]) expect(isTextKey(key), key).toBe(true);
		const sourced = [check.limits, check.margin, check.plausible, check.stopBelow, { source: check.source }];
		for (const figure of sourced) if (figure !== undefined) expect(STANDINGS).toContain(figure.source.standing);
		if (check.kind === "measured" || check.kind === "score") expect(check.typedUnits.length).toBeGreaterThan(0);
		if (check.kind === "count") expect(check.exposureUnits.length).toBeGreaterThan(0);
		if (check.kind === "visual") expect(check.limits).toMatchObject({ low: 1 });
		expect(check.limits !== undefined && check.limitsFromItem === true).toBe(false);
	});
});

test("what the issue asks of a graphics card is there; a resistance has no limit and needs the same meter", () => {
	const checks = checksOf("graphics-card");
	expect(checks.map((check) => check.id)).toEqual(
		expect.arrayContaining([
			"mass",
			"starts-cold",
			"starts-warm",
			"link-width",
			"link-speed",
			"memory-errors",
			"resistance-core-rail",
			"temperature-core",
			"fan-speed",
			"score",
		]),
	);
	const resistances = checks.filter((check) => check.id.startsWith("resistance-"));
	expect(resistances.length).toBeGreaterThanOrEqual(4);
	for (const check of resistances) {
		expect(check.limits).toBeUndefined();
		expect(check.comparability).toBe("same-instrument");
	}
});

test("every class has a list of its own, with the points that any board has", () => {
	const lists = ITEM_CLASSES.map((itemClass) => checksOf(itemClass).map((check) => check.id));
	expect(new Set(lists.map((list) => list.join())).size).toBe(ITEM_CLASSES.length);
	// Ids of catalogue version 1: records that were sealed with them still find their check.
	const first = [
		"mass",
		"visual-parts",
		"visual-cracks",
		"visual-burn-marks",
		"visual-liquid-marks",
		"visual-connectors",
	];
	for (const list of lists) {
		expect(list).toEqual(expect.arrayContaining([...first, "visual-rattle", "starts-cold", "starts-warm"]));
	}
});

/** Published windows, as the bench practice page restates them with document and table. */
test.each([
	["power-supply", "voltage-12v", 11.4, 12.6],
	["power-supply", "voltage-5v", 4.75, 5.25],
	["power-supply", "voltage-5v-standby", 4.75, 5.25],
	["power-supply", "voltage-3v3", 3.135, 3.465],
	["power-supply", "voltage-minus-12v", -13.2, -10.8],
	["power-supply", "ripple-12v", undefined, 0.12],
	["power-supply", "ripple-3v3", undefined, 0.05],
	["graphics-card", "voltage-12v-slot", 11.04, 12.6],
	["graphics-card", "voltage-12v-auxiliary", 11.04, 12.6],
	["graphics-card", "voltage-3v3-slot", 3.003, 3.597],
	["graphics-card", "flatness", undefined, 0.75],
] as const)("%s: %s has its published window", (itemClass, id, low, high) => {
	const check = checksOf(itemClass).find((candidate) => candidate.id === id);
	expect(check?.limits).toMatchObject({ ...(low === undefined ? {} : { low }), high });
	expect(check?.limits?.source.standing).toBe("published");
	expect(check?.comparability).not.toBe("same-bench");
});

test("whatever is done under power and repairers alone do says when to stop or what to mind", () => {
	for (const itemClass of ITEM_CLASSES)
		for (const check of checksOf(itemClass).filter(({ whoCan }) => whoCan === "repairer-only"))
			expect(check.stopKey !== undefined || check.cautionKeys.length > 0 || check.kind === "outcome", check.id).toBe(
				true,
			);
});

test("nothing on the mains side is asked of an owner", () => {
	for (const check of checksOf("power-supply"))
		if (check.cautionKeys.includes("checks.caution.mains"))
			expect(["visual", "outcome", "measured"]).toContain(check.kind);
	const owners = checksOf("power-supply").filter(({ whoCan }) => whoCan !== "repairer-only" && whoCan !== "meter");
	expect(owners.map(({ id }) => id)).not.toContain("earth-and-insulation");
});
