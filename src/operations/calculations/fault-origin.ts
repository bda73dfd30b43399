/** `fault-origin`: what findings support, by the documented rules and the caller's own numbers. */
import { faultOrigin as judge } from "../../calculations/origin/fault-origin.ts";
import { FINDING_RULES } from "../../catalogue/origins/findings.ts";
import { ORIGIN_TEST_RULES } from "../../catalogue/origins/tests.ts";
import { faultOriginRequest, faultOriginResult } from "../../contract/fault-origin.ts";
import { calculation } from "./calculation.ts";

const likelihoods = (missed: number, shock: number, handling: number, bench: number, none: number) => ({
	"missed-before-dispatch": missed,
	"transit-shock": shock,
	"receiver-handling": handling,
	"set-up": bench,
	"none-of-these": none,
});

export const faultOrigin = calculation({
	name: "fault-origin",
	summary:
		"What findings support, speak against or leave open, and which test would tell most. Never who answers for it.",
	request: faultOriginRequest,
	result: faultOriginResult,
	example: {
		request: {
			findings: [
				{ id: "shock-beyond-design", state: "present" },
				{ id: "control-item-good", state: "present" },
			],
			likelihoods: {
				"shock-beyond-design": likelihoods(0.1, 0.55, 0.1, 0.1, 0.1),
				"control-item-good": likelihoods(0.9, 0.9, 0.9, 0.05, 0.6),
			},
			priors: likelihoods(0.15, 0.4, 0.2, 0.2, 0.05),
			tests: [
				{
					id: "photos-of-same-place",
					outcomes: likelihoods(0.1, 0.8, 0.5, 0.05, 0.2),
					destructive: false,
					breaksCustody: false,
				},
			],
		},
		result: {
			origins: [{ id: "transit-shock", support: "supports", likelihoodRatio: 8.3662, posteriorProbability: 0.847966 }],
			turnsOn: "shock-beyond-design",
		},
	},
	assess: (request) =>
		judge({
			...request,
			tests: request.tests?.map(({ cost, ...test }) => ({
				...test,
				cost: typeof cost === "object" ? cost.amount : cost,
			})),
			rules: FINDING_RULES,
			testRules: ORIGIN_TEST_RULES,
		}),
});
