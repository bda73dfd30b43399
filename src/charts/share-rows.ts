/** Shares of groups below each other: a point with its interval, and a thin line as far as the unknown ones could move it. */
import { type ScaleLinear, scaleLinear } from "d3-scale";
import type { Drawing, Primitive } from "./drawing.ts";

export interface ShareRow {
	readonly name: string;
	/** 0 to 1; null where nothing is known. */
	readonly share: number | null;
	readonly interval: readonly [low: number, high: number] | null;
	readonly bounds: readonly [low: number, high: number];
	/** Of small numbers: it does not set the scale, and is cut at its end with an arrow. */
	readonly isFew: boolean;
}

export interface ShareRowsData {
	readonly rows: readonly ShareRow[];
	readonly words: { readonly title: string; readonly description: string; readonly axis: string };
}

const SIZE = { width: 640, left: 16, right: 24, top: 8, row: 46, line: 24, bottom: 48 };
const END = SIZE.width - SIZE.right;
const PERCENT = 100;
/** Characters of a name that fit on a line, also in the larger letters of a phone; two lines at most. */
const LONGEST = 50;

export function shareRows({ rows, words }: ShareRowsData): Drawing {
	const labelled = rows.map((row) => ({ ...row, lines: linesOf(row.name) }));
	const tops = [SIZE.top];
	for (const { lines } of labelled) tops.push((tops.at(-1) ?? 0) + SIZE.row + (lines.length - 1) * SIZE.line);
	const base = tops.at(-1) ?? SIZE.top;
	const sure = rows.filter(({ isFew }) => !isFew);
	const most = Math.max(
		0.05,
		...(sure.length === 0 ? rows : sure).flatMap(({ interval, bounds }) => [interval?.[1] ?? 0, bounds[1]]),
	);
	const x = scaleLinear([0, Math.min(1, most)], [SIZE.left, END])
		.nice()
		.clamp(true);
	return {
		width: SIZE.width,
		height: base + SIZE.bottom,
		title: words.title,
		description: words.description,
		primitives: [
			...x
				.ticks(6)
				.flatMap((tick): Primitive[] => [
					line("grid", x(tick), SIZE.top, x(tick), base),
					text(x(tick), base + 20, "middle", String(Math.round(10 * PERCENT * tick) / 10)),
				]),
			line("axis", SIZE.left, base, END, base),
			text((SIZE.left + END) / 2, base + 40, "middle", words.axis),
			...labelled.flatMap((row, index) => rowMarks(row, tops[index] ?? SIZE.top, x)),
		],
	};
}

function rowMarks(
	{ lines, share, interval, bounds }: ShareRow & { readonly lines: readonly string[] },
	top: number,
	x: ScaleLinear<number, number>,
): Primitive[] {
	const y = top + 32 + (lines.length - 1) * SIZE.line;
	const [low, high] = interval ?? [0, 0];
	return [
		...lines.map((words, index) => text(SIZE.left + 4, top + 17 + index * SIZE.line, "start", words)),
		line("point-guide", x(bounds[0]), y, x(bounds[1]), y),
		line("point-guide", x(bounds[0]), y - 6, x(bounds[0]), y + 6),
		line("point-guide", x(bounds[1]), y - 6, x(bounds[1]), y + 6),
		...(interval === null
			? []
			: [
					{
						kind: "path",
						role: "bar-holds",
						d: `M${at(x(low))},${y - 3}H${at(x(high))}V${y + 3}H${at(x(low))}Z`,
					} as const,
				]),
		...(Math.max(high, bounds[1]) > (x.domain()[1] ?? 1) ? [text(END + 6, y + 4, "start", "→")] : []),
		...(share === null ? [] : [{ kind: "circle", role: "point", cx: at(x(share)), cy: y, r: 5 } as const]),
	];
}

/** Broken at a space where one is near. */
function linesOf(name: string): string[] {
	if (name.length <= LONGEST) return [name];
	const space = name.lastIndexOf(" ", LONGEST);
	const end = space > LONGEST / 2 ? space : LONGEST;
	const rest = name.slice(end).trimStart();
	return [name.slice(0, end), rest.length > LONGEST ? `${rest.slice(0, LONGEST - 1)}…` : rest];
}

const at = (value: number) => Math.round(value * 10) / 10;

function line(role: "grid" | "axis" | "point-guide", x1: number, y1: number, x2: number, y2: number): Primitive {
	return { kind: "line", role, x1: at(x1), y1, x2: at(x2), y2 };
}

function text(x: number, y: number, anchor: "start" | "middle", words: string): Primitive {
	return { kind: "text", role: "label", x: at(x), y, anchor, text: words };
}
