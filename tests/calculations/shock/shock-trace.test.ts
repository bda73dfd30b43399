/** What a recorded shock says: velocity, baseline, sampling, clipping, free fall. Cases by id from the measurement page, section 4. */
import { describe, expect, it } from "vitest";
import type { Axes } from "../../../src/calculations/shock/trace/oscillator-responses.ts";
import { type ShockTraceInput, shockTrace } from "../../../src/calculations/shock/trace/shock-trace.ts";
import { classicalPulse } from "./classical-pulse.ts";

const near = (got: number | null | undefined, expected: number, tolerance: number) =>
	expect(Math.abs((got ?? Number.NaN) - expected), `${got} against ${expected}`).toBeLessThanOrEqual(tolerance);
const ask = (axes: Axes, more: Partial<ShockTraceInput> = {}) =>
	shockTrace({ sampleRateHz: 10_000, axes, q: 10, frequenciesHz: [100], ...more });
const of = (axes: Axes, more: Partial<ShockTraceInput> = {}) => {
	const { result } = ask(axes, more);
	if (result === null) throw new Error("not assessed");
	return result;
};
const notesOf = (axes: Axes, more: Partial<ShockTraceInput> = {}) =>
	ask(axes, more).validity.notes.map((note) => note.sentence);
const cautionsOf = (axes: Axes, more: Partial<ShockTraceInput> = {}) =>
	ask(axes, more).cautions.map((note) => note.sentence);
/** A pulse within a quiet trace. */
const within = (pulse: Float64Array, before: number, after: number, bias = 0) =>
	Float64Array.from({ length: before + pulse.length + after }, (_, index) => bias + (pulse[index - before] ?? 0));

describe("velocity change of classical pulses (V_dv_50_11, V_dv_100_6: closed forms; the trapezium rule loses (π/N)²/12 with N samples, 2.3e-4 at 60)", () => {
	it.each([
		["half_sine", 50, 11, 3.433709],
		["terminal_peak_sawtooth", 50, 11, 2.6968287],
		["trapezoid_10pct", 50, 11, 4.8542917],
		["half_sine", 100, 6, 3.7458644],
		["terminal_peak_sawtooth", 100, 6, 2.941995],
		["trapezoid_10pct", 100, 6, 5.295591],
	] as const)("%s of %d gₙ and %d ms", (pulse, peakGn, durationMs, expected) => {
		const samples = within(classicalPulse(pulse, peakGn, durationMs, 10_000), 200, 0);
		near(of([samples]).velocityChangeMPerS, expected, 3e-4 * expected);
	});
	it.each([
		[50, 11, 0.6011409, 0.2671738, 0.1502852],
		[100, 6, 0.7154074, 0.3179588, 0.1788518],
	])("equivalent drops of %d gₙ and %d ms (1e-4)", (peakGn, durationMs, none, half, full) => {
		const { equivalentDropHeightM } = of([classicalPulse("half_sine", peakGn, durationMs, 20_000)], {
			sampleRateHz: 20_000,
		});
		near(equivalentDropHeightM.restitution0, none, 1e-4);
		near(equivalentDropHeightM.restitutionHalf, half, 1e-4);
		near(equivalentDropHeightM.restitution1, full, 1e-4);
	});
});

describe("V03: 0.5 gₙ of offset on 50 gₙ for 11 ms from 20 ms on, 0 to 99.9 ms at 10 kHz (printed to 1e-6)", () => {
	// The pulse occupies samples 200 to 310.
	const biased = within(classicalPulse("half_sine", 50, 11, 10_000), 200, 689, 0.5);
	it("as recorded, the whole trace is 14 % too much, and that is said", () => {
		const raw = of([biased]);
		near(raw.wholeVelocityChangeMPerS, 3.923318, 1e-5);
		expect(cautionsOf([biased])).toEqual(expect.arrayContaining(["shock.no-baseline", "shock.velocity-apart"]));
	});
	it("the pulse alone has the offset of its own 11 ms (raw_window 3.487412)", () => {
		near(of([biased]).velocityChangeMPerS, 3.487412, 1e-5);
	});
	it("with the mean of 190 samples before it taken off, pulse and whole trace agree", () => {
		const corrected = of([biased], { pretriggerSamples: 190 });
		near(corrected.velocityChangeMPerS, 3.433476, 1e-5);
		near(corrected.wholeVelocityChangeMPerS, 3.433476, 1e-5);
		near(corrected.peakGn, 50, 1e-2);
		expect(cautionsOf([biased], { pretriggerSamples: 190 })).not.toContain("shock.velocity-apart");
	});
});

