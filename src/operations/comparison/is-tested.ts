/** Whether an end of a row holds a result of its check. */
import type { ComparisonRow } from "../../calculations/comparison/types.ts";

export function isTested(reading: ComparisonRow["departure"]): boolean {
	return reading !== null && reading.notTested === undefined;
}
