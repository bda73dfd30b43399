/** Cases of bench practice section 4 (our own rule on published rates) and the contract's worked example. */
import { describe, expect, it } from "vitest";
import { judgeLink, type Link } from "../../../src/calculations/link/link-judgement.ts";
import { LANE_GBYTE_PER_S } from "../../../src/catalogue/link-generations.ts";

const l = (speedGTPerS: number, width: number): Link => ({ speedGTPerS, width });
const judge = (input: Parameters<typeof judgeLink>[0]) => judgeLink(input, LANE_GBYTE_PER_S).result;

describe("link judgement", () => {
	it.each([
		["ok-idle-saving", { card: l(16, 16), idle: l(2.5, 16), load: l(16, 16) }],
		["unjudged-idle", { card: l(16, 16), idle: l(2.5, 16) }],
		["unjudged-idle", { card: l(16, 16), idle: l(2.5, 8) }],
		["width-reduced", { card: l(16, 16), load: l(16, 8), slot: l(16, 16), control: l(16, 16) }],
		["slot-limited", { card: l(16, 16), load: l(16, 8), slot: l(16, 8) }],
		["ok-card-limit", { card: l(16, 8), load: l(16, 8), slot: l(16, 16) }],
		["speed-reduced", { card: l(16, 16), load: l(8, 16), slot: l(16, 16) }],
		["width-reduced", { card: l(32, 16), function: l(32, 16), upstreamPath: [l(16, 8)] }],
		["bus-lost", { card: l(16, 16), load: l(0, 63) }],
		["no-link-data", { card: l(0, 0) }],
		["unjudged-path-not-seen", { card: l(32, 16), function: l(32, 16) }],
		["unjudged-path-not-seen", { card: l(16, 16), load: l(16, 8) }],
	] as const)("says %s", (judgement, input) => {
		expect(judge(input)?.judgement).toBe(judgement);
	});

	it("names the slowest point of the path, where the function says more", () => {
		expect(judge({ card: l(32, 16), function: l(32, 16), upstreamPath: [l(16, 8)] })?.effective).toEqual(l(16, 8));
		// A slow port anywhere on the way counts, not the last one only.
		const path = [l(32, 16), l(32, 4), l(32, 16)];
		expect(judge({ card: l(32, 16), function: l(32, 16), upstreamPath: path })?.effective).toEqual(l(32, 4));
	});

	it("calls registers that read all ones lost, also where the capability does", () => {
		expect(judge({ card: l(0, 63), load: l(0, 63) })?.judgement).toBe("bus-lost");
	});

	it("takes half the lanes as the slot's where a control card in the same slot has no more", () => {
		expect(judge({ card: l(16, 16), load: l(16, 8), control: l(16, 8) })?.judgement).toBe("slot-limited");
	});

	// Published: link rate table in open notes on high-performance computing, GB/s; generations 3 to 5 as GT/s × 128/130 ×
	// lanes ÷ 8, to the six decimals printed. Generation 6 raw, as printed.
	it.each([
		[1, 2.5, [0.25, 0.5, 1, 2, 4]],
		[2, 5, [0.5, 1, 2, 4, 8]],
		[3, 8, [0.984615, 1.969231, 3.938462, 7.876923, 15.753846]],
		[4, 16, [1.969231, 3.938462, 7.876923, 15.753846, 31.507692]],
		[5, 32, [3.938462, 7.876923, 15.753846, 31.507692, 63.015385]],
		[6, 64, [8, 16, 32, 64, 128]],
	] as const)("carries what the table says at generation %i, x1 to x16", (_, speed, rates) => {
		[1, 2, 4, 8, 16].forEach((width, place) => {
			const carried = judge({ card: l(speed, width), load: l(speed, width) })?.effectiveGBytePerS;
			expect(carried).toBeCloseTo(rates[place] ?? Number.NaN, 6);
		});
	});

	it("carries the same at half the lanes and twice the speed", () => {
		const rate = (speed: number, width: number) =>
			judge({ card: l(speed, width), load: l(speed, width) })?.effectiveGBytePerS;
		expect([rate(16, 8), rate(32, 4)]).toEqual([rate(8, 16), rate(8, 16)]);
	});

	it.each([20, 25])("does not round %i GT/s, which is no generation, to one", (speed) => {
		expect(judgeLink({ card: l(speed, 16), load: l(speed, 16) }, LANE_GBYTE_PER_S)).toMatchObject({
			status: "not-assessed",
			reason: { code: "unknown-speed" },
		});
	});
});
