/**
 * Size, mean and standard deviation (n − 1) of a sample, by two passes: a sum of squares loses
 * every digit of the NIST StRD sets NumAcc3 and NumAcc4.
 */

export interface Summary {
	readonly n: number;
	readonly mean: number;
	/** Null for a single value: one value shows no spread. */
	readonly standardDeviation: number | null;
}

/** @throws RangeError for an empty sample */
export function summary(values: readonly number[]): Summary {
	const n = values.length;
	if (n === 0) throw new RangeError("a summary needs at least one value");
	const rough = sum(values) / n;
	const mean = rough + sum(values.map((value) => value - rough)) / n;
	if (n === 1) return { n, mean, standardDeviation: null };
	const squares = sum(values.map((value) => (value - mean) ** 2));
	return { n, mean, standardDeviation: Math.sqrt(squares / (n - 1)) };
}

function sum(values: readonly number[]): number {
	return values.reduce((total, value) => total + value, 0);
}
