/** The chance that a fault passes a soak unseen, over the hours: this soak on it, and how far it would have to go. */
import { scaleLinear } from "d3-scale";
import { line } from "d3-shape";
import type { Drawing, Primitive } from "./drawing.ts";

export interface EscapePoint {
	readonly hours: number;
	readonly probability: number;
}

export interface EscapeCurveData {
	/** From left to right, the first at 0 h. */
	readonly points: readonly EscapePoint[];
	readonly now: EscapePoint;
	/** Hours that something asks for, with what. */
	readonly marks: readonly { readonly hours: number; readonly label: string }[];
	readonly words: {
		readonly title: string;
		readonly description: string;
		readonly hoursAxis: string;
		readonly chanceAxis: string;
		readonly now: string;
	};
}

const SIZE = { width: 640, height: 300, left: 56, right: 24, top: 32, bottom: 52 };
const BASE = SIZE.height - SIZE.bottom;
const END = SIZE.width - SIZE.right;
const PERCENT = 100;
/** Height that a label takes: marks write theirs one below the other. */
const LABEL_HEIGHT = 20;

export function escapeCurve({ points, now, marks, words }: EscapeCurveData): Drawing {
	const x = scaleLinear([0, Math.max(...points.map((point) => point.hours))], [SIZE.left, END]);
	const y = scaleLinear([0, 1], [BASE, SIZE.top]);
	const path = line<EscapePoint>()
		.x((point) => x(point.hours))
		.y((point) => y(point.probability))
		.digits(1)(points);
	const [atX, atY] = [x(now.hours), y(now.probability)];
	const left = atX > (SIZE.left + END) / 2;
	return {
		width: SIZE.width,
		height: SIZE.height,
		title: words.title,
		description: words.description,
		primitives: [
			...y
				.ticks(5)
				.flatMap((tick): Primitive[] => [
					{ kind: "line", role: "grid", x1: SIZE.left, x2: END, y1: y(tick), y2: y(tick) },
					text(SIZE.left - 8, y(tick) + 4, "end", String(Math.round(PERCENT * tick))),
				]),
			...x
				.ticks(6)
				.flatMap((tick): Primitive[] => [
					{ kind: "line", role: "axis", x1: x(tick), x2: x(tick), y1: BASE, y2: BASE + 5 },
					text(x(tick), BASE + 20, "middle", String(tick)),
				]),
			{ kind: "line", role: "axis", x1: SIZE.left, x2: END, y1: BASE, y2: BASE },
			text((SIZE.left + END) / 2, SIZE.height - 8, "middle", words.hoursAxis),
			text(4, SIZE.top - 16, "start", words.chanceAxis),
			...(path === null ? [] : [{ kind: "path", role: "curve", d: path } as const]),
			...marks.flatMap(({ hours, label }, index): Primitive[] => {
				const at = x(hours);
				const before = at > (SIZE.left + END) / 2;
				return [
					{ kind: "line", role: "limit", x1: at, x2: at, y1: SIZE.top, y2: BASE },
					text(at + (before ? -6 : 6), SIZE.top + 12 + index * LABEL_HEIGHT, before ? "end" : "start", label),
				];
			}),
			{ kind: "circle", role: "point", cx: atX, cy: atY, r: 6 },
			text(atX + (left ? -12 : 12), Math.max(atY - 20, SIZE.top + 80), left ? "end" : "start", words.now),
		],
	};
}

function text(x: number, y: number, anchor: "start" | "middle" | "end", words: string): Primitive {
	return { kind: "text", role: "label", x, y, anchor, text: words };
}
