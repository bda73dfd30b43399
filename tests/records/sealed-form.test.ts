/** The sealed form: canonical bytes (RFC 8785), commitments, entries, statements, receipts. */
import { createHash, randomBytes } from "node:crypto";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { canonicalBytes, sha256Hex } from "../../src/records/canonical.ts";
import { commitmentHex, makeCommitter, opens } from "../../src/records/commitment.ts";
import { makeEntry } from "../../src/records/entry.ts";
import { openStatement } from "../../src/records/open-statement.ts";
import { claimedTime, type RecordHeader, recordStatement } from "../../src/records/record-statement.ts";

describe("canonical bytes", () => {
	it("reproduce the sample of RFC 8785, section 3.2", () => {
		const sample = {
			// biome-ignore lint/correctness/noPrecisionLoss: the digits are those of the RFC's sample, which loses them on purpose.
			numbers: [333333333.33333329, 1e30, 4.5, 2e-3, 0.000000000000000000000000001],
			string: "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"/",
			literals: [null, true, false],
		};
		expect(canonicalBytes(sample).toString("utf8")).toBe(
			'{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}',
		);
	});
	it.each([
		["a lone surrogate", { a: "\ud800" }],
		["NaN", { a: Number.NaN }],
		["infinity", [Number.POSITIVE_INFINITY]],
		["undefined", { a: undefined }],
		["a date", { a: new Date(0) }],
	])("refuse %s", (_, value) => {
		expect(() => canonicalBytes(value)).toThrow();
	});
});

describe("commitments and entries", () => {
	it("are SHA-256 of 0x02, salt and canonical value; a leaf is SHA-256 of 0x00 and the entry (independent recomputation)", () => {
		const salt = Buffer.alloc(32, 7);
		const expected = createHash("sha256")
			.update(Buffer.concat([Buffer.from([2]), salt, Buffer.from('"BL7"')]))
			.digest("hex");
		expect(commitmentHex(salt, "BL7")).toBe(expected);
		const entry = makeEntry({
			index: 3,
			kind: "record-sealed",
			subject: "rec_x",
			byId: "acc_x",
			time: new Date("2026-03-02T09:00:00.000Z"),
			statementBytes: Buffer.from("{}"),
		});
		expect(entry.entryBytes.toString()).toBe(
			`{"$format":"handover-risk/entry/1","by":"acc_x","index":3,"kind":"record-sealed","statementSha256":"${sha256Hex(Buffer.from("{}"))}","subject":"rec_x","time":"2026-03-02T09:00:00.000Z"}`,
		);
		expect(entry.leafSha256).toBe(
			createHash("sha256")
				.update(Buffer.concat([Buffer.from([0]), entry.entryBytes]))
				.digest("hex"),
		);
	});
	it("the leaf hash of no bytes is the published root of a tree of one empty leaf (certificate transparency vectors)", () => {
		expect(sha256Hex(Uint8Array.of(0x00), new Uint8Array())).toBe(
			"6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d",
		);
	});
	it("open with their own value and salt only", () => {
		const committer = makeCommitter(randomBytes);
		committer.commit("a");
		const [opening] = committer.openings;
		if (opening === undefined) throw new Error("no opening");
		expect(opens(opening)).toBe(true);
		expect(opens({ ...opening, value: "b" })).toBe(false);
		expect(opens({ ...opening, salt: "0".repeat(64) })).toBe(false);
	});
});

