/** `soak`: what a soak and cold starts exclude. */
import { soak as judge } from "../../calculations/screening/soak.ts";
import { amountOf, soakRequest, soakResult } from "../../contract/soak.ts";
import { calculation } from "./calculation.ts";

export const soak = calculation({
	name: "soak",
	summary: "What clean hours and cold starts exclude and do not, and how long to go on.",
	request: soakRequest,
	result: soakResult,
	example: {
		request: {
			hours: 24,
			failures: 0,
			coldStarts: 10,
			coldStartFailures: 0,
			confidence: 0.95,
			meanTimeToShowH: 8,
			startFaultProbability: 0.2,
			priorProbability: 0.3,
			targetProbability: 0.02,
			costPerH: 1.5,
			costOfReturn: 300,
		},
		result: {
			rateUpperBoundPerH: 0.124822,
			meanTimeLowerBoundH: 8.0114,
			escapeProbability: 0.00534585,
			coldStartFailureUpperBound: 0.258865551,
			hoursForConfidence: 23.965858,
			hoursForTarget: 24.356,
			hoursEconomic: 16.1192,
			coldStartsNeeded: 14,
			posteriorProbability: 0.00228584,
		},
	},
	assess: (request) =>
		judge({ ...request, costPerH: amountOf(request.costPerH), costOfReturn: amountOf(request.costOfReturn) }),
});
