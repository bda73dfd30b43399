/** Probability that a trip with several drops harms an item: load and strength both spread. Pure arithmetic, no data. */
import { normalCumulative, normalQuantile } from "../statistics/distributions.ts";

/** A lognormal quantity: its median, and the standard deviation of its natural logarithm. */
export interface Lognormal {
	readonly median: number;
	readonly spread: number;
}

/** The lognormal distribution through two quantiles. */
export function lognormalThrough(
	[p1, value1]: readonly [number, number],
	[p2, value2]: readonly [number, number],
): Lognormal {
	const [z1, z2] = [normalQuantile(p1), normalQuantile(p2)];
	const spread = Math.log(value2 / value1) / (z2 - z1);
	return { median: Math.exp(Math.log(value1) - z1 * spread), spread };
}

/** Standard normal points at which loads are taken, and how finely. */
const REACH = 7;
const STEPS = 160;

/**
 * P(load > strength) of one drop: ∫ φ(z)·P(strength < load at height(z)) dz, by Simpson's rule. `logLoadOf` gives the natural
 * logarithm of the load at the logarithm of a height; infinite where nothing withstands.
 */
export function dropDamage(
	heightM: Lognormal,
	strengthGn: Lognormal,
	logLoadOf: (logHeight: number) => number,
): number {
	const step = (2 * REACH) / STEPS;
	let total = 0;
	for (let index = 0; index <= STEPS; index += 1) {
		const z = -REACH + index * step;
		const load = logLoadOf(Math.log(heightM.median) + z * heightM.spread);
		const harmed = normalCumulative((load - Math.log(strengthGn.median)) / strengthGn.spread);
		const weight = index === 0 || index === STEPS ? 1 : index % 2 === 1 ? 4 : 2;
		total += (weight * step * harmed * Math.exp((-z * z) / 2)) / (3 * Math.sqrt(2 * Math.PI));
	}
	return total;
}

/** P(at least one harmful drop) of a trip whose number of drops is Poisson, drops taken as independent. */
export function tripDamage(dropsPerTrip: number, damagePerDrop: number): number {
	return -Math.expm1(-dropsPerTrip * damagePerDrop);
}
