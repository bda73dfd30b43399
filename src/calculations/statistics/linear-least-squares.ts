/**
 * Linear least squares by Householder's orthogonal factors, columns scaled to one length and the solution refined once:
 * columns that nearly depend on each other cost few digits (held against certified sets in the tests).
 */

export interface LinearFit {
	readonly coefficients: readonly number[];
	/** Standard errors of the coefficients; null where the points only just determine them. */
	readonly standardErrors: readonly number[] | null;
	/** Standard deviation of the residuals, n − p degrees of freedom; null where there are none. */
	readonly residualSd: number | null;
	readonly sumOfSquares: number;
}

interface Factors {
	/** Householder vectors below and on the diagonal, R above it. */
	readonly columns: readonly (readonly number[])[];
	readonly diagonal: readonly number[];
	readonly scales: readonly number[];
}

/** The relative size of a diagonal below which a column adds nothing to those before it. Our choice: rounding of a double times ten. */
const DEPENDENT = 1e-14;

/** Fits y = Σ coefficient·column. Null where columns depend on each other or points are fewer than columns. */
export function linearLeastSquares(columns: readonly (readonly number[])[], y: readonly number[]): LinearFit | null {
	const [count, free] = [y.length, y.length - columns.length];
	if (columns.length === 0 || free < 0) return null;
	const factors = factorise(columns);
	if (factors === null) return null;
	let coefficients = solve(factors, y);
	for (let step = 0; step < 2; step += 1) {
		const correction = solve(factors, residualsOf(columns, coefficients, y));
		coefficients = coefficients.map((coefficient, index) => coefficient + (correction[index] ?? 0));
	}
	const sumOfSquares = residualsOf(columns, coefficients, y).reduce((sum, residual) => sum + residual ** 2, 0);
	if (free === 0 || count === 0) return { coefficients, standardErrors: null, residualSd: null, sumOfSquares };
	const residualSd = Math.sqrt(sumOfSquares / free);
	return {
		coefficients,
		standardErrors: inverseRowLengths(factors).map((length) => residualSd * length),
		residualSd,
		sumOfSquares,
	};
}

function residualsOf(columns: readonly (readonly number[])[], coefficients: readonly number[], y: readonly number[]) {
	return y.map((value, row) =>
		columns.reduce((rest, column, index) => rest - at(column, row) * at(coefficients, index), value),
	);
}

function factorise(given: readonly (readonly number[])[]): Factors | null {
	const scales = given.map((column) => Math.hypot(...column));
	if (scales.some((scale) => !(scale > 0 && Number.isFinite(scale)))) return null;
	const columns = given.map((column, index) => column.map((value) => value / at(scales, index)));
	const diagonal: number[] = [];
	for (let k = 0; k < columns.length; k += 1) {
		const column = columns[k] ?? [];
		const length = Math.hypot(...column.slice(k));
		if (!(length > DEPENDENT)) return null;
		const head = at(column, k) > 0 ? -length : length;
		column[k] = at(column, k) - head;
		diagonal.push(head);
		for (const later of columns.slice(k + 1)) reflect(column, k, later);
	}
	return { columns, diagonal, scales };
}

/** Reflects a vector at the plane across a Householder vector that begins at row k. */
function reflect(vector: readonly number[], k: number, target: number[]): void {
	let [product, square] = [0, 0];
	for (let row = k; row < vector.length; row += 1) {
		product += at(vector, row) * at(target, row);
		square += at(vector, row) ** 2;
	}
	const factor = (2 * product) / square;
	for (let row = k; row < vector.length; row += 1) target[row] = at(target, row) - factor * at(vector, row);
}

function solve({ columns, diagonal, scales }: Factors, y: readonly number[]): number[] {
	const right = [...y];
	for (const [k, column] of columns.entries()) reflect(column, k, right);
	return backSubstitute(columns, diagonal, right).map((value, index) => value / at(scales, index));
}

function backSubstitute(columns: Factors["columns"], diagonal: readonly number[], right: readonly number[]): number[] {
	const solution = diagonal.map(() => 0);
	for (let k = diagonal.length - 1; k >= 0; k -= 1) {
		let rest = at(right, k);
		for (let later = k + 1; later < diagonal.length; later += 1)
			rest -= at(columns[later] ?? [], k) * at(solution, later);
		solution[k] = rest / at(diagonal, k);
	}
	return solution;
}

/** Lengths of the rows of R⁻¹, unscaled: standard errors over the residuals' deviation. */
function inverseRowLengths({ columns, diagonal, scales }: Factors): number[] {
	const inverse = diagonal.map((_, unit) =>
		backSubstitute(
			columns,
			diagonal,
			diagonal.map((_, row) => (row === unit ? 1 : 0)),
		),
	);
	return scales.map((scale, row) => Math.hypot(...inverse.map((column) => at(column, row))) / scale);
}

function at(values: readonly number[], index: number): number {
	return values[index] ?? Number.NaN;
}
