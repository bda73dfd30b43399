/** Paints a drawing into a PDF: the same marks as on a page, with ink and weight by the role of each. */
import type { Drawing, Primitive, Role } from "../charts/drawing.ts";
import type { Style } from "./page-styles.ts";
import type { Typesetter } from "./typesetter.ts";

interface Ink {
	readonly stroke?: string;
	readonly fill?: string;
	/** In the drawing's own units. */
	readonly width?: number;
	readonly dash?: readonly [on: number, off: number];
}

const DARK = "#1d2730";
const QUIET = "#5b6670";

/** No two roles that stand beside each other differ by colour alone: one is dashed, hollow or heavier. */
const INKS: Readonly<Record<Role, Ink>> = {
	axis: { stroke: QUIET, width: 1 },
	grid: { stroke: "#d5dade", width: 1 },
	band: { fill: "#dbe6ee" },
	curve: { stroke: "#1f5f8b", width: 2.2 },
	"curve-outside": { stroke: "#1f5f8b", width: 1.4, dash: [5, 4] },
	limit: { stroke: "#8a2f1b", width: 1.6, dash: [9, 4] },
	"limit-curve": { stroke: "#8a2f1b", width: 1.6, dash: [9, 4] },
	envelope: { stroke: "#1f5f8b", fill: "#1f5f8b", width: 1 },
	point: { stroke: DARK, fill: DARK, width: 1 },
	"point-guide": { stroke: DARK, width: 1, dash: [2, 3] },
	optimum: { stroke: "#1f5f8b", fill: "#ffffff", width: 1.6 },
	floor: { stroke: QUIET, width: 1.2, dash: [1, 3] },
	box: { stroke: DARK, width: 2 },
	item: { stroke: DARK, fill: "#c9d3da", width: 1.4 },
	cushion: { stroke: QUIET, fill: "#eef2f4", width: 1 },
	"second-cushion": { stroke: QUIET, fill: "#dfe6ea", width: 1, dash: [3, 2] },
	"bar-holds": { fill: "#3c6e57" },
	"bar-short": { fill: "#8a2f1b" },
	"bar-before": { stroke: QUIET, width: 1, dash: [3, 2] },
	label: { fill: DARK },
};

/** Size of a chart's letters in its own units, as on the pages. */
const LETTERS = 13;

/** Paints with the upper left corner at `x`, `y`, as wide as `width` points. */
export function paintDrawing(
	doc: PDFKit.PDFDocument,
	drawing: Drawing,
	{ x, y, width }: { readonly x: number; readonly y: number; readonly width: number },
	type: Typesetter,
): void {
	doc.save();
	doc.translate(x, y).scale(width / drawing.width);
	for (const primitive of drawing.primitives) paintPrimitive(doc, primitive, type);
	doc.restore();
}

function paintPrimitive(doc: PDFKit.PDFDocument, primitive: Primitive, type: Typesetter): void {
	if (primitive.kind === "text") {
		paintText(primitive, type);
		return;
	}
	const { stroke, fill, width = 1, dash } = INKS[primitive.role];
	doc.lineWidth(width);
	if (dash === undefined) doc.undash();
	else doc.dash(dash[0], { space: dash[1] });
	if (primitive.kind === "path") doc.path(primitive.d);
	else if (primitive.kind === "line") doc.moveTo(primitive.x1, primitive.y1).lineTo(primitive.x2, primitive.y2);
	else doc.circle(primitive.cx, primitive.cy, primitive.r);
	if (stroke !== undefined && fill !== undefined && primitive.kind !== "line") doc.fillAndStroke(fill, stroke);
	else if (stroke !== undefined) doc.stroke(stroke);
	else doc.fill(fill ?? DARK);
}

const LABEL: Style = { font: "text", size: LETTERS, color: DARK };

/** The given height is that of the letters' base line. */
function paintText(primitive: Primitive & { readonly kind: "text" }, type: Typesetter): void {
	for (const line of type.linesOf(primitive.text, LABEL, Number.POSITIVE_INFINITY)) {
		const before = { start: 0, middle: line.width / 2, end: line.width }[primitive.anchor];
		type.paint(line, { x: primitive.x - before, y: primitive.y - type.ascent(LABEL), width: line.width }, LABEL);
	}
}
