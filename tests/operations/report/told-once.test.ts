/** What the report tells once: the settlement that holds on its first page, and a change in somebody's keeping. Own expectations. */
import { describe, expect, it } from "vitest";
import type { ReportFacts } from "../../../src/operations/report/report-facts.ts";
import { comparison } from "../../../src/operations/report/sections/comparison.ts";
import { summary } from "../../../src/operations/report/sections/summary.ts";
import type { Block } from "../../../src/reports/report.ts";
import { speakerOf } from "../../../src/texts/speaker.ts";

const speaker = speakerOf("en");
const order = {
	item: { maker: "Ostwind", model: "Orca 24" },
	owner: { id: "pty_o", name: "Ada" },
	repairer: { id: "pty_s", name: "Nord" },
};

describe("the row on the settlement", () => {
	const rowOf = (status: string, steps: readonly object[]) => {
		const log = { checkpoint: { size: 9 }, root: "ab", asOf: new Date("2026-03-02T10:00:00Z") };
		const records = [1, 2].map(() => ({ view: { provenance: "recorded-by-holder" } }));
		const report = { order, records, legs: [], settlement: { status, steps }, ...log, speaker };
		const rows = summary(report as unknown as ReportFacts).blocks.flatMap((block) =>
			block.kind === "facts" ? block.rows : [],
		);
		expect(rows).toContainEqual(["Sealed records", "2"]);
		return rows.find(([name]) => name === "Settlement")?.[1];
	};
	const proposal = (state: string, outcome: string, amount: number) => ({
		state,
		outcome,
		amounts: [{ amount, currency: "EUR", from: "repairer", to: "owner" }],
	});
	const assent = { state: null, outcome: null, amounts: [] };

	it("names the proposal that holds, with its amounts, and not one that was reopened before", () => {
		const steps = [proposal("reopened", "refund", 400), assent, proposal("agreed", "part-refund", 90), assent];
		expect(rowOf("agreed", steps)).toBe(
			`Both sides have agreed: ${speaker.say("settling.outcome.part-refund")}. Amounts: 90.00 EUR from the repairer to the owner.`,
		);
	});
	it.each(["none", "proposed", "reopened"] as const)("says that nothing holds: %s", (status) => {
		expect(rowOf(status, [proposal("reopened", "refund", 400)])).toBe(speaker.say(`settling.status.${status}`));
	});
});

describe("a change", () => {
	const seen = (id: string, stage: string, hour: number) => ({
		view: { id, stage },
		statement: {
			state: "good",
			readings: [],
			setUp: {},
			observed: { at: `2026-03-02T${hour}:00:00.000Z`, offsetMinutes: 0 },
		},
	});
	const records = [
		seen("rec_1", "departure", 10),
		seen("rec_2", "arrival", 11),
		seen("rec_3", "departure", 12),
		seen("rec_4", "arrival", 13),
	] as const;
	const span = (kind: string, holderId: string | null, consignmentId: string | null) => ({
		kind,
		holderId,
		consignmentId,
	});
	const change = (check: string, place: number, after: string, before: string) => ({
		kind: "lost",
		check,
		spans: [place],
		afterRecordId: after,
		beforeRecordId: before,
		widenedBy: [],
	});
	const line = {
		spans: [span("transit", null, "con_1"), span("stay", "pty_s", null), span("transit", null, "con_2")],
		changes: [change("starts-warm", 0, "rec_1", "rec_2"), change("fan-spins", 1, "rec_2", "rec_3")],
	};
	const leg = (number: number, ends: readonly (object | null)[]) => {
		const consignment = { id: `con_${number}`, leg: number, consignorId: "pty_o", consigneeId: "pty_s", facts: {} };
		const [departure, arrival] = ends;
		const compared = { rows: [], outcome: "compared", betterOnArrival: [], identity: { agree: [] } };
		const found = { consignment, departure, arrival, comparison: compared, line, order, records };
		return { leg: consignment, found, view: { adjustedFor: 0, firstState: null } };
	};
	const textsOf = (block: Block) =>
		block.kind === "list" ? block.items : block.kind === "subheading" ? [block.text] : [];
	const told = (...legs: readonly object[]) => {
		const texts = comparison({ order, legs, speaker } as unknown as ReportFacts)
			.blocks.flatMap(textsOf)
			.map(String);
		const places = (part: string) => texts.flatMap((text, place) => (text.includes(part) ? [place] : []));
		return { legs: places("Leg "), onLeg: places("starts-warm"), kept: places("fan-spins"), last: texts.length - 1 };
	};

	it("on a leg stands under that leg alone, one in somebody's keeping once, after all legs", () => {
		const { legs, onLeg, kept, last } = told(leg(1, records.slice(0, 2)), leg(2, records.slice(2)));
		expect(legs).toHaveLength(2);
		expect([onLeg, kept]).toEqual([[(legs[0] ?? 0) + 1], [last]]);
	});
	it("on a leg that is not told of is told all the same", () => {
		const { onLeg, kept } = told(leg(1, [records[0], null]), leg(2, records.slice(2)));
		expect([onLeg.length, kept.length]).toEqual([1, 1]);
	});
});
