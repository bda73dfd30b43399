/** What pages say of a refused field: in the reader's words, whatever a form can hold and whatever a shape answers. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { z } from "zod";
import { benchInput, instrumentInput } from "../../src/contract/benches.ts";
import { legClaimInput } from "../../src/contract/leg-claim.ts";
import { noticeInput, noticeReceipt } from "../../src/contract/notices.ts";
import { consignmentFacts, orderInput } from "../../src/contract/orders.ts";
import { positionInput } from "../../src/contract/positions.ts";
import { settlementInput } from "../../src/contract/settlement.ts";
import { Fault } from "../../src/faults.ts";
import { validate } from "../../src/operations/validate.ts";
import { readAmount } from "../../src/pages/record-form/read-number.ts";
import { errorsOfFault } from "../../src/pages/shop/form-errors.ts";
import { pageWords } from "../../src/pages/shop/page-words.ts";
import { memberName } from "../../src/pages/shop/seal-pages.tsx";
import { shortcomings } from "../../src/records/seal-conditions.ts";
import { english } from "../../src/texts/english.ts";

const ID = "0123456789abcdefghij";
const party = { kind: "consumer", country: "DE", name: "Ada Beispiel", email: "ada@example.org", address: "Weg 1" };
const money = { amount: 12.5, currency: "EUR" };
const date = "2026-03-09";
const time = "2026-03-09T10:00:00+01:00";
/** A request that each page's form makes, with every field filled in. */
const FORMS: Readonly<Record<string, readonly [z.ZodType, unknown]>> = {
	order: [
		orderInput,
		{
			contractKind: "repair",
			repairer: party,
			owner: party,
			item: {
				...{
					class: "laptop-mainboard",
					maker: "M",
					model: "N",
					serialNumber: "S",
					massKg: 1,
					lengthM: 0.1,
					widthM: 0.1,
				},
				...{ heightM: 0.1, value: money, boughtOn: date, cell: "lithium-ion", ownClassId: `cls_${ID}` },
			},
			terms: {
				...{ reportedFault: "a", agreedWork: "b", warranty: { months: 12, covers: "c" } },
				carrierContract: { toRepairer: "owner", toOwner: "repairer" },
			},
		},
	],
	leg: [
		consignmentFacts,
		{
			...{
				carrier: "C",
				service: "s",
				mode: "road",
				bookedBy: "consignor",
				trackingNumber: "T",
				manner: "handed-over",
			},
			...{ declaredValue: money, insuredValue: money, parcelMassKg: 2, padsShifted: true, cornersCrushed: false },
			...{ dispatchedAt: time, deliveredAt: time, inHandAt: time },
		},
	],
	position: [
		positionInput,
		{
			...{ kind: "offers-test", text: "t", consignmentId: `con_${ID}`, recordIds: [`rec_${ID}`] },
			answers: { positionId: `pos_${ID}`, stance: "disagrees" },
			test: { id: "other-computer", doneBy: "repairer", dates: [date] },
		},
	],
	settlement: [
		settlementInput,
		{
			...{ act: "proposes", outcome: "refund", itemNext: "stays", text: "t" },
			amounts: [{ ...money, from: "owner", to: "repairer" }],
		},
	],
	answer: [settlementInput, { act: "assents", proposalId: `stl_${ID}` }],
	claim: [
		legClaimInput,
		{
			...{ regime: "cmr", byPost: true, damage: "not-apparent", currencyPerSdr: 1.2, inspectionDates: [date] },
			...{ dates: { claimed: date, rejected: date }, holidays: { country: "DE", region: "BY" } },
		},
	],
	notice: [noticeInput, { language: "de", text: "t", sentOn: date, sentBy: "registered-letter", proofOfSending: "p" }],
	receipt: [noticeReceipt, { receivedOn: date, proofOfReceipt: "p" }],
	instrument: [
		instrumentInput,
		{
			label: "l",
			facts: { percentOfReading: 1, counts: 2, resolution: 1, rangeHigh: 2, unit: "V", calibratedOn: date },
		},
	],
	bench: [benchInput, { label: "l", description: "d" }],
};
/** What people type and what a changed page may send. */
const TYPED = [
	...["", "abc", "1.200,00", "1 200", "12..5", "Germany", "euro", "9.3.2026", "31.02.2026", "2026-02-31", "2026-3-9"],
	...["1890-01-01", `${date}T10:00:00`, "ada@", "a\u0000b", "\ud800", "x".repeat(20_001), "other-computer", "drp_1"],
	...[-1, 0, 1e12, 0.001, 12.345, true, false, null, [], {}, ["a"], Array.from({ length: 60 }, () => date)],
];

