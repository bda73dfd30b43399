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
