/** A straight line through points by least squares, in two passes so that large offsets cost no digits. */
import { tQuantile } from "./distributions.ts";

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
}

/** The line y = intercept + slope·x; null where all x are the same or fewer than two points are given. */
export function straightLine(points: readonly { readonly x: number; readonly y: number }[]): StraightLine | null {
	const count = points.length;
	if (count < 2) return null;
	const meanX = points.reduce((sum, point) => sum + point.x, 0) / count;
	const meanY = points.reduce((sum, point) => sum + point.y, 0) / count;
	const sxx = points.reduce((sum, point) => sum + (point.x - meanX) ** 2, 0);
	const sxy = points.reduce((sum, point) => sum + (point.x - meanX) * (point.y - meanY), 0);
	const syy = points.reduce((sum, point) => sum + (point.y - meanY) ** 2, 0);
	if (!(sxx > 0)) return null;
	const slope = sxy / sxx;
	const intercept = meanY - slope * meanX;
	if (count === 2) return { slope, intercept, residualSd: null, slopeSd: null, interceptSd: null, r2: null, count };
	const squares = points.reduce((sum, { x, y }) => sum + (y - intercept - slope * x) ** 2, 0);
	const residualSd = Math.sqrt(squares / (count - 2));
	return {
		slope,
		intercept,
		residualSd,
		slopeSd: residualSd / Math.sqrt(sxx),
		interceptSd: residualSd * Math.sqrt(1 / count + meanX ** 2 / sxx),
		r2: syy > 0 ? 1 - squares / syy : 1,
		count,
	};
}

/** Half width of the prediction interval of one further point in the middle of the data; null for two points. */
export function predictionHalfWidth(line: StraightLine, coverageProbability: number): number | null {
	if (line.residualSd === null) return null;
	const quantile = tQuantile((1 + coverageProbability) / 2, line.count - 2);
	return quantile * line.residualSd * Math.sqrt(1 + 1 / line.count);
}
