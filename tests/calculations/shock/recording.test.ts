/** Recordings in pieces: the same answer however they are cut, the same as a plain search over the whole, and flat memory. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
	type DetectionOptions,
	type ImpactEvent,
	impactDetector,
} from "../../../src/calculations/shock/recording/impact-detector.ts";
import { samplePyramid } from "../../../src/calculations/shock/recording/sample-pyramid.ts";
import { shockTrace } from "../../../src/calculations/shock/trace/shock-trace.ts";
import { classicalPulse } from "./classical-pulse.ts";

/** Cuts a recording at places of one's choice, and hands the pieces on. */
function inPieces(length: number, cuts: readonly number[], take: (from: number, to: number) => void): void {
	const places = [0, ...[...cuts].map((cut) => cut % (length + 1)).sort((a, b) => a - b), length];
	for (let index = 1; index < places.length; index += 1) take(places[index - 1] ?? 0, places[index] ?? 0);
}

function detect(axes: readonly Float64Array[], options: DetectionOptions, cuts: readonly number[] = []): ImpactEvent[] {
	const events: ImpactEvent[] = [];
	const detector = impactDetector(axes.length as 1 | 3, options, (event) => events.push(event));
	inPieces(axes[0]?.length ?? 0, cuts, (from, to) => detector.take(axes.map((samples) => samples.subarray(from, to))));
	detector.end();
	return events;
}

/** The plain way: all samples at hand, groups of those over the threshold no further apart than the quiet time. */
function plainly(sizes: readonly number[], options: DetectionOptions) {
	const over = sizes.flatMap((size, index) => (size >= options.thresholdGn ? [index] : []));
	const groups: number[][] = [];
	for (const index of over) {
		const group = groups.at(-1);
		if (group !== undefined && index - (group.at(-1) ?? 0) <= options.quietSamples) group.push(index);
		else groups.push([index]);
	}
	return groups.map((group) => {
		const [first = 0, last = 0] = [group[0], group.at(-1)];
		const peak = Math.max(...sizes.slice(first, last + 1));
		return { firstIndex: first, lastIndex: last, peakIndex: sizes.indexOf(peak, first), peak };
	});
}

const sample = fc.integer({ min: -40, max: 40 });
const pieces = fc.array(fc.nat(400), { maxLength: 8 });

describe("impacts in a recording", () => {
	const options = fc.record({
		thresholdGn: fc.integer({ min: 15, max: 45 }),
		quietSamples: fc.integer({ min: 1, max: 12 }),
		pretriggerSamples: fc.integer({ min: 0, max: 10 }),
		mostSamples: fc.integer({ min: 11, max: 60 }),
	});
	const three = fc
		.array(fc.tuple(sample, sample, sample), { maxLength: 300 })
		.map((rows) => [0, 1, 2].map((axis) => Float64Array.from(rows, (row) => row[axis] ?? 0)));
	it("are those that a plain search finds, however the recording is cut", () => {
		fc.assert(
			fc.property(three, options, pieces, (axes, chosen, cuts) => {
				// Most samples are quiet.
				const quiet = axes.map((samples) => samples.map((value, index) => (index % 7 < 5 ? value / 10 : value)));
				const sizes = [...(quiet[0] ?? [])].map((_, index) =>
					Math.sqrt(quiet.reduce((sum, one) => sum + (one[index] ?? 0) ** 2, 0)),
				);
				const events = detect(quiet, chosen, cuts);
				expect(events.map(({ firstIndex, lastIndex, peakIndex }) => ({ firstIndex, lastIndex, peakIndex }))).toEqual(
					plainly(sizes, chosen).map(({ peak: _, ...places }) => places),
				);
				for (const event of events) {
					const from = event.firstIndex - event.pretriggerSamples;
					expect(event.pretriggerSamples).toBe(Math.min(event.firstIndex, chosen.pretriggerSamples));
					const length = event.axes[0].length;
					event.axes.forEach((samples, axis) => {
						expect([...samples]).toEqual([...(quiet[axis] ?? []).slice(from, from + length)]);
					});
					expect(length).toBeLessThanOrEqual(chosen.mostSamples);
					expect(event.cut).toBe(from + length <= event.lastIndex);
					expect(event.peakGn).toBeCloseTo(sizes[event.peakIndex] ?? Number.NaN, 9);
				}
			}),
			{ numRuns: 300 },
		);
	});
	it("give traces that are judged like any other: two drops an hour apart, at 1 kHz", () => {
		const rate = 1000;
		const events: ImpactEvent[] = [];
		const detector = impactDetector(
			1,
			{ thresholdGn: 5, quietSamples: 50, pretriggerSamples: 100, mostSamples: 2000 },
			(event) => events.push(event),
		);
		const quiet = new Float64Array(60 * rate);
		const hour = () => {
			for (let minute = 0; minute < 60; minute += 1) detector.take([quiet]);
		};
		hour();
		detector.take([classicalPulse("half_sine", 50, 11, rate)]);
		hour();
		detector.take([classicalPulse("half_sine", 30, 20, rate)]);
		hour();
		detector.end();
		expect(events.map(({ firstIndex }) => firstIndex)).toEqual([3_600_001, 7_200_014]);
		const [first, second] = events.map(({ axes, pretriggerSamples }) =>
			shockTrace({ sampleRateHz: rate, axes, pretriggerSamples: pretriggerSamples - 2, q: 10, frequenciesHz: [50] }),
		);
		// Closed form 2AT/π; the trapezium rule of 11 samples loses 0.7 %.
		expect(first?.result?.velocityChangeMPerS).toBeCloseTo(3.434 * 0.9932, 2);
		expect(second?.result?.velocityChangeMPerS).toBeCloseTo((2 * 30 * 9.80665 * 0.02) / Math.PI, 1);
	});
	it("take a gap in the recording for quiet, and an event that is open at the end for ended", () => {
		const samples = Float64Array.of(0, 9, Number.NaN, Number.NaN, Number.NaN, 9, 9);
		const events = detect([samples], { thresholdGn: 5, quietSamples: 3, pretriggerSamples: 0, mostSamples: 20 });
		expect(events.map(({ firstIndex, lastIndex }) => [firstIndex, lastIndex])).toEqual([
			[1, 1],
			[5, 6],
		]);
	});
});

