/** Current that a board draws from a bench supply in a named state: the board's own record decides. */
import { measured } from "./build.ts";
import type { CheckDefinition } from "./check.ts";
import { OWN_RECORD_10, OWN_RECORD_20 } from "./sources.ts";

/** `margin`: percent of the board's own record. */
export function inputCurrent(id: string, margin: 10 | 20): CheckDefinition {
	return measured(id, ["mA", "A"], {
		hint: "checks.current.hint",
		unitSymbol: "A",
		comparability: "same-instrument",
		betterIs: "neither",
		margin: { percentOfDeparture: margin, source: margin === 10 ? OWN_RECORD_10 : OWN_RECORD_20 },
		whoCan: "repairer-only",
		cautionKeys: ["checks.caution.live", "checks.caution.stop-sign"],
		stopKey: "checks.stop.current",
	});
}
