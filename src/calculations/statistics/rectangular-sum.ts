/**
 * The distribution of a sum of independent errors, each rectangular within ± its half width, centred on zero. Exact
 * (a generalised Irwin-Hall distribution), where the usual normal approximation overstates: the 95 % factor of one
 * rectangular is 1.645 and of two equal ones 1.902, not 2.
 */

/** Half widths below this share of the largest go into the largest by root sum of squares; our choice, shifts the result by less than 5e-5. */
const NEGLIGIBLE_SHARE = 0.01;

/** P(sum ≤ x) for the half widths; none or all zero give a step at 0. */
export function rectangularSumCumulative(halfWidths: readonly number[], x: number): number {
	return x > 0 ? 1 - lowerTail(gathered(halfWidths), -x) : lowerTail(gathered(halfWidths), x);
}

/** t with P(|sum| ≤ t) = coverage, for 0 < coverage < 1. */
export function rectangularSumHalfWidth(halfWidths: readonly number[], coverage: number): number {
	const parts = gathered(halfWidths);
	const tail = (1 - coverage) / 2;
	let low = 0;
	let high = parts.reduce((total, part) => total + part, 0);
	for (let step = 0; step < 60; step++) {
		const middle = (low + high) / 2;
		if (lowerTail(parts, -middle) > tail) low = middle;
		else high = middle;
	}
	return high;
}

/** The half widths that matter, so that the closed form does not divide by next to nothing. */
function gathered(halfWidths: readonly number[]): readonly number[] {
	const largest = Math.max(0, ...halfWidths);
	if (!(largest > 0)) return [];
	const small = halfWidths.filter((width) => width < largest * NEGLIGIBLE_SHARE);
	const [first = largest, ...others] = halfWidths
		.filter((width) => width >= largest * NEGLIGIBLE_SHARE)
		.sort((one, other) => other - one);
	return [Math.hypot(first, ...small), ...others];
}

/** P(sum ≤ x) for x ≤ 0: Σ over all signs s of Πsᵢ·max(0, x + Σsᵢaᵢ)ⁿ, over n!·Π2aᵢ. Widths are scaled to the largest. */
function lowerTail(halfWidths: readonly number[], x: number): number {
	const [largest] = halfWidths;
	if (largest === undefined) return x >= 0 ? 1 : 0;
	const widths = halfWidths.map((width) => width / largest);
	const n = widths.length;
	let total = 0;
	for (let signs = 0; signs < 2 ** n; signs++) {
		let corner = x / largest;
		let product = 1;
		widths.forEach((width, index) => {
			const sign = (signs >> index) & 1 ? 1 : -1;
			corner += sign * width;
			product *= sign;
		});
		if (corner > 0) total += product * corner ** n;
	}
	const volume = widths.reduce((product, width, index) => product * 2 * width * (index + 1), 1);
	return Math.min(1, Math.max(0, total / volume));
}
