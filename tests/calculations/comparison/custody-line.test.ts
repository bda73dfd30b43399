/** The custody line; every expectation is worked out by hand from the rule that a change lies between good and not good. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { custodyLine } from "../../../src/calculations/comparison/custody-line.ts";
import type { CustodyRecord, Goodness } from "../../../src/calculations/comparison/types.ts";

const day = (number: number) => `2026-03-${String(number).padStart(2, "0")}T10:00:00.000Z`;

/** Owner sends to the shop (leg in), the shop repairs and sends back (leg out). */
function record(
	recordId: string,
	stage: CustodyRecord["stage"],
	holderId: string,
	consignmentId: string | null,
	onDay: number,
	goodness: Record<string, Goodness>,
): CustodyRecord {
	return { recordId, stage, holderId, consignmentId, observedAt: day(onDay), goodness };
}
const LINE = [
	record("owner-out", "departure", "owner", "in", 1, { "fan-speed": "good", "memory-errors": "not-good" }),
	record("shop-in", "arrival", "shop", "in", 5, { "fan-speed": "not-good", "memory-errors": "untested" }),
	record("shop-out", "departure", "shop", "out", 12, {
		"fan-speed": "good",
		"memory-errors": "good",
		"link-width": "good",
	}),
	record("owner-in", "arrival", "owner", "out", 18, {
		"fan-speed": "unclear",
		"memory-errors": "good",
		"link-width": "not-good",
	}),
];
const LEGS = [
	{ consignmentId: "in", dispatchedAt: day(2), deliveredAt: day(4), inHandAt: day(5) },
	{ consignmentId: "out", dispatchedAt: day(13), deliveredAt: day(15), inHandAt: day(17) },
];

describe("spans", () => {
	const { spans, recordIds } = custodyLine([...LINE].reverse(), LEGS);

	test("records are put in observed order", () => {
		expect(recordIds).toEqual(["owner-out", "shop-in", "shop-out", "owner-in"]);
	});

	test("sender, transit, nobody's between door and hand, receiver", () => {
		expect(spans.map(({ kind, holderId, startsAt, endsAt }) => [kind, holderId, startsAt, endsAt])).toEqual([
			["stay", "owner", day(1), day(2)],
			["transit", null, day(2), day(4)],
			["nobody", null, day(4), day(5)],
			["stay", "shop", day(5), day(12)],
			["stay", "shop", day(12), day(13)],
			["transit", null, day(13), day(15)],
			["nobody", null, day(15), day(17)],
			["stay", "owner", day(17), day(18)],
		]);
	});

	test("without known times the whole hand-over is transit; out of order too", () => {
		const kinds = (legs: Parameters<typeof custodyLine>[1]) =>
			custodyLine(LINE.slice(0, 2), legs).spans.map(({ kind }) => kind);
		expect(kinds([])).toEqual(["transit"]);
		expect(kinds([{ consignmentId: "in", deliveredAt: day(9) }])).toEqual(["transit"]);
	});

	test("a change of holder that no leg explains is unrecorded", () => {
		const loose = LINE.map((entry) => ({ ...entry, stage: "bench" as const, consignmentId: null }));
		expect(custodyLine(loose, LEGS).spans.map(({ kind }) => kind)).toEqual(["unrecorded", "stay", "unrecorded"]);
	});
});