describe("the pyramid of least and greatest samples", () => {
	const build = (samples: Float64Array, shape: readonly [number, number, number], cuts: readonly number[]) => {
		const [samplesPerStretch, fanOut, levels] = shape;
		const stretches: [number, number][][] = Array.from({ length: levels }, () => []);
		const pyramid = samplePyramid({ samplesPerStretch, fanOut, levels }, (level, least, greatest) =>
			stretches[level]?.push([least, greatest]),
		);
		inPieces(samples.length, cuts, (from, to) => pyramid.take(samples.subarray(from, to)));
		pyramid.end();
		return stretches;
	};
	it("is what each stretch of the whole gives, at every level, however the recording is cut", () => {
		const shapes = fc.tuple(
			fc.integer({ min: 1, max: 9 }),
			fc.integer({ min: 2, max: 5 }),
			fc.integer({ min: 1, max: 4 }),
		);
		const gappy = fc.oneof({ weight: 9, arbitrary: sample }, { weight: 1, arbitrary: fc.constant(Number.NaN) });
		fc.assert(
			fc.property(fc.array(gappy, { maxLength: 400 }), shapes, pieces, (values, shape, cuts) => {
				const [samplesPerStretch, fanOut] = shape;
				build(Float64Array.from(values), shape, cuts).forEach((stretches, level) => {
					const size = samplesPerStretch * fanOut ** level;
					const expected = Array.from({ length: Math.ceil(values.length / size) }, (_, index) => {
						const there = values.slice(index * size, (index + 1) * size).filter((value) => !Number.isNaN(value));
						return there.length === 0 ? [Number.NaN, Number.NaN] : [Math.min(...there), Math.max(...there)];
					});
					expect(stretches).toEqual(expected);
				});
			}),
			{ numRuns: 300 },
		);
	});
});

describe("memory", () => {
	it("stays flat over thirty million samples of three axes: events and pyramid keep no more than at a tenth of that", () => {
		const chunk = [0, 1, 2].map((axis) =>
			Float64Array.from({ length: 100_000 }, (_, index) => (index % 50_000 === 7 * axis ? 40 : Math.sin(index))),
		);
		let events = 0;
		let stretches = 0;
		const detector = impactDetector(
			3,
			{ thresholdGn: 10, quietSamples: 200, pretriggerSamples: 500, mostSamples: 4000 },
			() => {
				events += 1;
			},
		);
		const pyramids = chunk.map(() =>
			samplePyramid({ samplesPerStretch: 64, fanOut: 4, levels: 10 }, () => {
				stretches += 1;
			}),
		);
		const held = () => {
			const { arrayBuffers, heapUsed } = process.memoryUsage();
			return arrayBuffers + heapUsed;
		};
		let early = 0;
		for (let turn = 0; turn < 100; turn += 1) {
			detector.take(chunk);
			for (const [axis, pyramid] of pyramids.entries()) pyramid.take(chunk[axis] ?? new Float64Array(0));
			if (turn === 9) early = held();
		}
		expect(events).toBe(200);
		expect(stretches).toBeGreaterThan(400_000);
		// What waits to be collected comes and goes by some megabytes; the samples taken since are 216 MB.
		expect(held() - early).toBeLessThan(40e6);
	}, 60_000);
});
