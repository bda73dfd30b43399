/** The peak against static stress or against thickness: its band, where the foam has data, its optimum, the limit, this pack. */
import { scaleLinear, scaleLog } from "d3-scale";
import { area, line } from "d3-shape";
import type { Drawing, Primitive, Role } from "./drawing.ts";

export interface CurvePoint {
	/** Static stress, kPa, or thickness, mm. */
	readonly at: number;
	readonly peakGn: number;
	readonly lowGn: number;
	readonly highGn: number;
	/** Inside the range of the foam's data. */
	readonly inside: boolean;
	/** Below it no cushion of this thickness can stay. */
	readonly floorGn?: number;
}

interface Place {
	readonly at: number;
	readonly peakGn: number;
}

export interface PeakCurveData {
	/** Stress on a logarithmic axis, thickness on a plain one. */
	readonly over: "stress" | "thickness";
	/** From left to right. */
	readonly points: readonly CurvePoint[];
	readonly operating: Place;
	/** Null where the curve has none. */
	readonly optimum: Place | null;
	readonly limitGn: number;
	readonly words: {
		readonly title: string;
		readonly description: string;
		readonly axis: string;
		readonly peakAxis: string;
		readonly limit: string;
		readonly operating: string;
		readonly optimum: string;
		/** A number of the scales as it is written. */
		readonly tick: (value: number) => string;
	};
}

const SIZE = { width: 640, height: 400, left: 56, right: 20, top: 28, bottom: 56 };
const BASE = SIZE.height - SIZE.bottom;
const END = SIZE.width - SIZE.right;
const STRESS_TICKS_KPA = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500];
interface Point {
	readonly x: number;
	readonly y: number;
}

/** Height that a label takes. */
const LABEL_HEIGHT = 18;

/** The drawing; peaks up to what matters. Marks that would run off the top are left out. */
export function peakCurve(data: PeakCurveData): Drawing {
	const { points, operating, optimum, limitGn, words } = data;
	const places = points.map((point) => point.at);
	const topGn = Math.max(1.35 * operating.peakGn, 1.6 * limitGn, 3 * (optimum?.peakGn ?? 0));
	const reach = [Math.min(...places), Math.max(...places)];
	const x = data.over === "stress" ? scaleLog(reach, [SIZE.left, END]) : scaleLinear(reach, [SIZE.left, END]);
	const y = scaleLinear([0, topGn], [BASE, SIZE.top]).clamp(true);
	const path = (role: Role, d: string | null): Primitive[] =>
		d === null || d === "" ? [] : [{ kind: "path", role, d }];
	// The first value beyond the top still counts: clamped, it draws the line up to the edge and no further.
	const until =
		(value: (point: CurvePoint) => number) =>
		(_: CurvePoint, index: number, all: Iterable<CurvePoint>): boolean =>
			[index - 1, index, index + 1].some((near) => {
				const point = (all as readonly CurvePoint[])[near];
				return point !== undefined && value(point) <= topGn;
			});
	const curve = line<CurvePoint>()
		.defined(until((point) => point.peakGn))
		.x((point) => x(point.at))
		.y((point) => y(point.peakGn))
		.digits(1);
	const band = area<CurvePoint>()
		.defined(until((point) => point.lowGn))
		.x((point) => x(point.at))
		.y0((point) => y(point.lowGn))
		.y1((point) => y(point.highGn))
		.digits(1);
	const at = { x: x(operating.at), y: y(operating.peakGn) };
	const best = optimum === null ? null : { x: x(optimum.at), y: y(optimum.peakGn) };
	const floor = line<CurvePoint>()
		.defined(until((point) => point.floorGn ?? Number.NaN))
		.x((point) => x(point.at))
		.y((point) => y(point.floorGn ?? 0))
		.digits(1);
	const limitY = y(limitGn);
	return {
		width: SIZE.width,
		height: SIZE.height,
		title: words.title,
		description: words.description,
		primitives: [
			...axes(x, y, data),
			...path("band", band(points)),
			...path("floor", floor(points)),
			...path("curve-outside", curve(points)),
			...path("curve", curve(points.filter((point) => point.inside))),
			{ kind: "line", role: "limit", x1: SIZE.left, x2: END, y1: limitY, y2: limitY },
			text(END, limitY - 7, "end", words.limit),
			...(best === null
				? []
				: [
						{ kind: "circle", role: "optimum", cx: best.x, cy: best.y, r: 4 } as const,
						...optimumLabel(best, at, words.optimum),
					]),
			{ kind: "line", role: "point-guide", x1: at.x, x2: at.x, y1: at.y, y2: BASE },
			{ kind: "circle", role: "point", cx: at.x, cy: at.y, r: 6 },
			operatingLabel(at, best, limitY, words.operating),
		],
	};
}

/** Beside the point, on the side where there is room, clear of the limit's line; in the valley below it, clear of the curve. */
function operatingLabel(at: Point, best: Point | null, limitY: number, words: string): Primitive {
	const room = at.x < (SIZE.left + END) / 2;
	const above = at.y - 12;
	const crossed = above > limitY - 6 && above - LABEL_HEIGHT < limitY;
	const y = crossed || (best !== null && inValley(best, at)) ? Math.min(at.y + 24, BASE - 6) : above;
	return text(at.x + (room ? 12 : -12), y, room ? "start" : "end", words);
}

/** Below the curve's lowest point; left out where this pack's own mark stands there. */
function optimumLabel(best: Point, at: Point, words: string): Primitive[] {
	return inValley(best, at) ? [] : [text(best.x, Math.min(best.y + 24, BASE - 6), "middle", words)];
}

function inValley(best: Point, at: Point): boolean {
	return Math.abs(best.x - at.x) < 90 && Math.abs(best.y - at.y) < 40;
}

function text(x: number, y: number, anchor: "start" | "middle" | "end", words: string): Primitive {
	return { kind: "text", role: "label", x, y, anchor, text: words };
}

function axes(
	x: { (value: number): number; domain(): number[]; ticks(count?: number): number[] },
	y: { (value: number): number; ticks(count?: number): number[] },
	{ over, words }: PeakCurveData,
): Primitive[] {
	const [low = 0, high = 0] = x.domain();
	const ticks = over === "stress" ? STRESS_TICKS_KPA.filter((tick) => tick >= low && tick <= high) : x.ticks(8);
	return [
		...y
			.ticks(6)
			.flatMap((tick): Primitive[] => [
				{ kind: "line", role: "grid", x1: SIZE.left, x2: END, y1: y(tick), y2: y(tick) },
				text(SIZE.left - 8, y(tick) + 4, "end", words.tick(tick)),
			]),
		...ticks.flatMap((tick): Primitive[] => [
			{ kind: "line", role: "axis", x1: x(tick), x2: x(tick), y1: BASE, y2: BASE + 5 },
			text(x(tick), BASE + 20, "middle", words.tick(tick)),
		]),
		{ kind: "line", role: "axis", x1: SIZE.left, x2: END, y1: BASE, y2: BASE },
		{ kind: "line", role: "axis", x1: SIZE.left, x2: SIZE.left, y1: SIZE.top, y2: BASE },
		text((SIZE.left + END) / 2, SIZE.height - 12, "middle", words.axis),
		text(4, SIZE.top - 14, "start", words.peakAxis),
	];
}
