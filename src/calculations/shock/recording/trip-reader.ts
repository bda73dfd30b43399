/**
 * A recording of a whole trip, in pieces: its impacts, its pyramids, and what lies between. What is kept does not grow with the
 * trip: the greatest impacts with their traces, and levels of pyramids up to a size.
 *
 * Samples follow each other at one rate. Where the time jumps on, the recorder was not recording: an impact that is open ends
 * there. A time that goes back, or another rate, is told and ends the reading: nothing is guessed.
 */
import type { Axes } from "../trace/oscillator-responses.ts";
import { type ImpactDetector, type ImpactEvent, impactDetector } from "./impact-detector.ts";
import { type SamplingStep, samplingStep } from "./sampling-step.ts";
import { FINEST_STRETCH, type SeriesLevel, seriesLevels } from "./series-levels.ts";

export interface TripOptions {
	readonly axisCount: 1 | 3;
	readonly thresholdGn: number;
}

/** Equally many samples of each; a missing one is NaN. */
export interface TripRows {
	/** Seconds, from whatever begin. */
	readonly timesS: Float64Array;
	readonly axes: readonly Float64Array[];
	readonly temperaturesDegC: Float64Array | null;
	readonly humiditiesPercent: Float64Array | null;
}

export interface TripEvent extends ImpactEvent {
	readonly timeS: number;
}

export interface TripSeries {
	readonly time: readonly SeriesLevel[];
	readonly acceleration: readonly SeriesLevel[];
	readonly temperature: readonly SeriesLevel[] | null;
	readonly humidity: readonly SeriesLevel[] | null;
}

export interface Trip {
	readonly rows: number;
	readonly sampleRateHz: number;
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

/** What ends the reading: the row of the piece, and values that fill the words. */
export interface TripProblem {
	readonly code: "time-missing" | "time-back" | "time-coarse" | "rate-changes";
	readonly rowIndex: number;
	readonly values: Readonly<Record<string, number>>;
}

export interface TripReader {
	/** The next rows; null where they are as they must be. */
	take(rows: TripRows): TripProblem | null;
	/** The recording is over. Call after at least one piece. */
	end(): Trip;
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

export function tripReader({ axisCount, thresholdGn }: TripOptions): TripReader {
	let sampling: SamplingStep | null = null;
	let detector: ImpactDetector | null = null;
	let [rows, startsS, lastS, gaps, eventsFound] = [0, Number.NaN, Number.NaN, 0, 0];
	/** Rows before the stretch that is open, and a row of it whose time is known. */
	let [stretchBegin, knownIndex, knownS] = [0, 0, 0];
	const events: TripEvent[] = [];
	const series = {
		time: seriesLevels(),
		acceleration: seriesLevels(),
		temperature: seriesLevels(),
		humidity: seriesLevels(),
	};
	let [hasTemperature, hasHumidity] = [false, false];
	let filled = 0;

	function found(event: ImpactEvent): void {
		const stepS = sampling?.stepS ?? 0;
		const [firstIndex, lastIndex, peakIndex] = [event.firstIndex, event.lastIndex, event.peakIndex].map(
			(index) => index + stretchBegin,
		) as [number, number, number];
		eventsFound += 1;
		events.push({ ...event, firstIndex, lastIndex, peakIndex, timeS: knownS + (peakIndex - knownIndex) * stepS });
		if (events.length <= MOST_EVENTS) return;
		const least = events.reduce((at, one, index) => (one.peakGn < (events[at]?.peakGn ?? 0) ? index : at), 0);
		events.splice(least, 1);
	}

	function newStretch(at: number): void {
		detector?.end();
		stretchBegin = at;
		const rateHz = 1 / (sampling?.stepS ?? 1);
		const pretriggerSamples = Math.min(MOST_PRETRIGGER, Math.round(PRETRIGGER_S * rateHz));
		const quietSamples = Math.max(LEAST_QUIET, Math.round(QUIET_S * rateHz));
		detector = impactDetector(
			axisCount,
			{ thresholdGn, quietSamples, pretriggerSamples, mostSamples: MOST_TRACE },
			found,
		);
	}

	function takeRun(piece: TripRows, from: number, to: number): void {
		if (to === from) return;
		[knownIndex, knownS] = [rows + from, piece.timesS[from] as number];
		const axes = piece.axes.map((samples) => samples.subarray(from, to));
		detector?.take(axes);
		series.time.take(piece.timesS.subarray(from, to));
		series.acceleration.take(resultants(axes as unknown as Axes));
		series.temperature.take(piece.temperaturesDegC?.subarray(from, to) ?? new Float64Array(0));
		series.humidity.take(piece.humiditiesPercent?.subarray(from, to) ?? new Float64Array(0));
		hasTemperature ||= piece.temperaturesDegC !== null;
		hasHumidity ||= piece.humiditiesPercent !== null;
		filled = (filled + to - from) % FINEST_STRETCH;
	}

	/** Fills the finest stretch up, so that none reaches over the gap. */
	function fillStretch(): void {
		if (filled === 0) return;
		const nothing = new Float64Array(FINEST_STRETCH - filled).fill(Number.NaN);
		series.time.take(nothing);
		series.acceleration.take(nothing);
		if (hasTemperature) series.temperature.take(nothing);
		if (hasHumidity) series.humidity.take(nothing);
		filled = 0;
	}

	return {
		take(piece) {
			const { timesS } = piece;
			const missing = timesS.findIndex((time) => !Number.isFinite(time));
			if (missing >= 0) return { code: "time-missing", rowIndex: missing, values: {} };
			sampling ??= samplingStep(timesS);
			if (sampling === null) return { code: "time-coarse", rowIndex: timesS.length - 1, values: {} };
			const { stepS, quantumS } = sampling;
			if (detector === null) {
				startsS = timesS[0] as number;
				newStretch(0);
			}
			let from = 0;
			for (let index = 0; index < timesS.length; index += 1) {
				const before = index === 0 ? lastS : (timesS[index - 1] as number);
				const difference = (timesS[index] as number) - before;
				if (Number.isNaN(difference)) continue;
				if (difference < 0) return { code: "time-back", rowIndex: index, values: { backS: -difference } };
				if (difference < 0.5 * stepS - quantumS)
					return { code: "rate-changes", rowIndex: index, values: { beforeS: stepS, afterS: difference } };
				if (difference > 1.5 * stepS + quantumS) {
					takeRun(piece, from, index);
					fillStretch();
					newStretch(rows + index);
					gaps += 1;
					from = index;
				}
			}
			takeRun(piece, from, timesS.length);
			lastS = timesS[timesS.length - 1] as number;
			rows += timesS.length;
			return null;
		},
		end() {
			detector?.end();
			const temperature = series.temperature.end();
			const humidity = series.humidity.end();
			return {
				rows,
				sampleRateHz: 1 / (sampling?.stepS ?? Number.NaN),
				startsS,
				endsS: lastS,
				gaps,
				eventsFound,
				events,
				series: {
					time: series.time.end(),
					acceleration: series.acceleration.end(),
					temperature: hasTemperature ? temperature : null,
					humidity: hasHumidity ? humidity : null,
				},
			};
		},
	};
}

function resultants(axes: Axes): Float64Array {
	const [x, y, z] = axes;
	if (y === undefined || z === undefined) return x.map(Math.abs);
	return x.map((value, index) => Math.sqrt(value ** 2 + (y[index] as number) ** 2 + (z[index] as number) ** 2));
}
