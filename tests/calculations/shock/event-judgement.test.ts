/**
 * Where an event lies and what it says against the pack; and what impact indicators say, against the figures of the reference page
 * (section 6: 25, 37, 50, 75 and 100 gₙ at 11 ms mean 1.72, 2.54, 3.43, 5.15, 6.87 m/s).
 */
import { describe, expect, it } from "vitest";
import { indicatorRows } from "../../../src/calculations/shock/indicator.ts";
import { eventAgainstPack, RECORDER_PLACES } from "../../../src/calculations/shock/recording/event-against-pack.ts";
import type { EventFacts } from "../../../src/calculations/shock/recording/event-facts.ts";
import { eventPlace } from "../../../src/calculations/shock/recording/event-place.ts";
import { seriesLevels } from "../../../src/calculations/shock/recording/series-levels.ts";
import { boardStrength } from "../../../src/calculations/strength/board-strength.ts";
import { allowedGn, spectrumAt } from "../../../src/operations/transit-recordings/board-line.ts";
import { say, type TextKey } from "../../../src/texts/say.ts";

const HOUR_MS = 3_600_000;
const SPANS = [
	{ startsMs: 0, endsMs: 10 * HOUR_MS },
	{ startsMs: 10 * HOUR_MS, endsMs: 20 * HOUR_MS },
];

describe("an event on the custody line", () => {
	it.each([
		["inside one", 5 * HOUR_MS, 600, { status: "in-span", spans: [0] }],
		["at the border of two", 10 * HOUR_MS, 600, { status: "in-one-of", spans: [0, 1], mayLieOutside: false }],
		["at the begin of all", 0, 600, { status: "in-one-of", spans: [0], mayLieOutside: true }],
		[
			"with a clock that is a day off",
			5 * HOUR_MS,
			86_400,
			{ status: "in-one-of", spans: [0, 1], mayLieOutside: true },
		],
		["after all", 21 * HOUR_MS, 600, { status: "outside", spans: [] }],
		["without a clock", null, 600, { status: "cannot-be-placed", spans: [], reason: "no-clock" }],
		[
			"with a clock nobody vouches for",
			5 * HOUR_MS,
			null,
			{ status: "cannot-be-placed", spans: [], reason: "clock-not-known" },
		],
	] as const)("%s", (_, timeMs, uncertaintyS, place) => {
		expect(eventPlace(timeMs, uncertaintyS, SPANS)).toEqual(place);
	});
	it("on no line cannot be placed", () => {
		expect(eventPlace(0, 0, [])).toMatchObject({ reason: "no-line" });
	});
});

const EVENT: EventFacts = {
	timeS: 1,
	sampleRateHz: 2000,
	peakGn: 60,
	peakDoubt: null,
	clipped: false,
	durationMs: 12,
	samplesInPulse: 24,
	// 60 g × 12 ms: 1030, 458 and 258 mm for no, half and full rebound (reference page, section 6).
	velocityChangeMPerS: 4.495,
	equivalentDropHeightM: { restitution0: 1.03, restitutionHalf: 0.458, restitution1: 0.258 },
	freeFallTimeS: null,
	freeFallDropBandM: null,
	spectrum: [],
};
const judge = (
	change: Partial<EventFacts>,
	place: (typeof RECORDER_PLACES)[number],
	protectedDropHeightM: number | null = 0.5,
) => {
	const { peak, drop } = eventAgainstPack({ ...EVENT, ...change }, place, { protectedDropHeightM, limitGn: 50 });
	for (const { why } of [peak, drop]) expect(say(why.sentence as TextKey, why.values)).not.toBe("");
	return [peak.verdict, drop.verdict];
};

