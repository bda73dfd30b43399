/**
 * A recording of a whole trip, in pieces: its impacts, its pyramids, and what lies between. What is kept does not grow with the
 * trip: the greatest impacts with their traces, and levels of pyramids up to a size.
 *
 * Samples follow each other in stretches of one rate. Where the time jumps on, the recorder was not recording; where it goes on
 * at another rate that is certain, the recorder logs slowly and fast around an impact. Either ends a stretch, and an impact that
 * is open. A time that goes back, or a rate that is not certain, is told and ends the reading: nothing is guessed.
 */
import type { Axes } from "../trace/oscillator-responses.ts";
import { type ImpactDetector, type ImpactEvent, impactDetector } from "./impact-detector.ts";
import { fits, longestS, meanStepS, newRate, rateFrom, type SamplingRate, sameRate } from "./sampling-rates.ts";
import { samplingStep } from "./sampling-step.ts";
import { FINEST_STRETCH, type SeriesLevel, seriesLevels } from "./series-levels.ts";
import { LOOK_AHEAD, steadyStep } from "./steady-step.ts";
import { joinedRows, slicedRows, type TripRows } from "./trip-rows.ts";

export interface TripOptions {
	readonly axisCount: 1 | 3;
	readonly thresholdGn: number;
}

export interface TripEvent extends ImpactEvent {
	readonly timeS: number;
	/** Of the stretch that it lies in. */
	readonly sampleRateHz: number;
}

export interface TripSeries {
	readonly time: readonly SeriesLevel[];
	readonly acceleration: readonly SeriesLevel[];
	readonly temperature: readonly SeriesLevel[] | null;
	readonly humidity: readonly SeriesLevel[] | null;
}

export interface Trip {
	readonly rows: number;
	/** Slowest first. */
	readonly rates: readonly TripRate[];
	readonly startsS: number;
	readonly endsS: number;
	/** Stretches of time without samples, between samples. */
	readonly gaps: number;
	/** All that reached the threshold; of those, the greatest are kept. */
	readonly eventsFound: number;
	/** In order of time. */
	readonly events: readonly TripEvent[];
	readonly series: TripSeries;
}

export interface TripRate {
	readonly sampleRateHz: number;
	readonly rows: number;
}

/** What ends the reading: the line, and values that fill the words. */
export interface TripProblem {
	readonly code: "time-missing" | "time-back" | "time-coarse" | "rate-changes";
	readonly line: number;
	readonly values: Readonly<Record<string, number>>;
}

export interface TripReader {
	/** The next rows; null where they are as they must be. */
	take(rows: TripRows): TripProblem | null;
	/** The recording is over; a problem where its last rows are not as they must be. Call after at least one piece. */
	end(): { readonly trip: Trip } | { readonly problem: TripProblem };
}

/** Impacts that are kept with their traces: the greatest. Our choice. */
const MOST_EVENTS = 50;
/** Before a trigger: the time of a fall from 1.2 m with rest before it, 0.49 s and 0.1 s; and most samples. Our choice. */
const PRETRIGGER_S = 0.6;
const MOST_PRETRIGGER = 4096;
const MOST_TRACE = 8192;
/** An impact is over when nothing reached the threshold for this time: bounces follow later. Our choice. */
const QUIET_S = 0.05;
const LEAST_QUIET = 3;

/** A recorder has a slow and a fast rate, or a few. Our choice. */
const MOST_RATES = 8;
/** Rows after which a stretch whose mean step is not the rate's is told. Our choice. */
const TOLD_AFTER = 64;

interface FoundEvent extends Omit<TripEvent, "sampleRateHz"> {
	readonly rate: SamplingRate;
}

