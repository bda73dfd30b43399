/**
 * How long until a difference of two shares could show: cases per group by the usual normal approximation,
 *
 *   n = ( z(1−α/2)·√(2·p̄·(1−p̄)) + z(power)·√(p1·(1−p1) + p2·(1−p2)) )² / (p1 − p2)²,   p̄ = (p1 + p2)/2,
 *
 * at the rate at which a shop sends. Source: R, package stats, `power.prop.test` (recalled, not read), without a correction
 * for continuity. An approximation: with a few expected cases per group it is too short, which is said.
 */
import { normalQuantile } from "../statistics/distributions.ts";

/** Chance of calling a difference where there is none, and of seeing the one there is. Common practice. */
const ALPHA = 0.05;
const POWER = 0.8;
/** Expected cases in the rarer of the two below which the approximation is poor. Common practice. */
const LEAST_EXPECTED = 5;

/** Cases per group; a whole number. @throws RangeError for shares outside 0 to 1, or equal */
export function casesPerGroup(one: number, other: number, power: number = POWER): number {
	if (!(one >= 0 && one <= 1 && other >= 0 && other <= 1) || one === other)
		throw new RangeError(`no difference to show between shares of ${one} and ${other}`);
	const mean = (one + other) / 2;
	const asOne = normalQuantile(1 - ALPHA / 2) * Math.sqrt(2 * mean * (1 - mean));
	const apart = normalQuantile(power) * Math.sqrt(one * (1 - one) + other * (1 - other));
	return Math.ceil(((asOne + apart) / (one - other)) ** 2);
}

export interface TimeToShow {
	/** Shares. */
	readonly from: number;
	readonly to: number;
	/** Per group. */
	readonly cases: number;
	/** Of the whole shop, half of its legs in each group; null without a rate. */
	readonly years: number | null;
	/** The approximation is poor: fewer expected cases in a group than it needs. */
	readonly isRough: boolean;
}

/** @param legsPerYear legs with a known outcome */
export function timeToShow(from: number, to: number, legsPerYear: number): TimeToShow | null {
	if (!(from > 0 && from < 1 && to >= 0 && to < 1) || from === to) return null;
	const cases = casesPerGroup(from, to);
	return {
		from,
		to,
		cases,
		years: legsPerYear > 0 ? (2 * cases) / legsPerYear : null,
		// Of those with and of those without.
		isRough: !(cases * Math.min(from, to, 1 - from, 1 - to) >= LEAST_EXPECTED),
	};
}
