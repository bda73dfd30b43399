/** Speeds and widths of a link as registers and tools print them. What no link can have is no value. */
import { LINK_GENERATIONS, LINK_WIDTHS } from "../catalogue/link-generations.ts";

const SPEEDS = new Set(Object.values(LINK_GENERATIONS));

/** A speed in GT/s that is a generation's; null for 20, 25 and whatever else is none: never rounded to one. */
export function linkSpeed(gtPerS: number): number | null {
	return SPEEDS.has(gtPerS) ? gtPerS : null;
}

/** A number of lanes that a link can have. */
export function linkWidth(lanes: number): number | null {
	return LINK_WIDTHS.includes(lanes) ? lanes : null;
}

/** Some tools print MT/s, also under the name of GT/s: 16000 is 16 GT/s, 2500 is 2.5. */
export function linkSpeedOfEither(printed: number): number | null {
	return linkSpeed(printed) ?? linkSpeed(printed / 1000);
}
