/** How large a drawing stands on a page: smaller, within bounds, where that spares the rest of the page from standing empty. */
import type { Drawing } from "../charts/drawing.ts";
import { WIDTH } from "./page-styles.ts";

/** Points to a drawing's unit. Its letters of 13 are 8 points, and 6.8 at the least. Our choice. */
const LARGEST = 0.62;
const LEAST = 0.52;

export interface FigureSize {
	readonly width: number;
	readonly height: number;
}

export function leastFigure({ width, height }: Pick<Drawing, "width" | "height">): FigureSize {
	return scaled({ width, height }, LEAST);
}

/** @param room height that is left for it, in points */
export function figureFor({ width, height }: Pick<Drawing, "width" | "height">, room: number): FigureSize {
	return scaled({ width, height }, Math.max(LEAST, Math.min(LARGEST, room / height)));
}

function scaled({ width, height }: FigureSize, scale: number): FigureSize {
	const fitting = Math.min(scale, WIDTH / width);
	return { width: width * fitting, height: height * fitting };
}
