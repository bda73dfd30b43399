/** `reading-comparison`: one check at two ends. */
import { readingComparison as compare } from "../../calculations/comparison/reading-comparison.ts";
import { readingComparisonRequest, readingComparisonResult } from "../../contract/reading-comparison.ts";
import { calculation } from "./calculation.ts";

export const readingComparison = calculation({
	name: "reading-comparison",
	summary: "Compares one reading before dispatch with one on arrival: conformity at each end, then the difference.",
	request: readingComparisonRequest,
	result: readingComparisonResult,
	example: {
		request: {
			kind: "measured",
			comparability: "stated-uncertainty",
			betterIs: "neither",
			limits: { low: 11.04, high: 12.6 },
			equivalenceMargin: 0.25,
			departure: { values: [12.03], instrument: { id: "dmm-1", percentOfReading: 0.5, counts: 2, resolution: 0.01 } },
			arrival: { values: [11.98], instrument: { id: "dmm-2", percentOfReading: 0.5, counts: 2, resolution: 0.01 } },
		},
		result: {
			difference: -0.05,
			expandedUncertainty: 0.1243,
			intervalOf: "difference",
			interval: [-0.1743, 0.0743],
			verdict: "equivalent",
			direction: "sideways",
			conformity: { departure: { verdict: "proven-good" }, arrival: { verdict: "proven-good" } },
		},
	},
	assess: compare,
});