describe("changes", () => {
	const { changes, spans } = custodyLine(LINE, LEGS);
	const of = (check: string) => changes.filter((change) => change.check === check);
	const kindsOf = (indexes: readonly number[]) => indexes.map((index) => spans[index]?.kind);

	test("lost between departure and arrival: any span of that leg", () => {
		const [lost] = of("fan-speed");
		expect(lost).toMatchObject({ kind: "lost", afterRecordId: "owner-out", beforeRecordId: "shop-in", widenedBy: [] });
		expect(kindsOf(lost?.spans ?? [])).toEqual(["stay", "transit", "nobody"]);
	});

	test("not good at intake, good at departure of the same holder: mended", () => {
		expect(of("fan-speed")[1]).toMatchObject({ kind: "mended", afterRecordId: "shop-in", beforeRecordId: "shop-out" });
	});

	test("an untested hand-over widens the place", () => {
		expect(of("memory-errors")[0]).toMatchObject({ kind: "first-seen", beforeRecordId: "owner-out", spans: [] });
		const [, mended] = of("memory-errors");
		expect(mended).toMatchObject({
			kind: "mended",
			afterRecordId: "owner-out",
			beforeRecordId: "shop-out",
			widenedBy: ["shop-in"],
		});
		expect(kindsOf(mended?.spans ?? [])).toEqual(["stay", "transit", "nobody", "stay"]);
	});

	test("a check first tested at a later record is placed from there", () => {
		expect(of("link-width")).toHaveLength(1);
		expect(of("link-width")[0]).toMatchObject({ kind: "lost", afterRecordId: "shop-out", beforeRecordId: "owner-in" });
	});

	test("a bench record after the departure record: work can have been done before it left", () => {
		const line = [
			record("a", "departure", "owner", "in", 1, { "starts-cold": "not-good" }),
			record("b", "bench", "owner", null, 2, {}),
			record("c", "arrival", "shop", "in", 5, { "starts-cold": "good" }),
		];
		const { changes } = custodyLine(line, []);
		expect(changes[1]).toMatchObject({ kind: "mended", widenedBy: ["b"] });
	});

	test("better on arrival than when it left is a conflict", () => {
		const line = [
			record("a", "departure", "owner", "in", 1, { "starts-cold": "not-good" }),
			record("b", "arrival", "shop", "in", 5, { "starts-cold": "good" }),
		];
		expect(custodyLine(line, LEGS).changes.map(({ kind }) => kind)).toEqual(["first-seen", "conflict"]);
	});
});

test("property: a lost check was good in the record before and not good in the one after, and all between is undecided", () => {
	const goodness = fc.constantFrom<Goodness>("good", "not-good", "unclear", "untested", "no-limit");
	fc.assert(
		fc.property(fc.array(goodness, { maxLength: 12 }), (values) => {
			const records = values.map((value, index) =>
				record(
					`r${index}`,
					index % 2 === 0 ? "departure" : "arrival",
					index % 4 < 1 || index % 4 > 2 ? "a" : "b",
					`c${Math.floor(index / 2)}`,
					index + 1,
					{ x: value },
				),
			);
			const { changes, spans } = custodyLine(records, []);
			const at = (id: string | null) => values[records.findIndex(({ recordId }) => recordId === id)];
			for (const change of changes) {
				const [before, after] = [at(change.afterRecordId), at(change.beforeRecordId)];
				if (change.kind === "first-seen") expect(after).toBe("not-good");
				else expect([before, after]).toEqual(change.kind === "lost" ? ["good", "not-good"] : ["not-good", "good"]);
				for (const id of change.widenedBy) expect(["unclear", "untested", "no-limit"]).toContain(at(id));
				if (change.afterRecordId !== null) {
					expect(spans[change.spans[0] ?? -1]?.afterRecordId).toBe(change.afterRecordId);
					expect(spans[change.spans.at(-1) ?? -1]?.beforeRecordId).toBe(change.beforeRecordId);
				}
			}
		}),
	);
});

test("S7, three legs: full test, photo only, full test that fails: the untested hand-over widens the place to both later legs", () => {
	const at = (
		recordId: string,
		stage: "departure" | "arrival",
		holderId: string,
		consignmentId: string,
		day: number,
		memory: Goodness,
	) => ({
		recordId,
		stage,
		holderId,
		consignmentId,
		observedAt: `2026-03-0${day}T10:00:00Z`,
		goodness: { memory },
	});
	const { spans, changes } = custodyLine(
		[
			at("left-owner", "departure", "owner", "leg-1", 1, "good"),
			at("came-shop", "arrival", "shop", "leg-1", 2, "good"),
			at("left-shop", "departure", "shop", "leg-2", 3, "good"),
			at("came-specialist", "arrival", "specialist", "leg-2", 4, "untested"),
			at("left-specialist", "departure", "specialist", "leg-3", 5, "untested"),
			at("came-owner", "arrival", "owner", "leg-3", 6, "not-good"),
		],
		[{ consignmentId: "leg-1" }, { consignmentId: "leg-2" }, { consignmentId: "leg-3" }],
	);
	const [change] = changes;
	expect(change).toMatchObject({ kind: "lost", afterRecordId: "left-shop", beforeRecordId: "came-owner" });
	expect(change?.widenedBy).toEqual(["came-specialist", "left-specialist"]);
	const places = change?.spans.map((index) => spans[index]) ?? [];
	expect(places.map((span) => span?.consignmentId)).toContain("leg-2");
	expect(places.map((span) => span?.consignmentId)).toContain("leg-3");
	expect(places.map((span) => span?.holderId)).toContain("specialist");
	expect(places.map((span) => span?.consignmentId)).not.toContain("leg-1");
});
