/** Where a rectangle covers the picture: what was typed may reach out of it, or lie outside. */

/** Percent of the picture's width and height: place of the upper left corner, width, height. */
export interface Rectangle {
	readonly x: number;
	readonly y: number;
	readonly w: number;
	readonly h: number;
}

/** The part inside the picture; null where there is none. */
export function withinPicture({ x, y, w, h }: Rectangle): Rectangle | null {
	const left = Math.max(0, x);
	const top = Math.max(0, y);
	const width = Math.min(100, x + w) - left;
	const height = Math.min(100, y + h) - top;
	return width > 0 && height > 0 ? { x: left, y: top, w: width, h: height } : null;
}
