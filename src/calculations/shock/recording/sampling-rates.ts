/** The rates at which a recording was sampled, as they are met, and which of them goes on after a step that fits the last one not. */
import type { SamplingStep } from "./sampling-step.ts";
import { steadyStep } from "./steady-step.ts";

export interface SamplingRate extends SamplingStep {
	/** Of the rows so far: steps between them without gaps, and their sum. */
	steps: number;
	sumS: number;
	rows: number;
}

/** Rates closer to each other are one. Our choice: five times what a clock of a quarter period makes of 64 samples. */
const SAME = 0.2;
/** Rows after which a step that fits no rate may be a gap with single rows beside it. Our choice. */
const NEAR_ROWS = 8;

export function newRate(step: SamplingStep): SamplingRate {
	return { ...step, steps: 0, sumS: 0, rows: 0 };
}

/** The mean of what was seen. */
export function meanStepS({ stepS, steps, sumS }: SamplingRate): number {
	return steps > 0 && sumS > 0 ? sumS / steps : stepS;
}

export function fits({ stepS, quantumS }: SamplingStep, differenceS: number): boolean {
	return differenceS >= 0.5 * stepS - quantumS && differenceS <= longestS({ stepS, quantumS });
}

/** What is longer is a gap. */
export function longestS({ stepS, quantumS }: SamplingStep): number {
	return 1.5 * stepS + quantumS;
}

/** Whether two steps are of one rate. */
export function sameRate(oneS: number, otherS: number): boolean {
	return Math.abs(oneS - otherS) <= SAME * otherS;
}

/**
 * The rate from a row on whose step fits the current rate not: one that is certain, or one that was met before. A gap is left to
 * the current rate.
 * @param differenceS from the row before; @returns null where nothing is certain
 */
export function rateFrom(
	timesS: Float64Array,
	index: number,
	differenceS: number,
	current: SamplingRate,
	known: readonly SamplingRate[],
): SamplingRate | null {
	const steady = steadyStep(timesS, index);
	if (steady !== null) return known.find((rate) => sameRate(steady.stepS, meanStepS(rate))) ?? newRate(steady);
	const stepAt = (row: number) => (timesS[row + 1] as number) - (timesS[row] as number);
	const next = index + 1 < timesS.length ? stepAt(index) : Number.NaN;
	const met = [current, ...known].find((rate) => fits(rate, next)) ?? known.find((rate) => fits(rate, differenceS));
	if (met !== undefined) return met;
	if (!(differenceS > longestS(current))) return null;
	// Single rows between gaps, after which the rate goes on; or the recording's last.
	const last = Math.min(timesS.length - 1, index + NEAR_ROWS);
	for (let row = index; row < last; row += 1) if (fits(current, stepAt(row))) return current;
	return Number.isNaN(next) ? current : null;
}
