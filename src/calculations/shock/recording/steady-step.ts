/**
 * Whether rows follow each other evenly from one row on, and with what step. A recorder that logs slowly and fast around an impact
 * changes its rate; that it did is certain only after several equal steps, or where the clock is coarse after a stretch that lies
 * on a line.
 */
import { type SamplingStep, samplingStep } from "./sampling-step.ts";

/** Rows that are looked at, after the first. */
export const LOOK_AHEAD = 256;
/** Equal steps that make a rate certain, and by how much of their mean they may differ. Our choice. */
const EQUAL_STEPS = 5;
const EQUAL = 0.1;
/** With a coarse clock: steps that are tried, and how many of the clock's they must span. Our choice. */
const ON_A_LINE = [16, 32, 64, 128, 256];
const LEAST_SPAN = 4;
/** A step that still belongs to the stretch: where a clock is just too coarse, one in many is two of its steps. */
const BELONGS = 2.01;

/** Null where it is not certain. */
export function steadyStep(timesS: Float64Array, from: number): SamplingStep | null {
	const times = timesS.subarray(from, from + LOOK_AHEAD + 1);
	const certain = [EQUAL_STEPS, ...ON_A_LINE].find((steps) => steps < times.length && even(times, steps));
	if (certain === undefined) return null;
	const mean = ((times[certain] as number) - (times[0] as number)) / certain;
	const { least, greatest } = stepEnds(times, certain);
	let last = certain;
	while (last + 1 < times.length) {
		const step = (times[last + 1] as number) - (times[last] as number);
		if (!(step >= Math.min(least, mean / BELONGS) && step <= Math.max(greatest, mean * BELONGS))) break;
		last += 1;
	}
	return samplingStep(times.subarray(0, last + 1));
}

function even(times: Float64Array, steps: number): boolean {
	const first = times[0] as number;
	const span = (times[steps] as number) - first;
	const mean = span / steps;
	const { least, greatest } = stepEnds(times, steps);
	if (!(least >= 0 && mean > 0)) return false;
	const apart = greatest - least;
	if (steps === EQUAL_STEPS) return apart <= EQUAL * mean;
	if (!(span >= LEAST_SPAN * apart)) return false;
	for (let index = 1; index < steps; index += 1)
		if (!(Math.abs((times[index] as number) - first - index * mean) <= apart)) return false;
	return true;
}

function stepEnds(times: Float64Array, steps: number): { readonly least: number; readonly greatest: number } {
	let [least, greatest] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
	for (let index = 1; index <= steps; index += 1) {
		const step = (times[index] as number) - (times[index - 1] as number);
		least = Math.min(least, step);
		greatest = Math.max(greatest, step);
	}
	return { least, greatest };
}
