/** A check's margin as a bar: to the right of the line it holds, to the left it falls short; a tick where it was before. */
import type { Drawing } from "./drawing.ts";

export interface MarginBarData {
	/** (limit − value)/limit, or the other way round; drawn up to ± 100 %. */
	readonly margin: number;
	readonly before: number | null;
	readonly words: { readonly title: string; readonly description: string };
}

const SIZE = { width: 200, height: 18 };
const MIDDLE = SIZE.width / 2;

export function marginBar({ margin, before, words }: MarginBarData): Drawing {
	const at = (value: number) => Math.round((MIDDLE + Math.max(-1, Math.min(1, value)) * (MIDDLE - 2)) * 10) / 10;
	const [left, right] = [Math.min(at(margin), MIDDLE), Math.max(at(margin), MIDDLE)];
	return {
		...SIZE,
		title: words.title,
		description: words.description,
		primitives: [
			{ kind: "line", role: "grid", x1: 0, x2: SIZE.width, y1: SIZE.height / 2, y2: SIZE.height / 2 },
			{ kind: "path", role: margin < 0 ? "bar-short" : "bar-holds", d: `M${left},4H${right}V14H${left}Z` },
			...(before === null
				? []
				: [{ kind: "line", role: "bar-before", x1: at(before), x2: at(before), y1: 1, y2: 17 } as const]),
			{ kind: "line", role: "axis", x1: MIDDLE, x2: MIDDLE, y1: 0, y2: SIZE.height },
		],
	};
}
