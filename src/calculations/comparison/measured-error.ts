/**
 * The error of a measured reading, from what its record says of the instrument and from its repeats.
 *
 * Parts: the instrument's specification, ± (percent of the reading + counts · size of a count), rectangular; or its
 * certificate; ± half a count where no counts are given; leads that were not nulled; the scatter of repeats.
 */
import { type Summary, summary } from "../statistics/summary.ts";
import type { NormalPart, UncertaintyParts } from "../statistics/uncertainty.ts";
import type { ReadingEnd, ReadingInstrument } from "./types.ts";

/**
 * Correlation of one instrument's scale error between the two ends. Our choice: independence would
 * overstate the uncertainty and no source gives a figure; 0.9 leaves a tenth of the variance to drift, temperature
 * and reseated probes.
 */
export const SAME_INSTRUMENT_CORRELATION = 0.9;

export interface MeasuredError {
	readonly summary: Summary;
	/** Whether the instrument's accuracy is stated at all; without it only the repeats are known. */
	readonly accuracyStated: boolean;
	/** Error in proportion to the reading: half width of a rectangular part. The part that one instrument repeats. */
	readonly scale: number;
	/** Standard uncertainty of the certificate; also common to readings of one instrument. */
	readonly certificate: number;
	/** Half width of the specification's counts; one rectangular part together with `scale`, but new at every reading. */
	readonly counts: number;
	/** Half widths of further parts, new at every reading: digit step where no counts are given, leads. */
	readonly further: readonly number[];
	readonly repeats: NormalPart | null;
}

/** @throws RangeError for a reading without values */
export function measuredError(end: ReadingEnd): MeasuredError {
	const readings = summary(end.values ?? []);
	const instrument = end.instrument;
	const leads = instrument?.leadOffset === undefined ? [] : [instrument.leadOffset];
	return {
		summary: readings,
		...instrumentError(instrument, readings.mean),
		further: [...digitStep(instrument), ...leads],
		repeats:
			readings.standardDeviation === null
				? null
				: {
						standardUncertainty: readings.standardDeviation / Math.sqrt(readings.n),
						degreesOfFreedom: readings.n - 1,
					},
	};
}

/** Error of one end by itself: percent and counts are one rectangular part, as a data sheet means them. */
export function partsOf(error: MeasuredError): UncertaintyParts {
	return { rectangular: [error.scale + error.counts, ...error.further], normal: normalParts(error.certificate, error) };
}

/** Error of the difference of two ends; what one instrument does to both cancels in part. */
export function partsOfDifference(
	departure: MeasuredError,
	arrival: MeasuredError,
	sameInstrument: boolean,
): UncertaintyParts {
	if (!sameInstrument) {
		const [one, other] = [partsOf(departure), partsOf(arrival)];
		return { rectangular: [...one.rectangular, ...other.rectangular], normal: [...one.normal, ...other.normal] };
	}
	return {
		rectangular: [
			remaining(departure.scale, arrival.scale),
			...[departure, arrival].flatMap(({ counts, further }) => [counts, ...further]),
		],
		normal: [
			...normalParts(remaining(departure.certificate, arrival.certificate), departure),
			...normalParts(0, arrival),
		],
	};
}

/** Covariance of two readings of one instrument: what its scale and its certificate do to both. */
export function commonVariance(departure: MeasuredError, arrival: MeasuredError): number {
	const scales = (departure.scale * arrival.scale) / 3;
	return SAME_INSTRUMENT_CORRELATION * (scales + departure.certificate * arrival.certificate);
}

/** u² = u1² + u2² − 2·r·u1·u2. */
function remaining(one: number, other: number): number {
	return Math.sqrt(Math.max(0, one ** 2 + other ** 2 - 2 * SAME_INSTRUMENT_CORRELATION * one * other));
}

function normalParts(certificate: number, { repeats }: MeasuredError): NormalPart[] {
	const known = { standardUncertainty: certificate, degreesOfFreedom: Number.POSITIVE_INFINITY };
	return repeats === null ? [known] : [known, repeats];
}

function instrumentError(instrument: ReadingInstrument | undefined, reading: number) {
	const { certificate, percentOfReading, counts, resolution } = instrument ?? {};
	if (certificate !== undefined) {
		return { accuracyStated: true, scale: 0, counts: 0, certificate: certificate.expanded / certificate.k };
	}
	// Counts without the size of one count say nothing.
	const countsKnown = counts === undefined || resolution !== undefined;
	const anyStated = percentOfReading !== undefined || counts !== undefined || resolution !== undefined;
	return {
		accuracyStated: countsKnown && anyStated,
		scale: (Math.abs(reading) * (percentOfReading ?? 0)) / 100,
		counts: (counts ?? 0) * (resolution ?? 0),
		certificate: 0,
	};
}

/** ± half of a count, unless the specification's counts already hold it. */
function digitStep(instrument: ReadingInstrument | undefined): number[] {
	const { certificate, counts, resolution } = instrument ?? {};
	if (resolution === undefined || (counts !== undefined && certificate === undefined)) return [];
	return [resolution / 2];
}
