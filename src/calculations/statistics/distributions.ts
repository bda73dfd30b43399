/**
 * Distribution functions, the only place that imports them. Each is checked against published anchors in
 * `tests/calculations/statistics/distributions.test.ts`. Arguments outside the domain give NaN.
 */
import betaQuantileOf from "@stdlib/stats-base-dists-beta-quantile";
import binomialCdf from "@stdlib/stats-base-dists-binomial-cdf";
import binomialPmf from "@stdlib/stats-base-dists-binomial-pmf";
import chiSquareQuantileOf from "@stdlib/stats-base-dists-chisquare-quantile";
import normalCdf from "@stdlib/stats-base-dists-normal-cdf";
import normalQuantileOf from "@stdlib/stats-base-dists-normal-quantile";
import tCdf from "@stdlib/stats-base-dists-t-cdf";
import tQuantileOf from "@stdlib/stats-base-dists-t-quantile";

/** P(Z ≤ z) of the standard normal distribution. */
export const normalCumulative = (z: number): number => normalCdf(z, 0, 1);
/** z with P(Z ≤ z) = p, standard normal. */
export const normalQuantile = (p: number): number => normalQuantileOf(p, 0, 1);
/** P(T ≤ t), Student's t; infinite degrees of freedom give the normal distribution. */
export const tCumulative = (t: number, degreesOfFreedom: number): number =>
	degreesOfFreedom === Number.POSITIVE_INFINITY ? normalCumulative(t) : tCdf(t, degreesOfFreedom);
/** t with P(T ≤ t) = p, Student's t; infinite degrees of freedom give the normal distribution. */
export const tQuantile = (p: number, degreesOfFreedom: number): number =>
	degreesOfFreedom === Number.POSITIVE_INFINITY ? normalQuantile(p) : tQuantileOf(p, degreesOfFreedom);
/** x with P(X ≤ x) = p, chi-square. */
export const chiSquareQuantile = (p: number, degreesOfFreedom: number): number =>
	chiSquareQuantileOf(p, degreesOfFreedom);
/** x with P(X ≤ x) = p, beta distribution. */
export const betaQuantile = (p: number, alpha: number, beta: number): number => betaQuantileOf(p, alpha, beta);
/** P(X = k) of n trials with success probability p. */
export const binomialProbability = (k: number, n: number, p: number): number => binomialPmf(k, n, p);
/** P(X ≤ k) of n trials with success probability p. */
export const binomialCumulative = (k: number, n: number, p: number): number => binomialCdf(k, n, p);
