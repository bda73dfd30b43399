/** One check at two ends: both values with their intervals on one scale, and the limits that lie near. */
import { scaleLinear } from "d3-scale";
import type { Drawing, Primitive } from "./drawing.ts";

export interface EndOnScale {
	readonly value: number;
	/** Null: nothing says how far the value may be off. An end that is null runs on beyond the scale. */
	readonly interval: readonly [low: number | null, high: number | null] | null;
}

export interface TwoEndsData {
	readonly departure: EndOnScale;
	readonly arrival: EndOnScale;
	readonly limits: readonly number[];
	readonly words: {
		readonly title: string;
		readonly description: string;
		readonly departure: string;
		readonly arrival: string;
		/** A number of the scale as it is written. */
		readonly tick: (value: number) => string;
	};
}

const WIDTH = 360;
const HEIGHT = 84;
const LEFT = 104;
const RIGHT = 346;
const ROWS = { departure: 18, arrival: 44 } as const;
const BASE = 62;

/** Limits farther away than three times the width of what is drawn are left out: they would press both ends into a point. */
const NEAR = 3;

export function twoEnds({ departure, arrival, limits, words }: TwoEndsData): Drawing {
	const known = [departure, arrival].flatMap(({ value, interval }) => [value, ...(interval ?? [])]);
	const bounds = known.filter((bound): bound is number => bound !== null && Number.isFinite(bound));
	const [least, most] = [Math.min(...bounds), Math.max(...bounds)];
	const width = widthOf(least, most);
	const near = limits.filter((limit) => limit >= least - NEAR * width && limit <= most + NEAR * width);
	const [low, high] = [Math.min(least, ...near), Math.max(most, ...near)];
	const pad = high - low >= width ? (high - low) * 0.06 : width;
	const x = scaleLinear([low - pad, high + pad], [LEFT, RIGHT]).clamp(true);
	const row = (end: EndOnScale, y: number, label: string, role: "optimum" | "point"): Primitive[] => [
		{ kind: "text", role: "label", x: 0, y: y + 4, anchor: "start", text: label },
		...intervalMarks(end, y, x),
		{ kind: "circle", role, cx: x(end.value), cy: y, r: 5 },
	];
	return {
		width: WIDTH,
		height: HEIGHT,
		title: words.title,
		description: words.description,
		primitives: [
			{ kind: "line", role: "grid", x1: LEFT, x2: RIGHT, y1: BASE, y2: BASE },
			...x.ticks(3).map(
				(tick): Primitive => ({
					kind: "text",
					role: "label",
					x: x(tick),
					y: BASE + 16,
					anchor: "middle",
					text: words.tick(tick),
				}),
			),
			...near.map((limit): Primitive => ({ kind: "line", role: "limit", x1: x(limit), x2: x(limit), y1: 4, y2: BASE })),
			...row(departure, ROWS.departure, words.departure, "optimum"),
			...row(arrival, ROWS.arrival, words.arrival, "point"),
		],
	};
}

/** How wide the drawn values lie; where a scale could not tell them apart, a tenth of their size. */
function widthOf(least: number, most: number): number {
	const size = Math.max(Math.abs(least), Math.abs(most));
	const width = most - least;
	if (width > size * 1e-9 && width > SMALLEST) return width;
	return size > SMALLEST ? size * 0.1 : 1;
}

/** Below this a double has too few digits left to divide a scale by. */
const SMALLEST = 1e-200;

/** The interval as a line; a closed end has a bar across, an open end runs to the edge without one. */
function intervalMarks({ interval }: EndOnScale, y: number, x: (value: number) => number): Primitive[] {
	if (interval === null) return [];
	const [low, high] = interval;
	const bar = (bound: number | null): Primitive[] =>
		bound === null ? [] : [{ kind: "line", role: "axis", x1: x(bound), x2: x(bound), y1: y - 6, y2: y + 6 }];
	const [x1, x2] = [low === null ? LEFT : x(low), high === null ? RIGHT : x(high)];
	return [{ kind: "line", role: "axis", x1, x2, y1: y, y2: y }, ...bar(low), ...bar(high)];
}
