/** What was recorded over a trip: the least and the greatest of every stretch, bands of custody behind, events on top. */
import { scaleLinear } from "d3-scale";
import { line } from "d3-shape";
import type { Drawing, Primitive } from "./drawing.ts";

export interface Stretch {
	readonly from: number;
	readonly to: number;
	readonly least: number;
	readonly greatest: number;
}

export interface OverTimeData {
	/** In rising time, in the unit of the axis. */
	readonly stretches: readonly Stretch[];
	/** Neighbours are shaded in turn; what lies beside the recording is cut. */
	readonly bands: readonly { readonly from: number; readonly to: number; readonly label: string }[];
	readonly events: readonly { readonly at: number; readonly value: number; readonly label: string }[];
	/** Of what changes slowly and is noted seldom: a line leads from stretch to stretch. */
	readonly joined: boolean;
	/** Null: the scale follows the values; otherwise it begins there. */
	readonly base: number | null;
	readonly words: {
		readonly title: string;
		readonly description: string;
		readonly axis: string;
		readonly valueAxis: string;
		/** A number of the scales as it is written. */
		readonly tick: (value: number) => string;
	};
}

const SIZE = { width: 640, left: 52, right: 16, top: 46, bottom: 50 };
const END = SIZE.width - SIZE.right;
/** A label needs this much of the width. */
const LABEL_ROOM = 70;
/** No recorder tells less apart. */
const SMALLEST = 1e-6;
/** Stretches that are drawn: about one to a point of the width. */
const MOST_DRAWN = 700;

export function overTime(data: OverTimeData, height = 320): Drawing {
	const { words } = data;
	const stretches = folded(data.stretches);
	const base = height - SIZE.bottom;
	const [first, last] = [stretches[0]?.from ?? 0, stretches.at(-1)?.to ?? 1];
	const values = [
		...stretches.flatMap(({ least, greatest }) => [least, greatest]),
		...data.events.map(({ value }) => value),
	];
	const [low, high] = [data.base ?? Math.min(...values), Math.max(...values)];
	// Values that lie closer than a scale can divide are drawn as one.
	const size = Math.max(Math.abs(low), Math.abs(high), SMALLEST);
	const room = high - low > 1e-9 * size ? 0.06 * (high - low) : size;
	const x = scaleLinear([first, last > first ? last : first + 1], [SIZE.left, END]).clamp(true);
	const y = scaleLinear([data.base ?? low - room, high + room], [base, SIZE.top]).clamp(true);
	const shown = data.bands.filter(({ from, to }) => to > first && from < last);
	return {
		width: SIZE.width,
		height,
		title: words.title,
		description: words.description,
		primitives: [
			...shown.flatMap((band, index): Primitive[] => [
				...(index % 2 === 0
					? [{ kind: "path", role: "band", d: rectangle(x(band.from), SIZE.top, x(band.to), base) } as const]
					: []),
				...bandLabel(x(band.from), x(band.to), SIZE.top - 26 + 14 * (index % 2), band.label),
			]),
			...y
				.ticks(5)
				.flatMap((tick): Primitive[] => [
					{ kind: "line", role: "grid", x1: SIZE.left, x2: END, y1: y(tick), y2: y(tick) },
					text(SIZE.left - 6, y(tick) + 4, "end", words.tick(tick)),
				]),
			...x
				.ticks(6)
				.flatMap((tick): Primitive[] => [
					{ kind: "line", role: "axis", x1: x(tick), x2: x(tick), y1: base, y2: base + 5 },
					text(x(tick), base + 19, "middle", words.tick(tick)),
				]),
			{ kind: "line", role: "axis", x1: SIZE.left, x2: END, y1: base, y2: base },
			{ kind: "line", role: "axis", x1: SIZE.left, x2: SIZE.left, y1: SIZE.top, y2: base },
			{ kind: "path", role: "envelope", d: envelope(stretches, x, y) },
			...(data.joined ? [{ kind: "path", role: "curve-outside", d: through(stretches, x, y) } as const] : []),
			...data.events.flatMap(({ at, value, label }): Primitive[] => [
				{ kind: "circle", role: "point", cx: x(at), cy: y(value), r: 5 },
				text(x(at) + (x(at) > END - 40 ? -8 : 8), y(value) + 4, x(at) > END - 40 ? "end" : "start", label),
			]),
			text((SIZE.left + END) / 2, height - 10, "middle", words.axis),
			text(4, 14, "start", words.valueAxis),
		],
	};
}

/** Inside the drawing: from the band's left edge, in the right half up to its right edge. Left out where the band is narrow. */
function bandLabel(from: number, to: number, y: number, label: string): Primitive[] {
	if (to - from < LABEL_ROOM) return [];
	return from < (SIZE.left + END) / 2 ? [text(from + 4, y, "start", label)] : [text(to - 4, y, "end", label)];
}

/** Stretches that begin within one point of the width are joined, so that none reaches over a gap; those without samples left out. */
function folded(stretches: readonly Stretch[]): Stretch[] {
	const [first, last] = [stretches[0]?.from ?? 0, stretches.at(-1)?.to ?? 1];
	const kept: Stretch[] = [];
	let open = -1;
	for (const stretch of stretches) {
		if (!(stretch.least <= stretch.greatest)) continue;
		const point = Math.min(MOST_DRAWN - 1, Math.floor((MOST_DRAWN * (stretch.from - first)) / (last - first || 1)));
		const before = kept.at(-1);
		if (before === undefined || point !== open) kept.push(stretch);
		else
			kept[kept.length - 1] = {
				from: before.from,
				to: stretch.to,
				least: Math.min(before.least, stretch.least),
				greatest: Math.max(before.greatest, stretch.greatest),
			};
		open = point;
	}
	return kept;
}

/** Each stretch as an upright box, at least a point high, so that one that does not change is seen. */
function envelope(stretches: readonly Stretch[], x: (at: number) => number, y: (value: number) => number): string {
	return stretches
		.map(({ from, to, least, greatest }) => {
			const [top, bottom] = [y(greatest), y(least)];
			return rectangle(x(from), top, Math.max(x(to), x(from) + 0.8), Math.max(bottom, top + 1));
		})
		.join("");
}

/** A line through the middle of each stretch. */
function through(stretches: readonly Stretch[], x: (at: number) => number, y: (value: number) => number): string {
	const middle = line<Stretch>()
		.x(({ from }) => x(from))
		.y(({ least, greatest }) => y((least + greatest) / 2))
		.digits(1);
	return middle(stretches) ?? "";
}

function rectangle(x1: number, y1: number, x2: number, y2: number): string {
	return `M${x1.toFixed(1)},${y1.toFixed(1)}H${x2.toFixed(1)}V${y2.toFixed(1)}H${x1.toFixed(1)}Z`;
}

function text(x: number, y: number, anchor: "start" | "middle" | "end", words: string): Primitive {
	return { kind: "text", role: "label", x, y, anchor, text: words };
}