describe("an event against the pack", () => {
	it("peaks count on the item alone; a lower bound below the limit decides nothing", () => {
		expect(judge({}, "on-item")[0]).toBe("above");
		expect(judge({ peakGn: 40 }, "on-item")[0]).toBe("below");
		expect(judge({ peakGn: 40, peakDoubt: "few-samples" }, "on-item")[0]).toBe("not-decided");
		expect(judge({ peakGn: 60, peakDoubt: "clipped" }, "on-item")[0]).toBe("above");
		expect(judge({ peakDoubt: "phone" }, "on-item")).toEqual(["not-comparable", "not-comparable"]);
		expect(judge({ peakGn: Number.NaN }, "on-item")[0]).toBe("not-decided");
		for (const place of RECORDER_PLACES.filter((one) => one !== "on-item"))
			expect(judge({}, place)[0], place).toBe("not-comparable");
	});
	it("a change of velocity is a range of drops: above, below, or reaching to both sides", () => {
		expect(judge({}, "on-outer-box", 0.2)[1]).toBe("above");
		expect(judge({}, "on-outer-box", 0.5)[1]).toBe("not-decided");
		expect(judge({}, "on-outer-box", 1.1)[1]).toBe("below");
		expect(judge({ peakDoubt: "clipped" }, "on-outer-box", 1.1)[1]).toBe("not-decided");
		for (const peakDoubt of ["few-samples", "slow-sampling"] as const)
			expect(judge({ peakDoubt }, "on-outer-box", 0.2)[1]).toBe("not-comparable");
		expect(judge({}, "in-cushion", 0.2)[1]).toBe("not-comparable");
		expect(judge({}, "on-item", null)[1]).toBe("not-comparable");
	});
	it("the time of a fall counts from every place, a phone's as well", () => {
		const fell = { freeFallTimeS: 0.394, freeFallDropBandM: [0.75, 0.77] as const };
		for (const place of RECORDER_PLACES) {
			expect(judge(fell, place, 0.5)[1], place).toBe("above");
			expect(judge({ ...fell, peakDoubt: "phone" }, place, 0.8)[1], place).toBe("below");
			expect(judge(fell, place, 0.76)[1], place).toBe("not-decided");
		}
	});
	it("without a sealed pack nothing is compared", () => {
		const { peak, drop } = eventAgainstPack(EVENT, "on-item", null);
		expect([peak.verdict, drop.verdict]).toEqual(["not-comparable", "not-comparable"]);
	});
});

it("impact indicators: velocity changes of the reference page, and drops that lie fourfold apart", () => {
	const rows = indicatorRows();
	expect(rows.map(({ thresholdGn }) => thresholdGn)).toEqual([25, 37, 50, 75, 100]);
	[1.72, 2.54, 3.43, 5.15, 6.87].forEach((velocity, index) => {
		expect(rows[index]?.velocityChangeMPerS).toBeCloseTo(velocity, 2);
	});
	for (const { dropBandM } of rows) expect(dropBandM[1] / dropBandM[0]).toBeCloseTo(4, 9);
});

it("levels that grow too long are let go, and the greatest is never lost", () => {
	const levels = seriesLevels();
	for (let block = 0; block < 50; block += 1)
		levels.take(Float64Array.from({ length: 4096 }, (_, index) => (block === 31 && index === 7 ? 99 : index / 4096)));
	const kept = levels.end();
	expect(kept[0]?.samplesPerStretch).toBe(64);
	for (const { ends } of kept) {
		expect(Math.max(...ends)).toBe(99);
		expect(ends.length / 2).toBeLessThanOrEqual(8192);
	}
});

describe("the board's rule on a spectrum", () => {
	const board = {
		component: { kind: "ball-grid-array", lengthM: 0.03, position: "centre", boardEdgeM: 0.25 },
		boardThicknessM: 0.0016,
		naturalFrequencyHz: 60,
		amplification: 1.5,
	} as const;
	it("allows at the board's frequency the response that its allowed shock makes", () => {
		const strength = boardStrength(board).result;
		const line = { deflectionM: strength?.allowableShockDeflectionM ?? Number.NaN };
		// The book rounds 9.780 to 9.8 (0.2 %).
		expect(allowedGn(line, 60) / (1.5 * (strength?.allowableShockGn ?? Number.NaN))).toBeCloseTo(1, 2);
		expect(allowedGn(line, 600) / allowedGn(line, 60)).toBeCloseTo(100, 9);
	});
	it("reads a spectrum straight between its points on logarithmic axes, and not beyond them", () => {
		const spectrum = [
			{ frequencyHz: 10, maximaxGn: 1 },
			{ frequencyHz: 1000, maximaxGn: 100 },
		];
		expect(spectrumAt(spectrum, 100)).toBeCloseTo(10, 9);
		expect(spectrumAt(spectrum, 10)).toBe(1);
		expect(spectrumAt(spectrum, 1000)).toBe(100);
		expect(spectrumAt(spectrum, 9)).toBeNull();
		expect(spectrumAt(spectrum, 1001)).toBeNull();
	});
});
