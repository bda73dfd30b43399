/** The cushion curve: peak against static stress, the band about it, where the foam has data, the limit, the point at work. */
import { scaleLinear, scaleLog } from "d3-scale";
import { area, line } from "d3-shape";
import type { Drawing, Primitive, Role } from "./drawing.ts";

export interface CurvePoint {
	readonly staticStressKPa: number;
	readonly peakGn: number;
	readonly lowGn: number;
	readonly highGn: number;
	/** Inside the range of the foam's data. */
	readonly inside: boolean;
}

export interface CushionCurveData {
	/** In rising stress. */
	readonly points: readonly CurvePoint[];
	readonly operating: { readonly staticStressKPa: number; readonly peakGn: number };
	readonly limitGn: number;
	readonly words: {
		readonly title: string;
		readonly description: string;
		readonly stressAxis: string;
		readonly peakAxis: string;
		readonly limit: string;
		readonly operating: string;
	};
}

const SIZE = { width: 640, height: 400, left: 64, right: 20, top: 24, bottom: 56 };

/** The drawing; stress on a logarithmic axis, peaks up to twice what matters. */
export function cushionCurve({ points, operating, limitGn, words }: CushionCurveData): Drawing {
	const stresses = points.map((point) => point.staticStressKPa);
	const x = scaleLog([Math.min(...stresses), Math.max(...stresses)], [SIZE.left, SIZE.width - SIZE.right]);
	const least = Math.min(...points.map((point) => point.peakGn));
	const top = Math.max(1.4 * operating.peakGn, 1.6 * limitGn, 3 * least);
	const y = scaleLinear([0, top], [SIZE.height - SIZE.bottom, SIZE.top]).clamp(true);
	const path = (role: Role, d: string | null): Primitive[] => (d === null ? [] : [{ kind: "path", role, d }]);
	// What runs off the top is left out, so that no line is drawn where no value is.
	const curve = line<CurvePoint>()
		.defined((point) => point.peakGn <= top)
		.x((point) => x(point.staticStressKPa))
		.y((point) => y(point.peakGn));
	const band = area<CurvePoint>()
		.x((point) => x(point.staticStressKPa))
		.y0((point) => y(point.lowGn))
		.y1((point) => y(point.highGn));
	const at = { x: x(operating.staticStressKPa), y: y(operating.peakGn) };
	const right = at.x < SIZE.width / 2;
	const primitives: Primitive[] = [
		...axes(x, y, words),
		...path("band", band(points)),
		...path("curve-outside", curve(points)),
		...path("curve", curve(points.filter((point) => point.inside))),
		{ kind: "line", role: "limit", x1: SIZE.left, x2: SIZE.width - SIZE.right, y1: y(limitGn), y2: y(limitGn) },
		{ kind: "text", role: "label", x: SIZE.width - SIZE.right, y: y(limitGn) - 6, anchor: "end", text: words.limit },
		{ kind: "line", role: "optimum", x1: at.x, x2: at.x, y1: at.y, y2: SIZE.height - SIZE.bottom },
		{ kind: "circle", role: "point", cx: at.x, cy: at.y, r: 6 },
		{
			kind: "text",
			role: "label",
			x: at.x + (right ? 12 : -12),
			y: at.y - 12,
			anchor: right ? "start" : "end",
			text: words.operating,
		},
	];
	return { width: SIZE.width, height: SIZE.height, title: words.title, description: words.description, primitives };
}

function axes(
	x: { (value: number): number; ticks(count?: number): number[]; domain(): number[] },
	y: { (value: number): number; ticks(count?: number): number[] },
	words: CushionCurveData["words"],
): Primitive[] {
	const base = SIZE.height - SIZE.bottom;
	const [low = 0.1, high = 100] = x.domain();
	const stressTicks = [0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100].filter((tick) => tick >= low && tick <= high);
	return [
		...y.ticks(6).flatMap((tick): Primitive[] => [
			{ kind: "line", role: "grid", x1: SIZE.left, x2: SIZE.width - SIZE.right, y1: y(tick), y2: y(tick) },
			{ kind: "text", role: "label", x: SIZE.left - 8, y: y(tick) + 4, anchor: "end", text: String(tick) },
		]),
		...stressTicks.flatMap((tick): Primitive[] => [
			{ kind: "line", role: "grid", x1: x(tick), x2: x(tick), y1: base, y2: base + 5 },
			{ kind: "text", role: "label", x: x(tick), y: base + 20, anchor: "middle", text: String(tick) },
		]),
		{ kind: "line", role: "axis", x1: SIZE.left, x2: SIZE.width - SIZE.right, y1: base, y2: base },
		{ kind: "line", role: "axis", x1: SIZE.left, x2: SIZE.left, y1: SIZE.top, y2: base },
		{
			kind: "text",
			role: "label",
			x: (SIZE.left + SIZE.width - SIZE.right) / 2,
			y: SIZE.height - 12,
			anchor: "middle",
			text: words.stressAxis,
		},
		{ kind: "text", role: "label", x: SIZE.left, y: SIZE.top - 8, anchor: "start", text: words.peakAxis },
	];
}
