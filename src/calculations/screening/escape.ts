/**
 * How likely a fault that is there stays unseen in a test, and how long a test it takes. Faults that show at random under
 * load are counted by hours, faults that show at a cold start by starts; a condition that was not exercised hides
 * everything that shows under it. Closed forms, derived from the exponential and the binomial distribution.
 */
import { binomialCumulative, chiSquareQuantile } from "../statistics/distributions.ts";

/** P(no show in `hours`) of a fault that shows once in `meanTimeH` on average: exp(−t/T). */
export function escapeByHours(hours: number, meanTimeH: number): number {
	return Math.exp(-hours / meanTimeH);
}

/**
 * The same where the mean time is itself known from `shows` in `showedInH` hours only: the rate then is a gamma variable
 * and the tail is fatter, (b/(b+t))^a.
 */
export function escapeByHoursSeen(hours: number, shows: number, showedInH: number): number {
	return (showedInH / (showedInH + hours)) ** shows;
}

/** P(no show in `starts`) of a fault that shows at a start with this probability. */
export function escapeByStarts(starts: number, startFaultProbability: number): number {
	return (1 - startFaultProbability) ** starts;
}

/**
 * Hours over mean time that bound the mean time from below with this confidence, `failures` seen, the test ended by the
 * clock: χ²(C, 2r + 2)/2; −ln(1 − C) for none.
 */
export function testTimeFactor(failures: number, confidence: number): number {
	return chiSquareQuantile(confidence, 2 * failures + 2) / 2;
}

/** Upper bound of the mean time of `shows` seen in `hours`: 2t/χ²(1 − C, 2r). Infinite where nothing was seen. */
export function meanTimeUpperH(shows: number, hours: number, confidence: number): number {
	return shows === 0 ? Number.POSITIVE_INFINITY : (2 * hours) / chiSquareQuantile(1 - confidence, 2 * shows);
}

/** The fewest starts, `failures` of them missed, that exclude a fault showing at this share of starts. */
export function startsNeeded(startFaultProbability: number, confidence: number, failures: number): number {
	const excludes = (starts: number) =>
		starts > failures && binomialCumulative(failures, starts, startFaultProbability) <= 1 - confidence;
	let most = Math.max(1, failures + 1);
	while (!excludes(most)) most *= 2;
	let least = failures;
	while (most - least > 1) {
		const middle = Math.floor((least + most) / 2);
		if (excludes(middle)) most = middle;
		else least = middle;
	}
	return most;
}

/** P(fault | clean test) from P(fault) before it and the probability that the test misses it. */
export function posteriorAfterClean(priorProbability: number, escapeProbability: number): number {
	const missed = priorProbability * escapeProbability;
	return missed === 0 ? 0 : missed / (missed + 1 - priorProbability);
}

/** Clean hours after which the fault is no likelier than the target: T·ln[p₀(1−p*)/(p*(1−p₀))], 0 where it is not from the start. */
export function hoursForTarget(meanTimeH: number, priorProbability: number, targetProbability: number): number {
	const odds = (probability: number) => probability / (1 - probability);
	return Math.max(0, meanTimeH * Math.log(odds(priorProbability) / odds(targetProbability)));
}

/** Hours after which a further hour costs more than it saves: T·ln(p₀·L/(c·T)), 0 where even the first does. */
export function hoursEconomic(
	meanTimeH: number,
	priorProbability: number,
	costPerH: number,
	costOfReturn: number,
): number {
	return Math.max(0, meanTimeH * Math.log((priorProbability * costOfReturn) / (costPerH * meanTimeH)));
}
