/** `cushion`: the peak of one cushion, its band, and whether it keeps a limit; `cushion-fit`: a foam from its points. */
import { cushion as assessCushion } from "../../calculations/cushioning/cushion.ts";
import { cushionFit as fitCushion } from "../../calculations/cushioning/cushion-fit.ts";
import { FOAMS } from "../../catalogue/foams.ts";
import { cushionFitRequest, cushionFitResult, cushionRequest, cushionResult } from "../../contract/cushion.ts";
import { calculation } from "./calculation.ts";
import { fillerOf, foamOf } from "./foam-of.ts";

export const cushion = calculation({
	name: "cushion",
	summary: "Peak of a cushion under a falling weight, its band, loading and thickness, against a limit.",
	request: cushionRequest,
	result: cushionResult,
	example: {
		request: {
			foam: { id: "pe-plank-23c" },
			thicknessM: 0.0508,
			dropHeightM: 0.6096,
			staticStressKPa: 3.447,
			limitGn: 40,
		},
		result: {
			peakGn: 37.73,
			energyDensityKJPerM3: 41.36,
			optimumStaticStressKPa: 5.32,
			optimumPeakGn: 34.77,
			loading: "near-optimum",
			floorPeakGn: 12.0,
			verdict: "marginal",
			minimumThicknessAtStressM: 0.0466,
			minimumThicknessAtOptimumM: 0.04415,
			staticStressRangeKPa: [2.977, 8.25],
			leastThicknessAnyFoamM: 0.01524,
		},
	},
	assess: ({ foam, ...input }) =>
		assessCushion({ ...input, foam: foamOf(foam, "/foam"), filler: fillerOf(foam), catalogue: FOAMS }),
});

export const cushionFit = calculation({
	name: "cushion-fit",
	summary: "A foam's stress-energy set from points of its supplier's curve.",
	request: cushionFitRequest,
	result: cushionFitResult,
	example: {
		// Two points read off a supplier's chart for a polyethylene plank: 40 at 0.4 and at 1.2 psi, 24 in on 2 in.
		request: {
			points: [
				{ staticStressKPa: 2.7579028, dropHeightM: 0.6096, thicknessM: 0.0508, peakGn: 40 },
				{ staticStressKPa: 8.2737084, dropHeightM: 0.6096, thicknessM: 0.0508, peakGn: 40 },
			],
		},
		result: { aKPa: 63.691, bPerKPa: 0.016598, minimumCushionFactor: 2.874, predictionIntervalPercent: null },
	},
	assess: ({ points }) => fitCushion(points),
});
