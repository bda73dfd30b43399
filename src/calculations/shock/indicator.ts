/**
 * What an impact indicator says. It trips on the change of velocity as much as on acceleration: the shorter the pulse, the more
 * it takes. So the drop at which it trips is a range, and no pulse but the assumed one has it.
 */
import { cite } from "../sources.ts";
import { equivalentDropHeights, pulse } from "./pulse.ts";

export interface IndicatorRow {
	readonly thresholdGn: number;
	readonly velocityChangeMPerS: number;
	/** With full rebound, and with none. */
	readonly dropBandM: readonly [low: number, high: number];
}

/** Thresholds in the trade. Source: from memory. */
const THRESHOLDS_GN = [25, 37, 50, 75, 100];
export const INDICATOR_THRESHOLDS = cite("our-choice", "thresholds of 25 to 100 gₙ, recalled", "from-memory");
/** The pulse that is assumed: a half sine of 11 ms. Our choice; a stiffer stop is shorter. */
export const INDICATOR_PULSE_MS = 11;

export function indicatorRows(): IndicatorRow[] {
	return THRESHOLDS_GN.map((thresholdGn) => {
		const { result } = pulse({ shape: "half-sine", peakGn: thresholdGn, durationMs: INDICATOR_PULSE_MS });
		const velocityChangeMPerS = result?.velocityChangeMPerS ?? Number.NaN;
		const { restitution0, restitution1 } = equivalentDropHeights(velocityChangeMPerS);
		return { thresholdGn, velocityChangeMPerS, dropBandM: [restitution1, restitution0] };
	});
}
