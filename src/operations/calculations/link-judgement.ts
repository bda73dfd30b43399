/** `link-judgement`: does a card's link run as wide and fast as card and slot can. */
import { judgeLink } from "../../calculations/link/link-judgement.ts";
import { LANE_GBYTE_PER_S } from "../../catalogue/link-generations.ts";
import { linkJudgementRequest, linkJudgementResult } from "../../contract/link-judgement.ts";
import { calculation } from "./calculation.ts";

const FULL = { speedGTPerS: 16, width: 16 };

export const linkJudgement = calculation({
	name: "link-judgement",
	summary: "Judge a card's link at the slowest point of its path, under load.",
	request: linkJudgementRequest,
	result: linkJudgementResult,
	example: {
		request: { card: FULL, load: { speedGTPerS: 16, width: 8 }, slot: FULL, control: FULL },
		result: {
			judgement: "width-reduced",
			effective: { speedGTPerS: 16, width: 8 },
			effectiveGBytePerS: 15.753846,
			capabilityGBytePerS: 31.507692,
		},
	},
	assess: (input) => judgeLink(input, LANE_GBYTE_PER_S),
});
