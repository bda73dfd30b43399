/** A straight line through points by least squares about their mean, so that large offsets cost no digits. */
import { tQuantile } from "./distributions.ts";
import { linearLeastSquares } from "./linear-least-squares.ts";

export interface StraightLine {
	readonly slope: number;
	readonly intercept: number;
	/** Standard deviation of the residuals, n − 2 degrees of freedom; null for two points, which any line meets. */
	readonly residualSd: number | null;
	/** Standard errors of slope and intercept; null for two points. */
	readonly slopeSd: number | null;
	readonly interceptSd: number | null;
	/** Share of the variation that the line explains, 0..1; null for two points. */
	readonly r2: number | null;
	readonly count: number;
	readonly meanX: number;
	/** Sum of squares of x about its mean. */
	readonly spreadX: number;
}

/** The line y = intercept + slope·x; null where all x are the same or fewer than two points are given. */
export function straightLine(points: readonly { readonly x: number; readonly y: number }[]): StraightLine | null {
	const count = points.length;
	if (count < 2) return null;
	const meanX = points.reduce((sum, point) => sum + point.x, 0) / count;
	const meanY = points.reduce((sum, point) => sum + point.y, 0) / count;
	const spreadX = points.reduce((sum, point) => sum + (point.x - meanX) ** 2, 0);
	const spreadY = points.reduce((sum, point) => sum + (point.y - meanY) ** 2, 0);
	const fit = linearLeastSquares(
		[points.map(() => 1), points.map((point) => point.x - meanX)],
		points.map((point) => point.y - meanY),
	);
	if (fit === null) return null;
	const [rest = 0, slope = 0] = fit.coefficients;
	const line = { slope, intercept: meanY + rest - slope * meanX, count, meanX, spreadX };
	const { residualSd } = fit;
	if (residualSd === null) return { ...line, residualSd, slopeSd: null, interceptSd: null, r2: null };
	return {
		...line,
		residualSd,
		slopeSd: fit.standardErrors?.[1] ?? null,
		interceptSd: residualSd * Math.sqrt(1 / count + meanX ** 2 / spreadX),
		r2: spreadY > 0 ? 1 - fit.sumOfSquares / spreadY : 1,
	};
}

/** Half width of the prediction interval of one further point at x, by default in the middle of the data; null for two points. */
export function predictionHalfWidth(line: StraightLine, coverageProbability: number, x = line.meanX): number | null {
	if (line.residualSd === null) return null;
	const quantile = tQuantile((1 + coverageProbability) / 2, line.count - 2);
	return quantile * line.residualSd * Math.sqrt(1 + 1 / line.count + (x - line.meanX) ** 2 / line.spreadX);
}
