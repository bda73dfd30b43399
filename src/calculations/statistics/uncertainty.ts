/**
 * Combines the parts of an uncertainty. Source of the formulas: JCGM 100:2008 (GUM), 5.1.2 and G.4, from memory,
 * reproduced in the tests by its example H.1.
 */
import { tCumulative, tQuantile } from "./distributions.ts";
import { rectangularSumCumulative, rectangularSumHalfWidth } from "./rectangular-sum.ts";

/** A part with a standard uncertainty; infinite degrees of freedom where it is taken as known. */
export interface NormalPart {
	readonly standardUncertainty: number;
	readonly degreesOfFreedom: number;
}

/** Independent parts of an error. */
export interface UncertaintyParts {
	/** Half widths of rectangular parts. */
	readonly rectangular: readonly number[];
	readonly normal: readonly NormalPart[];
}

/** The distribution of an error around zero. */
export interface ErrorDistribution {
	readonly standardUncertainty: number;
	/** Effective, whole; infinite where all is taken as known. */
	readonly degreesOfFreedom: number;
	/** t with P(|error| ≤ t) = coverage. */
	halfWidth(coverage: number): number;
	/** P(error ≤ x). */
	cumulative(x: number): number;
}

/** u_c = √Σu² and effective degrees of freedom by Welch-Satterthwaite; parts without spread add nothing. */
export function combined(parts: readonly NormalPart[]): NormalPart {
	const variance = parts.reduce((total, part) => total + part.standardUncertainty ** 2, 0);
	const fourth = parts.reduce((total, part) => total + part.standardUncertainty ** 4 / part.degreesOfFreedom, 0);
	return {
		standardUncertainty: Math.sqrt(variance),
		degreesOfFreedom: fourth > 0 ? variance ** 2 / fourth : Number.POSITIVE_INFINITY,
	};
}

/**
 * The distribution of the sum of all parts: exact where all are rectangular; otherwise Student's t with the effective
 * degrees of freedom cut down to a whole number.
 */
export function errorDistribution(parts: UncertaintyParts): ErrorDistribution {
	const rectangular = parts.rectangular.filter(hasVariance);
	const spread = parts.normal.filter((part) => hasVariance(part.standardUncertainty));
	const flat = rectangular.map((halfWidth) => ({
		standardUncertainty: halfWidth / Math.sqrt(3),
		degreesOfFreedom: Number.POSITIVE_INFINITY,
	}));
	const { standardUncertainty, degreesOfFreedom } = combined([...spread, ...flat]);
	if (spread.length === 0) {
		return {
			standardUncertainty,
			degreesOfFreedom: Number.POSITIVE_INFINITY,
			halfWidth: (coverage) => rectangularSumHalfWidth(rectangular, coverage),
			cumulative: (x) => rectangularSumCumulative(rectangular, x),
		};
	}
	const whole = wholeDegreesOfFreedom(degreesOfFreedom);
	return {
		standardUncertainty,
		degreesOfFreedom: whole,
		halfWidth: (coverage) => tQuantile((1 + coverage) / 2, whole) * standardUncertainty,
		cumulative: (x) => tCumulative(x / standardUncertainty, whole),
	};
}

/** Cut down to a whole number, at least one; what rounding of doubles took from a whole number is given back. */
export function wholeDegreesOfFreedom(degreesOfFreedom: number): number {
	return Math.max(1, Math.floor(degreesOfFreedom + 1e-9));
}

/** A spread so small that its square is no longer held (below about 1e-162) is none: dividing by it gives NaN. */
function hasVariance(spread: number): boolean {
	return spread ** 2 > 0;
}
