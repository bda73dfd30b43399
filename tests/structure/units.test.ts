/**
 * Units in names: every exported number member of the calculations ends in a listed unit, or is listed as having none.
 * Statistics and comparison work on readings of any check: their numbers stand in the check's own unit (types.ts says so).
 */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { DIMENSIONLESS, UNIT_SUFFIXES } from "../../src/calculations/quantities.ts";

const ROOM = new URL("../../src/calculations", import.meta.url).pathname;
const members = readdirSync(ROOM, { recursive: true, encoding: "utf8" })
	.filter((file) => file.endsWith(".ts") && !/^(statistics|comparison)\//.test(file))
	.flatMap((file) => {
		const text = readFileSync(join(ROOM, file), "utf8");
		return [...text.matchAll(/export interface (\w+)[^{]*\{([\s\S]*?)\n\}/g)].flatMap(([, type, body = ""]) =>
			[
				...body.matchAll(
					/readonly (\w+)\??: ((?:readonly )?(?:\[[^\]]*number[^\]]*\]|number)(?:\[\])?(?: \| (?:null|undefined))*);/g,
				),
			].map(([, name = ""]) => `${type}.${name}`),
		);
	});
const endings = Object.keys(UNIT_SUFFIXES).sort((a, b) => b.length - a.length);

describe("units in names", () => {
	it("finds the number members", () => {
		expect(members.length).toBeGreaterThan(40);
		expect(members).toContain("Condensation.dewPointDegC");
	});
	it("each ends in a listed unit or is listed as dimensionless", () => {
		const without = members.filter((member) => {
			const name = member.split(".")[1] ?? "";
			return !endings.some((ending) => name.endsWith(ending)) && !DIMENSIONLESS.includes(name as never);
		});
		expect(without).toEqual([]);
	});
	it("no two endings fall together in lower case, as SQL writes them", () => {
		const lower = endings.map((ending) => ending.toLowerCase());
		expect(new Set(lower).size).toBe(lower.length);
	});
});
