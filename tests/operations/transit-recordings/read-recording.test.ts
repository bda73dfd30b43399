/**
 * A recorder's table to impacts and pyramids. The figures of a half sine follow from closed forms: area 2AT/π, and the height of a
 * fall from its time, g·t²/2 (the reference page gives 0.394 s → 761 mm). Numbers are held against JavaScript's own `Number`.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { RecordingReading } from "../../../src/contract/transit-recordings.ts";
import { ImportRefusal } from "../../../src/importers/import-result.ts";
import { numberAt } from "../../../src/importers/recorder/number-at.ts";
import { epochOf } from "../../../src/importers/recorder/time-at.ts";
import { readRecording } from "../../../src/operations/transit-recordings/read-recording.ts";
import { inventedTable, READING } from "./invented-trip.ts";

const bytesOf = (text: string) => new TextEncoder().encode(text);
function* pieces(bytes: Uint8Array, size: number) {
	for (let at = 0; at < bytes.length; at += size) yield bytes.subarray(at, at + size);
}
const read = (text: string, reading: object = READING, size = 65_536) =>
	readRecording(pieces(bytesOf(text), size), ",", reading as RecordingReading);
const refusal = (act: () => unknown) => {
	try {
		act();
	} catch (error) {
		if (error instanceof ImportRefusal) return { code: error.code, line: error.line };
		throw error;
	}
	return null;
};

describe("a trip", () => {
	const impacts = [
		{ atS: 2, peakGn: 60, durationMs: 12, fallS: 0.394 },
		{ atS: 5, peakGn: 30, durationMs: 11 },
	];
	const table = inventedTable({ rateHz: 2000, lengthS: 8, impacts });
	const { trip, events, cutLine } = read(table);

	it("gives each impact its peak, duration and velocity change", () => {
		expect(trip).toMatchObject({ rows: 16_000, gaps: 0, eventsFound: 2 });
		expect(trip.rates).toEqual([{ sampleRateHz: expect.closeTo(2000, 6), rows: 16_000 }]);
		expect(cutLine).toBeNull();
		expect(events.map(({ facts }) => facts.timeS)).toEqual([expect.closeTo(2.006, 3), expect.closeTo(5.0055, 3)]);
		const [first, second] = events.map(({ facts }) => facts);
		// The parabola through three samples of 24 in a half sine leaves less than 0.1 %.
		expect(first?.peakGn).toBeCloseTo(60, 1);
		expect(first?.peakDoubt).toBeNull();
		expect(first?.clipped).toBe(false);
		// 2AT/π = 4.495 m/s (reference page, section 6); the trapezium rule at 24 samples is 0.15 % low.
		expect(first?.velocityChangeMPerS).toBeCloseTo(4.495, 1);
		expect(first?.equivalentDropHeightM.restitution0).toBeCloseTo(1.03, 1);
		// Rest before the second: its baseline is 1 g, which is taken off.
		expect(second?.freeFallTimeS).toBeNull();
		expect(second?.peakGn).toBeCloseTo(29, 1);
	});

	it("times the fall before an impact: 0.394 s are 761 mm", () => {
		const [low = 0, high = 0] = events[0]?.facts.freeFallDropBandM ?? [];
		expect(low).toBeLessThan(0.761);
		expect(high).toBeGreaterThan(0.761);
		expect(high - low).toBeLessThan(0.01);
	});

	it("says the same however the bytes come in pieces, and in UTF-16", () => {
		for (const size of [7, 1000, 4096]) expect(read(table, READING, size)).toEqual({ trip, events, cutLine });
		const wide = Buffer.from(`\ufeff${table}`, "utf16le");
		expect(readRecording(pieces(wide, 4097), ",", READING as unknown as RecordingReading).trip).toEqual(trip);
	});

	it("keeps the greatest and least of every stretch", () => {
		const level = trip.series.acceleration.at(-1);
		expect(Math.max(...(level?.ends ?? []))).toBeCloseTo(60, 0);
		expect(Math.min(...(level?.ends ?? []))).toBe(0);
		const temperature = trip.series.temperature?.at(-1)?.ends ?? [];
		expect(Math.max(...temperature)).toBeLessThanOrEqual(25);
		expect(Math.max(...temperature)).toBeGreaterThan(22);
	});
});

describe("what is doubtful of a peak", () => {
	const trip = { rateHz: 100, lengthS: 10, impacts: [{ atS: 5, peakGn: 60, durationMs: 12 }] };
	it("too few samples in the pulse: 100 Hz cannot see 12 ms", () => {
		const slow = read(inventedTable({ ...trip, impacts: [{ atS: 4.995, peakGn: 60, durationMs: 12 }] }));
		expect(slow.events[0]?.facts.peakDoubt).toBe("few-samples");
	});
	const fast = inventedTable({ ...trip, rateHz: 2000 });
	it.each([
		["clipped", { fullScaleGn: 40 }, fast.replaceAll(/,(4\d|5\d|60)\.\d{4},/g, ",40.0000,")],
		["phone", { device: "phone" }, fast],
		["one-axis", { mapping: { ...READING.mapping, axes: [{ column: 4, unit: "Gn" }] } }, fast],
	])("%s", (doubt, change, table) => {
		expect(read(table, { ...READING, ...change }).events[0]?.facts.peakDoubt).toBe(doubt);
	});
	it("a missing sample in the pulse cuts the trace", () => {
		const lines = fast.split("\n");
		// Line of the sample two after the peak, at 5.006 s.
		const at = lines.findIndex((line) => line.startsWith("5.00800,"));
		lines[at] = "5.00800,0,0,,,";
		expect(read(lines.join("\n")).events[0]?.facts.peakDoubt).not.toBeNull();
	});
});

describe("gaps and other rates", () => {
	const row = (time: number, z = 1) => `${time.toFixed(4)},0,0,${z},,`;
	const header = "t,x,y,z,temp,rh";
	const run = (from: number, step: number, count: number) =>
		Array.from({ length: count }, (_, index) => row(from + index * step));
	it("a jump in time is a gap, and ends what was open", () => {
		const rows = [...run(0, 0.001, 1000), row(1, 20), ...run(60, 0.001, 1000), row(61, 20), ...run(61.001, 0.001, 500)];
		const { trip, events } = read(`${[header, ...rows].join("\n")}\n`);
		expect(trip).toMatchObject({ gaps: 1, eventsFound: 2, rows: 2502 });
		expect(events.map(({ facts }) => facts.timeS)).toEqual([expect.closeTo(1, 6), expect.closeTo(61, 6)]);
	});
	it("a clock of whole milliseconds at 3200 samples a second has the rate of its mean", () => {
		const rows = Array.from({ length: 9600 }, (_, index) => row(Math.floor(index / 3.2) / 1000));
		expect(read(`${[header, ...rows].join("\n")}\n`).trip.rates[0]?.sampleRateHz).toBeCloseTo(3200, -1);
	});
	it("at 800 samples a second such a clock shows one step in four twice as long, which is no gap", () => {
		const rows = Array.from({ length: 4000 }, (_, index) => row(Math.floor(index * 1.25) / 1000));
		const { trip } = read(`${[header, ...rows].join("\n")}\n`);
		expect(trip).toMatchObject({ gaps: 0, rates: [{ sampleRateHz: expect.closeTo(800, 0) }] });
	});
	it("refuses a rate that is not certain, time that goes back, and times that are all the same, with the line", () => {
		const table = (rows: string[]) => `${[header, ...rows].join("\n")}\n`;
		const uneven = [50.1, 50.13, 50.2, 50.21, 50.33, 50.34, 50.5, 51.1, 51.13].map((time) => row(time));
		expect(refusal(() => read(table([...run(0, 1, 50), ...uneven])))).toEqual({
			code: "recorder-rate-changes",
			line: 53,
		});
		expect(refusal(() => read(table([...run(0, 1, 50), row(3)])))).toEqual({ code: "recorder-time-back", line: 52 });
		expect(refusal(() => read(table(run(0, 0, 50))))).toMatchObject({ code: "recorder-time-coarse" });
	});
});

describe("rows that are not as they must be", () => {
	const rows = (...lines: string[]) => `${["t,x,y,z,temp,rh", "0,0,0,1,,", ...lines].join("\n")}\n`;
	it.each([
		["a word", rows("0.1,0,0,one,,"), "recorder-not-a-number", 3],
		["hexadecimal", rows("0.1,0,0,0x10,,"), "recorder-not-a-number", 3],
		["a field too few", rows("0.1,0,0,1,"), "recorder-fields", 3],
		["an open quote", rows('0.1,0,0,"1,,'), "csv-row", 3],
		["no time", rows(",0,0,1,,"), "recorder-time-missing", 3],
		["no rows", "t,x,y,z,temp,rh\n", "no-rows", 1],
		["few columns", "t,x\n0,1\n", "recorder-columns", 1],
	])("%s", (_, table, code, line) => {
		expect(refusal(() => read(table))).toEqual({ code, line });
	});
	it("leaves out a last line that may be cut", () => {
		expect(read(rows("0.1,0,0,1,,", "0.2,0,0,1,,").slice(0, -4))).toMatchObject({ cutLine: 4, trip: { rows: 2 } });
	});
	it("any changed byte gives a reading or a refusal, never another error", () => {
		const whole = bytesOf(inventedTable({ rateHz: 500, lengthS: 0.4, impacts: [] }));
		fc.assert(
			fc.property(fc.nat(whole.length - 1), fc.nat(255), fc.nat(whole.length), (at, byte, length) => {
				const changed = whole.slice(0, length);
				if (at < length) changed[at] = byte;
				refusal(() => readRecording(pieces(changed, 64), ",", READING as unknown as RecordingReading));
			}),
			{ numRuns: 2000 },
		);
	});
});

describe("numbers and times", () => {
	const number = (text: string, comma = false) => numberAt(bytesOf(text), 0, text.length, comma);
	it("are those that Number gives, bit by bit", () => {
		fc.assert(
			fc.property(
				fc.oneof(
					fc.double({ noNaN: true, noDefaultInfinity: true }),
					fc.float({ noNaN: true, noDefaultInfinity: true }),
				),
				(value) => {
					expect(number(String(value))).toBe(Number(String(value)));
					const fixed = value.toFixed(5);
					if (!fixed.includes("e")) expect(number(fixed)).toBe(Number(fixed));
				},
			),
		);
		expect(number(" 1,5 ", true)).toBe(1.5);
		expect(number('"-0.25"')).toBe(-0.25);
		expect(number("")).toBeNaN();
		expect(number("nan")).toBeNaN();
		for (const text of ["-", ".", "1.2.3", "1,5", "--1", "1e", "Infinity", "1e999", "0x1", "1_0"])
			expect(number(text), text).toBeNull();
	});
	it("of the calendar are as RFC 3339 writes them; without a zone only where one was named", () => {
		expect(epochOf("2026-03-03T08:00:00.250Z", undefined)).toBe(1772524800.25);
		expect(epochOf("2026-03-03 09:00:00,25+01:00", undefined)).toBe(1772524800.25);
		expect(epochOf("2026-03-03 09:00:00.25", 60)).toBe(1772524800.25);
		expect(epochOf("2026-03-03 09:00:00", undefined)).toBe("no-zone");
		for (const text of ["2026-02-30 00:00:00Z", "2026-03-03T24:30:00Z", "03.03.2026 08:00"])
			expect(epochOf(text, 0), text).toBeNull();
	});
});