describe("duration, from a tenth to a tenth of the peak", () => {
	it("of a half sine is 1 − 2·asin(0.1)/π of its length, wherever it stands and whatever its sign", () => {
		const pulse = classicalPulse("half_sine", 50, 11, 10_000);
		const expected = 11 * (1 - (2 * Math.asin(0.1)) / Math.PI);
		near(of([pulse]).durationMs, expected, 1e-3);
		near(of([within(pulse, 300, 500)]).durationMs, expected, 1e-3);
		near(of([pulse.map((sample) => -sample)]).durationMs, expected, 1e-3);
	});
	it("of a trace that ends above a tenth of its peak is a lower bound, and that is said", () => {
		const cut = classicalPulse("half_sine", 50, 11, 10_000).subarray(0, 70);
		expect(notesOf([cut])).toContain("shock.cut-off");
		expect(ask([cut]).validity.within).toBe(false);
		expect(notesOf([classicalPulse("half_sine", 50, 11, 10_000)])).toEqual([]);
	});
});

describe("peak", () => {
	// Worst half-sine loss with N samples in the pulse: 1 − cos(π/2N), the peak halfway between two samples.
	it.each([
		[5, 0.048943484],
		[11, 0.010178559],
		[20, 0.003082666],
		[50, 0.00049344],
	])(
		"V04: of a half sine of %d samples loses what the closed form says by sample, and far less by parabola",
		(count, loss) => {
			const shift = count % 2 === 0 ? 0.5 : 0;
			const samples = Float64Array.from({ length: count + 3 }, (_, index) => {
				const at = index - 1 + shift;
				return at > 0 && at < count ? 100 * Math.sin((Math.PI * at) / count) : 0;
			});
			near(1 - of([samples], { peak: "sample" }).peakGn / 100, loss, 1e-9);
			near(1 - of([samples]).peakGn / 100, 0, loss / 8);
		},
	);
	it("at an edge is the sample: a parabola would overshoot", () => {
		near(of([classicalPulse("terminal_peak_sawtooth", 50, 11, 10_000)]).peakGn, 50, 1e-12);
		near(of([within(classicalPulse("rectangular", 50, 11, 10_000), 20, 20)]).peakGn, 50, 1e-12);
	});
	it("is valid with five samples in the pulse: 11 ms from 455 samples a second, 2 ms from 2500, never at 100", () => {
		const valid = (durationMs: number, sampleRateHz: number) =>
			of([within(classicalPulse("half_sine", 60, durationMs, sampleRateHz), 3, 3)], {
				sampleRateHz,
				frequenciesHz: [10],
			}).peakValid;
		expect(valid(11, 1000)).toBe(true);
		expect(valid(11, 546)).toBe(true);
		expect(valid(11, 300)).toBe(false);
		expect(valid(2, 3000)).toBe(true);
		expect(valid(2, 1500)).toBe(false);
		// Of a pulse of 11 ms a logger at 100 Hz sees one sample, or two.
		const seen = (...samples: number[]) => of([Float64Array.from(samples)], { sampleRateHz: 100, frequenciesHz: [10] });
		expect(seen(0, 0, 57, 0, 0).peakValid).toBe(false);
		expect(seen(0, 0, 14, 22, 0, 0).peakValid).toBe(false);
	});
	it("is a lower bound where the trace stands at full scale for two samples", () => {
		const clipped = classicalPulse("half_sine", 60, 11, 10_000).map((sample) => Math.min(50, sample));
		expect(of([clipped], { fullScaleGn: 50 })).toMatchObject({ clipped: true, peakValid: false, peakGn: 50 });
		expect(notesOf([clipped], { fullScaleGn: 50 })).toEqual(["shock.clipped"]);
		expect(of([clipped], { fullScaleGn: 100 })).toMatchObject({ clipped: false, peakValid: true });
		expect(of([clipped])).toMatchObject({ clipped: null });
		expect(cautionsOf([clipped])).toContain("shock.no-full-scale");
		const touching = classicalPulse("half_sine", 50, 11, 10_000);
		expect(of([touching], { fullScaleGn: 50 })).toMatchObject({ clipped: false });
	});
});

describe("two shocks in a trace", () => {
	const first = classicalPulse("half_sine", 50, 11, 10_000);
	const rebound = classicalPulse("half_sine", 20, 11, 10_000);
	const both = Float64Array.of(...within(first, 100, 800), ...within(rebound, 0, 300));
	it("the drop is that of the greater, and the other is told of", () => {
		near(of([both]).velocityChangeMPerS, 3.4337, 1e-3);
		expect(cautionsOf([both])).toContain("shock.velocity-apart");
	});
	it("the spectrum's shock ends with the last of them", () => {
		const alone = of([within(first, 100, 0)], { frequenciesHz: [45] }).spectrum[0];
		const point = of([both], { frequenciesHz: [45] }).spectrum[0];
		// What swings on after the first shock is primary here, since the second one is still to come.
		expect(point?.primaryGn).toBeGreaterThanOrEqual((alone?.residualGn ?? 0) - 1e-6);
	});
});

