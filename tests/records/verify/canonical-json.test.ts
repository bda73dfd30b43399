/** The strict reader of canonical JSON against RFC 8785's sample and against a published library that writes it. */
import canonicalize from "canonicalize";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type JsonNode, parseCanonical } from "../../../src/records/verify/canonical-json.ts";
import { Unreadable } from "../../../src/records/verify/finding.ts";

const parse = (text: string | Uint8Array) => parseCanonical(typeof text === "string" ? Buffer.from(text) : text);
const plain = (node: JsonNode): unknown => {
	if (node.type === "object") return Object.fromEntries([...node.members].map(([name, one]) => [name, plain(one)]));
	if (node.type === "array") return node.items.map(plain);
	if (node.type === "text") return node.text;
	return node.type === "number" ? node.number : JSON.parse(node.literal);
};
const refusal = (text: string | Uint8Array) => {
	try {
		parse(text);
	} catch (error) {
		if (error instanceof Unreadable) return `${error.details.where} ${error.details.why?.sentence}`;
		throw error;
	}
	return "taken";
};

/** RFC 8785, sections 3.2.2 and 3.2.3. */
const SAMPLE =
	'{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}';
/** RFC 8785, section 3.2.3: names sorted by UTF-16 code units, so that the smiley stands before U+FB33. */
const SORTED =
	'{"\\r":"Carriage Return","1":"One","\u0080":"Control","ö":"Latin Small Letter O With Diaeresis","€":"Euro Sign","😀":"Emoji: Grinning Face","\ufb33":"Hebrew Letter Dalet With Dagesh"}';

describe("canonical JSON", () => {
	it("reads the samples of RFC 8785", () => {
		expect(plain(parse(SAMPLE))).toEqual(JSON.parse(SAMPLE));
		const sorted = parse(SORTED);
		const names = ["\r", "1", "\u0080", "ö", "€", "😀", "\ufb33"];
		expect(sorted.type === "object" ? [...sorted.members.keys()] : []).toEqual(names);
	});
	it.each([
		// RFC 8785, appendix B: IEEE 754 bit patterns and how they are written.
		["0", 0],
		["5e-324", 5e-324],
		["-5e-324", -5e-324],
		["1.7976931348623157e+308", Number.MAX_VALUE],
		["9007199254740992", 2 ** 53],
		["295147905179352830000", 2 ** 68],
		["9.999999999999997e+22", 9.999999999999997e22],
		["1e+23", 1e23],
		["0.000001", 1e-6],
		["333333333.3333332", 333333333.3333332],
	])("reads the number %s", (text, number) => {
		expect(parse(text)).toMatchObject({ type: "number", number });
	});
	it("reads whatever a published library writes, and the same value", () => {
		fc.assert(
			fc.property(fc.jsonValue({ maxDepth: 4, stringUnit: "binary" }), (value) => {
				const text = canonicalize(value) ?? "";
				const node = parse(text);
				expect(canonicalize(plain(node))).toBe(text);
				expect([node.start, node.end]).toEqual([0, Buffer.byteLength(text)]);
			}),
			{ numRuns: 500 },
		);
	});
	it.each([
		["", "byte 0 verify.json-end"],
		["\ufeff1", "byte 0 verify.json-unexpected"],
		[" 1", "byte 0 verify.json-unexpected"],
		["1 ", "byte 1 verify.json-more"],
		['{"a":1,"a":2}', "byte 7 verify.json-twice"],
		['{"b":1,"a":2}', "byte 7 verify.json-unsorted"],
		['{"\ufb33":1,"😀":2}', "byte 9 verify.json-unsorted"],
		['{"a": 1}', "byte 5 verify.json-unexpected"],
		['{"a":1,}', "byte 7 verify.json-unexpected"],
		["[1,]", "byte 3 verify.json-unexpected"],
		["[1", "byte 2 verify.json-end"],
		['"\\u0041"', "byte 1 verify.json-escape"],
		['"\\u000A"', "byte 1 verify.json-escape"],
		['"\\u000a"', "byte 1 verify.json-escape"],
		['"\\/"', "byte 1 verify.json-escape"],
		['"\\ud800"', "byte 1 verify.json-escape"],
		['"a\nb"', "byte 2 verify.json-unexpected"],
		['"abc', "byte 4 verify.json-end"],
		["1.0", "byte 0 verify.json-number"],
		["1E3", "byte 0 verify.json-number"],
		["01", "byte 0 verify.json-number"],
		["-0", "byte 0 verify.json-number"],
		["1e400", "byte 0 verify.json-number"],
		["333333333.33333329", "byte 0 verify.json-number"],
		["nul", "byte 3 verify.json-end"],
		["nulL", "byte 3 verify.json-unexpected"],
		[Buffer.from([0x22, 0x61, 0xed, 0xa0, 0x80, 0x22]), "byte 2 verify.json-utf8"],
		[Buffer.from([0x22, 0xc0, 0x80, 0x22]), "byte 1 verify.json-utf8"],
		[Buffer.from([0x22, 0xe2, 0x82, 0x22]), "byte 1 verify.json-utf8"],
	])("refuses %j and says where", (text, where) => {
		expect(refusal(text)).toBe(where);
	});
	it("refuses endless nesting and countless values before they cost anything", () => {
		expect(refusal("[".repeat(1_000_000))).toBe("byte 65 verify.json-deep");
		expect(refusal(`[${"0,".repeat(1_000_000)}0]`)).toBe("byte 1999999 verify.json-many");
	});
});
