/** The figures of impact indicators, for pages. */
import { INDICATOR_PULSE_MS, type IndicatorRow, indicatorRows } from "../../calculations/shock/indicator.ts";

export function indicatorTable(): { readonly rows: readonly IndicatorRow[]; readonly pulseMs: number } {
	return { rows: indicatorRows(), pulseMs: INDICATOR_PULSE_MS };
}