/** Every place of a value, as steps. */
function placesOf(value: unknown, steps: readonly string[] = []): (readonly string[])[] {
	if (value === null || typeof value !== "object") return [steps];
	return [steps, ...Object.entries(value).flatMap(([name, member]) => placesOf(member, [...steps, name]))];
}

/** The value with what stands at a place replaced; `undefined` takes it out. */
function replaced(value: unknown, [step, ...rest]: readonly string[], by: unknown): unknown {
	if (step === undefined) return by;
	const copy = structuredClone(value) as Record<string, unknown>;
	const next = replaced(copy[step], rest, by);
	if (next === undefined) delete copy[step];
	else copy[step] = next;
	return copy;
}

function faultOf(schema: z.ZodType, value: unknown): Fault | null {
	try {
		validate(schema, value);
		return null;
	} catch (error) {
		if (error instanceof Fault) return error;
		throw error;
	}
}

/** Words of the machine's: types, names of members, JSON Pointers, ids with dashes or in code marks. */
const MACHINE = [
	/\bnull\b|undefined|regex|boolean|\bstring\b|\barray\b|\bNaN\b|ISO 8601|JSON|U\+0000|surrogate/i,
	/[a-z][A-Z]/,
	/(^|[\s:])\/[A-Za-z0-9]/,
	/`/,
];
/** Words with a dash that the pages' own words have. */
const DASHED = new Set(["e-mail", "blacked-out"]);

function expectPlain(words: string): void {
	for (const machine of MACHINE) expect(words).not.toMatch(machine);
	for (const [dashed] of words.matchAll(/\b[a-z]+(-[a-z]+)+\b/g)) expect(DASHED, words).toContain(dashed);
}

describe("what a page says of a refused field", () => {
	it.each(Object.keys(FORMS))("is in the reader's words, whatever stands in the form: %s", (name) => {
		const [schema, good] = FORMS[name] ?? [];
		if (schema === undefined) throw new Error(name);
		const wrong = placesOf(good).flatMap((place) => [...TYPED, undefined].map((by) => [place, by] as const));
		expect(faultOf(schema, good)).toBeNull();
		let refused = 0;
		for (const [place, by] of wrong) {
			const found = faultOf(schema, replaced(good, place, by));
			if (found === null) continue;
			refused += 1;
			for (const words of Object.values(errorsOfFault(found))) expectPlain(words ?? "");
		}
		expect(refused).toBeGreaterThan(40);
	});
	it("is so for several wrong fields at once", () => {
		const forms = Object.values(FORMS);
		const change = fc.tuple(fc.nat(), fc.constantFrom(...TYPED));
		fc.assert(
			fc.property(
				fc.constantFrom(...forms),
				fc.array(change, { minLength: 2, maxLength: 6 }),
				([schema, good], all) => {
					const value = all.reduce<unknown>((so, [nth, by]) => {
						const places = placesOf(so);
						return replaced(so, places[nth % places.length] ?? [], by);
					}, good);
					const found = faultOf(schema, value);
					if (found !== null) for (const words of Object.values(errorsOfFault(found))) expectPlain(words ?? "");
				},
			),
			{ numRuns: 500 },
		);
	});
	it("is so for every code that an operation answers with", () => {
		const codes = Object.keys(english).flatMap((key) => /^bad\.([a-z-]+)$/.exec(key)?.[1] ?? []);
		expect(codes.length).toBeGreaterThan(60);
		const facts = { most: 5, least: 2, why: "the file is cut", line: 3, found: 2, told: 3, itemM: 0.2, deepest: 9 };
		// Only the text of a request can be these; no form makes one.
		const ofRequests = ["unsafe-number", "duplicate-member", "too-deep"];
		for (const code of codes.filter((code) => !ofRequests.includes(code))) {
			expectPlain(pageWords({ path: "/a/b", code, facts }));
		}
	});
	it("says what to enter where a bound, a place or a reason of its own is missed", () => {
		const said = (code: string, path: string, facts: Record<string, string | number> = {}) =>
			pageWords({ path, code, facts });
		expect(said("too-small", "/passphrase", { least: 8, of: "string" })).toBe("Enter at least 8 characters.");
		expect(said("too-small", "/name", { least: 1, of: "string" })).not.toContain("1");
		expect(said("unknown-id", "/holidays/region")).toMatch(/^No public holidays are known here for this place\./);
		expect(said("unknown-id", "/linkId")).toBe("Choose one of the answers in the list.");
		expect(said("refused", "/sentOn", { why: "the year must lie between 1970 and 2200" })).toBe(
			"Enter a year between 1970 and 2200.",
		);
		expect(said("refused", "/file", { why: "the file is cut" })).toBe("The file is cut.");
	});
	it("says what to enter", () => {
		const said = (name: string, place: string, by: unknown) => {
			const [schema, good] = FORMS[name] ?? [];
			const found = schema === undefined ? null : faultOf(schema, replaced(good, place.split("/"), by));
			return found === null ? null : Object.values(errorsOfFault(found)).join(" ");
		};
		expect(said("leg", "parcelMassKg", "abc")).toMatch(/^Enter a number, for example 12 or 12\.5\./);
		expect(said("leg", "parcelMassKg", 0)).toBe("Enter a number above 0.");
		expect(said("leg", "declaredValue/amount", "1.200,00")).toMatch(/^Enter an amount, for example 1200 or 1200,50\./);
		expect(said("leg", "mode", "rocket")).toBe("Choose one of the answers in the list.");
		expect(said("position", "test/id", "drp_1")).toBe("Choose one of the answers in the list.");
		expect(said("position", "answers/positionId", "3")).toBe("Choose one of the answers in the list.");
		expect(said("notice", "sentOn", "9.3.2026")).toBe("Enter a date such as 2026-03-09.");
		expect(said("order", "owner/country", "Germany")).toBe("Enter a country as its two letters, such as DE.");
		expect(said("settlement", "amounts/0/currency", "euro")).toMatch(/three letters, such as EUR/);
		expect(said("order", "item/lengthM", 7)).toBe("This is too large; the most is 5 m.");
		expect(said("order", "owner/name", "")).toBe("This is missing. Fill it in.");
	});
});

describe("an amount", () => {
	it.each([
		["1200", 1200],
		["1200,5", 1200.5],
		["1200.50", 1200.5],
		["0,05", 0.05],
		["1.200", null],
		["1,200", null],
		["1.200,00", null],
		["12.345", null],
		["abc", null],
	])("%s is read as %s", (typed, value) => {
		expect(readAmount(typed)).toBe(value);
	});
});

describe("what is missing before sealing", () => {
	it("is named as its question is", () => {
		const later = "2999-01-01T00:00:00Z";
		const known = {
			checkIds: new Set<string>(),
			instrumentIds: new Set<string>(),
			exhibitSha256s: new Set<string>(),
			times: {},
		};
		const content = {
			observedAt: later,
			parcel: { deliveredAt: later, inHandAt: later },
			reported: { receivedAt: later },
			readings: [{ check: "unheard-of", instrumentId: "ins_1", importSha256: "00" }],
			exhibits: [{ sha256: "00" }],
		} as never;
		const headers = (["self-observed", "reported-to"] as const).map((provenance) => ({ stage: "arrival", provenance }));
		for (const header of headers) {
			for (const each of [content, {} as never]) {
				const all = shortcomings(
					{ ...header, itemClass: "none" } as never,
					each,
					known,
					new Date("2026-01-01T00:00:00Z"),
				);
				expect(all.length).toBeGreaterThan(3);
				for (const one of all) {
					expectPlain(memberName(one.path, { record: { content: each } as never, allChecks: [] }));
					expectPlain(pageWords(one));
				}
			}
		}
	});
});
