/** Forms of the guided record: reading what people type, and giving it back. Own regression values; no outside figures. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
	DELIVERY_MANNERS,
	EXHIBIT_VIEWS,
	ITEM_STATES,
	NOT_TESTED_REASONS,
	OUTER_DAMAGE,
	STOP_SIGNS,
	TEMPERATURE_BASES,
} from "../../src/catalogue/codes.ts";
import { type RecordContentInput, recordContent } from "../../src/contract/records.ts";
import { ARRIVAL_STEPS, DEPARTURE_STEPS } from "../../src/pages/customer/steps.ts";
import { REASONS } from "../../src/pages/record-form/checks-form.ts";
import type { Field } from "../../src/pages/record-form/field.ts";
import { answerAt, withAnswer } from "../../src/pages/record-form/field.ts";
import { fillForm } from "../../src/pages/record-form/fill-form.ts";
import { readForm } from "../../src/pages/record-form/read-form.ts";
import { readNumber } from "../../src/pages/record-form/read-number.ts";
import { isTextKey } from "../../src/texts/say.ts";

const STEPS = [...ARRIVAL_STEPS, ...DEPARTURE_STEPS];
const FIELDS = STEPS.flatMap((step) => step.fields);
const order = (ids: readonly string[]) => ids.map((id) => ARRIVAL_STEPS.findIndex((step) => step.id === id));

describe("steps", () => {
	it("come in the order that destroys no evidence", () => {
		const places = order([
			"parcel-closed",
			"parcel-facts",
			"wait",
			"opening",
			"identity",
			"visual",
			"before-power",
			"first-power-on",
			"checks",
			"result",
			"review",
		]);
		expect(places).toEqual([...places].sort((a, b) => a - b));
		expect(places[0]).toBe(0);
	});

	it("ask about closed parcel and photos before any wait", () => {
		const [first] = ARRIVAL_STEPS;
		expect(first?.views[0]).toBe("parcel-closed");
		expect(first?.parts).toEqual([]);
	});

	it("have words for every question and every answer", () => {
		for (const field of FIELDS) {
			if (field.kind !== "choice" && field.kind !== "choices") continue;
			for (const code of field.codes)
				expect(isTextKey(`${field.options}.${code}`), `${field.options}.${code}`).toBe(true);
		}
		for (const view of EXHIBIT_VIEWS) expect(isTextKey(`arrival.view.${view}`)).toBe(true);
		for (const reason of NOT_TESTED_REASONS) expect(isTextKey(`arrival.not-tested.${reason}`)).toBe(true);
	});

	it("use the codes of the closed lists", () => {
		const codesAt = (name: string) => {
			const found = ARRIVAL_STEPS.flatMap((step) => step.fields).find((field) => field.name === name);
			return found !== undefined && "codes" in found ? found.codes : null;
		};
		expect(codesAt("parcel.outerDamage")).toEqual([...OUTER_DAMAGE]);
		expect(codesAt("parcel.manner")).toEqual([...DELIVERY_MANNERS]);
		expect(codesAt("parcel.temperatureBasis")).toEqual([...TEMPERATURE_BASES]);
		expect(codesAt("firstPowerOn.stopSigns")).toEqual([...STOP_SIGNS]);
		expect(codesAt("state")).toEqual([...ITEM_STATES]);
		expect(REASONS).toEqual(NOT_TESTED_REASONS.filter((reason) => reason !== "not-recorded"));
		for (const view of STEPS.flatMap((step) => step.views)) expect(EXHIBIT_VIEWS).toContain(view);
	});
});

describe("numbers as typed", () => {
	it("take a point or a comma and keep the digits", () => {
		expect(readNumber(" 2,50 ")).toEqual({ value: 2.5, typed: "2,50" });
		expect(readNumber("-3.2")).toEqual({ value: -3.2, typed: "-3.2" });
		expect(readNumber("−3")).toEqual({ value: -3, typed: "-3" });
	});
	it("refuse what is no finite number", () => {
		for (const typed of ["", "1e400", "NaN", "Infinity", "1.2.3", "1 000", "0x10", ".5", "5 kg"]) {
			expect(readNumber(typed), typed).toBeNull();
		}
	});
});

describe("reading a form", () => {
	const content: RecordContentInput = { identity: { maker: "Ostwind" } };
	const fields = (id: string) => ARRIVAL_STEPS.find((step) => step.id === id)?.fields ?? [];

	it("keeps what other steps said, sets what this one says, takes out what was cleared", () => {
		const read = readForm(
			fields("identity"),
			{ "identity.serialNumber": "AB-1", "identity.marks": "one\r\n\r\n two " },
			content,
		);
		expect(read.problems).toEqual([]);
		expect(read.content).toEqual({ identity: { serialNumber: "AB-1", marks: ["one", "two"] } });
	});

	it("names each wrong answer and keeps the good ones", () => {
		const read = readForm(
			fields("parcel-facts"),
			{
				"parcel.mass": "two kilos",
				"parcel.mass.unit": "kg",
				"parcel.sealsIntact": "yes",
				"parcel.manner": "by drone",
				"parcel.inHandAt": "2026-02-31T10:00",
				"parcel.deliveredAt": "2026-02-20T10:00",
				clock: "+01:00",
			},
			content,
		);
		expect(read.problems.map((problem) => [problem.name, problem.code])).toEqual([
			["parcel.mass", "number"],
			["parcel.inHandAt", "time"],
			["parcel.manner", "choice"],
		]);
		expect(read.content.parcel).toEqual({ sealsIntact: true, deliveredAt: "2026-02-20T10:00:00+01:00" });
	});

	it("asks for the clock where a time came without it", () => {
		const read = readForm(fields("parcel-facts"), { "parcel.inHandAt": "2026-02-20T10:00" }, {});
		expect(read.problems).toEqual([{ name: "parcel.inHandAt", code: "clock" }]);
	});

	it("refuses U+0000, lone surrogates and years out of range without throwing", () => {
		expect(readForm(fields("identity"), { "identity.serialNumber": "a\u0000b" }, {}).problems).toEqual([
			{ name: "identity.serialNumber", code: "text" },
		]);
		expect(readForm(fields("identity"), { "identity.marks": "a\ud800" }, {}).problems).toEqual([
			{ name: "identity.marks", code: "text" },
		]);
		expect(
			readForm(fields("parcel-facts"), { "parcel.inHandAt": "1901-01-01T10:00", clock: "+01:00" }, {}).problems,
		).toEqual([{ name: "parcel.inHandAt", code: "time" }]);
	});

	it("gives back what it read, and what it gives back reads the same", () => {
		const answer = (field: Field): fc.Arbitrary<unknown> => {
			switch (field.kind) {
				case "text":
					return fc.stringMatching(/^[a-z<>"'&]([ -~]{0,20}[a-z])?$/);
				case "lines":
					return fc.array(fc.stringMatching(/^[a-z]([ -~]{0,10}[a-z])?$/), { minLength: 1, maxLength: 4 });
				case "yes-no":
					return fc.boolean();
				case "choice":
					return fc.constantFrom(...field.codes);
				case "choices":
					return fc.subarray([...field.codes], { minLength: 1 });
				case "quantity":
					return fc
						.tuple(fc.integer({ min: 1, max: 50 }), fc.constantFrom(...field.units))
						.map(([value, unit]) => ({ value, unit, typed: String(value) }));
				case "number":
					return fc.integer({ min: field.minimum, max: field.maximum });
				case "time":
					return fc.constantFrom("2026-03-05T14:30:00+01:00", "2026-12-31T23:59:00+01:00");
			}
		};
		for (const step of STEPS) {
			const answers = step.fields.map((field) => fc.option(answer(field), { nil: undefined }));
			fc.assert(
				fc.property(fc.tuple(...answers), (given) => {
					const before = step.fields.reduce<RecordContentInput>(
						(record, field, index) =>
							given[index] === undefined ? record : withAnswer(record, field.name, given[index]),
						{},
					);
					const read = readForm(step.fields, fillForm(step.fields, before), {});
					expect(read.problems).toEqual([]);
					expect(read.content).toEqual(before);
					expect(recordContent.safeParse(read.content).success).toBe(true);
				}),
				{ numRuns: 60 },
			);
		}
	});

	it("never throws and always leaves a content of the contract's shape, whatever is sent", () => {
		const names = FIELDS.flatMap((field) => [field.name, `${field.name}.unit`, "clock", "__proto__"]);
		fc.assert(
			fc.property(fc.dictionary(fc.constantFrom(...names), fc.string({ unit: "binary" }), { maxKeys: 20 }), (form) => {
				for (const step of STEPS) {
					const read = readForm(step.fields, form, {});
					expect(recordContent.safeParse(read.content).success).toBe(true);
				}
			}),
			{ numRuns: 100 },
		);
	});
});

it("an answer that is taken out leaves no empty member behind", () => {
	const content = withAnswer({ parcel: { sealsIntact: true } }, "parcel.sealsIntact", undefined);
	expect(content).toEqual({});
	expect(answerAt(content, "parcel.sealsIntact")).toBeUndefined();
});
