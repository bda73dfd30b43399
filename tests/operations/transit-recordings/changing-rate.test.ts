/**
 * A recorder that logs slowly and samples fast around an impact. The figures of a half sine follow from closed forms, 2AT/π and
 * g·t²/2; that 100 samples a second give no valid peak of a hard impact stands on the reference page on transit hazards, section 6.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { RecordingReading } from "../../../src/contract/transit-recordings.ts";
import { ImportRefusal } from "../../../src/importers/import-result.ts";
import { readRecording } from "../../../src/operations/transit-recordings/read-recording.ts";
import { accelerationGn, type InventedTrip, READING } from "./invented-trip.ts";

const HEADER = "t,x,y,z,temp,rh";
const row = (time: number, z: number) => `${time.toFixed(5)},0,0,${z.toFixed(4)},21,`;
const tableOf = (rows: readonly string[]) => `${[HEADER, ...rows].join("\n")}\n`;
const read = (text: string, size = 65_536, reading: object = {}) => {
	const bytes = new TextEncoder().encode(text);
	function* pieces() {
		for (let at = 0; at < bytes.length; at += size) yield bytes.subarray(at, at + size);
	}
	return readRecording(pieces(), ",", { ...READING, ...reading } as unknown as RecordingReading);
};
const slow = (fromS: number, count: number, stepS = 1, z = 1) =>
	Array.from({ length: count }, (_, index) => row(fromS + index * stepS, z));
/** A burst from a time on, of a trip whose own time begins there. */
const burst = (fromS: number, trip: InventedTrip) =>
	Array.from({ length: Math.round(trip.rateHz * trip.lengthS) }, (_, index) =>
		row(fromS + index / trip.rateHz, accelerationGn(trip, index)),
	);
const DROP = { rateHz: 2000, lengthS: 1.5, impacts: [{ atS: 0.7, peakGn: 60, durationMs: 12, fallS: 0.394 }] };

