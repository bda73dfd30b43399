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

	// Published: link rate table in open notes on high-performance computing, GB/s, six decimals.
	it.each([
		[1, 2.5, 16, 4.0],
		[2, 5, 8, 4.0],
		[3, 8, 16, 15.753846],
		[4, 16, 8, 15.753846],
		[5, 32, 4, 15.753846],
		[5, 32, 16, 63.015385],
	])("carries what the table says at generation %i", (_, speed, width, rate) => {
		expect(judge({ card: l(speed, width), load: l(speed, width) })?.effectiveGBytePerS).toBeCloseTo(rate, 6);
	});

	it("does not round a speed that is no generation to one", () => {
		expect(judgeLink({ card: l(20, 16), load: l(20, 16) }, LANE_GBYTE_PER_S)).toMatchObject({
			status: "not-assessed",
			reason: { code: "unknown-speed" },
		});
	});
});