describe("axes and resultant", () => {
	const pulse = within(classicalPulse("half_sine", 50, 11, 10_000), 100, 100);
	const late = within(classicalPulse("half_sine", 50, 11, 10_000), 180, 20);
	const silent = new Float64Array(pulse.length);
	it("are of simultaneous samples: two peaks of 50 at different times make no 70.7", () => {
		const result = of([pulse, late, silent]);
		near(result.axes?.[0]?.peakGn, 50, 1e-2);
		near(result.axes?.[1]?.peakGn, 50, 1e-2);
		expect(result.peakGn).toBeLessThan(60);
		expect(result.peakGn).toBeGreaterThan(50 - 1e-9);
	});
	it("at the same time add as vectors, also their velocities", () => {
		const result = of([pulse.map((v) => 0.6 * v), pulse.map((v) => -0.8 * v), silent]);
		near(result.peakGn, 50, 1e-2);
		near(result.velocityChangeMPerS, 3.4335, 1e-3);
		near(result.axes?.[1]?.velocityChangeMPerS, 0.8 * 3.4335, 1e-3);
		expect(result.axes?.[2]).toMatchObject({ peakGn: 0, durationMs: 0, velocityChangeMPerS: 0 });
	});
	it("one axis stands alone, and what it cannot show is said", () => {
		expect(of([pulse]).axes).toBeNull();
		expect(cautionsOf([pulse])).toContain("shock.single-axis");
	});
});

describe("free fall before the impact (h = g·t²/2; REC-3: 0.394 s is 761.2 mm)", () => {
	const rate = 2000;
	const fall = (restGn: number, restS = 0.1) => {
		const rest = new Float64Array(restS * rate).fill(restGn);
		const falling = new Float64Array(Math.round(0.394 * rate)).fill(0.02);
		return Float64Array.of(
			...rest,
			...falling,
			...classicalPulse("half_sine", 60, 12, rate),
			...new Float64Array(100).fill(1),
		);
	};
	const threeAxes = (z: Float64Array): Axes => [new Float64Array(z.length), new Float64Array(z.length), z];
	const options = { sampleRateHz: rate, frequenciesHz: [50] };
	it("is timed where rest at 1 gₙ was seen before it, to a sample at each end", () => {
		const result = of(threeAxes(fall(1)), options);
		near(result.freeFallTimeS, 0.394, 2 / rate);
		near(result.freeFallDropHeightM, 0.7612, 0.005);
	});
	it("is not claimed of a recorder that does not feel gravity, nor where the trace begins in the fall, nor of one axis", () => {
		expect(of(threeAxes(fall(0)), options).freeFallTimeS).toBeNull();
		expect(of(threeAxes(fall(1, 0)), options).freeFallTimeS).toBeNull();
		expect(of([fall(1)], options).freeFallTimeS).toBeNull();
		expect(
			of(threeAxes(within(classicalPulse("half_sine", 60, 12, rate), 200, 50, 1)), options).freeFallTimeS,
		).toBeNull();
	});
});

describe("not assessed, or outside the range", () => {
	it("silence", () => {
		expect(ask([new Float64Array(100)])).toMatchObject({ status: "not-assessed", reason: { code: "no-shock" } });
	});
	it("a filter that the samples cannot carry", () => {
		const pulse = classicalPulse("half_sine", 50, 11, 1000);
		expect(ask([pulse], { sampleRateHz: 1000, filterClass: 600 })).toMatchObject({
			status: "not-assessed",
			reason: { code: "filter-beyond-sampling" },
		});
	});
	it("frequencies with fewer than 10 samples a period are given, and flagged", () => {
		const pulse = classicalPulse("half_sine", 50, 11, 10_000);
		expect(notesOf([pulse], { frequenciesHz: [1000] })).toEqual([]);
		expect(notesOf([pulse], { frequenciesHz: [1000, 1001] })).toEqual(["shock.coarse"]);
	});
});

describe("the class of the filter", () => {
	it("lowers a short peak by what it leaves of it: 70.2 % of 5 ms at class 60 (1e-3: the trace is at 10 kHz)", () => {
		const pulse = within(classicalPulse("half_sine", 100, 5, 10_000), 400, 600);
		near(of([pulse], { filterClass: 60 }).peakGn, 70.25, 0.1);
		expect(cautionsOf([pulse], { filterClass: 60 })).toContain("shock.same-class");
	});
});
