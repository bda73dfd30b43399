/**
 * Where the shock stands in a trace of sizes. A shock counts from where it passes a tenth of its peak to where it falls
 * below it again (common practice of shock recording); its area is taken further out, to where the size stops falling.
 */

const THRESHOLD = 0.1;

export interface ShockWindow {
	/** Samples over which the pulse around the peak is integrated, both counted. */
	readonly fromIndex: number;
	readonly toIndex: number;
	/** Between the two crossings of a tenth of the peak, straight between samples. */
	readonly crossingFromIndex: number;
	readonly crossingToIndex: number;
	/** The trace begins or ends above a tenth of its peak. */
	readonly cutOff: boolean;
	/** The sample with which the last excursion over a tenth of the peak ends. */
	readonly shockEndIndex: number;
}

const NO_SHOCK: ShockWindow = {
	fromIndex: 0,
	toIndex: 0,
	crossingFromIndex: 0,
	crossingToIndex: 0,
	cutOff: false,
	shockEndIndex: 0,
};

/** @param sizes absolute values, or resultants; `peakAt` is the index of the greatest */
export function shockWindow(sizes: Float64Array, peakAt: number): ShockWindow {
	const threshold = THRESHOLD * at(sizes, peakAt);
	if (!(threshold > 0)) return NO_SHOCK;
	const outside = (index: number) => index < 0 || index >= sizes.length;
	const leave = (step: 1 | -1) => {
		let index = peakAt;
		while (!outside(index) && at(sizes, index) >= threshold) index += step;
		return index;
	};
	const crossing = (beyond: number, step: 1 | -1) => {
		if (outside(beyond)) return beyond - step;
		const inside = beyond - step;
		return beyond - (step * (threshold - at(sizes, beyond))) / (at(sizes, inside) - at(sizes, beyond));
	};
	const before = leave(-1);
	const after = leave(1);
	let last = sizes.length - 1;
	while (at(sizes, last) < threshold) last -= 1;
	return {
		fromIndex: whileFalling(sizes, before, -1),
		toIndex: whileFalling(sizes, after, 1),
		crossingFromIndex: crossing(before, -1),
		crossingToIndex: crossing(after, 1),
		cutOff: outside(before) || outside(after),
		shockEndIndex: whileFalling(sizes, last + 1, 1),
	};
}

/** From just below the threshold outward to where the size stops falling; the trace's end where it is already left. */
function whileFalling(sizes: Float64Array, start: number, step: 1 | -1): number {
	if (start < 0 || start >= sizes.length) return start - step;
	let index = start;
	while (index + step >= 0 && index + step < sizes.length && at(sizes, index + step) < at(sizes, index)) index += step;
	return index;
}

function at(values: Float64Array, index: number): number {
	return values[index] as number;
}
