/**
 * The screen of edges and corners: the derived rule on sampled cushions. Straight between samples of half a millimetre, so a
 * design that it lets through is always judged in full afterwards.
 */
import type { AxisOption } from "./search-types.ts";

/** Peak force, kN, when three cushions take an energy, kJ, together on a corner. */
export function cornerForceKN(one: AxisOption, two: AxisOption, three: AxisOption, energyKJ: number): number {
	const [e1, e2, e3] = [one.energiesKJ, two.energiesKJ, three.energiesKJ];
	let [low, high] = [0, e1.length - 1];
	while (high - low > 1) {
		const middle = (low + high) >> 1;
		if (at(e1, middle) + at(e2, middle) + at(e3, middle) < energyKJ) low = middle;
		else high = middle;
	}
	const [before, after] = [at(e1, low) + at(e2, low) + at(e3, low), at(e1, high) + at(e2, high) + at(e3, high)];
	// One of them locks within this step.
	if (!(after < Number.POSITIVE_INFINITY)) return Number.POSITIVE_INFINITY;
	const share = after > before ? (energyKJ - before) / (after - before) : 0;
	const force = (forces: Float64Array) => at(forces, low) + share * (at(forces, high) - at(forces, low));
	return (force(one.forcesKN) + force(two.forcesKN) + force(three.forcesKN)) / Math.sqrt(3);
}

/** The same of two on an edge. */
export function edgeForceKN(one: AxisOption, two: AxisOption, energyKJ: number): number {
	const [e1, e2] = [one.energiesKJ, two.energiesKJ];
	let [low, high] = [0, e1.length - 1];
	while (high - low > 1) {
		const middle = (low + high) >> 1;
		if (at(e1, middle) + at(e2, middle) < energyKJ) low = middle;
		else high = middle;
	}
	const [before, after] = [at(e1, low) + at(e2, low), at(e1, high) + at(e2, high)];
	if (!(after < Number.POSITIVE_INFINITY)) return Number.POSITIVE_INFINITY;
	const share = after > before ? (energyKJ - before) / (after - before) : 0;
	const force = (forces: Float64Array) => at(forces, low) + share * (at(forces, high) - at(forces, low));
	return (force(one.forcesKN) + force(two.forcesKN)) / Math.SQRT2;
}

function at(values: Float64Array, index: number): number {
	return values[index] ?? Number.NaN;
}
