/** A shock over time, or its response spectrum on logarithmic axes with a limit that rises with the frequency. */
import { scaleLinear, scaleLog } from "d3-scale";
import { line } from "d3-shape";
import type { Drawing, Primitive } from "./drawing.ts";

export interface ShockPoint {
	readonly at: number;
	readonly gn: number;
}

export interface ShockPlotData {
	/** `spectrum`: both axes logarithmic. */
	readonly over: "time" | "spectrum";
	/** Left to right. */
	readonly points: readonly ShockPoint[];
	/** A line of what is allowed, left to right; empty where nothing is known. */
	readonly limit: readonly ShockPoint[];
	/** Where on the limit the item itself stands. */
	readonly mark: ShockPoint | null;
	readonly words: {
		readonly title: string;
		readonly description: string;
		readonly axis: string;
		readonly valueAxis: string;
		readonly limit: string;
		readonly mark: string;
		/** A number of the scales as it is written. */
		readonly tick: (value: number) => string;
	};
}

const SIZE = { width: 640, height: 320, left: 56, right: 16, top: 34, bottom: 50 };
const BASE = SIZE.height - SIZE.bottom;
const END = SIZE.width - SIZE.right;
const STEPS = [1, 2, 5];

export function shockPlot({ over, points, limit, mark, words }: ShockPlotData): Drawing {
	const ats = points.map(({ at }) => at);
	const sizes = points.map(({ gn }) => gn);
	const [most, least] = [Math.max(...sizes), Math.min(...sizes)];
	const reach = [Math.min(...ats), Math.max(...ats)];
	const spectrum = over === "spectrum";
	// A spectrum's lowest value may be 0, which a logarithmic axis does not have.
	const bottom = spectrum ? Math.max(least, most / 1000) / 1.5 : Math.min(0, least);
	const x = spectrum ? scaleLog(reach, [SIZE.left, END]) : scaleLinear(reach, [SIZE.left, END]);
	const y = (spectrum ? scaleLog : scaleLinear)([bottom, most * (spectrum ? 2 : 1.1)], [BASE, SIZE.top]).clamp(true);
	const inside = limit.filter(
		({ at, gn }) => at >= (reach[0] ?? 0) && at <= (reach[1] ?? 0) && gn <= most * 2 && gn >= bottom,
	);
	const path = line<ShockPoint>()
		.x(({ at }) => x(at))
		.y(({ gn }) => y(gn))
		.digits(1);
	const ticksOf = (low: number, high: number, plain: readonly number[]) => (spectrum ? decades(low, high) : plain);
	const marked = mark !== null && mark.at >= (reach[0] ?? 0) && mark.at <= (reach[1] ?? 0) ? mark : null;
	const end = inside.at(-1);
	return {
		width: SIZE.width,
		height: SIZE.height,
		title: words.title,
		description: words.description,
		primitives: [
			...ticksOf(bottom, most * 2, y.ticks(5)).flatMap((tick): Primitive[] => [
				{ kind: "line", role: "grid", x1: SIZE.left, x2: END, y1: y(tick), y2: y(tick) },
				text(SIZE.left - 6, y(tick) + 4, "end", words.tick(tick)),
			]),
			...ticksOf(reach[0] ?? 1, reach[1] ?? 10, x.ticks(7)).flatMap((tick): Primitive[] => [
				{ kind: "line", role: "axis", x1: x(tick), x2: x(tick), y1: BASE, y2: BASE + 5 },
				text(x(tick), BASE + 19, "middle", words.tick(tick)),
			]),
			{ kind: "line", role: "axis", x1: SIZE.left, x2: END, y1: BASE, y2: BASE },
			{ kind: "line", role: "axis", x1: SIZE.left, x2: SIZE.left, y1: SIZE.top, y2: BASE },
			{ kind: "path", role: "curve", d: path(points) ?? "" },
			...(end === undefined
				? []
				: [
						{ kind: "path", role: "limit-curve", d: path(inside) ?? "" } as const,
						text(Math.min(x(end.at), END) - 6, Math.max(y(end.gn), SIZE.top) - 6, "end", words.limit),
					]),
			...(marked === null
				? []
				: [
						{ kind: "line", role: "point-guide", x1: x(marked.at), x2: x(marked.at), y1: SIZE.top, y2: BASE } as const,
						{ kind: "circle", role: "optimum", cx: x(marked.at), cy: y(marked.gn), r: 5 } as const,
						text(x(marked.at) + 8, BASE - 8, "start", words.mark),
					]),
			text((SIZE.left + END) / 2, SIZE.height - 10, "middle", words.axis),
			text(4, 14, "start", words.valueAxis),
		],
	};
}

/** 1, 2 and 5 of each power of ten. */
function decades(low: number, high: number): number[] {
	const from = Math.floor(Math.log10(low));
	const to = Math.ceil(Math.log10(high));
	return Array.from({ length: to - from + 1 }, (_, index) => 10 ** (from + index))
		.flatMap((power) => STEPS.map((step) => Number((step * power).toPrecision(2))))
		.filter((tick) => tick >= low && tick <= high);
}

function text(x: number, y: number, anchor: "start" | "middle" | "end", words: string): Primitive {
	return { kind: "text", role: "label", x, y, anchor, text: words };
}
