/** A foam's stress-energy set from points of its supplier's curve: least squares of ln(G·s) on s·h/t. */
import { assessed, type Judged, notAssessed, sentence } from "../judged.ts";
import { cite } from "../sources.ts";
import { predictionHalfWidth, straightLine } from "../statistics/least-squares.ts";

export interface CushionPoint {
	readonly staticStressKPa: number;
	readonly dropHeightM: number;
	readonly thicknessM: number;
	readonly peakGn: number;
	/** Which drop of a sequence it is. */
	readonly drop?: number | undefined;
}

export interface CushionFit {
	readonly aKPa: number;
	readonly bPerKPa: number;
	/** e·a·b, the least G·t/h. */
	readonly minimumCushionFactor: number;
	/** Standard deviation of the points about the fit, percent of the peak; null for two points. */
	readonly residualPercent: number | null;
	readonly r2: number | null;
	/** 95 % interval of one further point, percent of the peak, at its widest inside the data; null for two points, which any set meets. */
	readonly predictionIntervalPercent: number | null;
	readonly energyDensityRangeKJPerM3: readonly [low: number, high: number];
}

/** No cushion beats a constant force over its whole thickness. Source: published, elementary energy balance. */
const LEAST_CUSHION_FACTOR = 1;
const COVERAGE = 0.95;

const SOURCES = [
	cite("stress-energy-method", "two points, or least squares of ln(G·s) on E", "from-memory"),
	cite("stress-energy-study", "15 samples, five at each of three energies, are enough for a line", "published"),
	cite("user", "points of a supplier's curve or of own drops", "user"),
];

/** First and later drops are different foams to a card: they are fitted apart, so a mix is refused. */
export function cushionFit(points: readonly CushionPoint[]): Judged<CushionFit> {
	const refuse = (code: string, values?: Record<string, number>) =>
		notAssessed(code, sentence(`cushion.fit-${code}`, values), { sources: SOURCES });
	const impossible = points.findIndex(
		(point) => !((point.peakGn * point.thicknessM) / point.dropHeightM >= LEAST_CUSHION_FACTOR),
	);
	if (impossible >= 0) return refuse("impossible-point", { number: impossible + 1 });
	if (new Set(points.map((point) => (point.drop ?? 1) > 1)).size > 1) return refuse("mixed-drops");
	const energies = points.map((point) => (point.staticStressKPa * point.dropHeightM) / point.thicknessM);
	const line = straightLine(
		points.map((point, index) => ({
			x: energies[index] ?? Number.NaN,
			y: Math.log(point.peakGn * point.staticStressKPa),
		})),
	);
	if (line === null) return refuse("one-energy");
	if (!(line.slope > 0)) return refuse("not-rising");
	const aKPa = Math.exp(line.intercept);
	const factor = Math.E * aKPa * line.slope;
	if (!(factor >= LEAST_CUSHION_FACTOR)) return refuse("impossible-set");
	const halfWidths = energies.map((energy) => predictionHalfWidth(line, COVERAGE, energy));
	const widest = halfWidths.reduce((wide, next) => (wide === null || next === null ? null : Math.max(wide, next)), 0);
	const percent = (logarithm: number | null) => (logarithm === null ? null : 100 * (Math.exp(logarithm) - 1));
	return assessed<CushionFit>(
		{
			aKPa,
			bPerKPa: line.slope,
			minimumCushionFactor: factor,
			residualPercent: percent(line.residualSd),
			r2: line.r2,
			predictionIntervalPercent: percent(widest),
			energyDensityRangeKJPerM3: [Math.min(...energies), Math.max(...energies)],
		},
		{
			notes: [
				...(points.length === 2 ? [sentence("cushion.fit-two-points")] : []),
				// Below 2 no foam has been measured: a slip of unit or digit is likelier.
				...(factor < 2 ? [sentence("cushion.fit-unlikely", { factor })] : []),
			],
			sources: SOURCES,
		},
	);
}
