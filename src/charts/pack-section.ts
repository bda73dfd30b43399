/** A section through a pack, to scale: box, inner box, cushions where they bear, the item, the play that is left. */
import type { Drawing, Primitive, Role } from "./drawing.ts";

/** Cushions of one side, from the outside inwards. */
export interface SideCushion {
	readonly thicknessM: number;
	/** Pads along the side: how many, and how long each is; null where the whole side is borne. */
	readonly pads: { readonly count: number; readonly lengthM: number } | null;
}

/** A rectangle with the cushions on its four inner sides, and what stands inside them. */
export interface SectionFrame {
	/** Inside, along and upright. */
	readonly alongM: number;
	readonly uprightM: number;
	readonly left: readonly SideCushion[];
	readonly right: readonly SideCushion[];
	readonly top: readonly SideCushion[];
	readonly bottom: readonly SideCushion[];
	readonly inside: SectionFrame | { readonly itemAlongM: number; readonly itemUprightM: number };
}

export interface PackSectionData {
	readonly frame: SectionFrame;
	/** What is drawn full size: the same for sections that stand side by side, so that they share a scale. */
	readonly reach: { readonly alongM: number; readonly uprightM: number };
	readonly words: {
		readonly title: string;
		readonly description: string;
		/** Written into the item. */
		readonly item: string;
	};
}

const SIZE = { width: 360, most: 260, margin: 40 };

interface Rectangle {
	readonly x: number;
	readonly y: number;
	readonly width: number;
	readonly height: number;
}

/** The drawing. Cushions that do not fit are drawn pressed to what is there; figures are those that were given. */
export function packSection({ frame, reach, words }: PackSectionData): Drawing {
	const scale = Math.min((SIZE.width - 2 * SIZE.margin) / reach.alongM, (SIZE.most - 2 * SIZE.margin) / reach.uprightM);
	const [width, height] = [frame.alongM * scale, frame.uprightM * scale];
	const outer = { x: (SIZE.width - width) / 2, y: SIZE.margin, width, height };
	const drawn = frameMarks(frame, outer, scale, words.item);
	const total = (side: readonly SideCushion[]) => side.reduce((sum, cushion) => sum + cushion.thicknessM, 0);
	const figure = (metres: number) => String(Number((1000 * metres).toPrecision(3)));
	const [middleX, middleY] = [outer.x + width / 2, outer.y + height / 2];
	const label = (x: number, y: number, anchor: "start" | "middle" | "end", side: readonly SideCushion[]): Primitive =>
		text(x, y, anchor, figure(total(side)));
	return {
		width: SIZE.width,
		height: height + 2 * SIZE.margin,
		title: words.title,
		description: words.description,
		primitives: [
			...drawn,
			label(outer.x - 12, middleY + 4, "end", frame.left),
			label(outer.x + width + 12, middleY + 4, "start", frame.right),
			label(middleX, outer.y - 12, "middle", frame.top),
			label(middleX, outer.y + height + 24, "middle", frame.bottom),
		],
	};
}

function frameMarks(frame: SectionFrame, at: Rectangle, scale: number, itemWords: string): Primitive[] {
	const { inside } = frame;
	const body =
		"itemAlongM" in inside
			? { along: inside.itemAlongM * scale, upright: inside.itemUprightM * scale }
			: { along: inside.alongM * scale, upright: inside.uprightM * scale };
	const across = bands(frame.left, frame.right, at.width - body.along, scale);
	const upright = bands(frame.top, frame.bottom, at.height - body.upright, scale);
	const inner: Rectangle = {
		x: at.x + across.first + across.play / 2,
		y: at.y + upright.first + upright.play / 2,
		width: body.along,
		height: body.upright,
	};
	const [right, bottom] = [at.x + at.width, at.y + at.height];
	// Sheets line the box: those at the sides from bottom to lid, those at top and bottom between them.
	const wall = { start: at.y, length: at.height };
	const between = { start: at.x + across.first, length: body.along + across.play };
	const beside = { borne: { start: inner.y, length: inner.height }, lined: wall, scale };
	const above = { borne: { start: inner.x, length: inner.width }, lined: between, scale };
	return [
		rectangle("box", at),
		...cushionMarks(frame.left, { ...beside, depthScale: across.scale }, (from, depth, { start, length }) => ({
			x: at.x + from,
			y: start,
			width: depth,
			height: length,
		})),
		...cushionMarks(frame.right, { ...beside, depthScale: across.scale }, (from, depth, { start, length }) => ({
			x: right - from - depth,
			y: start,
			width: depth,
			height: length,
		})),
		...cushionMarks(frame.top, { ...above, depthScale: upright.scale }, (from, depth, { start, length }) => ({
			x: start,
			y: at.y + from,
			width: length,
			height: depth,
		})),
		...cushionMarks(frame.bottom, { ...above, depthScale: upright.scale }, (from, depth, { start, length }) => ({
			x: start,
			y: bottom - from - depth,
			width: length,
			height: depth,
		})),
		...("itemAlongM" in inside
			? [rectangle("item", inner), text(inner.x + inner.width / 2, inner.y + inner.height / 2 + 4, "middle", itemWords)]
			: frameMarks(inside, inner, scale, itemWords)),
	];
}

/** Room of the cushions on two facing sides, in drawing units: pressed alike where both do not fit. */
function bands(first: readonly SideCushion[], second: readonly SideCushion[], free: number, scale: number) {
	const thick = (side: readonly SideCushion[]) => side.reduce((sum, { thicknessM }) => sum + thicknessM * scale, 0);
	const wanted = thick(first) + thick(second);
	const press = wanted > free && wanted > 0 ? Math.max(free, 0) / wanted : 1;
	return { scale: scale * press, first: thick(first) * press, play: Math.max(free - wanted * press, 0) };
}

interface Span {
	readonly start: number;
	readonly length: number;
}

/** The cushions of a side: a sheet as long as what it lines, pads spread evenly along what they bear. */
function cushionMarks(
	side: readonly SideCushion[],
	along: { readonly borne: Span; readonly lined: Span; readonly scale: number; readonly depthScale: number },
	place: (from: number, depth: number, span: Span) => Rectangle,
): Primitive[] {
	let from = 0;
	return side.flatMap(({ thicknessM, pads }, index) => {
		const [start, depth] = [from, thicknessM * along.depthScale];
		from += depth;
		const role = index % 2 === 0 ? "cushion" : "second-cushion";
		const spans = pads === null ? [along.lined] : padSpans(pads, along.borne, along.scale);
		return spans.map((span) => rectangle(role, place(start, depth, span)));
	});
}

function padSpans({ count, lengthM }: { count: number; lengthM: number }, borne: Span, scale: number): Span[] {
	const length = Math.min(lengthM * scale, borne.length / count);
	const step = count === 1 ? 0 : (borne.length - length) / (count - 1);
	const first = borne.start + (count === 1 ? (borne.length - length) / 2 : 0);
	return Array.from({ length: count }, (_, pad) => ({ start: first + pad * step, length }));
}

function rectangle(role: Role, { x, y, width, height }: Rectangle): Primitive {
	const at = (value: number) => Math.round(value * 10) / 10;
	return { kind: "path", role, d: `M${at(x)},${at(y)}H${at(x + width)}V${at(y + height)}H${at(x)}Z` };
}

function text(x: number, y: number, anchor: "start" | "middle" | "end", words: string): Primitive {
	return { kind: "text", role: "label", x, y, anchor, text: words };
}
