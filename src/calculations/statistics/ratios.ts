/** Interval of a ratio of two uncertain values, where the denominator's own uncertainty may leave it open. */
import type { Interval } from "../judged.ts";

export interface RatioParts {
	readonly numerator: number;
	readonly denominator: number;
	/** Variances of both, and their covariance where they share an error. */
	readonly numeratorVariance: number;
	readonly denominatorVariance: number;
	readonly covariance: number;
}

/**
 * The values that the ratio may have, `quantile` standard deviations wide (Fieller). Null where the denominator can not be
 * told from zero (g = (z·u_b/b)² not below 1): then no bound holds.
 */
export function ratioInterval(parts: RatioParts, quantile: number): Interval | null {
	const { numerator, denominator, numeratorVariance, denominatorVariance, covariance } = parts;
	const ratio = numerator / denominator;
	const g = quantile ** 2 * (denominatorVariance / denominator ** 2);
	if (!(g < 1)) return null;
	const centre = ratio - (quantile ** 2 * covariance) / denominator ** 2;
	const spread =
		numeratorVariance -
		2 * ratio * covariance +
		ratio ** 2 * denominatorVariance -
		quantile ** 2 * ((numeratorVariance * denominatorVariance - covariance ** 2) / denominator ** 2);
	const half = (quantile / Math.abs(denominator)) * Math.sqrt(Math.max(0, spread));
	return [(centre - half) / (1 - g), (centre + half) / (1 - g)];
}
