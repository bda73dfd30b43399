/** Whether two records name one item: expectations by hand. Serial numbers are invented. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
	compareIdentity,
	isOtherItem,
	isSameItem,
	type MassAgreement,
} from "../../../src/calculations/comparison/identity.ts";
import type { ComparedState } from "../../../src/calculations/comparison/types.ts";

type Marks = Readonly<Record<string, string | undefined>>;
const state = (identity: Marks, marks: readonly string[] = []): ComparedState => ({
	recordId: "r",
	stateOfItem: "good",
	identity,
	marks,
	readings: [],
});
const LEFT: Marks = { "serial-number": "KV-20118", uuid: "5c1e", maker: "Fernhollow", model: "Tarn 7" };
const judged = (came: Marks, mass: MassAgreement = null, marks: readonly string[] = []) => {
	const identity = compareIdentity(state(LEFT, ["scratch"]), state({ ...LEFT, ...came }, marks), mass);
	return { ...identity, other: isOtherItem(identity) };
};

describe("two independent mismatches stop", () => {
	test("digits swapped, but device id and mass differ as well (bench practice, S2)", () => {
		const got = judged({ "serial-number": "KV-20181", uuid: "77aa" }, "differs");
		expect(got).toMatchObject({
			other: true,
			mismatches: ["serial-number", "uuid", "mass"],
			likelySlips: ["serial-number"],
		});
	});
	test("swapped digits alone are pointed out and stop nothing where the device id agrees", () => {
		expect(judged({ "serial-number": "KV-20181" }, "agrees")).toMatchObject({
			other: false,
			likelySlips: ["serial-number"],
		});
	});
	test("nor where a natural mark agrees and the device id can not be read from a dead board", () => {
		expect(judged({ "serial-number": "KV-20181", uuid: undefined }, null, ["Scratch "]).other).toBe(false);
		expect(judged({ "serial-number": "KV-20181", uuid: undefined }).other, "nothing else tells").toBe(true);
	});
	test("maker and model agree for thousands of items and do not help", () => {
		expect(judged({ "serial-number": "ZZ-9", uuid: undefined }).other).toBe(true);
	});
	test("mass alone differs: a part may be missing, that is no other item", () => {
		expect(judged({}, "differs").other).toBe(false);
	});
	test("other firmware is shown and decides nothing", () => {
		expect(compareIdentity(state({ ...LEFT, firmware: "1" }), state({ ...LEFT, firmware: "2" }), null)).toMatchObject({
			differ: ["firmware"],
			mismatches: [],
		});
	});
});

describe("slips and marks read alike", () => {
	test.each([
		["two neighbours swapped", "KV-20181", true],
		["one wrong", "KV-20119", true],
		["one left out", "KV-2118", true],
		["one too many", "KV-201188", true],
		["two wrong", "KV-20229", false],
		["another number", "AB-77120", false],
	])("%s", (_, came, slip) => {
		expect(judged({ "serial-number": came }).likelySlips).toEqual(slip ? ["serial-number"] : []);
	});
	test("letters for digits, dashes and spaces left out are not a difference", () => {
		const identity = compareIdentity(
			state({ "serial-number": "KV-2O1I8" }),
			state({ "serial-number": "kv20118" }),
			null,
		);
		expect(identity).toMatchObject({ readAlike: ["serial-number"], differ: [], mismatches: [] });
	});
});

test("of the marks that a dead board can show: serial, maker, model, scratch, mass; four of five agree", () => {
	expect(judged({ uuid: undefined }, "agrees").withoutPower).toEqual({ agree: 4, compared: 4, of: 5 });
	expect(judged({ uuid: undefined }, "agrees", ["scratch"]).withoutPower).toEqual({ agree: 5, compared: 5, of: 5 });
});

test("marks that nobody recorded on arrival are not compared, and what no end recorded is not named", () => {
	const nothing = { "serial-number": undefined, uuid: undefined, maker: undefined, model: undefined };
	const { withoutPower, notSeen } = judged({ ...nothing, firmware: undefined });
	expect(withoutPower).toEqual({ agree: 0, compared: 0, of: 4 });
	expect(notSeen).toEqual(["serial-number", "uuid", "maker", "model", "scratch"]);
});

test("property: the order of the two ends does not decide whether it is another item", () => {
	const name = fc.constantFrom("KV-20118", "KV-20181", "AB-1", undefined);
	const marks = fc.record({ "serial-number": name, uuid: fc.constantFrom("5c1e", "77aa", undefined) });
	fc.assert(
		fc.property(marks, marks, fc.constantFrom<MassAgreement>("agrees", "differs", null), (one, other, mass) => {
			const there = compareIdentity(state(one), state(other), mass);
			const back = compareIdentity(state(other), state(one), mass);
			expect(isOtherItem(there)).toBe(isOtherItem(back));
		}),
	);
});

// The page on bench practice: five identity points; a serial number with one more mark of its own excludes another item.
test.each<[string, Marks, MassAgreement, readonly string[], boolean]>([
	["serial, device id and model", {}, null, [], true],
	["serial, scratch and mass", { uuid: undefined, maker: undefined, model: undefined }, "agrees", ["scratch"], true],
	["serial and scratch, no third", { uuid: undefined, maker: undefined, model: undefined }, null, ["scratch"], false],
	["serial, maker, model, mass: a label can be exchanged", { uuid: undefined }, "agrees", [], false],
	["neither serial nor device id", { uuid: undefined, "serial-number": undefined }, "agrees", ["scratch"], false],
	["one mark differs", { uuid: "77aa" }, "agrees", ["scratch"], false],
])("another item is excluded, or not: %s", (_, came, mass, marks, same) => {
	expect(isSameItem(judged(came, mass, marks), mass)).toBe(same);
});