const header: RecordHeader = {
	recordId: `rec_${"0".repeat(20)}`,
	orderId: `ord_${"0".repeat(20)}`,
	consignmentId: `con_${"0".repeat(20)}`,
	itemId: `itm_${"0".repeat(20)}`,
	itemClass: "graphics-card",
	holderId: `pty_${"0".repeat(20)}`,
	stage: "departure",
	depth: "full",
	provenance: "recorded-by-holder",
	catalogueVersion: "1",
	amends: null,
};
/** Typed texts that cannot stand in the statement by accident. */
const typed = fc.stringMatching(/^[a-zäöü #]{12,40}$/).map((text) => `§${text}§`);
const content = fc.record({
	serial: typed,
	maker: typed,
	mark: typed,
	host: typed,
	statement: typed,
	person: typed,
	remark: typed,
	note: typed,
	words: typed,
	label: typed,
	file: typed,
});
const statementOf = (texts: Record<string, string>) => {
	const committer = makeCommitter(randomBytes);
	const sha = "a".repeat(64);
	const statement = recordStatement(
		header,
		{
			observedAt: "2026-03-02T10:00:00+01:00",
			state: "good",
			identity: { serialNumber: texts.serial, maker: texts.maker, marks: [texts.mark ?? ""] },
			setUp: { host: texts.host, ambient: { value: 21.5, unit: "degC", typed: "21,5" } },
			readings: [
				{
					check: "mass",
					values: [{ value: 1904, unit: "g", typed: "1904" }],
					instrumentId: "meter-1",
					remark: texts.remark,
				},
				{ check: "score", notTested: { reason: "other", note: texts.note } },
			],
			exhibits: [{ sha256: sha, view: "other", note: texts.note }],
			parcel: { remark: texts.remark },
			reported: { words: texts.words, channel: "e-mail", receivedAt: "2026-03-02T10:00:00Z", bySender: texts.person },
			statement: texts.statement,
			recordedBy: texts.person,
		},
		{
			instruments: [{ id: "meter-1", label: texts.label ?? "" }],
			exhibits: new Map([[sha, { sizeBytes: 3, mediaType: "text/plain", fileName: texts.file ?? "" }]]),
		},
		committer,
	);
	return { bytes: canonicalBytes(statement), openings: committer.openings };
};

describe("record statements", () => {
	it("hold no text that a person typed, and give each back to whoever has its opening", () => {
		fc.assert(
			fc.property(content, (texts) => {
				const { bytes, openings } = statementOf(texts);
				const sealed = bytes.toString("utf8");
				const opened = JSON.stringify(openStatement(bytes, openings));
				for (const text of Object.values(texts)) {
					expect(sealed.includes(text)).toBe(false);
					expect(opened.includes(JSON.stringify(text).slice(1, -1))).toBe(true);
				}
				expect(new Set(openings.map((opening) => opening.salt)).size, "a fresh salt each").toBe(openings.length);
			}),
			{ numRuns: 50 },
		);
	});
	it("begin with $format, name no other member below A, keep the digits as typed beside the value", () => {
		const { bytes } = statementOf({});
		const statement = JSON.parse(bytes.toString("utf8"));
		expect(Object.keys(statement)[0]).toBe("$format");
		const names = (value: unknown): string[] =>
			value === null || typeof value !== "object"
				? []
				: Array.isArray(value)
					? value.flatMap(names)
					: Object.entries(value).flatMap(([name, entry]) => [name, ...names(entry)]);
		expect(names(statement).filter((name) => name < "A")).toEqual(["$format"]);
		expect(statement.readings[0].values).toEqual([{ typed: "1904", typedUnit: "g", unit: "kg", value: 1.904 }]);
		expect(statement.setUp.ambient).toEqual({ typed: "21,5", typedUnit: "degC", unit: "degC", value: 21.5 });
		expect(statement.observed).toEqual({ at: "2026-03-02T09:00:00.000Z", offsetMinutes: 60 });
	});
	it("say null for what was erased", () => {
		const { bytes, openings } = statementOf({ serial: "§serial number§" });
		const opened = openStatement(bytes, openings.slice(1)) as { identity: { serialNumber: null } };
		expect(opened.identity.serialNumber).toBeNull();
	});
	it("keep a claimed time's offset", () => {
		expect(claimedTime("2026-03-02T10:00:00-03:30")).toEqual({ at: "2026-03-02T13:30:00.000Z", offsetMinutes: -210 });
		expect(claimedTime("2026-03-02T10:00:00Z")).toEqual({ at: "2026-03-02T10:00:00.000Z", offsetMinutes: 0 });
	});
});
