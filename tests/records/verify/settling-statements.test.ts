/** The two forms of settling as verification reads them: what has another form, or names other bytes, is refused with its place. */
import { createHash } from "node:crypto";
import { describe, expect, it } from "vitest";
import { parseCanonical } from "../../../src/records/verify/canonical-json.ts";
import { Unreadable } from "../../../src/records/verify/finding.ts";
import type { ReadEntry } from "../../../src/records/verify/read-entry.ts";
import { refuseWrongSettling } from "../../../src/records/verify/settling-statements.ts";

const ids = (prefix: string, digit: string) => `${prefix}_${digit.repeat(20)}`;
const COMMITMENT = { commitment: "ab".repeat(32) };
const [ORDER, OWNER, REPAIRER] = [ids("ord", "1"), ids("pty", "2"), ids("pty", "3")];

const position = (id: string, more: object = {}) => ({
	$format: "handover-risk/position/1",
	checkIds: [],
	kind: "states",
	orderId: ORDER,
	partyId: OWNER,
	positionId: id,
	recordIds: [ids("rec", "4")],
	text: COMMITMENT,
	...more,
});
const proposal = (id: string, more: object = {}) => ({
	$format: "handover-risk/settlement/1",
	act: "proposes",
	amounts: [{ amount: 12.5, currency: "EUR", from: "repairer", to: "owner" }],
	itemNext: "stays",
	orderId: ORDER,
	outcome: "refund",
	partyId: REPAIRER,
	stepId: id,
	...more,
});
const assent = (id: string, about: object) => ({
	$format: "handover-risk/settlement/1",
	act: "assents",
	orderId: ORDER,
	partyId: OWNER,
	proposal: about,
	stepId: id,
});

/** Members in code-unit order, as canonical JSON has them. */
function canonical(value: unknown): string {
	if (Array.isArray(value)) return `[${value.map(canonical).join(",")}]`;
	if (value === null || typeof value !== "object") return JSON.stringify(value);
	const members = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
	return `{${members.map(([name, member]) => `${JSON.stringify(name)}:${canonical(member)}`).join(",")}}`;
}
const hashOf = (statement: object) => createHash("sha256").update(canonical(statement)).digest("hex");

function entry(index: number, kind: string, subject: string, statement: { $format: string }): ReadEntry {
	const bytes = new TextEncoder().encode(canonical(statement));
	return {
		where: `/entries/${index}`,
		leaf: "",
		index,
		kind,
		subject,
		by: "acc",
		time: "2026-03-02T10:00:00.000Z",
		statementSha256: hashOf(statement),
		statement: { bytes, format: statement.$format, node: parseCanonical(bytes) },
		openings: [],
		proof: null,
	};
}
function placeRefused(entries: readonly ReadEntry[]): string | null {
	try {
		refuseWrongSettling(entries);
		return null;
	} catch (error) {
		if (!(error instanceof Unreadable)) throw error;
		return error.details.where ?? "";
	}
}

const [P1, P2, S1, S2] = [ids("pos", "a"), ids("pos", "b"), ids("stl", "c"), ids("stl", "d")];

describe("positions", () => {
	const of = (statement: { $format: string }) => [entry(0, "position-sealed", P1, statement)];
	it("pass in their form", () => {
		expect(placeRefused(of(position(P1)))).toBeNull();
		const test = { dates: ["2026-03-09"], doneBy: "neutral", id: "inspection" };
		expect(placeRefused(of(position(P1, { kind: "offers-test", test, consignmentId: ids("con", "5") })))).toBeNull();
	});
	it.each([
		["another subject", position(P2), "/entries/0/statement → /"],
		["a text that is not committed", position(P1, { text: "typed" }), "/entries/0/statement → /text"],
		["a member more", position(P1, { verdict: "x" }), "/entries/0/statement → /verdict"],
		["a test that is not named", position(P1, { kind: "asks-for-test" }), "/entries/0/statement → /test"],
		[
			"a test in what only states",
			position(P1, { test: { dates: [], doneBy: "owner", id: "other" } }),
			"/entries/0/statement → /test",
		],
		["words for an id", position(P1, { recordIds: ["Mara"] }), "/entries/0/statement → /recordIds/0"],
		["another form", { ...position(P1), $format: "handover-risk/record/1" }, "/entries/0/statement → /$format"],
	])("are refused with %s", (_, statement, where) => {
		expect(placeRefused(of(statement))).toBe(where);
	});
	it("of a kind that a later version adds may name a test or not", () => {
		const test = { dates: [], doneBy: "owner", id: "other" };
		expect(placeRefused(of(position(P1, { kind: "reports-a-test", test })))).toBeNull();
		expect(placeRefused(of(position(P1, { kind: "reports-a-test" })))).toBeNull();
	});
	it("answer the same order's", () => {
		const first = position(P1, { orderId: ids("ord", "9") });
		const answers = { positionId: P1, stance: "agrees", statementSha256: hashOf(first) };
		const both = [
			entry(0, "position-sealed", P1, first),
			entry(1, "position-sealed", P2, position(P2, { partyId: REPAIRER, answers })),
		];
		expect(placeRefused(both)).toBe("/entries/1/statement → /orderId");
	});
	it("answer the very bytes that the receipt holds", () => {
		const first = position(P1);
		const answers = (statementSha256: string) => ({ answers: { positionId: P1, stance: "agrees", statementSha256 } });
		const both = (hash: string) => [
			entry(0, "position-sealed", P1, first),
			entry(1, "position-sealed", P2, position(P2, { partyId: REPAIRER, ...answers(hash) })),
		];
		expect(placeRefused(both(hashOf(first)))).toBeNull();
		expect(placeRefused(both("cd".repeat(32)))).toBe("/entries/1/statement → /answers/statementSha256");
	});
});

describe("steps of a settlement", () => {
	const first = proposal(S1);
	const both = (statementSha256: string) => [
		entry(0, "settlement-sealed", S1, first),
		entry(1, "settlement-sealed", S2, assent(S2, { statementSha256, stepId: S1 })),
	];
	it("pass in their form, and the assent names the very bytes of the proposal", () => {
		expect(placeRefused(both(hashOf(first)))).toBeNull();
		expect(placeRefused(both("ef".repeat(32)))).toBe("/entries/1/statement → /proposal/statementSha256");
	});
	it("are refused where the assent names another order", () => {
		const about = { statementSha256: hashOf(first), stepId: S1 };
		const other = { ...assent(S2, about), orderId: ids("ord", "9") };
		expect(placeRefused([entry(0, "settlement-sealed", S1, first), entry(1, "settlement-sealed", S2, other)])).toBe(
			"/entries/1/statement → /orderId",
		);
	});
	it("are refused before what they assent to", () => {
		const [a, b] = both(hashOf(first));
		expect(placeRefused([{ ...(a as ReadEntry), index: 2 }, b as ReadEntry])).toBe(
			"/entries/1/statement → /proposal/statementSha256",
		);
	});
	it.each([
		[
			"an amount below 0",
			{ amounts: [{ amount: -1, currency: "EUR", from: "owner", to: "carrier" }] },
			"/amounts/0/amount",
		],
		[
			"a currency in words",
			{ amounts: [{ amount: 1, currency: "euro", from: "owner", to: "carrier" }] },
			"/amounts/0/currency",
		],
		["no outcome", { outcome: undefined }, "/outcome"],
	])("are refused with %s", (_, more, where) => {
		const statement = JSON.parse(JSON.stringify(proposal(S1, more)));
		expect(placeRefused([entry(0, "settlement-sealed", S1, statement)])).toBe(`/entries/0/statement → ${where}`);
	});
});