export function tripReader({ axisCount, thresholdGn }: TripOptions): TripReader {
	const detectors = new Map<SamplingRate, ImpactDetector>();
	let current: SamplingRate | null = null;
	/** Rows whose rate is decided by what follows. */
	let held: TripRows | null = null;
	let [rows, startsS, lastS, gaps, eventsFound] = [0, Number.NaN, Number.NaN, 0, 0];
	/** Rows before the stretch that is open, and a row of it whose time is known. */
	let [stretchBegin, knownIndex, knownS] = [0, 0, 0];
	const events: FoundEvent[] = [];
	const series = {
		time: seriesLevels(),
		acceleration: seriesLevels(),
		temperature: seriesLevels(),
		humidity: seriesLevels(),
	};
	let [hasTemperature, hasHumidity] = [false, false];
	let filled = 0;

	function found(rate: SamplingRate, event: ImpactEvent): void {
		const [firstIndex, lastIndex, peakIndex] = [event.firstIndex, event.lastIndex, event.peakIndex].map(
			(index) => index + stretchBegin,
		) as [number, number, number];
		eventsFound += 1;
		const timeS = knownS + (peakIndex - knownIndex) * meanStepS(rate);
		events.push({ ...event, firstIndex, lastIndex, peakIndex, timeS, rate });
		if (events.length <= MOST_EVENTS) return;
		const least = events.reduce((at, one, index) => (one.peakGn < (events[at]?.peakGn ?? 0) ? index : at), 0);
		events.splice(least, 1);
	}

	function detectorOf(rate: SamplingRate): ImpactDetector {
		const there = detectors.get(rate);
		if (there !== undefined) return there;
		const pretriggerSamples = Math.min(MOST_PRETRIGGER, Math.round(PRETRIGGER_S / rate.stepS));
		const quietSamples = Math.max(LEAST_QUIET, Math.round(QUIET_S / rate.stepS));
		const options = { thresholdGn, quietSamples, pretriggerSamples, mostSamples: MOST_TRACE };
		const detector = impactDetector(axisCount, options, (event) => found(rate, event));
		detectors.set(rate, detector);
		return detector;
	}

	/** Rows of one stretch. */
	function takeRun(rate: SamplingRate, piece: TripRows, from: number, to: number): TripProblem | null {
		if (to === from) return null;
		const [first, last] = [piece.timesS[from] as number, piece.timesS[to - 1] as number];
		const steps = to - from - 1;
		const meanS = (last - first) / steps;
		if (steps >= TOLD_AFTER && !sameRate(meanS, meanStepS(rate)))
			return problemAt("rate-changes", piece, from, { beforeS: meanStepS(rate), afterS: meanS });
		// A row of the same stretch stands before, in another piece.
		const goesOn = rows > stretchBegin;
		rate.steps += steps + (goesOn ? 1 : 0);
		rate.sumS += last - (goesOn ? lastS : first);
		rate.rows += to - from;
		[knownIndex, knownS] = [rows, first];
		const axes = piece.axes.map((samples) => samples.subarray(from, to));
		detectorOf(rate).take(axes);
		series.time.take(piece.timesS.subarray(from, to));
		series.acceleration.take(resultants(axes as unknown as Axes));
		series.temperature.take(piece.temperaturesDegC?.subarray(from, to) ?? new Float64Array(0));
		series.humidity.take(piece.humiditiesPercent?.subarray(from, to) ?? new Float64Array(0));
		hasTemperature ||= piece.temperaturesDegC !== null;
		hasHumidity ||= piece.humiditiesPercent !== null;
		filled = (filled + to - from) % FINEST_STRETCH;
		lastS = last;
		rows += to - from;
		return null;
	}

	/** Fills the finest stretch up, so that none reaches over the end of a stretch. */
	function fillStretch(): void {
		if (filled === 0) return;
		const nothing = new Float64Array(FINEST_STRETCH - filled).fill(Number.NaN);
		series.time.take(nothing);
		series.acceleration.take(nothing);
		if (hasTemperature) series.temperature.take(nothing);
		if (hasHumidity) series.humidity.take(nothing);
		filled = 0;
	}

	/** @param over nothing follows these rows */
	function read(piece: TripRows, over: boolean): TripProblem | null {
		const { timesS } = piece;
		const hold = (from: number) => {
			held = slicedRows(piece, from);
		};
		if (current === null) {
			if (!over && timesS.length <= LOOK_AHEAD) {
				hold(0);
				return null;
			}
			const step = steadyStep(timesS, 0) ?? samplingStep(timesS);
			if (step === null) return problemAt("time-coarse", piece, timesS.length - 1);
			current = newRate(step);
			startsS = timesS[0] as number;
			detectorOf(current);
		}
		let from = 0;
		for (let index = 0; index < timesS.length; index += 1) {
			// The first row of a stretch whose begin was told with the rows before.
			if (index === 0 && rows === stretchBegin) continue;
			const differenceS = (timesS[index] as number) - (index === 0 ? lastS : (timesS[index - 1] as number));
			if (Number.isNaN(differenceS) || fits(current, differenceS)) continue;
			if (differenceS < 0) return problemAt("time-back", piece, index, { backS: -differenceS });
			if (!over && timesS.length - index <= LOOK_AHEAD) {
				const begin = Math.max(from, index - 1);
				hold(begin);
				return takeRun(current, piece, from, begin);
			}
			const next = rateFrom(timesS, index, differenceS, current, [...detectors.keys()]);
			if (next === null || (detectors.size === MOST_RATES && !detectors.has(next)))
				return problemAt("rate-changes", piece, index, { beforeS: meanStepS(current), afterS: differenceS });
			// The row before is the first of a faster stretch where the step from it is one of that stretch.
			const begin = next.stepS < current.stepS && index > from && fits(next, differenceS) ? index - 1 : index;
			const problem = takeRun(current, piece, from, begin);
			if (problem !== null) return problem;
			from = begin;
			if (differenceS > Math.max(longestS(current), longestS(next))) gaps += 1;
			detectorOf(current).end();
			fillStretch();
			stretchBegin = rows;
			current = next;
		}
		return takeRun(current, piece, from, timesS.length);
	}

	return {
		take(piece) {
			const missing = piece.timesS.findIndex((time) => !Number.isFinite(time));
			if (missing >= 0) return problemAt("time-missing", piece, missing);
			const all = held === null ? piece : joinedRows(held, piece);
			held = null;
			return read(all, false);
		},
		end() {
			const problem = held === null ? null : read(held, true);
			if (problem !== null) return { problem };
			if (current !== null) detectorOf(current).end();
			const temperature = series.temperature.end();
			const humidity = series.humidity.end();
			const rateHz = (rate: SamplingRate) => 1 / meanStepS(rate);
			const trip: Trip = {
				rows,
				rates: [...detectors.keys()]
					.filter((rate) => rate.rows > 0)
					.map((rate) => ({ sampleRateHz: rateHz(rate), rows: rate.rows }))
					.sort((one, other) => one.sampleRateHz - other.sampleRateHz),
				startsS,
				endsS: lastS,
				gaps,
				eventsFound,
				events: events.map(({ rate, ...event }) => ({ ...event, sampleRateHz: rateHz(rate) })),
				series: {
					time: series.time.end(),
					acceleration: series.acceleration.end(),
					temperature: hasTemperature ? temperature : null,
					humidity: hasHumidity ? humidity : null,
				},
			};
			return { trip };
		},
	};
}

function problemAt(
	code: TripProblem["code"],
	{ lines }: TripRows,
	index: number,
	values: TripProblem["values"] = {},
): TripProblem {
	return { code, line: lines[index] as number, values };
}

function resultants(axes: Axes): Float64Array {
	const [x, y, z] = axes;
	if (y === undefined || z === undefined) return x.map(Math.abs);
	return x.map((value, index) => Math.sqrt(value ** 2 + (y[index] as number) ** 2 + (z[index] as number) ** 2));
}
