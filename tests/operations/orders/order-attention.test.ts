/** What an order waits for, and what it has come to, against the cases that a shop meets. */
import { describe, expect, it } from "vitest";
import type { LegMark, SealedMark, StepMark } from "../../../src/database/order-marks.ts";
import { needsAttention, orderAttention } from "../../../src/operations/orders/order-attention.ts";
import type { SettlementFacts } from "../../../src/records/settlement-statement.ts";

const order = {
	...{ id: "ord", createdAt: new Date(0), class: "drive", ownClassId: null, isReadIn: false, drafts: 0 },
};
const out: LegMark = {
	...{ id: "back", orderId: "ord", leg: 2, isToOwner: true, wasDispatched: true, wasDelivered: true },
};
const way: LegMark = { ...out, id: "in", leg: 1, isToOwner: false };
const record = (consignmentId: string, stage: string, state: string): SealedMark => ({
	...{ orderId: "ord", consignmentId, stage, state, isReported: false },
});
const step = (stepId: string, act: SettlementFacts["act"], proposalId = ""): StepMark => {
	const said = { stepId, orderId: "ord", partyId: "pty" };
	const facts: SettlementFacts =
		act === "proposes"
			? { ...said, act, outcome: "refund", amounts: [], itemNext: "stays" }
			: { ...said, act, proposal: { stepId: proposalId, statementSha256: "" } };
	return { orderId: "ord", facts, sealedAt: new Date("2026-10-12T10:00:00Z") };
};
const dead = [record("back", "departure", "good"), record("back", "arrival", "does-not-start")];

describe("an item that arrived", () => {
	it.each([
		["dead after it left good", [out], dead, "does-not-start"],
		[
			"as it left",
			[out],
			[record("back", "departure", "intermittent"), record("back", "arrival", "intermittent")],
			null,
		],
		[
			"better than it left",
			[out],
			[record("back", "departure", "intermittent"), record("back", "arrival", "good")],
			null,
		],
		[
			"dead at the owner, and nobody saw it leave",
			[out],
			[record("back", "arrival", "does-not-start")],
			"does-not-start",
		],
		["dead at the repairer, which is why it was sent", [way], [record("in", "arrival", "does-not-start")], null],
		["not tested", [out], [record("back", "departure", "good"), record("back", "arrival", "not-tested")], null],
		[
			"dead, then good after another leg",
			[out, { ...out, id: "again", leg: 4 }],
			[...dead, record("again", "arrival", "good")],
			null,
		],
	])("%s", (_, legs, sealed, expected) => {
		expect(orderAttention(order, legs, sealed, []).arrivedWorse?.state ?? null).toBe(expected);
	});
	it("asks for attention until something is settled, and again when that is reopened", () => {
		const steps = [step("p", "proposes"), step("a", "assents", "p"), step("r", "reopens", "p")];
		const upTo = (count: number) => orderAttention(order, [out], dead, steps.slice(0, count));
		expect([0, 1, 2, 3].map((count) => needsAttention(upTo(count)))).toEqual([true, true, false, true]);
		expect(upTo(2).settled).toEqual({ at: "2026-10-12T10:00:00.000Z", outcome: "refund" });
		expect(upTo(3).settled).toBeNull();
	});
});

describe("a proposal", () => {
	it("waits until it is answered or retracted, and an assent ends the others", () => {
		const waits = (...steps: StepMark[]) => orderAttention(order, [], [], steps).isProposed;
		expect(waits(step("p", "proposes"))).toBe(true);
		expect(waits(step("p", "proposes"), step("d", "declines", "p"))).toBe(false);
		expect(waits(step("p", "proposes"), step("t", "retracts", "p"))).toBe(false);
		expect(waits(step("p", "proposes"), step("q", "proposes"), step("d", "declines", "p"))).toBe(true);
		expect(waits(step("p", "proposes"), step("q", "proposes"), step("a", "assents", "p"))).toBe(false);
	});
});

describe("records that are missing", () => {
	it("are asked for where the leg is known to have left or arrived", () => {
		const found = orderAttention(order, [out], [], []);
		expect([found.lacksArrival, found.lacksDeparture]).toEqual([true, true]);
		const unknown = orderAttention(order, [{ ...out, wasDispatched: false, wasDelivered: false }], [], []);
		expect([unknown.lacksArrival, unknown.lacksDeparture, needsAttention(unknown)]).toEqual([false, false, false]);
	});
	it("are asked for of no order that was read in, to which nothing is added", () => {
		expect(needsAttention(orderAttention({ ...order, isReadIn: true, drafts: 1 }, [out], dead, []))).toBe(false);
	});
});
