/** The certain loss that somebody who shuns risk holds as bad as an uncertain one. */

/** Constant absolute aversion (per major unit; 0 for none), or constant relative aversion of someone who has `wealth`. */
export type Aversion = { readonly absolute: number } | { readonly relative: number; readonly wealth: number };

/** One way in which it may go; what is left of the probability is no loss. Amounts in the major unit. */
export interface Outcome {
	readonly probability: number;
	readonly loss: number;
}

/** e^x is a number up to here; beyond, an aversion so great has no meaning. */
const MOST_EXPONENT = 700;

/**
 * Absolute, u = −e^(−aW): (1/a)·ln(1 + Σp·(e^(aL) − 1)), whatever the wealth; its limit for a → 0 is Σp·L.
 * Relative, u = W^(1 − r)/(1 − r), for r = 1 ln W: W less the mean of order 1 − r of what is left, computed over ln(w/W).
 * Null where the aversion is so great that no number holds it, or where from r = 1 on all is lost, which no wealth outweighs.
 */
export function equivalentLoss(aversion: Aversion, outcomes: readonly Outcome[]): number | null {
	const possible = outcomes.filter(({ probability, loss }) => probability > 0 && loss > 0);
	if ("absolute" in aversion) return exponentialMean(aversion.absolute, possible);
	const { relative: r, wealth } = aversion;
	if (possible.some(({ loss }) => !(loss < wealth || (loss === wealth && r < 1)))) return null;
	// ln(W/w), itself a loss: relative aversion is absolute aversion over logarithms.
	const logarithms = possible.map(({ probability, loss }) => ({ probability, loss: -Math.log1p(-loss / wealth) }));
	const mean = exponentialMean(r - 1, logarithms);
	return mean === null ? null : -wealth * Math.expm1(-mean);
}

function exponentialMean(a: number, outcomes: readonly Outcome[]): number | null {
	const mean = (of: (loss: number) => number) =>
		outcomes.reduce((sum, { probability, loss }) => sum + probability * of(loss), 0);
	if (a === 0) return mean((loss) => loss);
	if (outcomes.some(({ loss }) => !(a * loss <= MOST_EXPONENT))) return null;
	return Math.log1p(mean((loss) => Math.expm1(a * loss))) / a;
}
