/** Rows of a recording, in pieces that can be kept and joined. */

/** Equally many samples of each; a missing one is NaN. */
export interface TripRows {
	/** Seconds, from whatever begin. */
	readonly timesS: Float64Array;
	readonly axes: readonly Float64Array[];
	readonly temperaturesDegC: Float64Array | null;
	readonly humiditiesPercent: Float64Array | null;
	/** Line of each row in the file, for what is wrong with it. */
	readonly lines: Float64Array;
}

/** A copy: whoever reads the file uses its arrays again. */
export function slicedRows(rows: TripRows, from: number): TripRows {
	return {
		timesS: rows.timesS.slice(from),
		axes: rows.axes.map((samples) => samples.slice(from)),
		temperaturesDegC: rows.temperaturesDegC?.slice(from) ?? null,
		humiditiesPercent: rows.humiditiesPercent?.slice(from) ?? null,
		lines: rows.lines.slice(from),
	};
}

export function joinedRows(one: TripRows, other: TripRows): TripRows {
	const both = (first: Float64Array | null, second: Float64Array | null) =>
		first === null || second === null ? null : joined(first, second);
	return {
		timesS: joined(one.timesS, other.timesS),
		axes: one.axes.map((samples, axis) => joined(samples, other.axes[axis] as Float64Array)),
		temperaturesDegC: both(one.temperaturesDegC, other.temperaturesDegC),
		humiditiesPercent: both(one.humiditiesPercent, other.humiditiesPercent),
		lines: joined(one.lines, other.lines),
	};
}

function joined(one: Float64Array, other: Float64Array): Float64Array {
	const both = new Float64Array(one.length + other.length);
	both.set(one);
	both.set(other, one.length);
	return both;
}