describe("a slow log with bursts", () => {
	const rows = [
		...slow(0, 100),
		...burst(100.3, DROP),
		// Two rows of a rate that is known are enough.
		...slow(102.3, 2),
		...burst(103.6, DROP),
		...slow(105.6, 30),
		row(135.6, 20),
		...slow(136.6, 20),
		// The recorder was off for an hour.
		...slow(3800, 50),
	];
	const found = read(tableOf(rows));
	it("has the rate of each stretch, and only the hour is a gap", () => {
		expect(found.trip).toMatchObject({ rows: rows.length, gaps: 1, eventsFound: 3 });
		expect(found.trip.rates).toEqual([
			{ sampleRateHz: expect.closeTo(1, 6), rows: 203 },
			{ sampleRateHz: expect.closeTo(2000, 3), rows: 6000 },
		]);
	});
	it("gives an impact in a burst its figures, and one in the slow log no valid peak", () => {
		const [first, second, third] = found.events.map(({ facts }) => facts);
		for (const [facts, atS] of [
			[first, 101.006],
			[second, 104.306],
		] as const) {
			expect(facts).toMatchObject({ peakDoubt: null, sampleRateHz: expect.closeTo(2000, 3) });
			expect(facts?.timeS).toBeCloseTo(atS, 3);
			expect(facts?.peakGn).toBeCloseTo(60, 1);
			// 2AT/π = 4.495 m/s (reference page, section 6); the trapezium rule at 24 samples is 0.15 % low.
			expect(facts?.velocityChangeMPerS).toBeCloseTo(4.495, 1);
			const [low = 0, high = 0] = facts?.freeFallDropBandM ?? [];
			expect(low < 0.761 && high > 0.761).toBe(true);
		}
		expect(third).toMatchObject({ peakDoubt: "few-samples", sampleRateHz: expect.closeTo(1, 6) });
		expect(third?.timeS).toBeCloseTo(135.6, 6);
		expect(found.events.map(({ trace }) => Math.round(trace.sampleRateHz))).toEqual([2000, 2000, 1]);
	});
	it("a swell of many slow samples is no valid peak either", () => {
		const swell = [6, 8, 9, 10, 9, 8, 6].map((z, index) => row(50 + index, z));
		const { events } = read(tableOf([...slow(0, 50), ...swell, ...slow(57, 50), ...burst(107.3, DROP)]));
		expect(events.map(({ facts }) => facts.peakDoubt)).toEqual(["slow-sampling", null]);
		// 100 samples a second: too few for a hard impact, as the page says, though eight lie in this pulse.
		const alone = [8, 14, 18, 20, 20, 18, 14, 8].map((z, index) => row(1 + index / 100, z));
		const hundred = read(tableOf([...slow(0, 100, 0.01), ...alone, ...slow(1.08, 100, 0.01)]));
		expect(hundred.events[0]?.facts.peakDoubt).toBe("slow-sampling");
	});
	it("at its full scale, a pulse between slow samples is still a pulse between samples", () => {
		const full = { fullScaleGn: 16 };
		const two = [row(50, 16), row(51, 16)];
		const few = read(tableOf([...slow(0, 50), ...two, ...slow(52, 50), ...burst(102.3, DROP)]), 65_536, full);
		expect(few.events[0]?.facts).toMatchObject({ peakDoubt: "few-samples", clipped: true });
		const many = Array.from({ length: 12 }, (_, index) => row(50 + index, 16));
		const swell = read(tableOf([...slow(0, 50), ...many, ...slow(62, 50), ...burst(112.3, DROP)]), 65_536, full);
		expect(swell.events[0]?.facts).toMatchObject({ peakDoubt: "slow-sampling", clipped: true });
	});
	it("counts each gap once, wherever a block of rows ends", () => {
		for (let first = 3836; first <= 3842; first += 1) {
			const rows = Array.from({ length: 5000 }, (_, index) =>
				row(index + (index >= first ? 500 : 0) + (index > first ? 500 : 0), 1),
			);
			expect(read(tableOf(rows)).trip.gaps, String(first)).toBe(2);
		}
	});
	it("an impact that a stretch begins or ends in the middle of is a lower bound", () => {
		const cut = { rateHz: 2000, lengthS: 0.5, impacts: [{ atS: -0.006, peakGn: 60, durationMs: 12 }] };
		const { events } = read(tableOf([...slow(0, 50), ...burst(49.5, cut), ...slow(50.5, 50)]));
		expect(events[0]?.facts.peakDoubt).toBe("cut-trace");
	});
	it("keeps least and greatest over time, at every level", () => {
		const ends = (level: number) => {
			const { time, acceleration } = found.trip.series;
			const times = time[level]?.ends ?? new Float64Array(0);
			return Array.from({ length: times.length / 2 }, (_, index) => ({
				from: times[2 * index] as number,
				to: times[2 * index + 1] as number,
				least: acceleration[level]?.ends[2 * index] as number,
				greatest: acceleration[level]?.ends[2 * index + 1] as number,
			}));
		};
		const samples = rows.map((line) => line.split(",").map(Number)).map(([time = 0, , , z = 0]) => ({ time, z }));
		found.trip.series.acceleration.forEach((_, level) => {
			for (const { from, to, least, greatest } of ends(level)) {
				const inside = samples.filter(({ time }) => time >= from && time <= to).map(({ z }) => Math.abs(z));
				expect([Math.min(...inside), Math.max(...inside)]).toEqual([least, greatest]);
			}
		});
		// A stretch of the finest level lies in one stretch of a rate.
		for (const { from, to } of ends(0)) expect(to - from < 0.01 || from < 100 || from > 102).toBe(true);
	});
	it("says the same however its bytes come in pieces", () => {
		for (const size of [997, 4096]) expect(read(tableOf(rows), size)).toEqual(found);
	});
	it("takes a clock of whole milliseconds, 3200 samples in a second of the burst", () => {
		const coarse = Array.from({ length: 3200 }, (_, index) =>
			row(60.5 + Math.floor(index / 3.2) / 1000, index > 1600 && index < 1640 ? 30 : 1),
		);
		const { trip, events } = read(tableOf([...slow(0, 60), ...coarse, ...slow(62.4, 60)]));
		expect(trip.rates).toEqual([
			{ sampleRateHz: expect.closeTo(1, 6), rows: 120 },
			{ sampleRateHz: expect.closeTo(3200, -1), rows: 3200 },
		]);
		expect(trip.gaps).toBe(0);
		expect(events.map(({ facts }) => facts.peakDoubt)).toEqual([null]);
	});
	it("reads on over samples that were lost, as gaps of the one rate", () => {
		const lost = slow(0, 400, 0.001).filter((_, index) => ![50, 51, 53, 54, 200, 201, 202, 390, 391].includes(index));
		expect(read(tableOf(lost)).trip).toMatchObject({ gaps: 4, rates: [{ rows: 391 }] });
	});
});

it("any changed step gives a reading or a refusal with its line, never another error, and no valid peak of a slow stretch", () => {
	const steps = fc.array(
		fc.record({ stepS: fc.constantFrom(1, 0.5, 0.001, 0.0005, 0.3), count: fc.integer({ min: 1, max: 40 }) }),
		{ minLength: 1, maxLength: 12 },
	);
	fc.assert(
		fc.property(steps, (stretches) => {
			let time = 0;
			const rows = [row(0, 1)];
			for (const { stepS, count } of stretches)
				for (let index = 0; index < count; index += 1) {
					time += stepS;
					rows.push(row(time, index % 9 === 4 ? 30 : 1));
				}
			try {
				const { trip, events } = read(tableOf(rows));
				expect(trip.rates.reduce((sum, rate) => sum + rate.rows, 0)).toBe(rows.length);
				for (const { facts } of events) expect(facts.timeS).toBeGreaterThanOrEqual(0);
				for (const { facts } of events.filter(({ facts }) => facts.sampleRateHz < 100))
					expect(facts.peakDoubt).not.toBeNull();
			} catch (error) {
				if (!(error instanceof ImportRefusal)) throw error;
				expect(error.line).toBeGreaterThan(1);
			}
		}),
		{ numRuns: 200 },
	);
});
